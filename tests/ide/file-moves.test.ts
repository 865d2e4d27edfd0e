/** Files are given other names or places: the lines that name them are mended, and the moved files still find theirs. */
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mendedUses } from '../../server/engine/ide/file-moves';
import { SourceFile } from '../../server/engine/workspace/source';
import { wayFrom } from '../../server/lsp/uri-names';
import { type Files, hostOf, inRoot } from '../engine/world';
import '../harness/seed';
import { edited } from './marked-files';

/** `from: to`, of files or folders. */
type Renames = Readonly<Record<string, string>>;

function mended(files: Files, renames: Renames): Files {
  const { resolve } = hostOf(files);
  const moved = (file: string) => {
    for (const [from, to] of Object.entries(renames)) {
      const [old, now] = [inRoot(from), inRoot(to)];
      if (file === old || file.startsWith(`${old}/`)) return now + file.slice(old.length);
    }
    return file;
  };
  const way = (from: string, to: string) => wayFrom(`file://${from}`, `file://${to}`);
  const edits = Object.entries(files).flatMap(([name, text]) =>
    mendedUses(new SourceFile(inRoot(name), text), { moved, resolve, way }),
  );
  return edited(files, edits);
}

describe('a file that is renamed', () => {
  test.each<[title: string, files: Files, renames: Renames, changed: Files]>([
    [
      'is named so where it is used',
      { 'a.perp': 'use "firm.perp"' },
      { 'firm.perp': 'house.perp' },
      { 'a.perp': 'use "house.perp"' },
    ],
    [
      'with a line’s end in its name can be named in no line',
      { 'a.perp': 'use "firm.perp"' },
      { 'firm.perp': 'fi\nrm.perp' },
      {},
    ],
    [
      'is named so in every file',
      { 'a.perp': 'use "firm.perp"', 'b.perp': 'job "B"\nuse "firm.perp"' },
      { 'firm.perp': 'f.perp' },
      { 'a.perp': 'use "f.perp"', 'b.perp': 'job "B"\nuse "f.perp"' },
    ],
    [
      'is named so from another folder',
      { 'jobs/a.perp': 'use "../firm.perp"' },
      { 'firm.perp': 'f.perp' },
      { 'jobs/a.perp': 'use "../f.perp"' },
    ],
    [
      'is found where it went to',
      { 'a.perp': 'use "firm.perp"' },
      { 'firm.perp': 'common/firm.perp' },
      { 'a.perp': 'use "common/firm.perp"' },
    ],
    [
      'is found above',
      { 'jobs/a.perp': 'use "firm.perp"' },
      { 'jobs/firm.perp': 'firm.perp' },
      { 'jobs/a.perp': 'use "../firm.perp"' },
    ],
    [
      'finds its own files from where it went to',
      { 'a.perp': 'use "firm.perp"' },
      { 'a.perp': 'jobs/2026/a.perp' },
      { 'a.perp': 'use "../../firm.perp"' },
    ],
    [
      'stands with the rest of its line',
      { 'a.perp': 'use   "firm.perp" # the firm' },
      { 'firm.perp': 'f.perp' },
      { 'a.perp': 'use   "f.perp" # the firm' },
    ],
    [
      'is a partner’s',
      { 'a.perp': 'partner p\n  file "p.perp"' },
      { 'p.perp': 'q.perp' },
      { 'a.perp': 'partner p\n  file "q.perp"' },
    ],
    [
      'is a picture',
      { 'f.perp': 'firm "F"\n  logo "logo.png"' },
      { 'logo.png': 'art/logo.png' },
      { 'f.perp': 'firm "F"\n  logo "art/logo.png"' },
    ],
    [
      'has spaces and accents',
      { 'a.perp': 'use "firm.perp"' },
      { 'firm.perp': 'Ma maison é.perp' },
      { 'a.perp': 'use "Ma maison é.perp"' },
    ],
    [
      'has a quotation mark',
      { 'a.perp': 'use "firm.perp"' },
      { 'firm.perp': 'a"b.perp' },
      { 'a.perp': 'use "a\\"b.perp"' },
    ],
    [
      'stands between curved marks',
      { 'a.perp': 'use “firm.perp”' },
      { 'firm.perp': 'f.perp' },
      { 'a.perp': 'use "f.perp"' },
    ],
    [
      'is named the long way round',
      { 'a.perp': 'use "./x/../firm.perp"' },
      { 'firm.perp': 'f.perp' },
      { 'a.perp': 'use "f.perp"' },
    ],
    [
      'with the other one too',
      { 'a.perp': 'use "b.perp"', 'b.perp': 'use "c.perp"' },
      { 'b.perp': 'd/b.perp', 'c.perp': 'd/c.perp' },
      { 'a.perp': 'use "d/b.perp"' },
    ],
    [
      'twice named in one file',
      { 'a.perp': 'use "f.perp"\npartner p\n  file "f.perp"' },
      { 'f.perp': 'g.perp' },
      { 'a.perp': 'use "g.perp"\npartner p\n  file "g.perp"' },
    ],
  ])('%s', (_, files, renames, changed) => {
    expect(mended(files, renames)).toEqual({ ...files, ...changed });
  });
});

describe('a folder that is renamed', () => {
  test.each<[title: string, files: Files, renames: Renames, changed: Files]>([
    [
      'is mended in what stands outside',
      { 'a.perp': 'use "common/firm.perp"' },
      { common: 'shared' },
      { 'a.perp': 'use "shared/firm.perp"' },
    ],
    [
      'leaves what stands within it together',
      { 'jobs/a.perp': 'use "b.perp"', 'jobs/b.perp': 'use "x/c.perp"' },
      { jobs: 'work' },
      {},
    ],
    [
      'deeper down',
      { 'jobs/a.perp': 'use "../firm.perp"' },
      { jobs: 'work/2026/jobs' },
      { 'jobs/a.perp': 'use "../../../firm.perp"' },
    ],
    [
      'beside another of a like name',
      { 'a.perp': 'use "common-2/firm.perp"' },
      { common: 'shared' },
      {},
    ],
  ])('%s', (_, files, renames, changed) => {
    expect(mended(files, renames)).toEqual({ ...files, ...changed });
  });
});

describe('nothing is mended', () => {
  test.each<[title: string, text: string]>([
    ['where another file is named', 'use "other.perp"'],
    ['where a library is', 'use uk'],
    ['in a comment', '# use "firm.perp"'],
    ['in a text of another line', 'job "firm.perp"'],
    ['that lies outside', 'use "../../firm.perp"'],
  ])('%s', (_, text) => {
    expect(mended({ 'jobs/a.perp': text }, { 'firm.perp': 'f.perp' })).toEqual({
      'jobs/a.perp': text,
    });
  });
});

test('after any renames every line names the same file as before', () => {
  const folder = fc.constantFrom('', 'jobs/', 'jobs/2026/', 'common/', 'é x/');
  const name = fc
    .tuple(folder, fc.constantFrom('a', 'b', 'firm'))
    .map(([at, file]) => `${at}${file}.perp`);
  fc.assert(
    fc.property(
      fc.uniqueArray(name, { minLength: 2, maxLength: 5 }),
      fc.array(fc.tuple(fc.nat(), fc.nat()), { maxLength: 6 }),
      fc.uniqueArray(name, { minLength: 5, maxLength: 5 }),
      (names, uses, fresh) => {
        const texts: Record<string, string> = Object.fromEntries(names.map((each) => [each, '']));
        const pairs = uses.map(
          ([a, b]) => [names[a % names.length]!, names[b % names.length]!] as const,
        );
        for (const [user, used] of pairs)
          texts[user] += `use "${path.posix.relative(path.posix.dirname(user), used)}"\n`;
        const renames = Object.fromEntries(
          names.map((each, i) => [each, fresh[i]!]).filter(([a, b]) => a !== b),
        );
        const after = mended(texts, renames);
        const now = (file: string) => renames[file] ?? file;
        for (const user of names) {
          const wanted = pairs.filter(([from]) => from === user).map(([, to]) => now(to));
          const said = [...after[user]!.matchAll(/"([^"]*)"/g)].map(([, way]) =>
            path.posix.join(path.posix.dirname(now(user)), way!),
          );
          expect(said).toEqual(wanted);
        }
      },
    ),
    { numRuns: 60 },
  );
});
