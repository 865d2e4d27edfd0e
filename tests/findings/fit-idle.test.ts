import { describe, expect, test } from 'vitest';
import { jobOfWall } from '../harness/walls';
import { afterWay, BONDED_IN, findingsIn, findingsOf, silent, tells } from './tells';

const wall = (length: string, more = '') => jobOfWall({ length, height: '4 courses' }, more);
const pier = (size: string, more = '') =>
  `perpend 1\nuse "firm.perp"\npier gate\n  brick red\n  size ${size}\n  height 12 courses\n  coping brick-on-edge\n${more}`;

describe('fit-idle', () => {
  test('is told of a decision for a run that is not there, with those that are', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2015 mm
          height  4 courses
          opening gate
            from   left 440 mm
            width  1135 mm
          fit     run-3 joints
          ^^^^^^^^^^^^^^^^^^^^ fit-idle: No run here is called “run-3”, so this line changes nothing. There are run-1, run-2 and height
          fit     coping half-bond
          ^^^^^^^^^^^^^^^^^^^^^^^^ fit-idle: No run here is called “coping”
      `,
      { ways: ['Take the line out', 'Take the line out'] },
    );
    expect(found!.severity).toBe('warning');
  });

  test('is a hint of a run that works by itself', () => {
    const found = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  1790 mm
          height  4 courses
          coping  brick-on-edge
          fit     run-1 cut 50 mm at middle
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ fit-idle: “run-1” works without a decision
          fit     coping joints
          ^^^^^^^^^^^^^^^^^^^^^ fit-idle: “coping” works without a decision
          fit     height joints
          ^^^^^^^^^^^^^^^^^^^^^ fit-idle: “height” works without a decision
      `,
      { ways: Array(3).fill('Take the line out') },
    );
    // By hand: 16 halves of 112.5 mm and 24 bricks on edge of 75 mm are both 1790 mm, a joint of 10 taken off.
    expect([16 * 112.5 - 10, 24 * 75 - 10]).toEqual([1790, 1790]);
    expect(found.map((f) => f.severity)).toEqual(['hint', 'hint', 'hint']);
  });

  test('is told of a pier, alone or in a wall, of its own runs only', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        pier gate
          brick   red
          size    2 x 2 bricks
          height  12 courses
          fit     coping joints
          ^^^^^^^^^^^^^^^^^^^^^ fit-idle: There is height.
        wall north
          brick   red
          stands  held
          length  2015 mm
          height  4 courses
          pier p
               ^ pier-unbonded
            at      left
            size    2 x 2 bricks
            coping  brick-on-edge
            fit     run-1 joints
            ^^^^^^^^^^^^^^^^^^^^ fit-idle: There are coping and height.
            fit     coping joints
            ^^^^^^^^^^^^^^^^^^^^^ fit-idle: “coping” works without a decision
      `,
      { ways: ['Take the line out', BONDED_IN[0]!, 'Take the line out', 'Take the line out'] },
    );
  });

  test('taken out, nothing but the line is gone', () => {
    const text = wall('2015 mm', '  fit run-7 joints  # as agreed\n  note "Keep"\n');
    const [found] = findingsOf('fit-idle', text);
    const after = afterWay(text, found!.ways[0]!.edits);
    expect(after.replace(/\n+/g, '\n')).toBe(wall('2015 mm', '  note "Keep"\n'));
    expect(findingsIn(after).filter((f) => f.severity === 'error')).toEqual([]);
  });

  test('is not told where there is something to decide, even when the line no longer answers it', () => {
    silent(wall('1840 mm', '  fit run-1 cut 50 mm at middle\n'), 'fit-idle');
    silent(wall('1840 mm', '  fit run-1 cut 90 mm at middle\n'), 'fit-idle');
    // By hand: over 552.5 mm 7 bricks on edge have joints of 97.5 / 6 = 16.3 mm and 8 of 32.5 / 7 = 4.6 mm.
    silent(wall('552.5 mm', '  coping brick-on-edge\n  fit coping joints\n'), 'fit-idle');
    const flemish = wall('1790 mm', '  bond flemish\n  thick 1 brick\n  fit run-1 half-bond\n');
    silent(flemish, 'fit-idle');
    silent(wall('1790 mm', '  fit height joints\n').replace('4 courses', '250 mm'), 'fit-idle');
    silent(pier('1.5 x 1.5 bricks', '  fit coping joints\n'), 'fit-idle');
    silent(pier('2 x 2 bricks'), 'fit-idle');
  });

  test('is not told of a height that its line decides', () => {
    silent(wall('1790 mm', '  fit height joints\n').replace('4 courses', '1225 mm'), 'fit-idle');
  });
});
