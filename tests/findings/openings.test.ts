import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { jobOfWall } from '../harness/walls';
import { FIRM, silent, tells } from './tells';

const gate = (lines: string) => jobOfWall({ length: '2140 mm' }, `  opening gate\n${lines}`);

describe('opening-outside', () => {
  test('is told of an opening that is not in the wall or not said, and why', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  2015 mm
        height  8 courses
        opening far
          from   left 1790 mm
          ^^^^^^^^^^^^^^^^^^^ opening-outside: reaches beyond the wall
          width  235 mm
        opening back
          from   right 1790 mm
          ^^^^^^^^^^^^^^^^^^^^ opening-outside: reaches beyond the wall
          width  235 mm
        opening somewhere
          from   left ?
          ^^^^^^^^^^^^^ opening-outside: It is not known where it begins
                      ^ incomplete: the start of the opening somewhere is still to be measured
          width  235 mm
        opening nothing
        ^^^^^^^^^^^^^^^ opening-outside: it needs from and width
        opening high
          from   left 440 mm
          ^^^^^^^^^^^^^^^^^^ opening-outside: Its sill is above the top of the wall
          width  235 mm
          sill   8 courses
    `);
  });

  test('leaves the wall as if the opening were not there', () => {
    const bricks = (text: string) =>
      jobOf(text, { 'firm.perp': FIRM }).works[0]!.figures.map((f) => f.term.value.toFixed());
    const closed = gate('').replace('  opening gate\n', '');
    expect(bricks(gate('    from left 3 m\n    width 1 m\n'))).toEqual(bricks(closed));
  });

  test('is not told of an opening inside the wall, up to its very ends', () => {
    silent(gate('    from left 0 mm\n    width 910 mm\n'), 'opening-outside');
    silent(gate('    from right 0 mm\n    width 910 mm\n'), 'opening-outside');
    silent(gate('    from left 0 mm\n    width 2140 mm\n'), 'opening-outside');
  });
});

describe('opening-clipped', () => {
  test('is told of an opening higher than the wall above its sill, and how high it can be', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2015 mm
          height  8 courses
          opening window
            from    left 440 mm
            width   235 mm
            sill    5 courses
            height  4 courses
            ^^^^^^^^^^^^^^^^^ opening-clipped: The wall is 8 courses high, so that this opening ends at its top, 3 courses above the sill
          opening slot
            from    right 440 mm
            width   235 mm
            sill    7 courses
            height  2 courses
            ^^^^^^^^^^^^^^^^^ opening-clipped: 1 course above the sill
          opening gate
            from    left 890 mm
            width   235 mm
            height  9 courses
            ^^^^^^^^^^^^^^^^^ opening-clipped: 8 courses above the sill
      `,
      { ways: ['Make it 3 courses high', 'Make it 1 course high', 'Make it 8 courses high'] },
    );
    expect([8 - 5, 8 - 7, 8 - 0]).toEqual([3, 1, 8]);
    expect(found!.severity).toBe('warning');
  });

  test('counts it as high as it says', () => {
    const bricks = (height: string) =>
      jobOf(
        gate(`    from left 665 mm\n    width 910 mm\n    sill 5 courses\n    height ${height}\n`),
        { 'firm.perp': FIRM },
      ).works[0]!.figures.map((f) => f.term.value.toFixed());
    expect(bricks('4 courses')).toEqual(bricks('3 courses'));
    expect(bricks('2 courses')).not.toEqual(bricks('3 courses'));
  });

  test('is not told of an opening up to the very top, below it, or of no height', () => {
    const window = (lines: string) => gate(`    from left 665 mm\n    width 910 mm\n${lines}`);
    // Its sill is above the top: that is said, and not this too.
    silent(window('    sill 8 courses\n    height 4 courses\n'), 'opening-clipped');
    silent(window('    sill 5 courses\n    height 3 courses\n'), 'opening-clipped');
    silent(window('    sill 5 courses\n    height 2 courses\n'), 'opening-clipped');
    silent(window('    sill 5 courses\n'), 'opening-clipped');
    silent(window('    height 8 courses\n'), 'opening-clipped');
  });
});

describe('openings-clash', () => {
  test('is told of an opening that lies across another, and leads to it', () => {
    const [found] = tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  2015 mm
        height  8 courses
        opening a
          from   left 440 mm
          width  910 mm
        opening b
          from   left 665 mm
          ^^^^^^^^^^^^^^^^^^ openings-clash: lies across the opening a
          width  910 mm
    `);
    expect(found!.related.map((r) => r.place.line)).toEqual([7]);
  });

  test('is not told of openings side by side, or one above the other', () => {
    const beside =
      '    from left 440 mm\n    width 235 mm\n  opening b\n    from left 675 mm\n    width 235 mm\n';
    silent(gate(beside), 'openings-clash');
    const above =
      '    from left 440 mm\n    width 235 mm\n    height 3 courses\n  opening b\n    from left 440 mm\n    width 235 mm\n    sill 3 courses\n';
    silent(gate(above), 'openings-clash');
  });
});

describe('opening-width', () => {
  test('is a hint of a gateway: nothing above it has to work to it', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2055 mm
          height  8 courses
          opening gate
            from   left 440 mm
            width  950 mm
                   ^^^^^^ opening-width: 910 mm or 1022.5 mm or 1135 mm would be
      `,
      { ways: ['Make it 910 mm', 'Make it 1022.5 mm', 'Make it 1135 mm'] },
    );
    expect(found!.severity).toBe('hint');
    expect(found!.ways.some((w) => w.preferred)).toBe(false);
    // By hand: so many halves of 112.5 mm, and a joint of 10.
    expect([8, 9, 10].map((n) => n * 112.5 + 10)).toEqual([910, 1022.5, 1135]);
  });

  test('is a warning where courses cross above or below', () => {
    const [run, width] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2055 mm
                  ^^^^^^^ fit-run: from the left end to the right end
          height  8 courses
          opening window
            from   left 440 mm
            width  950 mm
                   ^^^^^^ opening-width: will not line up
            sill   4 courses
      `,
      {
        ways: [
          // Another length would leave the run beside the window not working: after the cut. By hand, with nine
          // joints of 10 mm: eight bricks, a half bat and the cut, 1720 + 102.5 + 142.5 + 90 = 2055; and seven
          // bricks, a half and a three-quarter bat and the cut, 1505 + 102.5 + 158.75 + 198.75 + 90.
          'Cuts of 198.8 mm and 142.5 mm by turns at the middle, joints of 10 mm',
          'Make the wall 2015 mm: the run is 40 mm shorter, 9 bricks',
          'Make the wall 2127.5 mm: the run is 72.5 mm longer, 9½ bricks',
          'Make the wall 2240 mm: the run is 185 mm longer, 10 bricks',
          '9 bricks with joints of 15 mm, wider or tighter than anyone would accept',
          'Make it 910 mm',
          'Make it 1022.5 mm',
          'Make it 1135 mm',
        ],
      },
    );
    expect(run!.code).toBe('fit-run');
    expect(width!.severity).toBe('warning');
    expect(width!.ways.map((w) => w.preferred ?? false)).toEqual([true, false, false]);
  });

  test('is not told of half bricks and a joint', () => {
    for (const width of [910, 1022.5, 1135])
      silent(gate(`    from left 440 mm\n    width ${width} mm\n`), 'opening-width');
  });
});
