import { describe, expect, test } from 'vitest';
import { silent, tells } from './tells';

describe('bond-broken', () => {
  test('is told where the pattern of the bond does not close on a length in half bricks', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          bond    flemish
          thick   1 brick
          stands  held
          length  1790 mm
                  ^^^^^^^ bond-broken: The bond does not close on the wall from the left end to the right end
          height  12 courses
      `,
      {
        ways: [
          'Keep it: broken bond is meant',
          'Make the wall 1565 mm: the run is 225 mm shorter, 7 bricks',
          'Make the wall 1902.5 mm: the run is 112.5 mm longer, 8½ bricks',
        ],
      },
    );
    expect(found!.severity).toBe('information');
  });

  test('is not told of a length on which it closes, nor where it is said to be meant', () => {
    const wall = (bond: string, length: string, more = '') =>
      `perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  bond ${bond}\n  thick 1 brick\n  stands held\n  length ${length}\n  height 12 courses\n${more}`;
    silent(wall('flemish', '1902.5 mm'), 'bond-broken');
    silent(wall('english', '1790 mm'), 'bond-broken');
    silent(wall('flemish', '1790 mm', '  fit run-1 half-bond\n'), 'bond-broken');
  });
});
