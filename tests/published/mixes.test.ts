/** The mixes of the libraries against the tables they are taken from. */
import { describe, expect, test } from 'vitest';
import { defaultTerm, factsNamed } from '../../server/engine/resolve/env';
import { jobOf } from '../examples/engine';

function partsOf(library: string, mix: string): number[] {
  const job = jobOf(`use ${library}\n`);
  const list = factsNamed(job.env, 'mix', mix)!.line('parts')!.values.parts;
  if (list?.kind !== 'list') throw new Error(`${mix} has no parts`);
  return list.of.map(({ parts }) =>
    parts?.kind === 'quantity' ? parts.low.toNumber() : Number.NaN,
  );
}

/** Lyons, Materials for Architects and Builders, Table 1.4: cement 1, lime and sand from and to. */
describe('Lyons, Table 1.4', () => {
  test.each([
    ['dpc-mortar', 'M12', [0, 0.25], [3, 3]],
    ['strong', 'M6', [0.5, 0.5], [4, 4.5]],
    ['general', 'M4', [1, 1], [5, 6]],
    ['weak', 'M2', [2, 2], [8, 9]],
  ] as const)('%s is class %s', (mix, strength, lime, sand) => {
    const [cement, l, s] = partsOf('uk', mix);
    expect(cement).toBe(1);
    expect(l! >= lime[0] && l! <= lime[1]).toBe(true);
    expect(s! >= sand[0] && s! <= sand[1]).toBe(true);
    const source = factsNamed(jobOf('use uk\n').env, 'mix', mix)!.line('source')!;
    expect(source.word('text')).toMatch(new RegExp(`, ${strength}$`));
  });
});

/** ASTM C270 by volume: Beall, Masonry and Concrete, pp. 123 and 149. */
describe('ASTM C270', () => {
  test.each([
    ['type-m', [1, 0.25, 3.5]],
    ['type-s', [1, 0.5, 4.5]],
    ['type-n', [1, 1, 6]],
    ['type-o', [1, 2, 9]],
    ['type-k', [1, 3, 12]],
  ])('%s is %j', (mix, parts) => {
    expect(partsOf('us', mix)).toEqual(parts);
  });
  // Army EN5157 and ASTM C270 (from memory): sand from 2 1/4 to 3 times cement and lime.
  test.each(['type-m', 'type-s', 'type-n', 'type-o', 'type-k'])('%s has sand enough', (mix) => {
    const [cement, lime, sand] = partsOf('us', mix);
    expect(sand! / (cement! + lime!)).toBeGreaterThanOrEqual(2.25);
    expect(sand! / (cement! + lime!)).toBeLessThanOrEqual(3);
  });
  // Graymont: sand = 3 x (cement + lime), whose volume is the mortar's: 4 loose volumes to 3.
  test('the dry volume is four thirds', () => {
    const { env } = jobOf('use us\n');
    expect(defaultTerm(env, 'dry-volume', 'factor', '').value.toNumber()).toBeCloseTo(4 / 3, 12);
  });
});

/** Printed ratios run from 1.25 to 1.35: Indian (1.33), South African (1.30), Malaysian (1/3), Belgian (25 to 35%). */
test.each(['uk', 'us', 'de'])('%s: loose to wet volume is what handbooks print', (library) => {
  const { env } = jobOf(`use ${library}\n`);
  const factor = defaultTerm(env, 'dry-volume', 'factor', '').value.toNumber();
  expect(factor).toBeGreaterThanOrEqual(1.25);
  expect(factor).toBeLessThanOrEqual(1.35);
});
