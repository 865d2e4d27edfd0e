import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { JOB, lineOf, open, uriOf } from './files';
import { until } from './wait';

type At = [vscode.TextDocument, vscode.Position];

const ask = <T>(command: string, { uri }: vscode.TextDocument, ...more: unknown[]): Thenable<T> =>
  vscode.commands.executeCommand<T>(command, uri, ...more);

/** On the brick of the wall, which the firm’s file gives. */
async function brick(): Promise<At> {
  const document = await open(JOB);
  const line = lineOf(document, /^ {2}brick\b/);
  return [document, new vscode.Position(line, document.lineAt(line).text.indexOf('harwick') + 2)];
}

const nameOf = (uri: vscode.Uri) => uri.path.split('/').slice(-2).join('/');

const codeOf = (code: vscode.Diagnostic['code']) =>
  String(typeof code === 'object' ? code.value : code);

async function write(name: string, text: string): Promise<vscode.Uri> {
  await vscode.workspace.fs.writeFile(uriOf(name), new TextEncoder().encode(text));
  return uriOf(name);
}

describe('names and files', () => {
  it('finds a brick of the firm in jobs that are not open', async () => {
    const [document, at] = await brick();
    const found = await until(
      'references',
      () => ask<vscode.Location[]>('vscode.executeReferenceProvider', document, at),
      (list) => new Set(list.map(({ uri }) => nameOf(uri))).size > 2,
    );
    const names = found.map(({ uri }) => nameOf(uri));
    assert.ok(names.includes('jobs/firm.perp'), names.join());
  });

  it('renames it in all of them', async () => {
    const [document, at] = await brick();
    const can = await until(
      'leave to rename',
      () => ask<{ placeholder: string }>('vscode.prepareRename', document, at),
      Boolean,
    );
    assert.equal(can.placeholder, 'harwick-red');
    const rename = 'vscode.executeDocumentRenameProvider';
    const edit = await until(
      'a rename',
      () => ask<vscode.WorkspaceEdit>(rename, document, at, 'harwick-dark'),
      (found) => found?.size > 0,
    );
    const names = edit.entries().map(([uri]) => nameOf(uri));
    assert.ok(names.includes('jobs/firm.perp') && names.length > 2, names.join());
    assert.ok(
      edit.entries().every(([, edits]) => edits.every((e) => e.newText === 'harwick-dark')),
    );
  });

  it('says why a word of the notation has no other name', async () => {
    const [document, at] = await brick();
    const refused = async () => {
      const place = at.with({ character: 3 });
      return Promise.resolve(ask('vscode.prepareRename', document, place)).then(
        () => 'not refused',
        String,
      );
    };
    await until('a refusal', refused, (why) => /word of the notation/.test(why));
  });

  it('finds things of all files by a few letters', async () => {
    const found = await until(
      'symbols',
      () =>
        vscode.commands.executeCommand<vscode.SymbolInformation[]>(
          'vscode.executeWorkspaceSymbolProvider',
          'wnorth',
        ),
      (list) => list.some(({ name }) => name.startsWith('wall north')),
    );
    assert.ok(found[0]!.location.uri.path.endsWith('.perp'));
  });

  it('links to the file that is used, and says so', async () => {
    const document = await open(JOB);
    const line = lineOf(document, /^use\b/);
    const ofLine = ({ range }: vscode.DocumentLink) => range.start.line === line;
    const links = await until(
      'a link',
      () => ask<vscode.DocumentLink[]>('vscode.executeLinkProvider', document, 10),
      (found) => found.some(ofLine),
    );
    const use = links.find(ofLine);
    assert.equal(use?.target && nameOf(use.target), 'jobs/firm.perp');
    assert.match(use?.tooltip ?? '', /used/);
  });

  it('grows a selection from a word to its block', async () => {
    const [document, at] = await brick();
    const command = 'vscode.executeSelectionRangeProvider';
    const [found] = await until(
      'selections',
      () => ask<vscode.SelectionRange[]>(command, document, [at]),
      (list) => Boolean(list?.[0]?.parent),
    );
    const texts: string[] = [];
    for (let each = found; each; each = each.parent!) texts.push(document.getText(each.range));
    assert.ok(texts.includes('harwick-red'), texts[0]);
    assert.ok(texts.some((text) => /^wall north[\s\S]*opening gate/.test(text)));
  });

  it('folds blocks and what lies in them', async () => {
    const document = await open(JOB);
    const folds = await until(
      'folds',
      () => ask<vscode.FoldingRange[]>('vscode.executeFoldingRangeProvider', document),
      (list) => list?.length > 0,
    );
    const starts = folds.map(({ start }) => document.lineAt(start).text.trim().split(' ')[0]);
    assert.ok(starts.includes('wall') && starts.includes('opening'), starts.join());
  });

  it('mends use lines before a file is renamed', async () => {
    const firm = await write('moves/yard.perp', 'perpend 1\nuse uk\nbrick red\n');
    const job = await write('moves/in/wall.perp', 'perpend 1\nuse "../yard.perp"\n');
    await open(JOB);
    await until(
      'the server to know of the new files',
      () =>
        vscode.commands.executeCommand<vscode.SymbolInformation[]>(
          'vscode.executeWorkspaceSymbolProvider',
          'brick red',
        ),
      (list) => list.some(({ location }) => location.uri.path.endsWith('moves/yard.perp')),
    );
    const edit = new vscode.WorkspaceEdit();
    edit.renameFile(firm, uriOf('moves/house.perp'));
    assert.ok(await vscode.workspace.applyEdit(edit));
    const text = async () => (await vscode.workspace.openTextDocument(job)).getText();
    await until('the line to be mended', text, (found) => found.includes('use "../house.perp"'));
  });

  it('tells that a used file is gone when the folder around it is deleted', async () => {
    await write('gone/firm.perp', 'perpend 1\nuse uk\nbrick red\n  price £1 each\n');
    await write('beside/wall.perp', 'perpend 1\nuse "../gone/firm.perp"\nwall a\n  brick red\n');
    const { uri } = await open('beside/wall.perp');
    const missing = () =>
      vscode.languages.getDiagnostics(uri).some(({ code }) => codeOf(code) === 'use-missing');
    const told = () => vscode.languages.getDiagnostics(uri).length > 0;
    await until('findings of the wall', told, (found) => found && !missing());
    await vscode.workspace.fs.delete(uriOf('gone'), { recursive: true });
    await until('the file to be missed', missing, (found) => found);
    await write('gone/firm.perp', 'perpend 1\nuse uk\nbrick red\n  price £1 each\n');
    await until('the file to be found again', missing, (found) => !found);
  });
});
