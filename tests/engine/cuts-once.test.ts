/** What the cut list tells is what is bought: each brick that is cut once, with the courses it lies in. */
import { describe, expect, test } from 'vitest';
import type { Work } from '../../server/engine/brickwork/work';
import { piecesAt, placeCourse } from '../../server/engine/setting-out';
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
    // What a repair buys is what is counted less what came down: below.
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

describe('the cut list of a plinth and a backing', () => {
  const pieces = (part: ReturnType<typeof partsOf>[number]) => {
    const told = new Map<string, number>();
    const add = (piece: string, length: number, count: number) => {
      const key = `${piece} ${length.toFixed(1)}`;
      told.set(key, (told.get(key) ?? 0) + count);
    };
    const placed = part.places.map((p) => ({ ...p, count: piecesAt(p) }));
    for (const { piece, length, count } of placed) add(piece, length, count);
    const cut = part.needed.cuttings.flatMap((c) =>
      c.pieces.map((p) => ({ ...p, count: p.count * c.times })),
    );
    for (const { piece, length, count } of cut) add(piece, length, -count);
    return { places: placed.length, off: [...told].filter(([, count]) => count !== 0) };
  };
  const job = (lines: string) =>
    jobOf(`perpend 1\nuse uk\nwall a\n  stands held\n  height 18 courses\n${lines}`).works[0]!;
  const partOf = (work: Work, label: string) => partsOf(work).find((p) => p.label === label)!;

  test('gives every piece of a plinth its course and its place', () => {
    const lines = '  length 4490 mm\n  bond flemish\n  thick 1 brick\n';
    const work = job(`${lines}  plinth 4 courses project 1 brick front\n`);
    const part = partOf(work, 'Bricks in the plinth');
    expect(pieces(part)).toEqual({ places: 1, off: [] });
    // By hand: two rows in stretcher bond, every second course with a half bat at either end: 4490 - 102.5.
    const [place] = part.places;
    expect(place).toMatchObject({ piece: 'half', from: 1, every: 2, each: 4 });
    expect(place!.at.map(({ from }) => from)).toEqual([0, 4387.5]);
  });

  test('and where the ground steps', () => {
    const steps = '  length 4490 mm\n  ground steps at 2240 mm down 2 courses\n';
    const part = partOf(
      job(`${steps}  plinth 3 courses project 1/2 brick front\n`),
      'Bricks in the plinth',
    );
    expect(pieces(part).off).toEqual([]);
    expect(Math.min(...part.places.map(({ from }) => from))).toBeLessThan(2);
  });

  test('and round a corner, past the end of the wall', () => {
    const wall = (name: string, line: string) =>
      `wall ${name}\n  stands held\n  length 4490 mm\n  height 18 courses\n  bond flemish\n  thick 1 brick\n  plinth 4 courses project 1 brick both\n${line}`;
    const text = `perpend 1\nuse uk\n${wall('a', '  right quoin b\n')}${wall('b', '  left quoin a\n')}`;
    const parts = jobOf(text).works.map((work) => partOf(work, 'Bricks in the plinth'));
    expect(parts).toHaveLength(2);
    for (const part of parts) {
      const { places, off } = pieces(part);
      expect(places).toBeGreaterThan(1);
      expect(off).toEqual([]);
    }
  });

  test('gives every piece of a backing its own course and its place', () => {
    const door = '  opening door\n    from left 1000 mm\n    width 910 mm\n    height 12 courses\n';
    const part = partOf(
      job(`  length 4490 mm\n  backing block-100 cavity 75 mm\n${door}`),
      'In the backing',
    );
    const { places, off } = pieces(part);
    expect(places).toBeGreaterThan(2);
    expect(off).toEqual([]);
    // Eighteen courses of brick are six of block (three of 75 mm are 225).
    expect(Math.max(...part.places.map(({ to }) => to))).toBeLessThanOrEqual(6);
  });
});

/** What is drawn, listed and counted of what a repair builds again is the same, piece for piece. */
describe('what a repair builds again', () => {
  type Pieces = Readonly<Record<string, number>>;
  const counted = (all: readonly (readonly [string, number])[]): Pieces => {
    const found: Record<string, number> = {};
    for (const [piece, count] of all) found[piece] = (found[piece] ?? 0) + count;
    return found;
  };
  const OF_FACE = { stretcher: 'whole', header: 'whole' } as const;

  /** Every piece on the plans of its courses, one by one. */
  const drawn = ({ facts: { rebuilt } }: Work): Pieces => {
    const { settingOut, pier } = rebuilt!;
    const high = settingOut?.spec.courses ?? pier!.plan.courses;
    const course = (i: number) =>
      settingOut ? placeCourse(settingOut, i) : pier!.placed![i % pier!.placed!.length]!.pieces;
    const all = Array.from({ length: high }, (_, i) => course(i)).flat();
    return counted(all.map(({ piece }) => [OF_FACE[piece as 'header'] ?? piece, 1]));
  };
  /** Those of the cut list, by their places. */
  const listed = (work: Work): Pieces =>
    counted(partsOf(work).flatMap((p) => p.places.map((place) => [place.piece, piecesAt(place)])));
  /** Those in the working of the bricks that are counted, as a reader sees it. */
  const told = (work: Work): Pieces => {
    const lines = countOf(work.figures.find(({ key }) => key === 'down')!.term)!.detail!();
    const NAMES = {
      whole: 'whole brick',
      half: 'half bat',
      'three-quarter': 'three-quarter bat',
      closer: 'queen closer',
    };
    return counted(
      Object.entries(NAMES).flatMap(([piece, name]) => {
        const line = lines.find((l) => new RegExp(`^[\\d,]+ ${name}s?$`).test(l));
        const count = Number((line ?? '0').replace(/[^\d]/g, ''));
        return count ? [[piece, count] as const] : [];
      }),
    );
  };
  const countOf = (term: Term): Term | undefined =>
    term.op === 'count' && /^Bricks to build again/.test(term.label)
      ? term
      : term.args.map(countOf).find((t) => t !== undefined);
  const same = (work: Work) => {
    const { whole, ...cut } = drawn(work);
    expect(listed(work)).toEqual(cut);
    expect(told(work)).toEqual({ ...(whole ? { whole } : {}), ...cut });
  };
  const repair = (lines: string) =>
    jobOf(`perpend 1\nuse uk\nrepair r\n  mix general\n${lines}`).works[0]!;

  const BONDS = ['stretcher', 'header', 'english', 'flemish', 'monk', 'english-garden-wall'];
  const THICK = ['1/2 brick', '1 brick', '1.5 bricks', '2 bricks'];
  const CASES = BONDS.flatMap((bond) => THICK.map((thick) => ({ bond, thick })));
  test.each(CASES)('of a wall in $bond bond, $thick thick', ({ bond, thick }) => {
    for (const size of ['1.35 m x 8', '1.1 m x 9', '0.5 m x 5']) {
      const work = repair(`  bond ${bond}\n  thick ${thick}\n  rebuild ${size} courses\n`);
      if (work.facts.rebuilt) same(work);
      // Only what no such bond can be laid as is not built again.
      else expect(work.figures[0]!.term.gaps).not.toEqual([]);
    }
  });

  // No more than half a brick of every course, through the wall, is put to its credit or debit at its toothed ends.
  test.each(CASES)('comes to its length in $bond bond, $thick thick', ({ bond, thick }) => {
    const work = repair(`  bond ${bond}\n  thick ${thick}\n  rebuild 1.35 m x 9 courses\n`);
    const down = work.figures[0]!.term;
    if (down.gaps.length) return;
    const through = Number.parseFloat(thick === '1/2 brick' ? '0.5' : thick);
    expect(Math.abs(down.value.toNumber() - 12 * 9 * through)).toBeLessThanOrEqual(9 * through);
  });

  test.each([
    ['1.5 x 1.5 bricks', 14],
    ['2 x 2 bricks', 9],
    ['1.5 x 2 bricks', 7],
  ])('of a pier %s', (size, courses) => {
    same(repair(`  size ${size}\n  rebuild ${courses} courses\n`));
  });

  test.each(JOBS.filter((name) => /repair|knocked/.test(name)))('%s', (name) => {
    const some = exampleJob(name).works.filter(({ facts }) => facts.rebuilt);
    expect(some.length).toBeGreaterThan(0);
    for (const work of some) same(work);
  });
});
