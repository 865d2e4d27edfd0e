/** Classes, designations and types of mortar, told from the parts of mixes, against the tables that give them. */
import { describe, expect, test } from 'vitest';
import { classesIn, gradeOf } from '../../server/engine/mortar/classes';
import { factsNamed } from '../../server/engine/resolve/env';
import { jobOf } from '../examples/engine';

function grade(library: string, parts: string) {
  const { env } = jobOf(`use ${library}\n\nmix trial\n  parts ${parts}\n`);
  return gradeOf(factsNamed(env, 'mix', 'trial')!, env);
}

/** Lyons, Materials for Architects and Builders, Table 1.4: each mix at its leanest and at its richest. */
describe('Lyons, Table 1.4', () => {
  test.each([
    ['M12', 'cement 1, sand 3'],
    ['M12', 'cement 1, lime 1/4, sand 3'],
    ['M6', 'cement 1, lime 1/2, sand 4'],
    ['M6', 'cement 1, lime 1/2, sand 4 1/2'],
    ['M6', 'masonry-cement 1, sand 2 1/2'],
    ['M6', 'masonry-cement 1, sand 3 1/2'],
    ['M6', 'cement 1, sand 4'],
    ['M4', 'cement 1, lime 1, sand 5'],
    ['M4', 'cement 1, lime 1, sand 6'],
    ['M4', 'masonry-cement 1, sand 4'],
    ['M4', 'masonry-cement 1, sand 5'],
    ['M4', 'cement 1, sand 5'],
    ['M4', 'cement 1, sand 6'],
    ['M2', 'cement 1, lime 2, sand 8'],
    ['M2', 'cement 1, lime 2, sand 9'],
    ['M2', 'masonry-cement 1, sand 6 1/2'],
    ['M2', 'cement 1, sand 8'],
    ['designation-v', 'cement 1, lime 3, sand 10'],
    ['designation-v', 'cement 1, lime 3, sand 12'],
  ])('%s is %s', (name, parts) => {
    expect(grade('uk', parts).of?.name).toBe(name);
  });

  // The class numbers are N/mm2 at 28 days: EN 998-2, from memory.
  test('classes are ranked by their strength', () => {
    const { env } = jobOf('use uk\n');
    expect(classesIn(env).map((c) => [c.name, c.strength])).toEqual([
      ['M12', 12],
      ['M6', 6],
      ['M4', 4],
      ['M2', 2],
      ['designation-v', 0],
    ]);
  });

  test('more sand than designation (v) has is sandier than all of them', () => {
    const { of, sandier } = grade('uk', 'cement 1, lime 3, sand 14');
    expect(of).toBeUndefined();
    expect(sandier?.sand.toNumber()).toBe(14);
    expect(sandier?.most.toNumber()).toBe(12);
  });

  test('parts of a half are the same mix', () => {
    expect(grade('uk', 'cement 2, lime 2, sand 12').of?.name).toBe('M4');
  });
});

/**
 * AS 3700 (abcbricksales.com.au) gives each of its classes with lime or without: M4 is 1 : 1/2 : 4 1/2 or 1 : 0 : 4, M3 is
 * 1 : 1 : 6 or 1 : 0 : 5; NCC 2022, table 5.6.3 (chalkline.com.au): protected 1 : 2 : 9, exposed 1 : 1/2 : 4 1/2. By
 * Lyons' table the two of a class are of one class too, in the same order.
 */
describe('AS 3700 beside Lyons, Table 1.4', () => {
  test.each([
    ['M4', 'M6', 'cement 1, lime 1/2, sand 4 1/2', 'cement 1, sand 4'],
    ['M3', 'M4', 'cement 1, lime 1, sand 6', 'cement 1, sand 5'],
    ['protected', 'M2', 'cement 1, lime 2, sand 9', 'cement 1, lime 2, sand 9'],
  ])('%s is %s', (_, name, limed, plain) => {
    expect([limed, plain].map((parts) => grade('uk', parts).of?.name)).toEqual([name, name]);
  });
});

/** ASTM C270 by volume: Beall, Masonry and Concrete, pp. 123 and 149; M and N with more sand: Army EN5157. */
describe('ASTM C270', () => {
  test.each([
    ['M', 'portland-cement 1, hydrated-lime 1/4, mason-sand 3 1/2'],
    ['M', 'portland-cement 1, hydrated-lime 1/4, mason-sand 3 3/4'],
    ['S', 'portland-cement 1, hydrated-lime 1/2, mason-sand 4 1/2'],
    ['N', 'portland-cement 1, hydrated-lime 1, mason-sand 6'],
    ['N', 'portland-cement 1, hydrated-lime 1 1/4, mason-sand 6 3/4'],
    ['O', 'portland-cement 1, hydrated-lime 2, mason-sand 9'],
    ['K', 'portland-cement 1, hydrated-lime 3, mason-sand 12'],
  ])('type %s is %s', (name, parts) => {
    expect(grade('us', parts).of?.name).toBe(name);
  });

  // Least strengths, printed beside them: 2500, 1800, 750, 350 psi; type K from memory.
  test('by their least strengths', () => {
    const classes = classesIn(jobOf('use us\n').env);
    const psi = classes.map((c) => Math.round(c.strength / 0.006894757));
    expect(psi).toEqual([2500, 1800, 750, 350, 75]);
  });
});

/** DIN 1053-1, Annex A, and DIN EN 998-2, from memory. */
test.each([
  ['M10', 'zement 1, sand 4'],
  ['M5', 'zement 1, kalkhydrat 1, sand 6'],
  ['M2.5', 'zement 1, kalkhydrat 2, sand 8'],
  ['M1', 'kalkhydrat 1, sand 3'],
])('%s is %s in Germany', (name, parts) => {
  expect(grade('de', parts).of?.name).toBe(name);
});

test.each(['uk', 'us', 'de'])('%s: a mix whose title tells a class has it', (library) => {
  const { env } = jobOf(`use ${library}\n`);
  for (const name of env.book.names('mix')) {
    const mix = factsNamed(env, 'mix', name)!;
    const said = /\b(M\d+(?:\.\d)?)\b(?!.*\bfrom\b)/.exec(
      mix.line('source')?.word('text') ?? '',
    )?.[1];
    const of = gradeOf(mix, env).of;
    if (said && of) expect(`${name} ${of.name}`).toBe(`${name} ${said}`);
  }
});
