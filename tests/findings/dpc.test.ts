import { describe, test } from 'vitest';
import { jobOfWall } from '../harness/walls';
import { silent, tells } from './tells';

const wall = (dpc: string) =>
  jobOfWall({ length: '1790 mm', height: '4 courses' }, `  dpc ${dpc}\n`);

describe('dpc-off', () => {
  test('is told of more courses than the wall has', () => {
    tells(`
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  1790 mm
          height  4 courses
          dpc     red 5 courses
                      ^^^^^^^^^ dpc-off: more courses than the 4 there are
      `);
  });

  test('is told of a brick of another size', () => {
    tells(`
        perpend 1
        use "firm.perp"
        brick wide
          size   240 x 115 x 113 mm
          joint  10 mm
          price  £1 each
        wall north
          brick   red
          stands  held
          length  1790 mm
          height  4 courses
          dpc     wide 2 courses
                  ^^^^ dpc-off: of another size
      `);
  });

  test('is not told of a brick of the same size', () => silent(wall('red 2 courses'), 'dpc-off'));
});
