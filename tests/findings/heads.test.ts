import { describe, expect, test } from 'vitest';
import { placeCourse } from '../../server/engine/setting-out';
import { jobView } from '../../server/engine/views/job-view';
import { jobOf } from '../engine/world';
import { jobOfWall } from '../harness/walls';
import { FIRM, findingsIn, silent, tells } from './tells';

/** Ten bricks of half-brick wall with a window of four bricks and a joint between six halves on each side. */
const window = (lines: string, wall = '') =>
  jobOfWall(
    { length: '2240 mm', height: '14 courses' },
    `${wall}  opening window
    from    left 665 mm
    width   910 mm
    sill    2 courses
    height  4 courses
${lines}`,
  );

const at = (marked: string, wall = '') => window(marked, wall);

describe('head-missing', () => {
  test('is told of an opening with courses over it and nothing that carries them', () => {
    const [found] = tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  2240 mm
        height  14 courses
        opening window
        ^^^^^^^^^^^^^^ head-missing: what carries the 8 courses over the opening window
          from    left 665 mm
          width   910 mm
          sill    2 courses
          height  4 courses
    `);
    expect(found!.severity).toBe('information');
  });

  test('is not told where a line says it, or there is nothing to carry', () => {
    silent(window('    lintel 100 x 65 mm slab\n'), 'head-missing');
    silent(window('    head soldier\n'), 'head-missing');
    silent(window('').replace('    height  4 courses\n', ''), 'head-missing');
  });
});

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
      at(`    lintel  100 x 65 mm slab
    head    soldier
    ^^^^^^^^^^^^^^^ head-room: takes 4 courses over the opening window, and the wall has 3 courses there
`).replace('14 courses', '9 courses'),
      { ways: ['Make the wall 10 courses high', 'Make the opening 3 courses high'] },
    );
  });

  test('is not told of one that just goes in', () => {
    silent(
      window('    lintel 100 x 65 mm slab\n    head soldier\n').replace('14 courses', '10 courses'),
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
    const told = findingsIn(near).filter(({ code }) => code === 'head-near');
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
      at(
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
    expect(bricks(window(`    lintel 100 x 65 mm slab\n${pier}`))).toBe(bricks(window(pier)));
  });

  test('is not told of a pier that ends under the lintel and carries it', () => {
    const pier = '  pier side\n    at window left\n    size 1 x 1 bricks\n    height 6 courses\n';
    silent(window(`    lintel 100 x 65 mm slab\n${pier}`), 'head-clash');
  });
});

describe('head-size', () => {
  test('is told of what is larger than anything that is laid', () => {
    tells(
      at(`    head    segmental rise 200 mm rings 40
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ head-size: up to 400 courses and 12 rings
`),
    );
    tells(
      at(`    lintel  100 x 99000 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^ head-size: Nothing so large
`),
    );
    silent(window('    head segmental rise 200 mm rings 3\n'), 'head-size');
  });
});

describe('head-height', () => {
  test('is told of a lintel between courses, and of heights that are whole ones', () => {
    // (100 + 10) / 75 is a course and a half: 150 - 110 = 40 mm are left, and a bed of 10 in them.
    tells(
      at(`    bearing 150 mm
    lintel  100 x 100 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^^ head-height: A lintel 100 mm high does not work in courses of 75 mm: with its bed it is 40 mm short of 2 courses. Bricks cut to 30 mm high
`),
      {
        ways: [
          'A lintel 65 mm high',
          'A lintel 140 mm high',
          'Keep it, with bricks cut to 30 mm on it',
        ],
      },
    );
  });

  test('is told of bricks on edge, a course and a half high, where soldiers are three courses', () => {
    tells(
      at(`    bearing 150 mm
    lintel  angle slab
    head    brick-on-edge
    ^^^^^^^^^^^^^^^^^^^^^ head-height: A course of bricks on edge does not work in courses of 75 mm: with its bed it is 37.5 mm short of 2 courses
`),
      { ways: ['Soldiers instead', 'Keep it, with bricks cut to 27.5 mm on it'] },
    );
    expect(2 * 75 - (102.5 + 10)).toBe(37.5);
    expect(3 * 75 - (215 + 10)).toBe(0);
  });

  test('is not told of what is decided, or within the beds that are accepted', () => {
    const kept = '    lintel 100 x 100 mm slab\n    fit lintel-height cut\n';
    silent(window(kept), 'head-height');
    silent(window(kept), 'fit-idle');
    silent(window('    lintel 100 x 67 mm slab\n'), 'head-height');
  });

  test('a decision that answers nothing is told', () => {
    tells(
      at(`    bearing 150 mm
    lintel  100 x 65 mm slab
    fit     lintel-height cut
    ^^^^^^^^^^^^^^^^^^^^^^^^^ fit-idle: works without a decision
`),
      { ways: ['Take the line out'] },
    );
  });
});

describe('head-unsupported', () => {
  test('is told of soldiers with nothing under them', () => {
    const [found] = tells(
      at(`    head    soldier
    ^^^^^^^^^^^^^^^ head-unsupported: Soldiers carry nothing
`),
      { ways: ['Carry them on a steel angle'] },
    );
    expect(found!.severity).toBe('warning');
  });

  test('is not told over an angle or a lintel', () => {
    silent(window('    head soldier\n    lintel angle slab\n'), 'head-unsupported');
    silent(window('    head soldier\n    lintel 100 x 65 mm slab\n'), 'head-unsupported');
  });
});

describe('fit-head', () => {
  const slit = (lines: string) => `perpend 1
use "firm.perp"
wall north
  brick   red
  stands  held
  length  1227.5 mm
  height  10 courses
  opening slit
    from     left 440 mm
    width    347.5 mm
    sill     2 courses
    height   4 courses
    lintel   100 x 65 mm slab
${lines}`;

  test('is told of a sill that bricks on edge do not fill, with what would', () => {
    // By hand: 4 x 75 and a joint at either end leave 27.5; 5 x 75 + 10 is 37.5 too long; 4 spread out leave (347.5 - 260) / 5.
    tells(
      slit(`    bearing  150 mm
    subsill  brick-on-edge
    ^^^^^^^^^^^^^^^^^^^^^^ fit-head: Bricks on edge do not fill 347.5 mm: each takes 75 mm with its joint; 4 bricks on edge leave a gap of 27.5 mm, 5 are 37.5 mm too long, and 4 spread out have joints of 17.5 mm
`),
      {
        ways: [
          '3 whole bricks on edge and 2 cuts of 50 mm at the middle, joints of 8.8 mm',
          'Make the opening 310 mm wide: 4 in whole bricks',
          'Make the opening 385 mm wide: 5 in whole bricks',
          '4 bricks on edge with joints of 17.5 mm, wider or tighter than anyone would accept',
        ],
      },
    );
  });

  test('is told of soldiers, whose lintel may bear further', () => {
    // 347.5 + 2 x 140 = 627.5, the joints at its ends being the wall’s: 8 take 8 x 75 - 10 = 590, and 9 take 665.
    // By hand: 8 spread out have joints of (627.5 - 8 x 65) / 7 = 15.4; 7 whole and 2 of 50 have (627.5 - 555) / 8 = 9.1.
    tells(
      slit(`    bearing  140 mm
    head     soldier
    ^^^^^^^^^^^^^^^^ fit-head: Soldiers do not fill 627.5 mm
`),
      {
        ways: [
          'A bearing of 121.3 mm: 8 in whole bricks',
          'A bearing of 158.8 mm: 9 in whole bricks',
          '7 whole soldiers and 2 cuts of 50 mm at the middle, joints of 9.1 mm',
          '8 soldiers with joints of 15.4 mm, wider or tighter than anyone would accept',
        ],
      },
    );
    silent(slit('    head     soldier\n    bearing  120 mm\n'), 'fit-head');
  });
});

describe('bearing-short', () => {
  test('is told of a lintel that bears less than the table asks for its span', () => {
    tells(
      at(`    lintel   100 x 65 mm slab
    bearing  75 mm
    ^^^^^^^^^^^^^^ bearing-short: bears 75 mm on each side of an opening 910 mm wide, less than the 100 mm asked for
`),
      { ways: ['Bear 100 mm'] },
    );
    tells(
      at(`    lintel  100 x 65 x 1060 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ bearing-short: bears 75 mm
`),
      { ways: ['A lintel 1110 mm long'] },
    );
  });

  test('is an error of a lintel no longer than its opening, which is left out: no price is complete', () => {
    const [found] = tells(
      at(`    lintel  100 x 65 x 600 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ bearing-short: A lintel 600 mm long bears on nothing over an opening 910 mm wide: it is left out
`),
      { ways: ['A lintel 1110 mm long'] },
    );
    expect(found!.severity).toBe('error');
    const job = (lintel: string) =>
      jobOf(window(`    lintel ${lintel} slab\n`), { 'firm.perp': FIRM });
    const open = (lintel: string) =>
      jobView(job(lintel)).totals.some((f) => f.id === 'job.price' && !f.complete);
    expect([open('100 x 65 x 910 mm'), open('100 x 65 x 1110 mm')]).toEqual([true, false]);
    const pieces = job('100 x 65 x 910 mm').works[0]!.needs.pieces;
    expect(pieces.filter((p) => p.material === 'slab')).toEqual([]);
  });

  test('nor may a bearing be nought, or hide that the lintel is too short', () => {
    const told = (lines: string) =>
      findingsIn(window(lines)).filter((f) => f.code === 'bearing-short');
    const [nought] = told('    lintel 100 x 65 mm slab\n    bearing 0 mm\n');
    expect([nought!.severity, nought!.ways.map((w) => w.title)]).toEqual([
      'error',
      ['Bear 100 mm'],
    ]);
    const [hidden] = told('    lintel 100 x 65 x 600 mm slab\n    bearing 150 mm\n');
    expect(hidden!.severity).toBe('error');
    // 910 + 2 x 150 = 1210.
    expect(hidden!.ways.map((w) => w.title)).toEqual(['A lintel 1210 mm long']);
  });

  test('is not told from the least bearing up: 100 mm to 1.2 m, 150 mm over it (NHBC Standards 2020, 6.1.12, Table 5)', () => {
    const wide = (bearing: number) =>
      window(`    lintel 100 x 65 mm slab\n    bearing ${bearing} mm\n`)
        .replace('width   910 mm', 'width   1247.5 mm')
        .replace('2240 mm', '2577.5 mm');
    silent(window('    lintel 100 x 65 mm slab\n    bearing 100 mm\n'), 'bearing-short');
    silent(window('    lintel 100 x 65 mm slab\n'), 'bearing-short');
    silent(wide(150), 'bearing-short');
    const codes = jobOf(wide(149), { 'firm.perp': FIRM }).findings.map((f) => f.code);
    expect(codes).toContain('bearing-short');
  });
});

describe('lintel-narrow', () => {
  const thick = '  thick   1 brick\n  bond    english\n';

  test('is told of one lintel under half of a wall (NHBC Standards 2020, 6.1.12: at most 25 mm hang over)', () => {
    // 215 - 140 = 75 mm; two of 100 and the joint between them leave 5.
    tells(
      at(
        `    bearing 130 mm
    lintel  140 x 65 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^ lintel-narrow: under a wall 215 mm thick: 75 mm of it hangs over, more than the 25 mm
`,
        thick,
      ),
      { ways: ['2 lintels 100 mm wide'] },
    );
    silent(window('    lintel 100 x 65 mm slab\n', thick), 'lintel-narrow');
    silent(window('    lintel 215 x 65 mm slab\n', thick), 'lintel-narrow');
    silent(window('    lintel 100 x 65 mm slab\n'), 'lintel-narrow');
  });
});

describe('head-span', () => {
  test('is told of an opening wider than anyone takes without advice', () => {
    const [found] = tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  3252.5 mm
        height  9 courses
        opening bay
          from    left 665 mm
          width   1922.5 mm
          height  4 courses
          lintel  100 x 65 mm slab
          ^^^^^^^^^^^^^^^^^^^^^^^^ head-span: is 1922.5 mm wide. Over 1800 mm have what spans it
    `);
    expect(found!.message).toContain('structural engineer');
    expect(found!.severity).toBe('warning');
  });

  test('is not told up to there, nor where nothing is said to span it', () => {
    silent(window('    lintel 100 x 65 mm slab\n'), 'head-span');
  });
});

describe('arch-rise', () => {
  test('is told of a rise over half the span, and under an eighth of it', () => {
    tells(
      at(`    head    segmental rise 460 mm rings 2
                           ^^^^^^ arch-rise: at 455 mm it is a semicircle
`),
      { ways: ['Make it a semicircle'] },
    );
    // 910 / 8 = 113.75, marked out at 115.
    tells(
      at(`    head    segmental rise 100 mm
                           ^^^^^^ arch-rise: over 910 mm it rises at least 115 mm
`),
      { ways: ['Make it rise 115 mm'] },
    );
    silent(window('    head segmental rise 115 mm\n'), 'arch-rise');
  });
});

describe('arch-joint', () => {
  test('is told of a rough arch whose joints gape at the back, with an axed one and a flatter one for it', () => {
    tells(
      at(`    head    semicircular
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
    silent(window('    head segmental rise 115 mm\n'), 'arch-joint');
    silent(window('    head semicircular\n    fit arch cut\n'), 'arch-joint');
    silent(window('    head semicircular\n    fit arch joints\n'), 'arch-joint');
    silent(window('    head semicircular\n    fit arch cut\n'), 'fit-idle');
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
    silent(window('    head segmental rise 115 mm\n'), 'arch-thin');
  });
});

describe('line-idle', () => {
  test('is told of a lintel under an arch, a bearing and a centre of nothing', () => {
    tells(
      at(`    head     segmental rise 115 mm
    lintel   100 x 65 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^^ line-idle: the lintel is left out
    bearing  100 mm
    ^^^^^^^^^^^^^^^ line-idle: no lintel here
`),
    );
    tells(
      at(`    bearing  150 mm
    lintel   100 x 65 mm slab
    centre   slab
    ^^^^^^^^^^^^^ line-idle: no arch here
`),
    );
  });
});

describe('incomplete', () => {
  test('is told of a rise and a bearing that are still to be measured', () => {
    tells(
      at(`    head    segmental rise ? rings 2
                           ^ incomplete: the rise of the opening window is still to be measured
`),
    );
    tells(
      at(`    lintel   100 x 65 mm slab
    bearing  ?
             ^ incomplete: the bearing of the opening window is still to be measured
`),
    );
  });
});

describe('head-brick', () => {
  const small = 'brick small\n  size 190 x 90 x 50 mm\n  joint 10 mm\n  price £1 each\n';

  test('is told of a head in a brick of another size', () => {
    tells(`
      perpend 1
      use "firm.perp"
      brick small
        size   190 x 90 x 50 mm
        joint  10 mm
        price  £1 each
      wall north
        brick   red
        stands  held
        length  2240 mm
        height  14 courses
        opening window
          from    left 665 mm
          width   910 mm
          sill    2 courses
          height  4 courses
          head    segmental brick small rise 130 mm
                                  ^^^^^ head-brick: small is of another size than the wall’s brick
    `);
  });

  test('is not told of one of the same size, nor of the wall’s own', () => {
    for (const lines of ['    head soldier brick engineering\n', '    head soldier\n'])
      silent(window(lines), 'head-brick');
    silent(window('    subsill brick-on-edge brick engineering\n'), 'head-brick');
    expect(
      findingsIn(
        window('    subsill brick-on-edge brick small\n').replace(
          'wall north',
          `${small}wall north`,
        ),
      ).map((f) => f.code),
    ).toContain('head-brick');
  });

  test('says that no line can tell it how many there are', () => {
    const text = window('    subsill brick-on-edge brick small\n').replace(
      'wall north',
      `${small}wall north`,
    );
    const found = findingsIn(text).find((f) => f.code === 'head-brick');
    expect(found!.message).toContain('No line can say how many it really takes');
  });
});
