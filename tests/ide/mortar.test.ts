/** What the editor tells of mortar: batches at the end of a mix, its figures and the other yield models over it. */
import { expect, test } from 'vitest';
import { hintsOf } from '../../server/engine/ide/hints';
import { hover } from '../../server/engine/ide/hover';
import { asked, job, spaced } from './ask';

const HEAD = 'perpend 1\njob "Orchard"\nuse "firm.perp"\n';
const WALL = 'wall n\n  brick red\n  mix own\n  length 1790 mm\n  height 8 courses\n';
const MIX = 'mix own\n  parts cement 1, sand 4\n  joint 10 mm\n';

test('at the end of a mix stand its batches and what is left would lay', () => {
  const hints = hintsOf(job(HEAD + MIX + WALL), { first: 3, last: 3 });
  expect(hints.map((h) => spaced(h.text))).toEqual([
    expect.stringMatching(/^[\d.]+ l · \d+ batch(es)? of [\d.]+ l/),
  ]);
});

test('nothing stands there where no work is laid in it', () => {
  expect(hintsOf(job(HEAD + MIX), { first: 3, last: 3 })).toEqual([]);
});

test('over it stand its figures, and how far the other yield models lie from it', () => {
  const { job: of, at } = asked(HEAD + MIX.replace('mix', 'mi$0x') + WALL);
  const text = spaced(hover(of, at)!.markdown);
  expect(text).toContain('batches');
  expect(text).toMatch(/by CPWD’s coefficients: \d+% (more|less) of each material/);
});

test('over its name in a wall stands the same', () => {
  const { job: of, at } = asked(HEAD + MIX + WALL.replace('mix own', 'mix ow$0n'));
  const text = spaced(hover(of, at)!.markdown);
  expect(text).toMatch(/batch(es)? of [\d.]+ l/);
  expect(text).toContain('by CPWD’s coefficients');
});

test('a measure is known where it is named, and where it is given', () => {
  const batch =
    'measures\n  tub 10 l\nmix own\n  batch 2 tubs sand, 1 tub$0 cement\n  joint 10 mm\n';
  const { job: of, at } = asked(HEAD + batch + WALL);
  expect(hover(of, at)).toBeDefined();
  expect(of.findings.map((f) => f.code)).not.toContain('name-unknown');
});
