import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import path from 'node:path';
import * as vscode from 'vscode';
import { JOB, lineOf, uriOf } from './files';
import { closeAll, run, tabs, textOf } from './seen';
import { until } from './wait';

interface Api {
  openRepository(root: vscode.Uri): Promise<unknown>;
  getRepository(file: vscode.Uri): unknown;
}

const FOLDER = 'revisions';
const FILE = `${FOLDER}/job.perp`;

function git(...words: string[]): void {
  const name = ['-c', 'user.name=T', '-c', 'user.email=t@example.invalid'];
  execFileSync('git', [...name, ...words], { cwd: uriOf(FOLDER).fsPath, stdio: 'pipe' });
}

async function gitApi(): Promise<Api> {
  const found = vscode.extensions.getExtension('vscode.git');
  assert.ok(found, 'the editor has its git extension');
  const git = await found.activate();
  // It was switched on a moment ago, and looks for a git first.
  await until('git', () => git.enabled, Boolean);
  return found.exports.getAPI(1);
}

async function enable(enabled: boolean): Promise<void> {
  const settings = vscode.workspace.getConfiguration('git');
  await settings.update('enabled', enabled, vscode.ConfigurationTarget.Global);
}

/** A repository of one job and its firm’s file. */
async function repository(): Promise<void> {
  const { fs } = vscode.workspace;
  await fs.createDirectory(uriOf(FOLDER));
  const text = (await textOf(uriOf(JOB))).replace('../firm.perp', 'firm.perp');
  await fs.writeFile(uriOf(FILE), new TextEncoder().encode(text));
  await fs.copy(uriOf('firm.perp'), uriOf(`${FOLDER}/firm.perp`), { overwrite: true });
  git('init', '-q');
  git('add', '.');
  git('commit', '-q', '-m', path.basename(FILE));
  const api = await gitApi();
  await api.openRepository(uriOf(FOLDER));
  await until('the repository', () => api.getRepository(uriOf(FILE)), Boolean);
}

function diffTab(): vscode.TabInputTextDiff | undefined {
  const inputs = tabs().map(({ input }) => input);
  return inputs.find((input) => input instanceof vscode.TabInputTextDiff);
}

async function sides(): Promise<[string, string]> {
  const input = await until('a comparison', diffTab, Boolean);
  assert.ok(input);
  const open = (uri: vscode.Uri) => vscode.workspace.openTextDocument(uri);
  return [(await open(input.original)).getText(), (await open(input.modified)).getText()];
}

describe('comparing', () => {
  before(async () => {
    await enable(true);
    await repository();
  });
  after(async () => {
    await closeAll();
    await enable(false);
  });

  it('puts the last commit beside what is written now, saved or not, by meaning', async () => {
    const document = await vscode.workspace.openTextDocument(uriOf(FILE));
    await vscode.window.showTextDocument(document);
    const edit = new vscode.WorkspaceEdit();
    const line = document.lineAt(lineOf(document, /^cost skip/)).range;
    edit.replace(document.uri, line, 'cost skip "Skip for the spoil" 1 at £340');
    await vscode.workspace.applyEdit(edit);
    assert.ok(document.isDirty);
    await run('perpend.compare.commit');
    const [left, right] = await sides();
    assert.match(left, /£4,050\.00/);
    assert.doesNotMatch(right, /£4,050\.00/);
    assert.notEqual(left, '');
    const same = left.split('\n').filter((text) => right.split('\n').includes(text));
    assert.ok(same.length > 5, 'what did not change stands alike on both sides');
  });

  it('tells on a page what moved the price', async () => {
    await run('perpend.compare.page', diffTab()?.modified);
    await until('a page', tabs, (all) =>
      all.some(({ input }) => input instanceof vscode.TabInputWebview),
    );
  });

  it('says so where nothing was sent, and shows nothing', async () => {
    const show = vscode.commands.executeCommand('perpend.compare.sent', uriOf(FILE));
    // Nothing was sent: it is said, and nothing else happens.
    await Promise.race([show, new Promise((resolve) => setTimeout(resolve, 3000))]);
    assert.equal(tabs().filter(({ input }) => input instanceof vscode.TabInputTextDiff).length, 1);
  });

  it('shows what the record keeps of what was sent, and both sides once a revision holds it', async () => {
    await closeAll();
    const uri = uriOf(FILE).toString();
    await run('perpend.record', { uri, what: 'sent', date: '2026-03-02' });
    await run('perpend.compare.sent', uriOf(FILE));
    await until('a page', tabs, (all) =>
      all.some(
        ({ input, label }) => input instanceof vscode.TabInputWebview && /\.md$/.test(label),
      ),
    );
    assert.equal(diffTab(), undefined);
    assert.ok(await vscode.workspace.saveAll());
    git('commit', '-q', '-a', '-m', 'Sent');
    await run('perpend.compare.sent', uriOf(FILE));
    const [left, right] = await sides();
    assert.match(left, /£4,050\.00/);
    assert.equal(left, right);
  });
});
