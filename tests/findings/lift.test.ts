import { describe, test } from 'vitest';
import { silent, tells } from './tells';

describe('lift', () => {
  test('is told of a wall higher than is built up in a day', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  1790 mm
        height  21 courses
        ^^^^^^^^^^^^^^^^^^ lift: it takes 2 days
    `);
  });

  test('is not told of 1.5 m', () => {
    silent(
      'perpend 1\nuse "firm.perp"\nwall a\n  brick red\n  stands held\n  length 1790 mm\n  height 20 courses\n',
      'lift',
    );
  });
});
