import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { jobOfWall } from '../harness/walls';
import { afterWay, FIRM, findingsOf, silent, tells } from './tells';

const wall = (height: string, more = '') => jobOfWall({ length: '2015 mm', height }, more);

describe('courses-whole', () => {
  test('is told of every number of courses with a fraction, and offers the whole ones beside it', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2015 mm
          height  8.5 courses
                  ^^^^^^^^^^^ courses-whole: Brickwork stands in whole courses: 8.5 is reckoned as 8
          dpc     engineering 1.5 courses
                              ^^^^^^^^^^^ courses-whole: 1.5 is reckoned as 1
          opening window
          ^^^^^^^^^^^^^^ head-missing: Nothing says what carries
            from    left 440 mm
            width   235 mm
            sill    2.25 courses
                    ^^^^^^^^^^^^ courses-whole: 2.25 is reckoned as 2
            height  0.5 courses
                    ^^^^^^^^^^^ courses-whole: 0.5 is reckoned as 0
        pier gate
          brick   red
          size    2 x 2 bricks
          height  12.75 courses
                  ^^^^^^^^^^^^^ courses-whole: 12.75 is reckoned as 12
      `,
      {
        ways: [
          ['Make it 8', 'Make it 9'],
          ['Make it 1', 'Make it 2'],
          ['Make it 2', 'Make it 3'],
          ['Make it 1'],
          ['Make it 12', 'Make it 13'],
        ].flat(),
      },
    );
    expect(found!.severity).toBe('warning');
  });

  test('counts the courses it says it reckons with', () => {
    const courses = (height: string) =>
      jobOf(wall(height), { 'firm.perp': FIRM })
        .works[0]!.figures.find((f) => f.key === 'courses')!
        .term.value.toNumber();
    expect(courses('4.5 courses')).toBe(4);
    expect(courses('4.99 courses')).toBe(4);
    expect(courses('5 courses')).toBe(5);
  });

  test('its ways out write one course and several as they are spoken', () => {
    const text = wall('1.5 courses');
    const [found] = findingsOf('courses-whole', text);
    expect(found!.ways.map((w) => /height .*/.exec(afterWay(text, w.edits))![0])).toEqual([
      'height 1 course',
      'height 2 courses',
    ]);
  });

  test('is not told of whole courses, nor of fractions of anything else', () => {
    for (const height of ['1 course', '8 courses', '8.0 courses', '262.5 mm', '0.3 m'])
      silent(wall(height), 'courses-whole');
    silent(wall('8 courses', '  thick 0.5 bricks\n'), 'courses-whole');
    silent(
      wall(
        '8 courses',
        '  opening a\n    from left 440 mm\n    width 235 mm\n    sill 2 courses\n',
      ),
      'courses-whole',
    );
  });
});
