/** Names, files and places across the open folders, asked over the protocol. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type {
  ClientCapabilities,
  DocumentLink,
  DocumentSymbol,
  FoldingRange,
  LinkedEditingRanges,
  Location,
  LocationLink,
  SelectionRange,
  SymbolInformation,
  TextDocumentEdit,
  WorkspaceEdit,
  WorkspaceSymbol,
} from 'vscode-languageserver-protocol';
import { near } from './near';
import { EDITOR, Peer, uriOf } from './peer';

const ABLE: ClientCapabilities = {
  ...EDITOR,
  textDocument: { ...EDITOR.textDocument, rename: { prepareSupport: true } },
  workspace: {
    ...EDITOR.workspace,
    workspaceEdit: { documentChanges: true },
    symbol: { resolveSupport: { properties: ['location.range'] } },
    fileOperations: { willRename: true },
  },
};

const FIRM = 'perpend 1\nuse uk\nbrick red "Harwick red"\n  size 215 x 102.5 x 65 mm\n';
const JOB = 'perpend 1\nuse "firm.perp"\nwall north "North boundary"\n  brick red\n  length 3 m\n';

let peer: Peer;

beforeEach(() => {
  peer = new Peer(near());
});
afterEach(() => peer.stop());

function write(name: string, text: string): void {
  const file = path.join(peer.folder, name);
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, text);
}

/** Two jobs of a firm; one of them is open. */
async function begun(capabilities = ABLE): Promise<string> {
  write('firm.perp', FIRM);
  write('a.perp', JOB);
  write('jobs/b.perp', JOB.replace('firm.perp', '../firm.perp'));
  await peer.start({ folders: [peer.folder], capabilities });
  return peer.open('a.perp', JOB);
}

const RED = { line: 3, character: 9 };
const inFolder = (uri: string) => uri.slice(uriOf(peer.folder).length + 1);
const said = ({ uri, range: { start, end } }: Location) =>
  `${inFolder(uri)}:${start.line}:${start.character}-${end.character}`;

async function references(uri: string, position = RED): Promise<string[]> {
  const context = { includeDeclaration: true };
  const found = await peer.about<Location[]>('references', uri, { position, context });
  return found.map(said).sort();
}

const symbols = (query: string) => peer.ask<WorkspaceSymbol[]>('workspace/symbol', { query });

function changed(name: string, type: 1 | 2 | 3): Promise<void> {
  return peer.tell('workspace/didChangeWatchedFiles', { changes: [{ uri: peer.uri(name), type }] });
}

describe('what it says it can do', () => {
  test('is told at the start', async () => {
    const { capabilities } = await peer.start({ capabilities: ABLE });
    expect(capabilities).toMatchObject({
      positionEncoding: 'utf-16',
      renameProvider: { prepareProvider: true },
      workspaceSymbolProvider: { resolveProvider: true },
      documentLinkProvider: { resolveProvider: true },
      selectionRangeProvider: true,
      foldingRangeProvider: true,
    });
    const { filters } = capabilities.workspace!.fileOperations!.willRename!;
    expect(filters.map((f) => f.pattern.glob)).toContain('**/*.perp');
  });

  test('is rename alone where the client cannot prepare it', async () => {
    const { capabilities } = await peer.start({ capabilities: {} });
    expect(capabilities.renameProvider).toBe(true);
  });
});

describe('references', () => {
  test('are found in files that are not open', async () => {
    const uri = await begun();
    expect(await references(uri)).toEqual([
      'a.perp:3:8-11',
      'firm.perp:2:6-9',
      'jobs/b.perp:3:8-11',
    ]);
  });

  test('count the open text, not the disk', async () => {
    const uri = await begun();
    const other = await peer.open(
      'jobs/b.perp',
      `perpend 1\nuse "../firm.perp"\n\n\nwall x\n  brick red\n`,
    );
    expect(await references(uri)).toContain('jobs/b.perp:5:8-11');
    await peer.tell('textDocument/didClose', { textDocument: { uri: other } });
    expect(await references(uri)).toContain('jobs/b.perp:3:8-11');
  });

  test('follow what changes on disk', async () => {
    const uri = await begun();
    await references(uri);
    write('c.perp', JOB);
    await changed('c.perp', 1);
    expect(await references(uri)).toContain('c.perp:3:8-11');
    rmSync(path.join(peer.folder, 'c.perp'));
    await changed('c.perp', 3);
    expect(await references(uri)).not.toContain('c.perp:3:8-11');
  });

  test('are looked for again by a client that tells of no changes', async () => {
    const uri = await begun({ ...ABLE, workspace: {} });
    await references(uri);
    write('c.perp', JOB);
    expect(await references(uri)).toContain('c.perp:3:8-11');
  });

  test('pass by hidden folders, and files that are no UTF-8', async () => {
    write('.git/x.perp', JOB);
    write('node_modules/x.perp', JOB);
    writeFileSync(path.join(peer.folder, 'bad.perp'), Buffer.from([0x77, 0xff, 0xfe]));
    const uri = await begun();
    expect(await references(uri)).toHaveLength(3);
  });

  test('are given up when they are cancelled or the text changes meanwhile', async () => {
    const uri = await begun();
    for (let i = 0; i < 200; i++) write(`many/${i}.perp`, JOB);
    const asked = references(uri).catch((error: { code: number }) => error.code);
    await peer.edit(uri, '# x\n', { line: 0, character: 0 });
    expect(await asked).toBe(-32801);
  });
});

describe('rename', () => {
  const rename = (uri: string, newName: string, position = RED) =>
    peer.about<WorkspaceEdit>('rename', uri, { position, newName });

  test('is done though something else changes meanwhile', async () => {
    const uri = await begun();
    for (let i = 0; i < 200; i++) write(`many/${i}.perp`, JOB);
    const asked = rename(uri, 'blue');
    await changed('many/1.perp', 1);
    expect((await asked)!.documentChanges!.length).toBeGreaterThan(2);
  });

  test('is prepared with the name', async () => {
    const uri = await begun();
    expect(await peer.about('prepareRename', uri, { position: RED })).toEqual({
      range: { start: { line: 3, character: 8 }, end: { line: 3, character: 11 } },
      placeholder: 'red',
    });
  });

  test('says why not', async () => {
    const uri = await begun();
    const position = { line: 4, character: 3 };
    await expect(peer.about('prepareRename', uri, { position })).rejects.toThrow(
      '“length” is a word of the notation',
    );
    await expect(rename(uri, 'two words')).rejects.toThrow('“two words” is no name');
  });

  test('edits every file, and says which version of an open one it is for', async () => {
    const uri = await begun();
    await peer.edit(uri, ' ', { line: 4, character: 12 });
    const edits = (await rename(uri, 'crimson')).documentChanges as TextDocumentEdit[];
    const told = edits.map(({ textDocument, edits: [edit] }) => [
      inFolder(textDocument.uri),
      textDocument.version,
      (edit as { newText: string }).newText,
    ]);
    expect(told.sort()).toEqual([
      ['a.perp', 2, 'crimson'],
      ['firm.perp', null, 'crimson'],
      ['jobs/b.perp', null, 'crimson'],
    ]);
  });

  test('without versions for a client that knows none', async () => {
    const uri = await begun(EDITOR);
    const { changes, documentChanges } = await rename(uri, 'crimson');
    expect(documentChanges).toBeUndefined();
    expect(Object.keys(changes!)).toHaveLength(3);
  });

  test('refuses a name that a file has which is not open', async () => {
    const uri = await begun();
    write('jobs/b.perp', `${JOB.replace('firm.perp', '../firm.perp')}brick blue\n`);
    await changed('jobs/b.perp', 2);
    await expect(rename(uri, 'blue')).rejects.toThrow('“blue” is taken: b.perp');
  });
});

describe('symbols of all files', () => {
  test('one is led to where it stands by now', async () => {
    const uri = await begun();
    const found = (await symbols('north')).find((each) => each.location.uri === uri)!;
    await peer.edit(uri, '\n\nwall other\n', { line: 2, character: 0 });
    const moved = await peer.ask<WorkspaceSymbol>('workspaceSymbol/resolve', found);
    expect(moved.location).toMatchObject({ range: { start: { line: 5, character: 0 } } });
    await peer.edit(uri, 'perpend 1\n');
    expect(await peer.ask('workspaceSymbol/resolve', found)).toEqual(found);
  });

  test('are found by a few letters, and their place when it is asked for', async () => {
    await begun();
    const found = await symbols('wn');
    expect(found.map((s) => `${s.name} | ${s.containerName}`).sort()).toEqual([
      'wall north “North boundary” | a.perp',
      'wall north “North boundary” | b.perp',
    ]);
    const [first] = found;
    expect(first!.location).toEqual({ uri: first!.location.uri });
    const resolved = await peer.ask<WorkspaceSymbol>('workspaceSymbol/resolve', first);
    expect((resolved.location as Location).range).toEqual({
      start: { line: 2, character: 0 },
      end: { line: 2, character: 27 },
    });
  });

  test('have their place at once for a client that does not ask', async () => {
    await begun(EDITOR);
    const [first] = await symbols('harwick');
    expect((first!.location as Location).range.start).toEqual({ line: 2, character: 0 });
  });

  test('are of the open text', async () => {
    const uri = await begun();
    await peer.edit(uri, 'wall southern\n', { line: 5, character: 0 });
    expect(await symbols('southern')).toHaveLength(1);
  });

  test('there are none without a folder but those of open files', async () => {
    await peer.start({ folders: [], capabilities: ABLE });
    await peer.open('untitled:Untitled-1', 'wall lonely\n');
    expect((await symbols('lonely')).map((s) => s.location.uri)).toEqual(['untitled:Untitled-1']);
    expect(await symbols('red')).toEqual([]);
  });
});

describe('several folders', () => {
  test('are looked through alike, and a file may use one of another', async () => {
    const other = peer.newFolder();
    const way = path.relative(peer.folder, path.join(other, 'firm.perp'));
    writeFileSync(path.join(other, 'firm.perp'), FIRM);
    writeFileSync(path.join(other, 'own.perp'), JOB);
    const text = JOB.replace('firm.perp', way);
    await peer.start({ folders: [peer.folder, other], capabilities: ABLE });
    const uri = await peer.open('a.perp', text);
    const context = { includeDeclaration: true };
    const found = await peer.about<Location[]>('references', uri, { position: RED, context });
    expect(found.map((each) => each.uri).sort()).toEqual(
      [uri, uriOf(path.join(other, 'firm.perp')), uriOf(path.join(other, 'own.perp'))].sort(),
    );
  });

  test('a folder that is closed is looked through no more', async () => {
    const other = peer.newFolder();
    writeFileSync(path.join(other, 'x.perp'), 'wall elsewhere\n');
    await peer.start({ folders: [peer.folder, other], capabilities: ABLE });
    expect(await symbols('elsewhere')).toHaveLength(1);
    const removed = [{ uri: uriOf(other), name: 'other' }];
    await peer.tell('workspace/didChangeWorkspaceFolders', { event: { added: [], removed } });
    expect(await symbols('elsewhere')).toEqual([]);
  });

  test('one within another gives each file once', async () => {
    write('inner/a.perp', 'wall once\n');
    await peer.start({
      folders: [peer.folder, path.join(peer.folder, 'inner')],
      capabilities: ABLE,
    });
    expect(await symbols('once')).toHaveLength(1);
  });
});

describe('files that are renamed', () => {
  const renamed = (from: string, to: string) =>
    peer.ask<WorkspaceEdit | null>('workspace/willRenameFiles', {
      files: [{ oldUri: peer.uri(from), newUri: peer.uri(to) }],
    });
  const told = (edit: WorkspaceEdit | null) =>
    (edit?.documentChanges as TextDocumentEdit[] | undefined)?.map(
      ({ textDocument, edits: [first] }) => [
        inFolder(textDocument.uri),
        (first as { newText: string }).newText,
      ],
    );

  test('are mended where they are used', async () => {
    await begun();
    expect(told(await renamed('firm.perp', 'common/house.perp'))?.sort()).toEqual([
      ['a.perp', '"common/house.perp"'],
      ['jobs/b.perp', '"../common/house.perp"'],
    ]);
  });

  test('find their own files from where they go to', async () => {
    await begun();
    expect(told(await renamed('a.perp', 'x/y/a.perp'))).toEqual([['a.perp', '"../../firm.perp"']]);
  });

  test('a folder too', async () => {
    await begun();
    expect(told(await renamed('jobs', 'old/jobs'))).toEqual([['jobs/b.perp', '"../../firm.perp"']]);
  });

  test('are mended though something else changes meanwhile: nobody would ask again', async () => {
    await begun();
    for (let i = 0; i < 200; i++) write(`many/${i}.perp`, JOB);
    const asked = renamed('firm.perp', 'house.perp');
    for (let i = 0; i < 5; i++) await changed(`many/${i}.perp`, 1);
    expect(told(await asked)).toContainEqual(['a.perp', '"house.perp"']);
  });

  test('nothing where nobody uses them', async () => {
    await begun();
    expect(await renamed('jobs/b.perp', 'jobs/c.perp')).toBeNull();
  });
});

describe('in one file', () => {
  test('a definition is a link to the whole block, in a file that is not open', async () => {
    const uri = await begun();
    const [link] = await peer.about<LocationLink[]>('definition', uri, { position: RED });
    expect(link!.targetUri).toBe(peer.uri('firm.perp'));
    expect(link!.targetRange.start.line).toBe(2);
    expect(link!.originSelectionRange!.start).toEqual({ line: 3, character: 8 });
  });

  test('highlights tell what gives a name', async () => {
    const uri = await begun();
    const position = { line: 2, character: 6 };
    const found = await peer.about<{ kind: number }[]>('documentHighlight', uri, { position });
    expect(found.map((h) => h.kind)).toEqual([3]);
  });

  test('a wall’s name is written in all its places at once, from where it is given', async () => {
    const uri = await begun();
    await peer.edit(uri, 'repair r\n  in north\n', { line: 5, character: 0 });
    const position = { line: 2, character: 6 };
    const found = await peer.about<LinkedEditingRanges>('linkedEditingRange', uri, { position });
    expect(found.ranges.map((r) => [r.start.line, r.start.character])).toEqual([
      [2, 5],
      [6, 5],
    ]);
    expect(new RegExp(`^${found.wordPattern}$`).test('Ødegård-2')).toBe(true);
    expect(new RegExp(`^${found.wordPattern}$`).test('two words')).toBe(false);
    expect(await peer.about('linkedEditingRange', uri, { position: RED })).toBeNull();
  });

  test('links lead where they are asked to', async () => {
    const uri = await begun();
    const links = await peer.about<DocumentLink[]>('documentLink', uri);
    expect(links).toHaveLength(1);
    expect(links[0]!.target).toBeUndefined();
    const { target, tooltip } = await peer.ask<DocumentLink>('documentLink/resolve', links[0]);
    expect([target, tooltip]).toEqual([peer.uri('firm.perp'), 'Open the file that is used']);
  });

  test('no link leads out of the folders', async () => {
    await peer.start({ capabilities: ABLE });
    const uri = await peer.open('a.perp', 'use "../../../etc/passwd"\nuse uk\n');
    const links = await peer.about<DocumentLink[]>('documentLink', uri);
    expect(links.map((l) => l.range.start.line)).toEqual([1]);
    const forged = { ...links[0], data: { uri, path: '../../../etc/passwd' } };
    expect((await peer.ask<DocumentLink>('documentLink/resolve', forged)).target).toBeUndefined();
  });

  test('a selection grows', async () => {
    const uri = await begun();
    const [found] = await peer.about<SelectionRange[]>('selectionRange', uri, { positions: [RED] });
    const starts: string[] = [];
    for (let each: SelectionRange | undefined = found; each; each = each.parent)
      starts.push(`${each.range.start.line}:${each.range.start.character}`);
    expect(starts).toEqual(['3:9', '3:8', '3:2', '3:0', '3:0', '2:0', '0:0']);
  });

  test('no more folds than the client takes, with the total where it shows one', async () => {
    const foldingRange = { rangeLimit: 1, foldingRange: { collapsedText: true } };
    const capabilities = { ...ABLE, textDocument: { ...ABLE.textDocument, foldingRange } };
    write('firm.perp', FIRM);
    await peer.start({ folders: [peer.folder], capabilities });
    const uri = await peer.open('a.perp', `${JOB}  height 8 courses\n# a\n# b\n`);
    const folds = await peer.about<FoldingRange[]>('foldingRange', uri);
    expect(folds).toHaveLength(1);
    expect(folds[0]).toMatchObject({ startLine: 2, endLine: 5 });
    expect(folds[0]!.collapsedText).toMatch(/^… .*\d+\sbricks/);
  });

  test('symbols lie in one another, or in a row for a client that knows no nesting', async () => {
    const text = 'wall a\n  opening g\n    width 1 m\n';
    const uri = await begun();
    await peer.edit(uri, text);
    const [wall] = await peer.about<DocumentSymbol[]>('documentSymbol', uri);
    expect(wall!.children!.map((c) => c.name)).toEqual(['opening g']);
    const plain = new Peer(near());
    await plain.start({ capabilities: {} });
    const flat = await plain.about<SymbolInformation[]>(
      'documentSymbol',
      await plain.open('a.perp', text),
    );
    expect(flat.map((s) => [s.name, s.containerName ?? ''])).toEqual([
      ['wall a', ''],
      ['opening g', 'wall a'],
    ]);
    plain.stop();
  });
});
