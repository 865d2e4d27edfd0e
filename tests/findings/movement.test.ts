import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { FIRM, findingsOf, silent, tells } from './tells';

/** What a firm pays for ties and filler, so that nothing is told but what the texts are about. */
const PRICED = `${FIRM}material movement-tie
  price  £0.90 each
material joint-filler
  price  £1.20 each
`;
const files = { 'firm.perp': PRICED };

const wall = (length: string, more = '', stands = 'held') =>
  `perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  stands ${stands}\n  exposure zone-1\n  length ${length}\n  height 7 courses\n${more}`;

describe('movement-missing', () => {
  test('is told of a wall longer than the library lets it be, with lines that part it', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  17990 mm
          ^^^^^^^^^^^^^^^^ movement-missing: 17990 mm of wall stand without a movement joint, and 12000 mm is as much as clay brickwork in a straight run
          height  8 courses
      `,
      {
        files,
        ways: ['Write movement-joint every 12000 mm', 'Write movement-joint left 8990 mm'],
      },
    );
  });

  // BDA, Movement joints (2014): 12 m in a straight run; BDA, Designing for movement in brickwork: 6 m from a corner.
  // Free-standing walls as parapets, half of it: NHBC values as read at newbuildinspections.com.
  test('12 m held, 6 m where it stands free, 6 m from a corner', () => {
    const told = (text: string) => findingsOf('movement-missing', text, files).length;
    expect(told(wall('11990 mm'))).toBe(0);
    expect(told(wall('12102.5 mm'))).toBe(1);
    expect(told(wall('5840 mm', '', 'free'))).toBe(0);
    expect(told(wall('6065 mm', '', 'free'))).toBe(1);
    const east =
      'wall east\n  brick red\n  stands held\n  length 1790 mm\n  height 7 courses\n  left quoin north\n';
    expect(told(`${wall('6065 mm', '  right quoin east\n')}${east}`)).toBe(1);
    expect(told(`${wall('5840 mm', '  right quoin east\n')}${east}`)).toBe(0);
  });

  test('is not told where movement joints part it, nor where an opening to the top does', () => {
    silent(wall('17990 mm', '  movement-joint left 8990 mm\n'), 'movement-missing', files);
    silent(wall('17990 mm', '  movement-joint every 6 m\n'), 'movement-missing', files);
    const gate = '  opening gate\n    from left 8990 mm\n    width 910 mm\n';
    silent(wall('17990 mm', gate), 'movement-missing', files);
  });

  test('a country whose library gives no spacing is not held to another’s', () => {
    silent(wall('17990 mm').replace('use "firm.perp"', 'use de'), 'movement-missing', files);
  });
});

describe('movement-place', () => {
  test('is told of one that would run through an opening', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  8990 mm
          height  8 courses
          movement-joint left 2500 mm
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^ movement-place: This movement joint is left out. It would run through the opening gate.
          opening gate
            from   left 2240 mm
            width  1022.5 mm
      `,
      // From 2240 mm on there is no wall: 10 x 225 - 10 is where the opening begins, 9 x 225 - 10 = 2015.
      { files, ways: ['Write movement-joint left 2015 mm'] },
    );
  });

  test('proposes a place within the wall, at a joint of its bricks', () => {
    const found = (length: string, line: string) =>
      findingsOf('movement-place', wall(length, line), files);
    const ways = (length: string, line: string) =>
      found(length, line).flatMap((f) => f.ways.map((w) => w.title));
    // 17 bricks and their joints, 3815 mm. Four stay right of a joint of 10 mm: 13 x 225 - 10 = 2915, and 2925 + 4 x 225 - 10 = 3815.
    expect(ways('3815 mm', '  movement-joint left 9 m\n')).toEqual([
      'Write movement-joint left 2915 mm',
    ]);
    expect(ways('3815 mm', '  movement-joint right 9 m wide 15 mm\n')).toEqual([
      'Write movement-joint left 890 mm wide 15 mm',
    ]);
    expect(ways('8990 mm', '  movement-joint left 3 m\n  movement-joint left 3 m\n')).toHaveLength(
      1,
    );
    const [none] = found('1340 mm', '  movement-joint left 9 m\n');
    expect([none!.ways, none!.message.includes('no clear place')]).toEqual([[], true]);
  });

  test('and of those beyond the wall, in one another, or closer than anyone parts a wall', () => {
    const told = (line: string) =>
      findingsOf('movement-place', wall('8990 mm', line), files).length;
    expect(told('  movement-joint left 9 m\n')).toBe(1);
    expect(told('  movement-joint left 3 m\n  movement-joint left 3 m\n')).toBe(1);
    expect(told('  movement-joint every 300 mm\n')).toBe(1);
    expect(told('  movement-joint left 2915 mm\n')).toBe(0);
  });
});

describe('what a movement joint takes', () => {
  const job = (more: string, length = '8990 mm') => jobOf(wall(length, more), files);
  const figure = (of: ReturnType<typeof job>, key: string) =>
    of.works[0]!.figures.find((f) => f.key === key)!.term.value.toNumber();
  const bought = (of: ReturnType<typeof job>, name: string) =>
    of.price.purchases.find((p) => p.name === name)!.needed.value.toNumber();

  test('by hand: 8990 mm in two lengths of 20 bricks, half a brick at each of four ends in every second course', () => {
    // 40 bricks a course less the joint: 19 + 19 whole bricks between four half bats in three courses, 20 + 20 in four.
    const of = job('  movement-joint left 4490 mm\n');
    expect(figure(of, 'bricks')).toBe(4 * 40 + 3 * (38 + 2));
    const [band] = of.works[0]!.facts.settingOut!.bands;
    expect(band!.segments.map((s) => [s.from, s.to])).toEqual([
      [0, 4490],
      [4500, 8990],
    ]);
  });

  test('by hand: a tie on the fourth of seven courses, and 525 mm of filler from one strip', () => {
    const one = job('  movement-joint left 4490 mm\n');
    expect(bought(one, 'movement-tie')).toBe(1);
    expect(bought(one, 'joint-filler')).toBe(1);
    const high = jobOf(
      wall('8990 mm', '  movement-joint left 4490 mm\n').replace('7 courses', '17 courses'),
      files,
    );
    expect(bought(high, 'movement-tie')).toBe(4);
    expect(bought(high, 'joint-filler')).toBe(2);
  });

  // The library's strip is 1000 x 100 x 10 mm; the seal at each face is as deep as the joint of 10 mm is wide (common practice).
  test.each([
    ['1/2 brick', 102.5, 1],
    ['1 brick', 215, 2],
    ['2 brick', 440, 5],
  ])('%s thick (%f mm), strips side by side fill it from seal to seal', (thick, deep, beside) => {
    expect(Math.ceil((deep - 2 * 10) / 100)).toBe(beside);
    const text = wall('8990 mm', '  movement-joint left 4490 mm\n')
      .replace('7 courses', '12 courses')
      .replace('  length', `  bond english\n  thick ${thick}\n  length`);
    const of = jobOf(thick === '1/2 brick' ? text.replace('  bond english\n', '') : text, files);
    // Twelve courses are 900 mm.
    expect(bought(of, 'joint-filler')).toBe(Math.ceil((beside * 900) / 1000));
  });

  test('in two skins each has its own', () => {
    const text = wall(
      '8990 mm',
      '  movement-joint left 4490 mm\n  backing block-100 cavity 75 mm\n',
    );
    expect(bought(jobOf(text.replace('7 courses', '12 courses'), files), 'joint-filler')).toBe(2);
  });

  test('so many parted evenly leave whole bricks between them', () => {
    const of = job('  movement-joint every 6 m\n', '17990 mm');
    const [band] = of.works[0]!.facts.settingOut!.bands;
    const lengths = band!.segments.map((s) => s.to - s.from);
    // 80 bricks in four lengths: three of at most 6 m would hold 78. BDA: 10 mm wide for joints up to 7 m apart.
    expect(lengths).toEqual([4490, 4490, 4490, 4490]);
    expect(figure(of, 'movement')).toBe(3);
    expect(band!.segments.every((s) => s.fits && s.broken.length === 0)).toBe(true);
  });
});
