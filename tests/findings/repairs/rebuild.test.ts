/** What is built again, where it stands, and what is in it. */
import { describe, test } from 'vitest';
import { silent, tells } from '../tells';
import { repairWith } from './repair';

describe('rebuild-over', () => {
  const NORTH = `wall north
          brick   red
          stands  held
          length  2240 mm
          height  12 courses
          pier stub
            at        left
            size      1 x 1 bricks
            projects  back
            height    14 courses`;

  test('is told of more than the wall is long', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        ${NORTH}
        repair frost
          in       north
          rebuild  3 m x 9 courses
                   ^^^ rebuild-over: 3000 mm are built again of the wall north, which is 2240 mm long.
      `,
      { ways: ['All of it: 2240 mm'] },
    );
  });

  test('is told of more courses than the wall is high', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        ${NORTH}
        repair frost
          in       north
          rebuild  1.35 m x 1.2 m
                            ^^^^^ rebuild-over: 16 courses are built again of the wall north, which is 12 courses high.
      `,
      { ways: ['All of it: 12 courses'] },
    );
  });

  test('is told of more courses than a pier has', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        ${NORTH}
        repair knocked
          in       north stub
          rebuild  15 courses
                   ^^^^^^^^^^ rebuild-over: 15 courses are built again of the pier stub, which is 14 courses high.
      `,
      { ways: ['All of it: 14 courses'] },
    );
  });

  test('is told of a pier of the file by its own name', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        pier g
          brick   red
          size    1.5 x 1.5 bricks
          height  12 courses
        repair r1
          in       g
          rebuild  40 courses
                   ^^^^^^^^^^ rebuild-over: 40 courses are built again of the pier g, which is 12 courses high.
      `,
      { ways: ['All of it: 12 courses'] },
    );
  });

  test('is not told of the whole of it, nor where nothing says how much stands', () => {
    const within = (rebuild: string) =>
      `perpend 1\nuse "firm.perp"\n${NORTH}\nrepair frost\n  in north\n  rebuild ${rebuild}\n`.replaceAll(
        /^ {8}/gm,
        '',
      );
    silent(within('2240 mm x 12 courses'), 'rebuild-over');
    silent(within('2.25 m x 0.9 m'), 'rebuild-over');
    silent(repairWith('rebuild 300 m x 90 courses'), 'rebuild-over');
  });
});

describe('rebuild-openings', () => {
  const GATED = `wall north
          brick   red
          stands  held
          length  4490 mm
          height  12 courses
          opening gate
            from   left 1800 mm
            width  910 mm
            sill   4 courses`;

  test('is told of more than stands anywhere beside the openings', () => {
    tells(`
        perpend 1
        use "firm.perp"
        ${GATED}
        repair frost
          in       north
          rebuild  3 m x 9 courses
          ^^^^^^^^^^^^^^^^^^^^^^^^ rebuild-openings: 3000 mm by 9 courses of the wall north is more than stands anywhere clear of its openings
      `);
  });

  test('is not told of what fits beside, below or above them, nor of the whole length', () => {
    const low = `${GATED}\n            height 4 courses`;
    const within = (rebuild: string) =>
      `perpend 1\nuse "firm.perp"\n${low}\nrepair frost\n  in north\n  rebuild ${rebuild}\n`.replaceAll(
        /^ {8}/gm,
        '',
      );
    for (const rebuild of [
      '1.35 m',
      '3 m x 4 courses',
      '3 m x 3 courses',
      '9 courses',
      '20 bricks',
    ])
      silent(within(rebuild), 'rebuild-openings');
    silent(within('5 m x 9 courses'), 'rebuild-openings');
  });
});

describe('pier-elsewhere', () => {
  const TWO = (name: string) => `wall ${name}
          brick   red
          stands  held
          length  2240 mm
          height  12 courses`;
  const PIER = `
          pier stub
            at        left
            size      1 x 1 bricks
            projects  back`;

  test('is told of a pier that another wall has', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        ${TWO('north')}
        ${TWO('south')}${PIER}
        repair knocked
          in       north stub
                         ^^^^ pier-elsewhere: The wall north has no pier stub: that is a pier of south.
          rebuild  5 courses
          ^^^^^^^^^^^^^^^^^^ incomplete: the size of the pier that knocked is in is not known
      `,
      { ways: ['In south'] },
    );
  });

  test('is not told of its own', () => {
    const text = `perpend 1\nuse "firm.perp"\n${TWO('north')}\n${TWO('south')}${PIER}\nrepair knocked\n  in south stub\n  rebuild 5 courses\n`;
    silent(text.replaceAll(/^ {8}/gm, ''), 'pier-elsewhere');
  });
});

describe('lift', () => {
  test('is told of more built again than goes up in a day', () => {
    tells(`
        perpend 1
        use "firm.perp"
        repair gate
          brick    red
          size     1.5 x 1.5 bricks
          rebuild  22 courses
          ^^^^^^^^^^^^^^^^^^^ lift: 1650 mm is more than the 1500 mm that is built up in a day
      `);
  });

  test('is not told of less', () => {
    silent(repairWith('size 1.5 x 1.5 bricks\nrebuild 20 courses'), 'lift');
  });
});
