import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { JOB, lineOf, open, openText } from './files';
import { until } from './wait';

function findings(document: vscode.TextDocument): vscode.Diagnostic[] {
  return vscode.languages.getDiagnostics(document.uri).filter(({ source }) => source === 'perpend');
}

function quickFixes(uri: vscode.Uri, at: vscode.Range): Thenable<vscode.CodeAction[] | undefined> {
  const kind = vscode.CodeActionKind.QuickFix.value;
  return vscode.commands.executeCommand('vscode.executeCodeActionProvider', uri, at, kind, 10);
}

/** Opens the garden wall with one word of it misspelt. */
async function openMisspelt(): Promise<{
  document: vscode.TextDocument;
  line: number;
  good: string;
}> {
  const good = (await open(JOB)).getText();
  const document = await openText('misspelt.perp', good.replace(/^(\s+)length\b/m, '$1lenght'));
  return { document, line: lineOf(document, /^\s+lenght\b/), good };
}

describe('a misspelt word', () => {
  it('is found in its place, and the fix puts it right', async () => {
    const { document, line, good } = await openMisspelt();
    // Cautions may stand there too: they are no fault of the line.
    const here = () =>
      findings(document).filter(
        ({ range, severity }) =>
          range.start.line === line && severity === vscode.DiagnosticSeverity.Error,
      );
    const [finding] = await until('an error on the line', here, (found) => found.length > 0);
    assert.ok(finding);
    assert.equal(document.getText(finding.range), 'lenght');

    const asked = () => quickFixes(document.uri, finding.range);
    const offered = await until('a fix', asked, (found) =>
      Boolean(found?.some(({ edit }) => edit)),
    );
    const fix =
      offered?.find(({ edit, isPreferred }) => edit && isPreferred) ??
      offered?.find(({ edit }) => edit);
    assert.ok(fix?.edit);
    assert.ok(await vscode.workspace.applyEdit(fix.edit));
    assert.equal(document.getText(), good);
    await until('no error on the line', here, (found) => found.length === 0);
  });
});
