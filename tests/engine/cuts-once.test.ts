/** What the cut list tells is what is bought: each brick that is cut once, with the courses it lies in. */
import { describe, expect, test } from 'vitest';
import type { Work } from '../../server/engine/brickwork/needs';
import { piecesAt } from '../../server/engine/setting-out';
import type { Term } from '../../server/engine/working/term';
import { exampleJob, JOBS } from './examples';
import { jobOf } from './world';

const BANDED = `perpend 1
use uk
wall a
  bond flemish
  thick 1 brick
  length 4490 mm
  height 12 courses
  band engineering courses 8 to 9
`;

/** Counts of bricks of which some are cut: read off the working of what is bought, not off the list. */
function countsCut(terms: readonly Term[]): number[] {
  return terms.flatMap((term) => {
    const lines = term.op === 'count' ? (term.detail?.() ?? []) : [];
    if (lines.some((line) => /^cut from|cut on edge$/.test(line))) return [term.value.toNumber()];
    return countsCut(term.args);
  });
}

const boughtCut = ({ needs }: Work) => countsCut(needs.bricks.map((need) => need.bricks));
const partsOf = ({ facts }: Work) => facts.cuts?.() ?? [];
const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);

describe('the cut list', () => {
  test('tells a band once, with its courses', () => {
    const parts = partsOf(jobOf(BANDED).works[0]!);
    expect(parts.map((p) => p.label)).toEqual([
      'Bricks in the wall',
      'Bricks in the band of Class B engineering brick',
    ]);
    // By hand: of two courses of Flemish bond one begins with closers, one at each end on each face, two closers from a brick.
    const band = parts[1]!;
    expect(band.places.map((p) => [p.from, p.piece])).toEqual([[7, 'closer']]);
    expect(sum(band.places.map(piecesAt))).toBe(2);
  });

  test.each([...JOBS])('%s: its parts are all the bricks bought of which some are cut', (name) => {
    // A repair has no list: its halves are had of what came down.
    for (const work of exampleJob(name).works.filter(({ kind }) => kind !== 'repair')) {
      const parts = partsOf(work);
      expect(new Set(parts.map((p) => p.needed)).size).toBe(parts.length);
      const totals = parts.map((p) => p.needed.total);
      expect(totals.toSorted((a, b) => a - b)).toEqual(boughtCut(work).toSorted((a, b) => a - b));
    }
  });

  test('and so in a wall with a band, a damp course, piers and a coping', () => {
    const more = `  dpc engineering 2 courses\n  coping brick-on-edge\n  length 4600 mm\n`;
    const text = BANDED.replace('  length 4490 mm\n', more);
    const [work] = jobOf(text).works;
    const totals = partsOf(work!).map((p) => p.needed.total);
    expect(totals.length).toBeGreaterThan(2);
    expect(sum(totals)).toBe(sum(boughtCut(work!)));
  });
});
