/** How high an arch rises, how thick it is, and what its joints come to. */
import { describe, expect, test } from 'vitest';
import { silent, tells } from '../tells';
import { windowWith } from './window';

describe('arch-rise', () => {
  test('is told of a rise over half the span, and under an eighth of it', () => {
    tells(
      windowWith(`    head    segmental rise 460 mm rings 2
                           ^^^^^^ arch-rise: at 455 mm it is a semicircle
`),
      { ways: ['Make it a semicircle'] },
    );
    // 910 / 8 = 113.75, marked out at 115.
    tells(
      windowWith(`    head    segmental rise 100 mm
                           ^^^^^^ arch-rise: over 910 mm it rises at least 115 mm
`),
      { ways: ['Make it rise 115 mm'] },
    );
    silent(windowWith('    head segmental rise 115 mm\n'), 'arch-rise');
  });
});

describe('arch-joint', () => {
  test('is told of a rough arch whose joints gape at the back, with an axed one and a flatter one for it', () => {
    tells(
      windowWith(`    head    semicircular
    ^^^^^^^^^^^^^^^^^^^^ arch-joint: round a radius of 455 mm have joints of 9.7 mm at the soffit and 25.8 mm at the back, more than the 20 mm
`),
      {
        ways: [
          'An axed arch: its bricks cut to wedges, about 19 of them, joints of 10 mm',
          'A flatter arch, rising 330 mm',
          'Keep it, with its wide joints',
        ],
      },
    );
    // By hand: (1429.4 - 19 x 65) / 20 and (1751.4 - 19 x 65) / 20.
    expect((Math.PI * 455 - 19 * 65) / 20).toBeCloseTo(9.7, 1);
    expect((Math.PI * 557.5 - 19 * 65) / 20).toBeCloseTo(25.8, 1);
    // Rising 330 mm: 17 bricks round a radius of 478.7 mm have 19.7 mm at the back.
    const radius = (455 ** 2 + 330 ** 2) / 660;
    const back = 2 * Math.asin(455 / radius) * (radius + 102.5);
    expect((back - 17 * 65) / 18).toBeCloseTo(19.7, 1);
  });

  test('is not told of a flat one, nor of one that is decided', () => {
    silent(windowWith('    head segmental rise 115 mm\n'), 'arch-joint');
    silent(windowWith('    head semicircular\n    fit arch cut\n'), 'arch-joint');
    silent(windowWith('    head semicircular\n    fit arch joints\n'), 'arch-joint');
    silent(windowWith('    head semicircular\n    fit arch cut\n'), 'fit-idle');
  });
});

describe('arch-thin', () => {
  test('is told of an arch thinner than an inch to the foot of span', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2690 mm
          height  14 courses
          opening gate
            from    left 665 mm
            width   1360 mm
            height  4 courses
            head    segmental rise 200 mm
            ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ arch-thin: 102.5 mm deep is thin for a span of 1360 mm: the rule of thumb asks for 108.8 mm
      `,
      { ways: ['Turn it in 2 rings'] },
    );
    silent(windowWith('    head segmental rise 115 mm\n'), 'arch-thin');
  });
});
