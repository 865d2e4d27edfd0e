import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { openText } from './files';
import { until } from './wait';

const BAD =
  'perpend 1\nuse uk\nwall north\n  brick  standrd\n  lenght 1840 mm\n  height 8 courses\n';

const told = (document: vscode.TextDocument) =>
  vscode.languages.getDiagnostics(document.uri).filter(({ source }) => source === 'perpend');

describe('a finding', () => {
  it('leads to its page of help, which is there without a network', async () => {
    const document = await openText('help.perp', BAD);
    const found = await until(
      'findings',
      () => told(document),
      (all) => all.length > 1,
    );
    const code = found.map((each) => each.code).find((each) => typeof each === 'object');
    assert.ok(code);
    assert.equal(code.target.scheme, 'perpend-help');
    const page = await vscode.workspace.openTextDocument(code.target);
    assert.match(page.getText(), /^# [A-Z]/);
    assert.match(page.getText(), /\*\*What to do\.\*\*/);
  });

  it('of a caution that a firm has written has the page of all cautions', async () => {
    const uri = vscode.Uri.parse('perpend-help:/caution-of-ours.md');
    assert.match((await vscode.workspace.openTextDocument(uri)).getText(), /^# A caution/);
  });
});

describe('all that was plainly meant', () => {
  it('is mended in one go, as on saving', async () => {
    const document = await openText('all.perp', BAD);
    await until(
      'findings',
      () => told(document),
      (all) => all.length > 1,
    );
    const kind = 'source.fixAll.perpend';
    const range = new vscode.Range(0, 0, document.lineCount, 0);
    const ask = () =>
      vscode.commands.executeCommand<vscode.CodeAction[]>(
        'vscode.executeCodeActionProvider',
        document.uri,
        range,
        kind,
        5,
      );
    const [action] = await until('an action', ask, (found) => Boolean(found?.[0]?.edit));
    const said = JSON.stringify(action!.edit!.entries());
    assert.ok(await vscode.workspace.applyEdit(action!.edit!), said);
    assert.match(document.getText(), /brick {2}standard\n {2}length 1840 mm/);
  });
});

describe('lines that are missing', () => {
  it('are added with places to fill in', async () => {
    const document = await openText('missing.perp', 'perpend 1\nuse uk\nwall north\n');
    const at = new vscode.Range(2, 2, 2, 2);
    const kind = vscode.CodeActionKind.RefactorRewrite.value;
    const ask = () =>
      vscode.commands.executeCommand<vscode.CodeAction[]>(
        'vscode.executeCodeActionProvider',
        document.uri,
        at,
        kind,
        5,
      );
    const [action] = await until('an action', ask, (found) => Boolean(found?.[0]?.edit));
    assert.equal(action!.title, 'Add length and height');
    assert.ok(await vscode.workspace.applyEdit(action!.edit!));
    assert.equal(
      document.getText(),
      'perpend 1\nuse uk\nwall north\n  length  7.4 m\n  height  18 courses\n',
    );
  });
});
