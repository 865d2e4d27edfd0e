import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import type { Seen } from '../../../client/extension';
import type { Part } from '../../../shared/protocol/parts';

/** What our own parts of the window show: the editor tells nobody. */
export async function seen(): Promise<Seen> {
  const extension = vscode.extensions.getExtension<Seen>('perpend.perpend');
  assert.ok(extension);
  return extension.activate();
}

/** A part of the tree by its id. */
export function partIn(parts: readonly Part[], id: string): Part | undefined {
  for (const part of parts) {
    const found = part.id === id ? part : partIn(part.children, id);
    if (found) return found;
  }
  return undefined;
}

export function run<R = unknown>(command: string, ...given: unknown[]): Thenable<R> {
  return vscode.commands.executeCommand<R>(command, ...given);
}

export async function bytesOf(file: vscode.Uri): Promise<Uint8Array> {
  return vscode.workspace.fs.readFile(file);
}

export async function textOf(file: vscode.Uri): Promise<string> {
  return new TextDecoder().decode(await bytesOf(file));
}

/** All editors that are open, by what they show. */
export function tabs(): readonly vscode.Tab[] {
  return vscode.window.tabGroups.all.flatMap((group) => group.tabs);
}

export async function closeAll(): Promise<void> {
  for (const document of vscode.workspace.textDocuments)
    if (document.isDirty) {
      await vscode.window.showTextDocument(document);
      await run('workbench.action.revertAndCloseActiveEditor');
    }
  await run('workbench.action.closeAllEditors');
}
