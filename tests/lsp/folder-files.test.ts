/** The files of the open folders, for questions over many of them. */
import { expect, test } from 'vitest';
import { SourceFile } from '../../server/engine/workspace/source';
import { FolderFiles, type OpenTexts } from '../../server/lsp/folder-files';
import { NAMES } from '../../server/lsp/node/names';
import { STRETCH_MS, Stopped, Stretch } from '../../server/lsp/stretch';
import type { JobFiles } from '../../server/lsp/surroundings';
import { inRoot, ROOT } from '../engine/world';

/** A folder in memory; every question is written down. */
function folderOf(texts: Record<string, string>, open: Record<string, string> = {}) {
  const files = new Map(Object.entries(texts).map(([name, text]) => [inRoot(name), text]));
  const asked: string[] = [];
  const host: JobFiles = {
    list: (at) => {
      asked.push(`list ${at}`);
      const names = [...files.keys()]
        .filter((file) => file.startsWith(`${at}/`))
        .map((file) => file.slice(at.length + 1).split('/'));
      const found = new Map(
        names.map(([first, ...more]) => [
          first!,
          more.length ? ('folder' as const) : ('file' as const),
        ]),
      );
      return [...found].map(([name, is]) => ({ name, is }));
    },
    stamp: (file) => (files.has(file) ? { size: 1, changed: 1 } : undefined),
    read: (file) => {
      asked.push(`read ${file}`);
      return files.get(file);
    },
    join: (a, b) => `${a}/${b}`,
    bring: () => undefined,
    again: () => undefined,
  };
  const sources = new Map(
    Object.entries(open).map(([name, text]) => [inRoot(name), new SourceFile(inRoot(name), text)]),
  );
  const texts_: OpenTexts = {
    get names() {
      return [...sources.keys()];
    },
    source: (name) => sources.get(name),
  };
  const folder = new FolderFiles(host, NAMES, texts_);
  folder.openFolders([ROOT]);
  return { folder, files, asked, sources };
}

const going = () => new Stretch({ isCancellationRequested: false });

test('nothing is looked at before it is asked for, and nothing twice', async () => {
  const { folder, asked } = folderOf({ 'a.perp': 'wall a', 'in/b.perp': 'wall b', 'c.txt': '' });
  folder.changed([inRoot('a.perp')]);
  expect(asked).toEqual([]);
  expect(await folder.list(going())).toEqual([inRoot('a.perp'), inRoot('in/b.perp')]);
  expect(asked).toEqual([`list ${ROOT}`, `list ${ROOT}/in`]);
  await folder.list(going());
  expect(folder.glance(inRoot('a.perp'))!.things[0]!.name).toBe('a');
  folder.glance(inRoot('a.perp'));
  expect(asked.slice(2)).toEqual([`read ${inRoot('a.perp')}`]);
});

test('what comes, goes and changes is followed', async () => {
  const { folder, files } = folderOf({ 'a.perp': 'wall a' });
  await folder.list(going());
  folder.source(inRoot('a.perp'));
  folder.glance(inRoot('a.perp'));
  files.set(inRoot('a.perp'), 'wall other');
  files.set(inRoot('b.perp'), 'wall b');
  folder.changed([inRoot('a.perp'), inRoot('b.perp')]);
  expect(await folder.list(going())).toContain(inRoot('b.perp'));
  expect(folder.source(inRoot('a.perp'))!.text).toBe('wall other');
  expect(folder.glance(inRoot('a.perp'))!.things[0]!.name).toBe('other');
  files.delete(inRoot('b.perp'));
  folder.changed([inRoot('b.perp')]);
  expect(await folder.list(going())).toEqual([inRoot('a.perp')]);
  expect(folder.text(inRoot('b.perp'))).toBeUndefined();
});

test('what changes while the folders are walked is not missed', async () => {
  const texts = Object.fromEntries(Array.from({ length: 50 }, (_, i) => [`${i}/a.perp`, '']));
  const { folder, files } = folderOf(texts);
  const asked = folder.list(going());
  files.set(inRoot('new.perp'), '');
  folder.changed([inRoot('new.perp')]);
  expect(await asked).toContain(inRoot('new.perp'));
});

test('a folder that goes without a word is missed after a moment', async () => {
  const { folder, files } = folderOf({ 'a.perp': '', 'in/b.perp': 'wall b', 'in/c.perp': '' });
  await folder.list(going());
  folder.glance(inRoot('in/b.perp'));
  files.delete(inRoot('in/b.perp'));
  files.delete(inRoot('in/c.perp'));
  const real = performance.now;
  performance.now = () => real.call(performance) + 3000;
  try {
    expect(await folder.list(going())).toEqual([inRoot('a.perp')]);
  } finally {
    performance.now = real;
  }
  expect(folder.glance(inRoot('in/b.perp'))).toBeUndefined();
});

test('folders that are changed while they are walked are walked again', async () => {
  const texts = Object.fromEntries(Array.from({ length: 50 }, (_, i) => [`x/${i}/a.perp`, '']));
  const { folder } = folderOf({ ...texts, 'y/b.perp': '' });
  const both = [folder.list(going()), folder.list(going())];
  folder.openFolders([inRoot('y')]);
  expect(await Promise.all(both)).toEqual([[inRoot('y/b.perp')], [inRoot('y/b.perp')]]);
});

test('an open text counts, and is there without being on disk', async () => {
  const { folder, sources } = folderOf(
    { 'a.perp': 'wall disk' },
    { 'a.perp': 'wall open', 'new.perp': 'wall new' },
  );
  expect(await folder.list(going())).toEqual([inRoot('a.perp'), inRoot('new.perp')]);
  expect(folder.text(inRoot('a.perp'))).toBe('wall open');
  expect(folder.source(inRoot('a.perp'))).toBe(sources.get(inRoot('a.perp')));
  sources.get(inRoot('a.perp'))!.replaceAll('wall edited');
  expect(folder.glance(inRoot('a.perp'))!.things[0]!.name).toBe('edited');
});

test('nothing outside the folders is read, nor in those passed by', async () => {
  const { folder, asked } = folderOf({ '.git/a.perp': '', 'node_modules/b.perp': '' });
  expect(await folder.list(going())).toEqual([]);
  for (const file of ['/etc/x.perp', inRoot('.git/a.perp'), inRoot('../x.perp')])
    expect(folder.text(file)).toBeUndefined();
  expect(asked.filter((each) => each.startsWith('read'))).toEqual([]);
});

test('other folders are other files', async () => {
  const { folder } = folderOf({ 'a/x.perp': '', 'b/y.perp': '' });
  expect(await folder.list(going())).toHaveLength(2);
  folder.openFolders([inRoot('b')]);
  expect(await folder.list(going())).toEqual([inRoot('b/y.perp')]);
  folder.openFolders([]);
  expect(await folder.list(going())).toEqual([]);
});

test('where nobody tells of changes, everything is looked at again', async () => {
  const { folder, files } = folderOf({ 'a.perp': 'wall a' });
  folder.watched = false;
  await folder.list(going());
  folder.glance(inRoot('a.perp'));
  files.set(inRoot('a.perp'), 'wall other');
  files.set(inRoot('b.perp'), '');
  expect(await folder.list(going())).toHaveLength(2);
  expect(folder.glance(inRoot('a.perp'))!.things[0]!.name).toBe('other');
});

test('a file that is only looked through says the same as one that is read', () => {
  const { folder } = folderOf({ 'a.perp': '# x\nwall a "A"\n  brick red\nbrick red' });
  const kinds = (file: SourceFile) => file.blocks.map((b) => [b.kind, b.name]);
  expect(kinds(folder.skimmed(inRoot('a.perp'))!)).toEqual(kinds(folder.source(inRoot('a.perp'))!));
});

/** Busy for so many ms at each step. */
function* busy(steps: number, ms: number, done: number[]): Generator<void, string> {
  for (let i = 0; i < steps; i++) {
    const end = performance.now() + ms;
    while (performance.now() < end);
    done.push(i);
    yield;
  }
  return 'all';
}

test('work stops for others every few milliseconds', async () => {
  let turns = 0;
  const beat = setInterval(() => (turns += 1), 1);
  const done: number[] = [];
  expect(await going().through(busy(60, 1, done))).toBe('all');
  clearInterval(beat);
  expect(done).toHaveLength(60);
  // Some 60 ms of work: it let others go on again and again.
  expect(turns).toBeGreaterThan(60 / STRETCH_MS / 3);
});

test('work that is cancelled, or whose files change, ends before it is done', async () => {
  const token = { isCancellationRequested: false };
  let edition = 0;
  const done: number[] = [];
  setTimeout(() => (token.isCancellationRequested = true), 5);
  await expect(new Stretch(token).through(busy(200, 1, done))).rejects.toThrow(Stopped);
  expect(done.length).toBeLessThan(200);
  setTimeout(() => (edition = 1), 5);
  const changing = new Stretch({ isCancellationRequested: false }, () => edition);
  await expect(changing.through(busy(200, 1, done))).rejects.toThrow('modified');
});
