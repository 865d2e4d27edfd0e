import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { JOB, lineOf, open } from './files';
import { until } from './wait';

function textOf(hovers: vscode.Hover[] | undefined): string {
  const contents = (hovers ?? []).flatMap(({ contents }) => contents);
  return contents
    .map((content) => (typeof content === 'string' ? content : content.value))
    .join('\n');
}

function hoverAt(
  document: vscode.TextDocument,
  line: number,
  column: number,
): Thenable<vscode.Hover[]> {
  const at = new vscode.Position(line, column);
  return vscode.commands.executeCommand('vscode.executeHoverProvider', document.uri, at);
}

function symbols(document: vscode.TextDocument): Thenable<vscode.DocumentSymbol[] | undefined> {
  return vscode.commands.executeCommand('vscode.executeDocumentSymbolProvider', document.uri);
}

describe('reading a job', () => {
  it('shows the working of a wall where its heading is hovered', async () => {
    const document = await open(JOB);
    const line = lineOf(document, /^wall\b/);
    const asked = async () => textOf(await hoverAt(document, line, 1));
    const text = await until('a hover', asked, (found) => found.length > 0);
    assert.match(text, /\d\D*×\D*\d/, 'the sum is there, not its result alone');
  });

  it('lists every block in the outline', async () => {
    const document = await open(JOB);
    const found = await until(
      'symbols',
      () => symbols(document),
      (list) => Boolean(list?.length),
    );
    const lines = document.getText().split(/\r?\n/);
    const headings = lines.flatMap((text, line) =>
      /^(?!perpend\b|use\b)[a-z]/.test(text) ? [line] : [],
    );
    assert.ok(headings.length > 1);
    const listed = found?.map(({ range }) => range.start.line);
    assert.deepEqual(
      headings.filter((line) => !listed?.includes(line)),
      [],
    );
  });
});
