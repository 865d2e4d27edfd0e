/** Size tolerances of bricks, as the libraries give them, against published tables. */
import { describe, expect, test } from 'vitest';
import { classTerm, rangeTerm } from '../../server/engine/brickwork/standing/tolerance';
import { factsNamed } from '../../server/engine/resolve/env';
import { fact } from '../../server/engine/working/term';
import { jobOf } from '../engine/world';

const within = (library: string, name: string, mm: number) => {
  const { env } = jobOf(`perpend 1\nuse ${library}\n`);
  return classTerm(factsNamed(env, 'tolerance', name)!, fact('size', mm, 'mm'))!.value.toNumber();
};

/**
 * 0.25 times the root of 190 is 3.45, so 3 by the rule; the sheet prints 4. No rounding gives both its 4 here and its 3
 * for 0.40 times the root of 73, which is 3.42: the sheet rounded twice, or counts it with the next size.
 */
const ODD = { size: 190, printed: 4, byRule: 3 };

describe('EN 771-1 mean values: works technical sheet on BS EN 771-1 (studylib.net/doc/8082476), all 26 cells', () => {
  const SIZES = [40, 50, 65, 68, 73, 80, 90, 102, 190, 215, 225, 227, 290];
  const T1 = [3, 3, 3, 3, 3, 4, 4, 4, 6, 6, 6, 6, 7];
  const T2 = [2, 2, 2, 2, 2, 2, 2, 3, 4, 4, 4, 4, 4];

  test.each(['uk', 'de'])('in the library %s', (library) => {
    expect(SIZES.map((mm) => within(library, 'T1', mm))).toEqual(T1);
    const rule = SIZES.map((mm) => within(library, 'T2', mm));
    const printed = rule.map((mm, i) => (SIZES[i] === ODD.size ? ODD.printed : mm));
    expect(printed).toEqual(T2);
    expect(rule[SIZES.indexOf(ODD.size)]).toBe(ODD.byRule);
    expect(0.25 * Math.sqrt(ODD.size)).toBeCloseTo(3.446, 3);
  });

  test('its limits: 215 mm is 209 to 221 and 211 to 219, 65 mm is 62 to 68 and 63 to 67, 102 mm is 98 to 106 and 99 to 105', () => {
    const limits = (name: string) =>
      [215, 65, 102].map((mm) => [mm - within('uk', name, mm), mm + within('uk', name, mm)]);
    expect(limits('T1')).toEqual([
      [209, 221],
      [62, 68],
      [98, 106],
    ]);
    expect(limits('T2')).toEqual([
      [211, 219],
      [63, 67],
      [99, 105],
    ]);
  });
});

/** EN 771-1, ranges, from memory: 0.60 and 0.30 times the root; arithmetic: 215, 102.5 and 65 mm. */
test.each([
  ['T1', [9, 6, 5]],
  ['T2', [4, 3, 2]],
])('%s: a delivery may range over so many mm', (name, ranges) => {
  const { env } = jobOf('perpend 1\nuse uk\n');
  const of = (mm: number) =>
    rangeTerm(factsNamed(env, 'tolerance', name)!, fact('size', mm, 'mm'))!.value.toNumber();
  expect([215, 102.5, 65].map(of)).toEqual(ranges);
});

describe('ASTM C216, table of dimensions, from memory', () => {
  test.each([
    ['FBX', [1 / 16, 3 / 32, 1 / 8, 5 / 32, 7 / 32, 9 / 32]],
    ['FBS', [3 / 32, 1 / 8, 3 / 16, 1 / 4, 5 / 16, 3 / 8]],
  ])('%s: 3, 4, 6, 8, 12 and 16 in', (name, inches) => {
    const found = [3, 4, 6, 8, 12, 16].map((size) => within('us', name, size * 25.4) / 25.4);
    for (const [i, inch] of inches.entries()) expect(found[i]).toBeCloseTo(inch, 9);
  });
});
