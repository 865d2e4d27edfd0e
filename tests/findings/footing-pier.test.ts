/** What is told of piers on the strip of their wall. */
import { describe, expect, test } from 'vitest';
import { BONDED_IN, findingsOf, silent, tells } from './tells';

const wall = (lines: string, footing = '450 x 225 mm') => `perpend 1
use "firm.perp"
wall north
  brick   red
  stands  held
  length  4490 mm
  height  12 courses
  footing ${footing}
${lines}`;
const pier = (at: string, size = '1.5 x 1.5 bricks', more = '') =>
  `  pier p\n    at ${at}\n    size ${size}\n${more}`;
const toldOf = (text: string) => findingsOf('footing-pier', text);

describe('footing-pier', () => {
  // The strip stands (450 - 102.5) / 2 = 173.75 mm out; round a pier of 327.5 mm it is 327.5 + 2 x 173.75 = 675 mm wide.
  test('is told where the strip ends flush with a pier at an end, with what is left out', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  4490 mm
          height  12 courses
          footing 450 x 225 mm
                  ^^^^^^^^^^^^ footing-pier: so ends flush with the pier stub at its left end, where before the faces of the wall it stands out 173.8 mm. Carry it as far past the pier (common practice): 173.8 x 675 x 225 mm more
          pier stub
               ^^^^ pier-unbonded
            at    left
            size  1.5 x 1.5 bricks
      `,
      {
        ways: [...BONDED_IN],
      },
    );
    expect(toldOf(wall(pier('right')))[0]!.severity).toBe('information');
  });

  // A pier of three bricks, 665 mm, centred on the wall: (665 - 450) / 2 on either side.
  test('is told where a pier stands out over the strip, and offers a wider one', () => {
    const [found] = toldOf(wall(pier('left 2 m', '3 x 3 bricks')));
    expect(found!.severity).toBe('warning');
    expect(found!.message).toContain('stands 107.5 mm out over this footing');
    expect(found!.ways.map((way) => way.title)).toEqual([
      'At least 675 x 225 mm, all along the wall',
    ]);
  });

  // An attached pier stands out on one side only: 1.5 bricks deep on half a brick, 225 mm before the face.
  test('an attached pier by the side that it stands out on', () => {
    const attached = (footing: string) =>
      toldOf(wall(pier('left 2250 mm', '1 x 1.5 bricks', '    projects back\n'), footing));
    expect(attached('450 x 225 mm')[0]!.message).toContain('stands 51.3 mm out over');
    expect(attached('560 x 225 mm')).toEqual([]);
  });

  test('is not told of a pier between, of one where another wall goes on, nor of a wall without a strip', () => {
    silent(wall(pier('left 2 m')), 'footing-pier');
    silent(wall(pier('left')).replace(/ {2}footing.*\n/, ''), 'footing-pier');
    silent(wall(''), 'footing-pier');
  });
});
