import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { JOB, lineOf, open, openText, uriOf } from './files';
import { closeAll, partIn, run, seen } from './seen';
import { until } from './wait';

describe('the job view', () => {
  before(() => run('perpend.job.focus'));
  after(closeAll);

  it('shows the work of the job in front with its figures and money', async () => {
    await open(JOB);
    const { parts } = await seen();
    // The tree may still show the job of another test.
    const text = () => partIn(parts(), 'work/north')?.text ?? '';
    const wanted = /^£3,375\.00 · 1,050\sbricks · 23\.89\sh$/;
    await until('the wall', text, (found) => wanted.test(found));
    assert.equal(partIn(parts(), 'price/price')?.text, '£4,050.00');
    assert.ok(partIn(parts(), 'costs/materials'));
  });

  it('leads to the line of each part', async () => {
    const document = await open(JOB);
    const { parts } = await seen();
    const at = () => partIn(parts(), 'work/north')?.at;
    const line = lineOf(document, /^wall north/);
    await until('the wall', at, (found) => found?.line === line);
  });

  it('follows every edit, with the same ids', async () => {
    const good = (await open(JOB)).getText();
    const document = await openText('followed.perp', good);
    const { parts } = await seen();
    const price = () => partIn(parts(), 'price/price')?.text;
    await until('a price', price, (text) => text === '£4,050.00');
    const edit = new vscode.WorkspaceEdit();
    const line = lineOf(document, /^cost skip/);
    edit.replace(document.uri, document.lineAt(line).range, 'cost skip "Skip" 1 at £340');
    await vscode.workspace.applyEdit(edit);
    await until('a higher price', price, (text) => /^£4,[1-9]/.test(text ?? ''));
    assert.ok(partIn(parts(), 'work/north'));
  });

  it('says what stops the price, and what is to be found out', async () => {
    const good = (await open(JOB)).getText();
    await openText('unknown.perp', good.replace(/^(\s+length\s+)7\.3 m/m, '$1?'));
    const { parts } = await seen();
    const stops = await until('a stop', () => partIn(parts(), 'stops'), Boolean);
    assert.ok(stops?.children.length);
    assert.ok(partIn(parts(), 'find-out')?.children.some(({ label }) => /length/.test(label)));
  });

  it('keeps the job while a file that is none is in front', async () => {
    await open(JOB);
    const { parts } = await seen();
    await until(
      'the wall',
      () => partIn(parts(), 'price/price')?.text,
      (text) => text === '£4,050.00',
    );
    await open('firm.perp');
    await new Promise((resolve) => setTimeout(resolve, 1500));
    assert.equal(partIn(parts(), 'price/price')?.text, '£4,050.00');
  });
});

describe('the status bar', () => {
  after(closeAll);

  it('shows the price and what it earns an hour', async () => {
    await open(JOB);
    const { bar } = await seen();
    await until('the price', bar, (text) => text === '£4,050.00 · £59.12/h');
  });

  it('marks a price that is not complete', async () => {
    const good = new TextDecoder().decode(await vscode.workspace.fs.readFile(uriOf(JOB)));
    await openText('open.perp', good.replace(/^(\s+length\s+)7\.3 m/m, '$1?'));
    const { bar } = await seen();
    await until('three dots', bar, (text) => / …/.test(text));
  });
});
