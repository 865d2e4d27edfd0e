import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { JOB, open, wholeRange } from './files';
import { FIRST_WAIT_MS, until } from './wait';

/** A hint's text as read: the editor wants no-break spaces in it. */
function textOf(hint: vscode.InlayHint): string {
  const { label } = hint;
  return typeof label === 'string' ? label : label.map((part) => part.value).join('');
}

function hints(document: vscode.TextDocument): Thenable<vscode.InlayHint[] | undefined> {
  const range = wholeRange(document);
  return vscode.commands.executeCommand('vscode.executeInlayHintProvider', document.uri, range);
}

function extension(): vscode.Extension<unknown> | undefined {
  return vscode.extensions.getExtension('perpend.perpend');
}

describe('opening a job', () => {
  it('starts the extension', async () => {
    const document = await open(JOB);
    assert.equal(document.languageId, 'perpend');
    await until('activation', extension, (found) => found?.isActive === true, FIRST_WAIT_MS);
  });

  it('shows money at the end of a heading', async () => {
    const document = await open(JOB);
    const some = (found?: vscode.InlayHint[]) =>
      found?.some((hint) => textOf(hint).includes('£')) ?? false;
    const found = await until('a hint with £', () => hints(document), some, FIRST_WAIT_MS);
    const hint = found?.find((each) => textOf(each).includes('£'));
    const line = document.lineAt(hint?.position.line ?? 0).text;
    assert.match(line, /^\S/, 'the hint stands on a heading line');
    assert.equal(hint?.position.character, line.trimEnd().length);
  });

  it('registers each command of the manifest', async () => {
    await extension()?.activate();
    const manifest = extension()?.packageJSON as {
      contributes: { commands: { command: string }[] };
    };
    const registered = await vscode.commands.getCommands(true);
    const wanted = manifest.contributes.commands.map(({ command }) => command);
    assert.ok(wanted.length > 0);
    assert.deepEqual(
      wanted.filter((command) => !registered.includes(command)),
      [],
    );
  });
});
