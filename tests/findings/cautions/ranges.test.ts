/** Cautions and warnings of what is a range: told at its worst end, and not where all of it is safe. */
import { describe, expect, test } from 'vitest';
import { silent, tells } from '../tells';
import { job } from './each';
import { tellsOf } from './told';

const wall = (lines: string) => `
      wall a
        brick red
        length 1790 mm
${lines}`;
const oneBrick = '        bond english\n        thick 1 brick\n        height 4 courses\n';
/** One brick thick: a wall is not safe that leans over 70 mm (a third of its thickness). */
const leaning = (how: string) => `${wall(oneBrick)}
      repair r
        brick red
        in a
        repoint 1 m2 raked 20 mm
        ${how}
`;

describe('a caution of what is a range', () => {
  test.each([
    ['leaning', leaning('leans 20..118 mm'), 'leans 20..118 mm', 'may lean up to 118 mm, over 70'],
    ['leaning', leaning('leans 10..120 mm'), 'leans 10..120 mm', 'may lean up to 120 mm, over 70'],
    [
      'boundary',
      wall(`${oneBrick}        footing 400 x 800 mm\n        boundary 5..9 m\n`),
      'boundary 5..9 m',
      'the boundary may be as near as 5 m, within 6 m',
    ],
    [
      'party-wall',
      wall(`${oneBrick}        boundary 0..4 m\n`),
      'boundary 0..4 m',
      'it may be on the boundary',
    ],
    [
      'planning',
      wall('        stands free\n        height 16 courses\n        road 1.5..5 m\n'),
      'height 16 courses',
      'a road may be as near as 1.5 m, within 2 m',
    ],
    [
      'wind',
      wall('        height 8..16 courses\n'),
      'height 8..16 courses',
      'it may be up to 1.2 m high, over 900 mm',
    ],
    [
      'wind',
      wall('        height 0.6..1.2 m\n'),
      'height 0.6..1.2 m',
      'it may be up to 1.2 m high, over 900 mm',
    ],
    ['road', wall(`${oneBrick}        road 1.5..5 m\n`), 'road 1.5..5 m', 'as near as 1.5 m'],
    [
      'high',
      `
      repair r
        brick red
        size 1.5 x 1.5 bricks
        rebuild 10..21 courses
`,
      'rebuild 10..21 courses',
      'it may be up to 1.58 m high, over 1.5 m',
    ],
  ])('%s is told at its worst end', (name, text, line, words) => {
    const mark = `        ${'^'.repeat(line.length)} caution-${name}: ${words}`;
    tellsOf('uk', name, job(text.replace(line, `${line}\n${mark}`)));
  });

  test.each([
    ['leaning', leaning('leans 20..70 mm')],
    ['boundary', wall(`${oneBrick}        footing 400 x 800 mm\n        boundary 6.1..9 m\n`)],
    ['party-wall', wall(`${oneBrick}        boundary 0.1..4 m\n`)],
    ['planning', wall('        height 16 courses\n        road 2.1..5 m\n')],
    ['road', wall(`${oneBrick}        road 2.1..5 m\n`)],
    ['wind', wall('        height 8..12 courses\n')],
    ['wind', wall('        height 0.6..0.9 m\n')],
  ])('%s is not told where no end of it is over the limit', (name, text) => {
    tellsOf('uk', name, job(text));
  });

  /** By hand: 225 x 112.5 x 75 mm of 1950 kg/m3 are 3.70 kg: five bricks are 18.5 kg, ten 37. Limit 20 kg: HSE CIS 37. */
  test('what may come down is weighed at its most', () => {
    const down = (bricks: string) => `
      repair r
        brick red
        rebuild ${bricks} bricks
`;
    tellsOf('uk', 'lumps', job(down('1..5')));
    tellsOf(
      'uk',
      'lumps',
      job(
        `${down('1..8')}        ${'^'.repeat('rebuild 1..8 bricks'.length)} caution-lumps: what comes down may be up to 30 kg in all; 6 bricks in a lump`,
      ),
    );
    expect([3.7 * 5, Math.round(0.225 * 0.1125 * 0.075 * 1950 * 8)]).toEqual([18.5, 30]);
  });

  /** HSE Construction Information Sheet 37: over 20 kg is high risk. */
  test('a block that may be too heavy is told of, and one that is not is not', () => {
    const blocks = (mass: string) => `perpend 1
use "firm.perp"
brick heavy "Heavy block"
  size  440 x 215 x 100 mm
  mass  ${mass}
  price £2 each
wall a
  brick   heavy
  length  1790 mm
`;
    tellsOf('uk', 'lifting', `${blocks('16..20 kg')}  height 2 courses\n`);
    const [found] = tellsOf(
      'uk',
      'lifting',
      `${blocks('16..21 kg').replace(
        'brick   heavy',
        'brick   heavy\n          ^^^^^ caution-lifting: may be up to 21 kg, over 20 kg',
      )}  height 2 courses\n`,
    );
    expect(found).toBeDefined();
  });
});

describe('a height that is a range', () => {
  /** Planning Portal leaflet, half a brick thick in zone 4: 375 mm, five courses of 75. */
  test('is too much for a free-standing wall where its high end is', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick     red
          exposure  zone-4
          length    1790 mm
          height    2..6 courses
          ^^^^^^^^^^^^^^^^^^^^^^ height-over: It may be up to 450 mm, which is more than the 375 mm
      `,
      { ways: ['Build 5 courses'] },
    );
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick     red
          exposure  zone-4
          length    1790 mm
          height    0.15..0.45 m
          ^^^^^^^^^^^^^^^^^^^^^^ height-over: It may be up to 450 mm, which is more than the 375 mm
      `,
      { ways: ['Build 5 courses'] },
    );
    const safe = (height: string) =>
      `perpend 1\nuse "firm.perp"\nwall a\n  brick red\n  exposure zone-4\n  length 1790 mm\n  height ${height}\n`;
    silent(safe('2..5 courses'), 'height-over');
    silent(safe('0.15..0.375 m'), 'height-over');
  });

  /** Bailey and Hancock, Brickwork 2 and Associated Studies, 1990: eight times the least dimension, 1720 mm. */
  test('is too much for a pier alone where its high end is', () => {
    const gate = (height: string) =>
      `perpend 1\nuse "firm.perp"\npier gate\n  brick red\n  size 2 x 1 bricks\n  height ${height}\n`;
    silent(gate('10..22 courses'), 'pier-slender');
    tells(
      gate('10..23 courses').replace(
        /( {2}height .*)\n/,
        `$1\n  ${'^'.repeat('height 10..23 courses'.length)} pier-slender: It may be up to 1725 mm, which is more than 8 times the 215 mm\n`,
      ),
    );
  });
});

/** 400 x 400 x 50 mm at 2400 kg/m3 are 19.2 kg and 60 mm thick 23 kg: HSE Information Sheet 37, over 20 kg. */
describe('what is lifted, of a size that is a range', () => {
  const pier = (thick: string) => `
      pier g
        brick red
        size 1.5 x 1.5 bricks
        height 4 courses
        cap 400 x 400 x ${thick} mm`;

  test('is as heavy as it may be', () => {
    tellsOf(
      'uk',
      'lifting',
      job(`${pier('50..60')}
        ^^^^^^^^^^^^^^^^^^^^^^^^^ caution-lifting: may be up to 23 kg, over 20 kg
`),
    );
    tellsOf('uk', 'lifting', job(`${pier('40..50')}\n`));
  });
});
