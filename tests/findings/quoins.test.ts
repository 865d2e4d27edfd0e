import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { JOB, wallText } from '../harness/walls';
import { afterWay, BONDED_IN, FIRM, findingsIn, findingsOf, silent, tells } from './tells';

/** A half-brick wall that nothing else is to be told of. */
const wall = (name: string, more: string, length = '2240 mm') => wallText({ name, length }, more);

const CORNER = `${JOB}${wall('north', '  right quoin east\n')}${wall('east', '  left quoin north\n', '1790 mm')}`;

const bricks = (text: string) =>
  jobOf(text, { 'firm.perp': FIRM }).works.map((w) =>
    w.figures.find((f) => f.key === 'bricks')!.term.value.toNumber(),
  );

describe('quoin-round', () => {
  test('is told of two walls that make corners with each other at both ends', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2240 mm
          height  8 courses
          left    quoin east
          right   quoin east
        wall east
          brick   red
          stands  held
          length  2240 mm
          height  8 courses
          left    quoin north
          right   quoin north
                        ^^^^^ quoin-round: with it 2 walls would make corners with each other all round, and straight walls at right angles need four
      `,
      { ways: ['No corner there: right stopped, and left stopped in the wall north'] },
    );
    expect(found!.severity).toBe('error');
  });

  /** So many walls, each answered by the next, the last by the first. */
  const round = (count: number) =>
    JOB +
    Array.from({ length: count }, (_, i) =>
      wall(
        `w-${i}`,
        `  left quoin w-${(i + count - 1) % count}\n  right quoin w-${(i + 1) % count}\n`,
      ),
    ).join('');

  test('of three and of five, at right angles; not of four or six', () => {
    const told = (count: number) => findingsOf('quoin-round', round(count)).length;
    expect([2, 3, 4, 5, 6].map(told)).toEqual([1, 1, 0, 1, 0]);
    silent(CORNER, 'quoin-round');
  });
});

describe('quoin-unanswered', () => {
  test('is told where the other wall does not say that it meets this one', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2240 mm
          height  8 courses
          right   quoin east
                        ^^^^ quoin-unanswered: The wall east does not say that one of its ends meets this one
        wall east
          brick   red
          stands  held
          length  1790 mm
          height  8 courses
          right   stopped
      `,
      {
        ways: ['Write left quoin north in the wall east', 'It meets no wall there: right stopped'],
      },
    );
  });

  test('a wall makes no corner with itself', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2240 mm
          height  8 courses
          right   quoin north
                        ^^^^^ quoin-unanswered: A wall makes no corner with itself.
      `,
      { ways: ['It meets no wall there: right stopped'] },
    );
  });

  test('is not told of two walls that name each other, nor of a name that no wall has', () => {
    silent(CORNER, 'quoin-unanswered');
    silent(`${JOB}${wall('north', '  right quoin est\n')}`, 'quoin-unanswered');
  });

  test('an end that meets another wall does not answer', () => {
    const three = `${CORNER}${wall('west', '  right quoin east\n')}`;
    const told = findingsOf('quoin-unanswered', three);
    expect(told).toHaveLength(1);
    const [way] = told[0]!.ways;
    expect(way!.title).toBe('Write right quoin west inside in the wall east');
    expect(findingsIn(afterWay(three, way!.edits)).map((f) => f.code)).not.toContain(
      'quoin-unanswered',
    );
  });
});

describe('quoin-faces', () => {
  test('is told where the fronts of two walls cannot be where their lines put them', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2240 mm
          height  8 courses
          right   quoin east
        wall east
          brick   red
          stands  held
          length  1790 mm
          height  8 courses
          right   quoin north
          ^^^^^^^^^^^^^^^^^^^ quoin-faces: These two lines do not make one corner
      `,
      {
        ways: ['The front of this wall is inside the corner', 'It is the other end of north'],
      },
    );
  });

  test('is not told of fronts both outside, both inside, or one of each where like ends meet', () => {
    silent(CORNER, 'quoin-faces');
    const inside = CORNER.replace('quoin east', 'quoin east inside');
    silent(inside.replace('quoin north', 'quoin north inside'), 'quoin-faces');
    silent(CORNER.replace('left quoin north', 'right quoin north inside'), 'quoin-faces');
  });
});

describe('quoin-gauge', () => {
  test('is told where courses are not level, and both walls then keep free ends', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  2240 mm
        height  8 courses
        right   quoin east
      wall east
        brick   red
        stands  held
        length  1790 mm
        height  8 courses
        gauge   4 courses 308 mm
        left    quoin north
        ^^^^^^^^^^^^^^^^^^^ quoin-gauge: The courses of this wall are 77 mm high and those of north 75 mm
    `);
    const uneven = CORNER.replace('left quoin', 'gauge 4 courses 308 mm\n  left quoin');
    expect(bricks(uneven)).toEqual([80, 64]);
  });

  test('is not told of walls of one gauge', () => silent(CORNER, 'quoin-gauge'));
});

describe('quoin-taken', () => {
  test('is told where a pier stands at the corner', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2240 mm
          height  8 courses
          right   quoin east
          ^^^^^^^^^^^^^^^^^^ quoin-taken: The pier corner stands where this wall would make its corner with east
          pier corner
               ^^^^^^ pier-unbonded
            at    right
            size  1 x 1 bricks
        wall east
          brick   red
          stands  held
          length  1800 mm
          height  8 courses
          left    quoin north
      `,
      { ways: ['east ends against it: left butted', ...BONDED_IN] },
    );
  });

  test('is not told of a pier elsewhere', () => {
    const pier = '  pier p\n    at left\n    size 1 x 1 bricks\n';
    silent(CORNER.replace('wall east', `${pier}wall east`), 'quoin-taken');
  });
});

describe('quoin-unbonded', () => {
  test('is told of bonds that do not lap round a corner, with bonds that do', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          bond    stack
          stands  held
          length  2240 mm
          height  8 courses
          right   quoin east
        wall east
          brick   red
          bond    stack
          stands  held
          length  1790 mm
          height  8 courses
          left    quoin north
          ^^^^^^^^^^^^^^^^^^^ quoin-unbonded: The corner with north does not bond
      `,
      { ways: ['Build both walls in stretcher'] },
    );
  });

  test('an even number of stretcher courses in English garden wall bond does not come round', () => {
    const text = (n: number) =>
      CORNER.replaceAll('brick red', `brick red\n  thick 1 brick\n  bond english-garden-wall ${n}`);
    silent(text(3), 'quoin-unbonded');
    silent(text(5), 'quoin-unbonded');
    const [told] = findingsOf('quoin-unbonded', text(4));
    expect(told!.ways.map((w) => w.title)).toContain('Build both walls in english');
  });

  test('is not told of stretcher bond', () => silent(CORNER, 'quoin-unbonded'));
});

describe('a corner', () => {
  // By hand: 20 and 16 half bricks to a course, less the one that both would count.
  test('is counted once: a half brick less in each course than two walls with free ends', () => {
    const free = CORNER.replace(/ {2}(left|right) quoin \w+\n/g, '');
    expect(bricks(free)).toEqual([80, 64]);
    expect(bricks(CORNER).reduce((a, b) => a + b)).toBe(80 + 64 - 4);
  });

  test('with a wall that cannot be laid yet leaves this one as it was', () => {
    const text = CORNER.replace('length 1790 mm', 'length ?');
    expect(bricks(text)[0]).toBe(80);
  });
});
