import { describe, expect, test } from 'vitest';
import { silent, tells } from './tells';

const repair = (gauge: string) =>
  `perpend 1\nuse "firm.perp"\nrepair r\n  brick red\n  gauge ${gauge}\n  rebuild 900 mm x 4 courses\n`;

describe('gauge-off', () => {
  test('is told of a brick that needs joints nobody would accept to keep the gauge', () => {
    const [found] = tells(`
      perpend 1
      use "firm.perp"
      repair frost
        brick    red
        gauge    4 courses 330 mm
        ^^^^^^^^^^^^^^^^^^^^^^^^^ gauge-off: Red facing needs a bed joint of 17.5 mm
        rebuild  900 mm x 4 courses
    `);
    expect(330 / 4 - 65).toBe(17.5);
    expect(found!.message).toContain('8 mm to 13 mm');
  });

  test('is told of the brick that is bought to match, and one too high for any joint', () => {
    tells(`
      perpend 1
      use "firm.perp"
      brick tall "Tall one"
        size   215 x 102.5 x 80 mm
        price  £1 each
      repair frost
        brick    red
        match    tall
        gauge    4 courses 300 mm
        ^^^^^^^^^^^^^^^^^^^^^^^^^ gauge-off: Tall one is too high to keep this gauge at all
        rebuild  900 mm x 4 courses
    `);
  });

  test('is not told within the joints that are accepted, nor without a gauge', () => {
    for (const gauge of ['4 courses 300 mm', '4 courses 292 mm', '4 courses 312 mm'])
      silent(repair(gauge), 'gauge-off');
    silent('perpend 1\nuse "firm.perp"\nrepair r\n  brick red\n  cut-out 3 bricks\n', 'gauge-off');
  });
});
