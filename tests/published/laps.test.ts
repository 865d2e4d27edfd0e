/** How far perpends of neighbouring courses lap, in every bond of every library, against the rules of each country. */
import { describe, expect, test } from 'vitest';
import type { SettingOut } from '../../server/engine/setting-out';
import { jobOf } from '../examples/engine';
import { everyCourse, lapOf } from '../setting-out/expand';

interface Rule {
  readonly source: string;
  /** Mm, for a brick so long and so high. */
  readonly least: (length: number, height: number) => number;
}

/** tipp-zum-bau.de, Überbindemaß (DIN EN 1996-2): 45 mm, or 0.4 of the height if that is more. */
const GERMAN: Rule = {
  source: 'DIN EN 1996-2 by tipp-zum-bau.de',
  least: (_, height) => Math.max(45, 0.4 * height),
};
/** steen010.nl, Techniek: a quarter of the height and 40 mm. */
const DUTCH: Rule = {
  source: 'steen010.nl',
  least: (_, height) => Math.max(40, height / 4),
};
/** Tylers and Bricklayers Company, glossary: a quarter of a brick; a sixteenth of an inch for the joints that vary. */
const QUARTER: Rule = {
  source: 'Tylers and Bricklayers Company, glossary',
  least: (length) => (length + 10) / 4 - 1,
};

test.each([
  [71, 45],
  [113, 45],
  [238, 95],
  [249, 100],
])('tipp-zum-bau.de prints the lap of bricks %i mm high as %i mm', (height, lap) => {
  expect(Math.abs(GERMAN.least(0, height) - lap)).toBeLessThan(0.5);
});

interface Laid {
  readonly library: string;
  readonly bond: string;
  readonly thick: string;
  /** How long so many half bricks are. */
  readonly length: (halves: number) => string;
}

const uk = (halves: number) => `${112.5 * halves - 10} mm`;
const de = (halves: number) => `${125 * halves - 10} mm`;
const us = (halves: number) => `${4 * halves - 1} 5/8 in`;
const of = (library: string, thick: string, length: Laid['length'], ...bonds: string[]): Laid[] =>
  bonds.map((bond) => ({ library, bond, thick, length }));

const BONDS: readonly Laid[] = [
  ...of('uk', '1/2 brick', uk, 'stretcher', 'third'),
  ...of('uk', '1 brick', uk, 'header', 'english', 'english-cross', 'flemish', 'monk'),
  ...of('uk', '1 brick', uk, 'english-garden-wall 3', 'english-garden-wall 5'),
  ...of('uk', '1 brick', uk, 'flemish-garden-wall 3', 'flemish-garden-wall 5'),
  ...of('de', '1/2 brick', de, 'laeuferverband'),
  ...of('de', '1 brick', de, 'binderverband', 'blockverband', 'kreuzverband'),
  ...of('de', '1 brick', de, 'gotischer-verband', 'maerkischer-verband'),
  ...of('us', '1/2 brick', us, 'running', 'third'),
  ...of('us', '1 brick', us, 'common', 'english', 'flemish', 'garden-wall'),
];

function leastLap(out: SettingOut): number {
  const rows = everyCourse(out).map((row) => row.segments[0]!.bricks);
  return Math.min(...rows.slice(1).map((row, i) => lapOf(rows[i]!, row)));
}

/** As long as piers are short, and as walls are long. */
const HALVES = [4, 5, 7, 8, 12, 13, 20, 21, 35, 36];

describe.each(BONDS)('$library $bond', ({ library, bond, thick, length }) => {
  const laps = HALVES.map((halves) => {
    const job = jobOf(
      `use ${library}\n\nwall w\n  bond ${bond}\n  thick ${thick}\n  length ${length(halves)}\n  height 14 courses\n`,
    );
    const out = job.works[0]!.facts.settingOut;
    if (!out) throw new Error(`${library} ${bond} of ${halves} half bricks is not laid`);
    return { unit: out.spec.unit, lap: leastLap(out) };
  });
  test.each([GERMAN, DUTCH, QUARTER])('laps enough for $source', ({ least }) => {
    for (const [i, { unit, lap }] of laps.entries())
      expect(lap, `${HALVES[i]} half bricks`).toBeGreaterThanOrEqual(
        least(unit.length, unit.height) - 1e-6,
      );
  });
});

test('a quarter lap is 56.25 mm, the 56 mm of the Tylers and Bricklayers Company', () => {
  const job = jobOf(
    'use uk\n\nwall w\n  thick 1 brick\n  bond english\n  length 4490 mm\n  height 4 courses\n',
  );
  expect(leastLap(job.works[0]!.facts.settingOut!)).toBeCloseTo(56.25, 6);
});

test('half bond laps 112.5 mm, third bond 75 mm', () => {
  const lap = (bond: string) =>
    leastLap(
      jobOf(`use uk\n\nwall w\n  bond ${bond}\n  length 4490 mm\n  height 4 courses\n`).works[0]!
        .facts.settingOut!,
    );
  expect(lap('stretcher')).toBeCloseTo(112.5, 6);
  expect(lap('third')).toBeCloseTo(75, 6);
});
