import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { jobOfWall } from '../harness/walls';
import { FIRM, silent, tells } from './tells';

const wall = (height: string, more = '') => jobOfWall({ length: '1790 mm', height }, more);

describe('fit-height', () => {
  test('is told of a height that no joint from 8 to 13 mm makes of whole courses', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  1790 mm
          height  250 mm
          ^^^^^^^^^^^^^^ fit-height: no whole number of courses
      `,
      {
        ways: [
          'Build 3 courses, 225 mm',
          'Build 4 courses, 300 mm',
          '3 courses with joints of 18.3 mm, wider or tighter than anyone would accept',
        ],
      },
    );
    // By hand: 3 courses are 225 mm, 4 are 300 mm; 250 / 3 - 65 is 18.3 mm of bed.
    expect(250 / 3 - 65).toBeCloseTo(18.3, 1);
    expect(found!.severity).toBe('warning');
  });

  test('counts the courses it says it reckons with', () => {
    const courses = (height: string) =>
      jobOf(wall(height), { 'firm.perp': FIRM })
        .works[0]!.figures.find((f) => f.key === 'courses')!
        .term.value.toNumber();
    expect(courses('250 mm')).toBe(3);
    expect(courses('300 mm')).toBe(4);
  });

  test('is not told of whole courses, however the height is said, nor once it is settled', () => {
    for (const height of ['4 courses', '300 mm', '0.3 m', '30 cm']) {
      silent(wall(height), 'fit-height');
      silent(wall(height), 'height-joints');
    }
    silent(wall('250 mm', '  fit height joints\n'), 'fit-height');
  });
});

describe('height-joints', () => {
  test('is told of a height that works with other joints than the usual, and offers the courses', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  1790 mm
          height  1225 mm
          ^^^^^^^^^^^^^^^ height-joints: 16 courses make this height with bed joints of 11.6 mm
      `,
      { ways: ['Build 16 courses'] },
    );
    expect(1225 / 16 - 65).toBeCloseTo(11.6, 1);
    expect(found!.severity).toBe('hint');
    silent(wall('1225 mm', '  fit height joints\n'), 'height-joints');
  });
});
