import { describe, expect, test } from 'vitest';
import { silent, tells } from './tells';

const wall = (size: string, thick: string) =>
  `perpend 1\nuse "firm.perp"\nbrick odd\n  size ${size}\n  joint 10 mm\n  price £1 each\nwall north\n  brick odd\n  stands held\n  bond english\n  thick ${thick}\n  length 1790 mm\n  height 4 courses\n`;

describe('brick-shape', () => {
  test('a block of 440 x 100 mm is not laid in a one-brick wall', () => {
    const [found] = tells(`
        perpend 1
        use "firm.perp"
        brick odd
          size   440 x 100 x 215 mm
          joint  10 mm
          price  £1 each
        wall north
          brick   odd
          ^^^^^^^^^^^ brick-shape: 440 mm long and 100 mm wide
          stands  held
          bond    english
          thick   1 brick
          length  1790 mm
          height  4 courses
      `);
    // Two widths and a joint are 210 mm: 440 mm would leave a gap of 240 mm between the leaves.
    expect(440 - 2 * 100).toBe(240);
    expect(found!.severity).toBe('error');
  });

  test('nor is a brick as wide as it is long, or wider', () => {
    for (const size of ['215 x 215 x 65 mm', '102.5 x 215 x 65 mm'])
      expect(() => silent(wall(size, '1 brick'), 'brick-shape')).toThrow();
  });

  test('bricks of the published formats are, and old ones that vary by some millimetres', () => {
    // BS EN 771-1 and DIN 105 sizes, as in Designing Buildings and architektenordner.backstein.com.
    for (const size of [
      '215 x 102.5 x 65 mm',
      '230 x 110 x 73 mm',
      '240 x 115 x 71 mm',
      '222 x 104 x 66 mm',
    ])
      silent(wall(size, '1 brick'), 'brick-shape');
  });
});
