import { describe, expect, test } from 'vitest';
import { jobOfWall } from '../harness/walls';
import { afterWay, findingsOf, silent, tells } from './tells';

const wall = (lines: string, length = 5390, thick = '1/2 brick', bond = 'stretcher') =>
  jobOfWall(
    { length: `${length} mm`, height: '20 courses', facts: `  thick ${thick}\n  bond ${bond}\n` },
    lines,
  );

const pier = (at: string, more = '', size = '1 x 1 bricks', side = 'back') =>
  `  pier p\n    at ${at}\n    size ${size}\n    projects ${side}\n${more}`;

describe('pier-flush', () => {
  test('is told of an attached pier no deeper than its wall, and offers half a brick more', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          bond    english
          thick   1 brick
          length  5390 mm
          height  8 courses
          pier p
            at        left 2475 mm
            size      2 x 1 bricks
            projects  back
            ^^^^^^^^^^^^^^ pier-flush: The pier p does not stand out of its wall: its second size counts the wall’s own thickness in, which is 1 brick
      `,
      { ways: ['Make it 2 x 1.5 bricks'] },
    );
  });

  test('is told where both sides cannot have the same', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          bond    english
          thick   1 brick
          length  5390 mm
          height  8 courses
          pier p
            at        left 2475 mm
            size      2 x 1.5 bricks
            projects  both
            ^^^^^^^^^^^^^^ pier-flush: as far on one side as on the other
      `,
      { ways: ['Make it 2 x 2 bricks'] },
    );
  });

  test('is not told of piers that stand out half a brick or a whole one, on either side or both', () => {
    for (const side of ['front', 'back'])
      for (const size of ['2 x 1.5 bricks', '2 x 2 bricks', '440 x 327.5 mm'])
        silent(
          wall(pier('left 2475 mm', '', size, side), 5390, '1 brick', 'english'),
          'pier-flush',
        );
    silent(
      wall(pier('left 2475 mm', '', '2 x 2 bricks', 'both'), 5390, '1 brick', 'english'),
      'pier-flush',
    );
  });
});

describe('pier-unbonded', () => {
  test('is told of a pier that stands between the joints of its wall, and where it would not', () => {
    const text = wall(pier('left 2520 mm'), 5390);
    const [found] = findingsOf('pier-unbonded', text);
    expect(found!.place).toMatchObject({ line: 12, start: 4 });
    // By hand: 22 and 23 half bricks of 112.5 mm.
    expect([22 * 112.5, 23 * 112.5]).toEqual([2475, 2587.5]);
    expect(found!.ways.map((w) => w.title)).toEqual([
      'Move it to 2475 mm from the left',
      'Move it to 2587.5 mm from the left',
    ]);
    for (const way of found!.ways) silent(afterWay(text, way.edits), 'pier-unbonded');
  });

  test('is told of a wall thicker than a brick', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        bond    english
        thick   1.5 bricks
        length  5390 mm
        height  8 courses
        pier p
          at        left 2475 mm
          size      2 x 2 bricks
          projects  back
          ^^^^^^^^^^^^^^ pier-unbonded: walls of half a brick and one brick are looked at
    `);
  });

  test('is told of a pier where the top of its wall steps down, and how high it may be bonded', () => {
    // 12 courses left of it and 8 right of it.
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          bond    english
          thick   1 brick
          length  5390 mm
          height  12 courses
          top     steps at 2915 mm down 4 courses
          pier p
            at        left 2475 mm
            size      2 x 1.5 bricks
            projects  back
            ^^^^^^^^^^^^^^ pier-unbonded: above 8 courses there is wall on one side of it only
      `,
      { ways: ['Build it 8 courses high'] },
    );
  });

  test('and what it says of a height is written in its line', () => {
    const text = `${wall(pier('left 2250 mm', '    height 22 courses\n', '2 x 1.5 bricks'), 4490, '1 brick', 'english')}  top steps at 2690 mm down 4 courses\n`;
    const [found] = findingsOf('pier-unbonded', text);
    const after = afterWay(text, found!.ways[0]!.edits);
    expect(after).toContain('    height 16 courses\n');
    silent(after, 'pier-unbonded');
  });

  test('is not told of a step farther off than its wall is laid beside it', () => {
    const text = `${wall(pier('left 2250 mm', '', '2 x 1.5 bricks'), 5390, '1 brick', 'english')}  top steps at 4037.5 mm down 4 courses\n`;
    silent(text, 'pier-unbonded');
  });

  test('is not told of piers on the joints of their wall', () => {
    for (const [thick, bond, size] of [
      ['1/2 brick', 'stretcher', '1 x 1 bricks'],
      ['1/2 brick', 'stretcher', '1.5 x 1 bricks'],
      ['1 brick', 'english', '2 x 1.5 bricks'],
      ['1 brick', 'flemish', '2 x 1.5 bricks'],
      ['1 brick', 'english-garden-wall', '2 x 1.5 bricks'],
    ] as const)
      for (const at of ['left', 'right', 'left 2475 mm', 'right 2362.5 mm'])
        silent(wall(pier(at, '', size), 5390, thick, bond), 'pier-unbonded');
  });
});

describe('pier-spacing', () => {
  test('is told of attached piers of a half-brick wall further apart than 3 m', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  9440 mm
        ^^^^^^^^^^^^^^^ pier-spacing: It is 4280 mm between two piers; piers of a wall half a brick thick stand at most 3000 mm apart and from its ends (Collinson
        height  20 courses
        pier p
          at        left 2475 mm
          size      1 x 1 bricks
          projects  back
        pier q
          at        right 2470 mm
          size      1 x 1 bricks
          projects  back
    `);
    // By hand: 9440 less 2475 and 2470, less half a pier twice.
    expect(9440 - 2475 - 2470 - 215).toBe(4280);
  });

  test('is not told of 3 m and less, of a wall without attached piers, nor of one a brick thick', () => {
    silent(wall(pier('left 2587.5 mm')), 'pier-spacing');
    silent(wall('', 9440), 'pier-spacing');
    silent(
      wall(pier('left 2475 mm', '', '2 x 1.5 bricks'), 9440, '1 brick', 'english'),
      'pier-spacing',
    );
  });
});

describe('pier-projection', () => {
  const small = (width: number, length: number) =>
    `brick small\n  size ${length} x ${width} x 50 mm\n  joint 10 mm\n  price £1 each\n`;

  test('is told of a pier of small bricks that stands out less than 100 mm', () => {
    tells(`
      perpend 1
      use "firm.perp"
      brick small
        size   150 x 70 x 50 mm
        joint  10 mm
        price  £1 each
      wall north
        brick   small
        stands  held
        length  2550 mm
        height  8 courses
        pier p
          at        left 1200 mm
          size      1 x 1 bricks
          ^^^^^^^^^^^^^^^^^^^^^^ pier-projection: stands 80 mm out of its wall; 100 mm is the least that strengthens it (Collinson
          projects  back
    `);
    // By hand: two bricks on their widths and a joint, 150, less the wall’s 70.
    expect(70 + 10 + 70 - 70).toBe(80);
  });

  test('is not told of half a brick of a usual size', () => {
    silent(wall(pier('left 2475 mm')), 'pier-projection');
    const text = `${small(90, 190)}${wall(pier('left 1200 mm'), 2590).replace('brick red', 'brick small').replace('perpend 1\nuse "firm.perp"\n', '')}`;
    silent(`perpend 1\nuse "firm.perp"\n${text}`, 'pier-projection');
  });
});

describe('pier-low', () => {
  test('is told of a pier that stops more than three thicknesses under the top, and offers how high', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          bond    english
          thick   1 brick
          length  5390 mm
          height  20 courses
          pier p
            at        left 2475 mm
            size      2 x 1.5 bricks
            projects  back
            height    11 courses
            ^^^^^^^^^^^^^^^^^^^^ pier-low: stops 675 mm under the top of its wall; 645 mm, 3 times the wall’s thickness
      `,
      { ways: ['Build it 12 courses high'] },
    );
    // Collinson: a one-brick wall, 215 mm, no lower than 645 mm from its top. Eight courses of 75 are 600.
    expect([3 * 215, (20 - 11) * 75, (20 - 12) * 75]).toEqual([645, 675, 600]);
  });

  test('is not told of one that goes high enough, or to the top', () => {
    for (const more of ['', '    height 20 courses\n', '    height 12 courses\n'])
      silent(
        wall(pier('left 2475 mm', more, '2 x 1.5 bricks'), 5390, '1 brick', 'english'),
        'pier-low',
      );
  });
});

describe('pier-slender', () => {
  test('is told of a pier alone that is higher than eight times its narrower side', () => {
    tells(`
      perpend 1
      use "firm.perp"
      pier gate
        brick   red
        size    2 x 1 bricks
        height  1725 mm
        ^^^^^^^^^^^^^^^ pier-slender: 1725 mm is more than 8 times the 215 mm of its narrower side
        ^^^^^^^^^^^^^^^ lift: 
    `);
    // Bailey and Hancock, Brickwork 2 and Associated Studies, 1990: eight times the least dimension. 23 courses.
    expect([8 * 215, 23 * 75]).toEqual([1720, 1725]);
  });

  test('is not told of one that is lower or wider', () => {
    const gate = (size: string, height: string) =>
      `perpend 1\nuse "firm.perp"\npier gate\n  brick red\n  size ${size}\n  height ${height}\n`;
    silent(gate('2 x 1 bricks', '22 courses'), 'pier-slender');
    silent(gate('1.5 x 1.5 bricks', '34 courses'), 'pier-slender');
  });
});

describe('core-idle', () => {
  test('is told of a core in a pier of which every brick shows', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        pier gate
          brick   red
          size    2 x 1 bricks
          height  12 courses
          core    concrete
          ^^^^^^^^^^^^^^^^ core-idle: A pier of 2 x 1 bricks has no core
      `,
      { ways: ['Take the line out'] },
    );
  });

  test('is not told of a pier with a core', () => {
    for (const fill of ['bricks', 'halves', 'bats', 'concrete', 'hollow'])
      silent(
        `perpend 1\nuse "firm.perp"\npier g\n  brick red\n  size 1.5 x 2 bricks\n  height 12 courses\n  core ${fill}\n`,
        'core-idle',
      );
  });
});
