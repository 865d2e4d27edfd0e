import { describe, expect, test } from 'vitest';
import { jobOfWall } from '../harness/walls';
import { afterWay, BONDED_IN, findingsIn, findingsOf, silent, tells } from './tells';

const wall = (lines: string) =>
  jobOfWall(
    { length: '2140 mm' },
    `  opening gate\n    from left 665 mm\n    width 910 mm\n${lines}`,
  );

describe('pier-homeless', () => {
  test('is told of a pier that stands nowhere, and where it can', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  1790 mm
        height  8 courses
        pier a
        ^^^^^^ pier-homeless: It is not said where it stands. It can be at left or at right
          size  1 x 1 bricks
        pier b
          at    gate left
          ^^^^^^^^^^^^^^^ pier-homeless: no place in this wall
          size  1 x 1 bricks
        pier c
          at    left
          ^^^^^^^^^^ pier-homeless: or there is no room for it
          size  9 x 1 bricks
      pier-plan 9 x 1 bricks
        course  whole 18
    `);
  });

  test('is not told of a pier at an end or beside an opening', () => {
    for (const at of ['left', 'right', 'gate left', 'gate right'])
      silent(wall(`  pier p\n    at ${at}\n    size 1 x 1 bricks\n`), 'pier-homeless');
  });
});

describe('place-taken', () => {
  test('is told of two piers in one place', () => {
    const [found] = tells(
      `
      perpend 1
      use "firm.perp"
      wall north
      ^^^^^^^^^^ place-taken: p and q stand in each other’s place
        brick   red
        stands  held
        length  1790 mm
        height  8 courses
        pier p
             ^ pier-unbonded
          at    left
          size  1 x 1 bricks
        pier q
             ^ pier-unbonded
          at    left
          size  1 x 1 bricks
    `,
      { ways: [...BONDED_IN, ...BONDED_IN] },
    );
    expect(found!.severity).toBe('error');
  });

  test('is not told of piers on both sides of a gate', () => {
    const piers = ['left', 'right']
      .map((side) => `  pier ${side}\n    at gate ${side}\n    size 1 x 1 bricks\n`)
      .join('');
    silent(wall(piers), 'place-taken');
  });
});

describe('pier-plan-missing', () => {
  test('is told of a size over two and a half bricks that no library has a plan for', () => {
    tells(`
      perpend 1
      use "firm.perp"
      pier gate
        brick   red
        size    1.5 x 3 bricks
        ^^^^^^^^^^^^^^^^^^^^^^ pier-plan-missing: No plan is known for a pier of 1.5 x 3 bricks
        height  12 courses
    `);
  });

  test('is not told of sizes with a plan, turned a quarter or written in lengths, nor with a plan of one’s own', () => {
    const pier = (size: string) =>
      `perpend 1\nuse "firm.perp"\npier g\n  brick red\n  size ${size}\n  height 4 courses\n`;
    for (const size of ['1.5 x 1.5 bricks', '1 x 2 bricks', '2 x 1 bricks', '327.5 x 327.5 mm'])
      silent(pier(size), 'pier-plan-missing');
    silent(
      `${pier('1.5 x 3 bricks')}pier-plan 1.5 x 3 bricks\n  course whole 9\n`,
      'pier-plan-missing',
    );
  });

  test('is not told of any size up to two and a half bricks, in any country', () => {
    const sizes = [1, 1.5, 2, 2.5].flatMap((a) =>
      [1, 1.5, 2, 2.5].map((b) => `${a} x ${b} bricks`),
    );
    for (const library of ['uk', 'us', 'de'])
      for (const size of sizes)
        silent(
          `perpend 1\nuse ${library}\npier g\n  size ${size}\n  height 4 courses\n`,
          'pier-plan-missing',
        );
  });
});

describe('cap-overhang', () => {
  test('is told of a cap that does not throw water clear, and proposes one that does', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        pier gate
          brick   red
          size    2 x 2 bricks
          height  12 courses
          cap     500 x 500 mm slab
                  ^^^^^^^^^^^^ cap-overhang: reaches 30 mm over the faces; 45 mm with a drip keeps water off them (BRE
      `,
      { ways: ['A cap of 530 x 530 mm instead of slab'] },
    );
    expect(found!.severity).toBe('information');
  });

  // What is bought is then what the line says: a cap of 500 mm at its price would not be one of 530.
  test('a cap that the files sell comes first, and the price is of that one', () => {
    const sold = (name: string, size: string, price: number) =>
      `material ${name}\n  size ${size}\n  price £${price} each\n`;
    const goods = `${sold('cap-500', '500 x 500 mm', 40)}${sold('cap-550', '550 x 550 x 75 mm', 55)}${sold('slab-900', '900 x 900 mm', 90)}`;
    const text = `perpend 1\nuse "firm.perp"\n${goods}pier gate\n  brick red\n  size 2 x 2 bricks\n  height 12 courses\n  cap 500 x 500 mm cap-500\n`;
    const [cap] = findingsOf('cap-overhang', text);
    expect(cap!.ways.map((w) => w.title)).toEqual([
      'A cap of 550 x 550 x 75 mm cap-550',
      'A cap of 530 x 530 mm instead of cap-500',
    ]);
    const after = cap!.ways.map((way) => afterWay(text, way.edits));
    expect(after[0]).toContain('  cap 550 x 550 x 75 mm cap-550\n');
    expect(after[1]).toContain('  cap 530 x 530 mm\n');
    const bought = (job: string) => findingsIn(job).map((f) => f.code);
    expect(bought(after[0]!)).not.toContain('incomplete');
    for (const each of after) silent(each, 'cap-overhang');
  });

  test('says when it does not cover the pier at all', () => {
    const found = findingsIn(
      'perpend 1\nuse "firm.perp"\npier g\n  brick red\n  size 2 x 2 bricks\n  height 4 courses\n  cap 400 x 600 mm slab\n',
    );
    const [cap] = found.filter((f) => f.code === 'cap-overhang');
    expect(cap!.message).toContain('does not cover the pier');
  });

  test('is not told of a cap that reaches 45 mm, nor where there is none', () => {
    const pier = (line: string) =>
      `perpend 1\nuse "firm.perp"\npier g\n  brick red\n  size 2 x 2 bricks\n  height 4 courses\n${line}`;
    silent(pier('  cap 530 x 530 mm slab\n'), 'cap-overhang');
    silent(pier(''), 'cap-overhang');
  });
});
