/** What is told of a repair that says nothing, too much, or what cannot be. */
import { describe, test } from 'vitest';
import { read } from '../../tree';
import { FIRM, silent, tells } from '../tells';

const job = (lines: string) =>
  `perpend 1\nuse "firm.perp"\nrepair frost\n  brick red\n${lines
    .split('\n')
    .map((line) => `  ${line.trim()}\n`)
    .join('')}`;

describe('repair-nothing', () => {
  test('is told of a repair that does not say what is done', () => {
    tells(`
        perpend 1
        use "firm.perp"
        repair frost
               ^^^^^ repair-nothing: It takes one of rebuild
          brick  red
      `);
  });

  test('is not told of one that does, nor of one without a line yet', () => {
    silent(job('make-good 1 m2 "Render"'), 'repair-nothing');
    silent('perpend 1\nuse "firm.perp"\nrepair frost\n', 'repair-nothing');
  });
});

describe('salvage-over', () => {
  test('is told of more bricks salvaged than come down', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair frost
          brick    red
          rebuild  60 bricks
          salvage  50..70 bricks
                   ^^^^^^^^^^^^^ salvage-over: 70 bricks are salvaged, and only 60 come down.
      `,
      { ways: ['All that come down: 60 bricks'] },
    );
  });

  test('is told of halves of bricks that are laid again whole', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair frost
          brick    red
          thick    1 brick
          bond     english
          rebuild  60 bricks
          salvage  80%
          halves   25%
                   ^^^ salvage-over: 15 bricks are to leave a half, and after those that are laid again 12 are left
      `,
      { ways: ['Keep 12 halves'] },
    );
  });

  test('is not told of all that comes down, nor where how much does is not known', () => {
    silent(job('rebuild 60 bricks\nsalvage 60 bricks'), 'salvage-over');
    silent(job('rebuild 60 bricks\nsalvage 80%\nhalves 20%'), 'salvage-over');
    silent(job('rebuild ? x 4 courses\nsalvage 60 bricks'), 'salvage-over');
  });
});

describe('halves-homeless', () => {
  test('is told where every brick shows', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair frost
          brick    red
          rebuild  60 bricks
          halves   10
          ^^^^^^^^^^^ halves-homeless: 10 of 10 halves are left over
      `,
      { ways: ['Take the line out'] },
    );
  });

  test('is told of more halves than a core has places for', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair gate
          brick    red
          size     1.5 x 1.5 bricks
          rebuild  6 courses
          halves   40%
          ^^^^^^^^^^^^ halves-homeless: There are 6 places for halves in the core. 4 of 10 halves are left over
      `,
      { ways: ['Keep 6 halves'] },
    );
  });

  test('is told of a core that is filled with concrete', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair gate
          brick    red
          size     2 x 2 bricks
          core     concrete
          rebuild  16 courses
          salvage  50%
          halves   20
          ^^^^^^^^^^^ halves-homeless: 20 of 20 halves are left over
      `,
      { ways: ['Take the line out'] },
    );
  });

  test('is not told of as many as have a place', () => {
    silent(job('thick 1 brick\nbond english\nrebuild 60 bricks\nhalves 30'), 'halves-homeless');
  });
});

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
    silent(job('rebuild 300 m x 90 courses'), 'rebuild-over');
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
    silent(job('recope 90 m\ntooth-in 900 courses'), 'mend-over');
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
    silent(job('size 1.5 x 1.5 bricks\nrebuild 20 courses'), 'lift');
  });
});

describe('rake-shallow', () => {
  test('is told of joints raked less than twice their width', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair north
          brick    red
          repoint  2 m2 raked 12 mm
                              ^^^^^ rake-shallow: Joints 10 mm wide are raked 2 times as deep, 20 mm
      `,
      { ways: ['Rake 20 mm'] },
    );
  });

  test('is not told of deep enough, nor of a depth that is left to the defaults', () => {
    silent(job('repoint 2 m2 raked 20 mm\nrepoint 35 m raked 25 mm\nrepoint 1 m2'), 'rake-shallow');
  });
});

describe('stitch-bars', () => {
  /** The British library, but for that one line. */
  const BARE = read('server/library/uk.perp').replace(/^ {2}crack-stitch .*\n/m, '');
  const OWN = FIRM.replace('use uk', 'use "bare.perp"');
  const NO_BARS = 'perpend 1\nuse "own.perp"\nuse world\nrepair frost\n  brick red\n  stitch 2 m\n';

  test('is told where no defaults say with what a crack is stitched', () => {
    const marked = NO_BARS.replace(
      '  stitch 2 m\n',
      '  stitch 2 m\n  ^^^^^^^^^^ stitch-bars: No defaults give a crack-stitch\n',
    );
    tells(marked, { files: { 'bare.perp': BARE, 'own.perp': OWN } });
  });

  test('is not told where a library does', () => {
    silent(job('stitch 2 m'), 'stitch-bars');
  });
});

describe('line-idle', () => {
  test('is told of halves where nothing comes down', () => {
    tells(`
        perpend 1
        use "firm.perp"
        repair frost
          brick    red
          cut-out  3 bricks
          halves   3
          ^^^^^^^^^^ line-idle: Nothing comes down here, so no halves are kept
      `);
  });

  test('is not told of a brick that runs into indents', () => {
    silent(job('tooth-in 9 courses\nmatch red'), 'line-idle');
  });
});
