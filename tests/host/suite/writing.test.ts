import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { JOB, open, openText } from './files';
import { until } from './wait';

function edits(document: vscode.TextDocument): Thenable<vscode.TextEdit[] | undefined> {
  const options = { tabSize: 2, insertSpaces: true };
  return vscode.commands.executeCommand(
    'vscode.executeFormatDocumentProvider',
    document.uri,
    options,
  );
}

/** Does these edits, and gives the text after them. */
async function edited(document: vscode.TextDocument, wanted: vscode.TextEdit[]): Promise<string> {
  const edit = new vscode.WorkspaceEdit();
  edit.set(document.uri, wanted);
  await vscode.workspace.applyEdit(edit); // it says no to none at all
  return document.getText();
}

/** The same facts, untidily written: indents twice as deep, columns closed up, spaces at line ends. */
function untidy(text: string): string {
  return text
    .replace(/^ +/gm, '$&$&')
    .replace(/^( +\S+) {2,}/gm, '$1 ')
    .replace(/(\S)$/gm, '$1  ');
}

describe('the formatter', () => {
  it('puts an untidy job in order, and then leaves it alone', async () => {
    const tidy = (await open(JOB)).getText();
    const document = await openText('untidy.perp', untidy(tidy));
    assert.notEqual(document.getText(), tidy);
    const wanted = await until(
      'an order to be put',
      () => edits(document),
      (found) => Boolean(found?.length),
    );
    const once = await edited(document, wanted ?? []);
    assert.equal(once, tidy, 'the example itself stands in formatted order');
    // Nothing where there is nothing to change.
    assert.equal(await edited(document, (await edits(document)) ?? []), once);
  });
});
