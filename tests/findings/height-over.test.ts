import { describe, expect, test } from 'vitest';
import { silent, tells } from './tells';

const SOURCE = 'Planning Portal, Fences, gates and garden walls';
/** A firm of a country whose library has no table of heights. */
const OURS = `perpend 1
use de
brick rot
  size   240 x 115 x 71 mm
  price  1 € each
mix plain
  parts  sand 1
  joint  10 mm
material sand
  pack  1 t Fuhre at 46 €
labour
  maurer  41 € per h
  gang    1 maurer
defaults
  brick  rot
  mix    plain
`;
const wall = (lines: string) =>
  `perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  length 1790 mm\n${lines}`;

describe('height-over', () => {
  test('names the limit and its source, and the zones where it would do', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          bond    english
          thick   1 brick
          length  1790 mm
          height  16 courses
          ^^^^^^^^^^^^^^^^^^ height-over: 1200 mm is more than the 1075 mm
      `,
      { ways: ['Build 14 courses', 'It stands in zone-1', 'It stands in zone-2'] },
    );
    expect(found!.severity).toBe('warning');
    expect(found!.message).toContain(SOURCE);
    // By hand: the 1075 mm of zone 4 leave room for 14 courses of 75 mm, and 15 are 1125.
    expect(Math.floor(1075 / 75)).toBe(14);
    expect(found!.message).toContain(
      'in zone-4, the most exposed of zone-1, zone-2, zone-3 and zone-4, since no exposure line says where it stands',
    );
    expect(found!.message).toContain('structural engineer');
    expect(found!.related.map((r) => [r.place.file, r.message.includes(SOURCE)])).toEqual([
      ['library:uk.perp', true],
    ]);
  });

  test('takes the coping in, and the zone that the wall gives', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick     red
          bond      english
          thick     1 brick
          exposure  zone-2
          length    1790 mm
          height    16 courses
          ^^^^^^^^^^^^^^^^^^^^ height-over: 1312.5 mm with its coping is more than the 1300 mm
          coping    brick-on-edge
      `,
      { ways: ['Build 15 courses'] },
    );
    // By hand: a brick on edge is 102.5 mm and its bed 10: 1187.5 mm are left for courses of 75.
    expect(16 * 75 + 112.5).toBe(1312.5);
    expect(Math.floor((1300 - 112.5) / 75)).toBe(15);
  });

  test('a height said as a length is made so many courses, and a wall that is too high in every zone has no other way', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          length  1790 mm
          height  600 mm
          ^^^^^^^^^^^^^^ height-over: 600 mm is more than the 375 mm
      `,
      { ways: ['Build 5 courses'] },
    );
    expect(375 / 75).toBe(5);
  });

  /** Planning Portal leaflet, one brick thick: 1450 mm in zone 1, 1300 in zone 2, 1175 in 3, 1075 in 4; half a brick: 525, 450, 400, 375. */
  test.each([
    ['zone-1', '1 brick', 1450],
    ['zone-2', '1 brick', 1300],
    ['zone-3', '1 brick', 1175],
    ['zone-4', '1 brick', 1075],
    ['zone-1', '1/2 brick', 525],
    ['zone-2', '1/2 brick', 450],
    ['zone-3', '1/2 brick', 400],
    ['zone-4', '1/2 brick', 375],
  ])(
    'in %s a wall of %s may be %d mm: the last course below it is silent, the next is told',
    (zone, thick, most) => {
      const courses = Math.floor(most / 75);
      const bond = thick === '1 brick' ? 'english' : 'stretcher';
      const lines = (n: number) =>
        `  exposure ${zone}\n  thick ${thick}\n  bond ${bond}\n  height ${n} courses\n`;
      silent(wall(lines(courses)), 'height-over');
      expect(() => silent(wall(lines(courses + 1)), 'height-over')).toThrow();
    },
  );

  test('is not told of a wall that is held, or low', () => {
    silent(wall('  stands held\n  height 20 courses\n'), 'height-over');
    silent(wall('  height 5 courses\n'), 'height-over');
  });
});

describe('height-unchecked', () => {
  test('is told where no table speaks of this thickness', () => {
    const [found] = tells(
      `
        perpend 1
        use "ours.perp"
        wall north
          length  1740 mm
          height  4 courses
          ^^^^^^^^^^^^^^^^^ height-unchecked: so its height is not checked
      `,
      { files: { 'ours.perp': OURS } },
    );
    expect(found!.severity).toBe('information');
  });

  test('is not told where a table does, or the wall is held', () => {
    silent(wall('  height 4 courses\n'), 'height-unchecked');
    silent(
      'perpend 1\nuse "ours.perp"\nwall a\n  stands held\n  length 1790 mm\n  height 4 courses\n',
      'height-unchecked',
      { 'ours.perp': OURS },
    );
  });
});
