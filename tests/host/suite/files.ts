import assert from 'node:assert/strict';
import * as vscode from 'vscode';

export const JOB = 'garden-wall/job.perp';

/** A file of the workspace under test, which is a copy of `examples/`. */
export function uriOf(name: string): vscode.Uri {
  const folder = vscode.workspace.workspaceFolders?.[0];
  assert.ok(folder, 'the editor was started without a folder');
  return vscode.Uri.joinPath(folder.uri, name);
}

export async function open(name: string): Promise<vscode.TextDocument> {
  const document = await vscode.workspace.openTextDocument(uriOf(name));
  await vscode.window.showTextDocument(document);
  return document;
}

/** Writes a new file beside the garden wall, where its `use` lines hold, and opens it. */
export async function openText(name: string, text: string): Promise<vscode.TextDocument> {
  const file = `garden-wall/${name}`;
  await vscode.workspace.fs.writeFile(uriOf(file), new TextEncoder().encode(text));
  return open(file);
}

/** The number of the first line that this matches. */
export function lineOf(document: vscode.TextDocument, pattern: RegExp): number {
  const line = document
    .getText()
    .split(/\r?\n/)
    .findIndex((text) => pattern.test(text));
  assert.notEqual(line, -1, `no line of ${document.uri.path} matches ${pattern}`);
  return line;
}

export function wholeRange(document: vscode.TextDocument): vscode.Range {
  return new vscode.Range(0, 0, document.lineCount, 0);
}
