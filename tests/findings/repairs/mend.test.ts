/** More mended than there is. */
import { describe, test } from 'vitest';
import { silent, tells } from '../tells';
import { repairWith } from './repair';

describe('mend-over', () => {
  const NORTH = `wall north
          brick   red
          stands  held
          length  2240 mm
          height  12 courses`;

  test('is told of more coping than the wall is long, and of more indents than it is high', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        ${NORTH}
        repair frost
          in        north
          recope    3 m
                    ^^^ mend-over: 3000 mm are mended of the wall north, which is 2240 mm long.
          rebed     40 m
                    ^^^^ mend-over: 43000 mm are mended of the wall north, with what other lines take, which
          tooth-in  15 courses
                    ^^^^^^^^^^ mend-over: 15 courses are mended of the wall north, which is 12 courses high.
      `,
      { ways: ['All of it: 2240 mm', 'Take the line out', 'All of it: 12 courses'] },
    );
  });

  // Faces by hand: 2 × (2240 + 102.5) × 900 mm and a top of 2240 × 102.5; joints 2 × 2342.5 × 12 × (1 + 130/225); bricks (9.96 + 1, up) × 12.
  test('is told of more face, bricks, crack and joints than there are, what other lines take counted', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        material stitch-bar
          price  £5 each
        ${NORTH}
        repair frost
          in        north
          repoint   3 m2
          repoint   2 m2
                    ^^^^ mend-over: 5 m2 are mended of the wall north, with what other lines take, which is 4.44 m2 to look at
          make-good 9 m2 "Render"
                    ^^^^ mend-over: 9 m2 are mended of the wall north, which is 4.44 m2
          repoint   900 m
                    ^^^^^ mend-over: 900000 mm are mended of the wall north, which is jointed for at most
          stitch    3.2 m
                    ^^^^^ mend-over: 3200 mm are mended of the wall north, which is 3140 mm along its length and up its height.
          cut-out   400 bricks
                    ^^^^^^^^^^ mend-over: 400 bricks are mended of the wall north, which is no more than 132 bricks.
      `,
      {
        ways: [
          'What is left: 1.44 m2',
          'All of it: 4.44 m2',
          'All of it: 88702 mm',
          'All of it: 3140 mm',
          'All of it: 132 bricks',
        ],
      },
    );
  });

  test('counts what is built again with what is cut out, and copings with those bedded again', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        material slab "Slab"
          size   600 x 280 x 75 mm
          price  £20 each
        ${NORTH}
        repair frost
          in        north
          rebuild   120 bricks
          cut-out   20 bricks
                    ^^^^^^^^^ mend-over: 140 bricks are mended of the wall north, with what other lines take
          replace   2 pieces slab
          rebed     3 pieces slab
                    ^^^^^^^^ mend-over: 5 pieces are mended of the wall north, with what other lines take, which is covered by 4 pieces of that size.
      `,
      { ways: ['What is left: 12 bricks', 'What is left: 2 pieces'] },
    );
  });

  test('a line that leaves nothing for another is the way out: to take that one out', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        ${NORTH}
        repair frost
          in        north
          rebuild   12 courses
          cut-out   60 bricks
                    ^^^^^^^^^ mend-over: 168 bricks are mended of the wall north
        pier gate
          brick   red
          size    1.5 x 1.5 bricks
          height  12 courses
          number  2
        material hat "Cap"
          size   400 x 400 x 60 mm
          price  £20 each
        repair caps
          in       gate
          replace  2 pieces hat
          rebed    1 piece hat
                   ^^^^^^^ mend-over: 3 pieces are mended of the pier gate, with what other lines take, which is covered by 2 pieces of that size.
      `,
      { ways: ['What is left: 24 bricks', 'Take the line out'] },
    );
  });

  test('is not told of all of it, nor where nothing says how much stands', () => {
    const some =
      'repoint 4.4 m2\n  stitch 3.1 m\n  cut-out 100 bricks\n  make-good 4.4 m2 "Render"';
    silent(
      `perpend 1\nuse "firm.perp"\n${NORTH}\nrepair frost\n  in north\n  ${some}\n`.replaceAll(
        /^ {8}/gm,
        '',
      ),
      'mend-over',
    );
    const all = 'recope 1.24 m\n  rebed 1005 mm\n  tooth-in 12 courses';
    silent(
      `perpend 1\nuse "firm.perp"\n${NORTH}\nrepair frost\n  in north\n  ${all}\n`.replaceAll(
        /^ {8}/gm,
        '',
      ),
      'mend-over',
    );
    silent(repairWith('recope 90 m\ntooth-in 900 courses'), 'mend-over');
  });
});
