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
  readonly thick: keyof typeof LEAVES;
  /** Bricks in the face to one of stretcher bond. */
  readonly ratio: number;
  /** Half bricks that all its patterns go into; courses likewise. */
  readonly halves: number;
  readonly courses: number;
}

const FACE_OF_ENGLISH = { ratio: 3 / 2, halves: 2, courses: 2 };
/** Patterns behind the face go into six half bricks. */
const FACE_OF_FLEMISH = { ratio: 4 / 3, halves: 6, courses: 2 };

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
  { name: 'third', bond: 'third', thick: '1/2 brick', ratio: 1, halves: 2, courses: 2 },
  { name: 'stack', bond: 'stack', thick: '1/2 brick', ratio: 1, halves: 2, courses: 1 },
  {
    name: 'English cross',
    bond: 'english-cross',
    thick: '1 brick',
    ratio: 3 / 2,
    halves: 2,
    courses: 4,
  },
  {
    name: 'Flemish garden wall, 3 to 1',
    bond: 'flemish-garden-wall 3',
    thick: '1 brick',
    ratio: 8 / 7,
    halves: 7,
    courses: 2,
  },
  { name: 'monk', bond: 'monk', thick: '1 brick', ratio: 6 / 5, halves: 5, courses: 2 },
  {
    name: 'Flemish garden wall, 5 to 1',
    bond: 'flemish-garden-wall 5',
    thick: '1 brick',
    ratio: 12 / 11,
    halves: 11,
    courses: 2,
  },
  {
    name: 'headers every 5th course',
    bond: 'english-garden-wall 4',
    thick: '1 brick',
    ratio: 6 / 5,
    halves: 2,
    courses: 5,
  },
  {
    name: 'headers every 7th course',
    bond: 'english-garden-wall 6',
    thick: '1 brick',
    ratio: 8 / 7,
    halves: 2,
    courses: 7,
  },
  {
    name: 'Flemish headers every 6th course',
    bond: 'sixth',
    lines:
      'course stretcher, header from 3/4 brick\n  course stretcher\n  course stretcher from 1/2 brick\n  course stretcher\n  course stretcher from 1/2 brick\n  course stretcher',
    thick: '1 brick',
    ratio: 19 / 18,
    halves: 6,
    courses: 6,
  },
  {
    name: 'Flemish cross',
    bond: 'cross',
    lines: 'course stretcher, header from 3/4 brick\n  course stretcher',
    thick: '1 brick',
    ratio: 7 / 6,
    halves: 6,
    courses: 2,
  },
  { name: 'English, 1 1/2', bond: 'english', thick: '1.5 bricks', ...FACE_OF_ENGLISH },
  { name: 'English, 2', bond: 'english', thick: '2 bricks', ...FACE_OF_ENGLISH },
  { name: 'Flemish, 1 1/2', bond: 'flemish', thick: '1.5 bricks', ...FACE_OF_FLEMISH },
  { name: 'Flemish, 2', bond: 'flemish', thick: '2 bricks', ...FACE_OF_FLEMISH },
];

/** Half bricks through a wall. */
const LEAVES = { '1/2 brick': 1, '1 brick': 2, '1.5 bricks': 3, '2 bricks': 4 } as const;

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
  const leaves = LEAVES[bond.thick];
  test('shows the bricks that its pattern makes', () => {
    expect(shown).toBeCloseTo((1600 / 27) * bond.ratio, 6);
    expect(others).toBe(0);
  });
  // 59.259, 118.519, 177.778 and 237.037, of which the Key skills sheet (Crown copyright 2000) prints 60, 120, 180.
  test('takes as many bricks in all as any bond of its thickness', () => {
    expect(bricks).toBeCloseTo((1600 / 27) * leaves, 6);
    const printed = 60 * leaves;
    expect(Math.abs(printed - bricks) / printed).toBeLessThan(0.0125);
  });
  // Arithmetic on the brick: a wall less its bricks of 1.4324 l. A snapped header loses a joint to the bolster.
  test('takes the mortar that its bricks leave', () => {
    const snapped = bond.bond === 'flemish' && leaves > 2 ? 0.004 : 0;
    const thickness = 0.1125 * leaves - 0.01;
    const exact = thickness - (1600 / 27) * leaves * 0.0014324375;
    expect(mortar).toBeGreaterThan(exact - 1e-5);
    expect(mortar).toBeLessThan(exact + snapped + 1e-5);
    expect(exact).toBeCloseTo([0.01761, 0.04523, 0.07284, 0.10046][leaves - 1]!, 5);
  });
});

/** BIA Technical Note 10, from memory; geometry forces each: bricks in the face above those of running bond. */
test.each([
  ['English', 1 / 2],
  ['Flemish', 1 / 3],
  ['English garden wall, 5 to 1', 1 / 6],
  ['monk', 1 / 5],
  ['Flemish garden wall, 3 to 1', 1 / 7],
  ['headers every 5th course', 1 / 5],
  ['headers every 7th course', 1 / 7],
  ['Flemish headers every 6th course', 1 / 18],
  ['Flemish cross', 1 / 6],
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
