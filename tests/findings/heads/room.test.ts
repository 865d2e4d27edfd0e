/** Heads that something is in the way of, or that are too large for where they are. */
import { describe, expect, test } from 'vitest';
import { placeCourse } from '../../../server/engine/setting-out';
import { jobOf } from '../../engine/world';
import { FIRM, findingsOf, silent, tells } from '../tells';
import { windowWith } from './window';

describe('head-room', () => {
  test('is told of a head over an opening that runs to the top, and how low it may end', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2240 mm
          height  14 courses
          opening gate
            from    left 665 mm
            width   910 mm
            head    semicircular
            ^^^^^^^^^^^^^^^^^^^^ head-room: runs to the top of the wall
      `,
      { ways: ['End it 8 courses under the top: 6 courses high'] },
    );
  });

  test('is told of a head that the wall is too low for, and what would be high enough', () => {
    tells(
      windowWith(`    lintel  100 x 65 mm slab
    head    soldier
    ^^^^^^^^^^^^^^^ head-room: takes 4 courses over the opening window, and the wall has 3 courses there
`).replace('14 courses', '9 courses'),
      { ways: ['Make the wall 10 courses high', 'Make the opening 3 courses high'] },
    );
  });

  test('is not told of one that just goes in', () => {
    silent(
      windowWith('    lintel 100 x 65 mm slab\n    head soldier\n').replace(
        '14 courses',
        '10 courses',
      ),
      'head-room',
    );
  });
});

describe('head-near', () => {
  /** Two windows of 1247.5 mm on a pier three half bricks wide; lintels over 1.2 m bear 150 mm, so that 327.5 - 300 = 27.5 mm are left. */
  const pair = (lines: string, pier = 327.5) => `perpend 1
use "firm.perp"
wall north
  brick   red
  stands  held
  length  ${890 * 2 + 1247.5 * 2 + pier} mm
  height  12 courses
  opening left
    from    left 890 mm
    width   1247.5 mm
    sill    2 courses
    height  6 courses
    lintel  100 x 65 mm slab
  opening right
    from    right 890 mm
    width   1247.5 mm
    sill    2 courses
    height  6 courses
${lines}`;

  test('is told of lintels that all but meet on a pier, and what is left is no sliver', () => {
    const text = `    lintel  100 x 65 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^ head-near: Between what spans the opening right and what spans the opening left only 27.5 mm of wall is left: too little for a brick cut to 50 mm, so it is filled with mortar
`;
    // 27.5 - 10 = 17.5 mm more on one bearing leave one joint.
    tells(pair(text), { ways: ['A bearing of 167.5 mm: one joint between'] });
    const job = jobOf(pair('    lintel  100 x 65 mm slab\n'), { 'firm.perp': FIRM });
    const { carved } = job.works[0]!.facts;
    const cuts = placeCourse(carved!, 8).filter(({ piece }) => piece === 'cut');
    for (const { along } of cuts) expect(along).toBeGreaterThanOrEqual(50);
    expect(cuts.length).toBeGreaterThan(0);
  });

  test('is told beside the end of the wall too, where a joint more is no way out', () => {
    const near = pair('    lintel  100 x 65 mm slab\n    bearing 850 mm\n', 2000);
    const told = findingsOf('head-near', near);
    expect(told.map(({ message }) => message)).toEqual([
      expect.stringContaining('the right end of the wall only 40 mm of wall is left'),
    ]);
    // A joint and a cut of 50 mm: 20 mm less.
    expect(told[0]!.ways.map(({ title }) => title)).toEqual([
      'A bearing of 830 mm: room for a cut brick',
    ]);
  });

  test('is not told where a cut goes in, or one joint fills it', () => {
    silent(pair('    lintel  100 x 65 mm slab\n', 440), 'head-near');
    silent(pair('    lintel  100 x 65 mm slab\n    bearing 167.5 mm\n'), 'head-near');
  });
});

describe('head-clash', () => {
  test('is told of a lintel that runs into a pier, an end or another opening', () => {
    tells(
      windowWith(
        `    lintel  100 x 65 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^ head-clash: reaches into the pier side
  pier side
       ^^^^ pier-unbonded
    at      window left
    size    1 x 1 bricks
    height  7 courses
`,
      ),
      { ways: ['End the pier side under it: 6 courses high'] },
    );
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  1575 mm
        height  14 courses
        opening window
          from    left 665 mm
          width   910 mm
          sill    2 courses
          height  4 courses
          lintel  100 x 65 mm slab
          ^^^^^^^^^^^^^^^^^^^^^^^^ head-clash: reaches into the right end of the wall
    `);
  });

  test('leaves the wall as if nothing were said of the head', () => {
    const bricks = (text: string) =>
      jobOf(text, { 'firm.perp': FIRM })
        .works[0]!.figures.find((f) => f.key === 'bricks')!
        .term.value.toFixed();
    const pier = '  pier side\n    at window left\n    size 1 x 1 bricks\n    height 7 courses\n';
    expect(bricks(windowWith(`    lintel 100 x 65 mm slab\n${pier}`))).toBe(
      bricks(windowWith(pier)),
    );
  });

  test('is not told of a pier that ends under the lintel and carries it', () => {
    const pier = '  pier side\n    at window left\n    size 1 x 1 bricks\n    height 6 courses\n';
    silent(windowWith(`    lintel 100 x 65 mm slab\n${pier}`), 'head-clash');
  });
});

describe('head-size', () => {
  test('is told of what is larger than anything that is laid', () => {
    tells(
      windowWith(`    head    segmental rise 200 mm rings 40
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ head-size: up to 400 courses and 12 rings
`),
    );
    tells(
      windowWith(`    lintel  100 x 99000 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^ head-size: Nothing so large
`),
    );
    silent(windowWith('    head segmental rise 200 mm rings 3\n'), 'head-size');
  });
});
