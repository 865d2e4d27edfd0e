/**
 * Bricks that show in a face, by bond. Two walls are laid that differ by a whole number of patterns: what the
 * longer has more is what an endless wall has, which the tables print, each with its rounding.
 */
import { describe, expect, test } from 'vitest';
import { tallyFace } from '../../server/engine/setting-out';
import { figure, jobOf } from '../examples/engine';

interface Bond {
  readonly name: string;
  /** A bond of the library, or the courses of one written here. */
  readonly bond: string;
  readonly lines?: string;
  readonly thick: '1/2 brick' | '1 brick';
  /** Bricks in the face to one of stretcher bond. */
  readonly ratio: number;
  /** Half bricks that all its patterns go into; courses likewise. */
  readonly halves: number;
  readonly courses: number;
}

const BONDS: readonly Bond[] = [
  { name: 'stretcher', bond: 'stretcher', thick: '1/2 brick', ratio: 1, halves: 2, courses: 2 },
  { name: 'header', bond: 'header', thick: '1 brick', ratio: 2, halves: 2, courses: 2 },
  { name: 'English', bond: 'english', thick: '1 brick', ratio: 3 / 2, halves: 2, courses: 2 },
  { name: 'Flemish', bond: 'flemish', thick: '1 brick', ratio: 4 / 3, halves: 3, courses: 2 },
  {
    name: 'English garden wall, 3 to 1',
    bond: 'english-garden-wall 3',
    thick: '1 brick',
    ratio: 5 / 4,
    halves: 2,
    courses: 4,
  },
  {
    name: 'English garden wall, 5 to 1',
    bond: 'english-garden-wall 5',
    thick: '1 brick',
    ratio: 7 / 6,
    halves: 2,
    courses: 6,
  },
  {
    name: 'Flemish garden wall, 3 to 1',
    bond: 'sussex',
    lines: 'course stretcher 3, header\n  course stretcher 3, header from 3/4 brick',
    thick: '1 brick',
    ratio: 8 / 7,
    halves: 7,
    courses: 2,
  },
  {
    name: 'monk',
    bond: 'monk',
    lines: 'course stretcher 2, header\n  course stretcher 2, header from 3/4 brick',
    thick: '1 brick',
    ratio: 6 / 5,
    halves: 5,
    courses: 2,
  },
  {
    name: 'Flemish garden wall, 5 to 1',
    bond: 'five',
    lines: 'course stretcher 5, header\n  course stretcher 5, header from 3/4 brick',
    thick: '1 brick',
    ratio: 12 / 11,
    halves: 11,
    courses: 2,
  },
];

/** Patterns up the wall. */
const UP = 6;

/** So many patterns along, between toothed ends. */
function laid({ bond, lines, thick, halves, courses }: Bond, along: number) {
  const block = lines ? `bond ${bond}\n  thick 1 brick\n  ${lines}\n  lap 1/4 brick\n\n` : '';
  const length = along * halves * 112.5 + 10;
  const job = jobOf(
    `use uk\n\n${block}wall w\n  bond ${bond}\n  thick ${thick}\n  length ${length} mm\n  height ${UP * courses} courses\n  left toothed\n  right toothed\n`,
  );
  return {
    face: tallyFace(job.works[0]!.facts.settingOut!),
    bricks: figure(job, 'w.bricks'),
    mortar: figure(job, 'w.mortar') / 1000,
  };
}

/** What twelve patterns more add, to the square metre: the ends are the same, and fall out. */
function measured(bond: Bond) {
  const [short, long] = [laid(bond, 12), laid(bond, 24)];
  const area = (12 * bond.halves * 112.5 * UP * bond.courses * 75) / 1e6;
  const more = (piece: keyof typeof long.face) => long.face[piece] - short.face[piece];
  return {
    shown: (more('stretcher') + more('header')) / area,
    others: more('half') + more('three-quarter') + more('closer') + more('cut'),
    bricks: (long.bricks - short.bricks) / area,
    mortar: (long.mortar - short.mortar) / area,
  };
}

describe.each(BONDS)('$name', (bond) => {
  const { shown, others, bricks, mortar } = measured(bond);
  test('shows the bricks that its pattern makes', () => {
    expect(shown).toBeCloseTo((1600 / 27) * bond.ratio, 6);
    expect(others).toBe(0);
  });
  test('takes as many bricks in all as any bond of its thickness', () => {
    const leaves = bond.thick === '1 brick' ? 2 : 1;
    expect(bricks).toBeCloseTo((1600 / 27) * leaves, 6);
  });
  // Arithmetic on the brick: a wall less 59.26 or 118.52 bricks of 1.4324 l.
  test('takes 0.0176 or 0.0452 m3 of mortar to the square metre', () => {
    expect(mortar).toBeCloseTo(bond.thick === '1 brick' ? 0.04523 : 0.01761, 5);
  });
});

/** BIA Technical Note 10, from memory; geometry forces each: bricks in the face above those of running bond. */
test.each([
  ['English', 1 / 2],
  ['Flemish', 1 / 3],
  ['English garden wall, 5 to 1', 1 / 6],
  ['monk', 1 / 5],
  ['Flemish garden wall, 3 to 1', 1 / 7],
])('BIA correction: %s adds %f', (name, more) => {
  const { shown } = measured(BONDS.find((b) => b.name === name)!);
  expect(shown / (1600 / 27) - 1).toBeCloseTo(more, 9);
});

/** fatbadgers.co.uk, Brick Bonding: a rough table, held to its order and within 4%. */
test('facing bricks to the square metre, in the order and within 4% of a printed table', () => {
  const printed = [
    ['English', 86],
    ['Flemish', 77],
    ['English garden wall, 3 to 1', 72],
    ['Flemish garden wall, 3 to 1', 67],
    ['stretcher', 60],
  ] as const;
  const ours = printed.map(([name]) => measured(BONDS.find((b) => b.name === name)!).shown);
  expect([...ours].sort((a, b) => b - a)).toEqual(ours);
  for (const [i, [, count]] of printed.entries())
    expect(Math.abs(ours[i]! - count) / ours[i]!).toBeLessThan(0.04);
});
