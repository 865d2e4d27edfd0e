/** Bricks that are salvaged, and the halves they leave. */
import { describe, test } from 'vitest';
import { silent, tells } from '../tells';
import { repairWith } from './repair';

describe('salvage-over', () => {
  test('is told of more bricks salvaged than come down', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair frost
          brick    red
          rebuild  60 bricks
          salvage  50..70 bricks
                   ^^^^^^^^^^^^^ salvage-over: 70 bricks are salvaged, and only 60 come down.
      `,
      { ways: ['All that come down: 60 bricks'] },
    );
  });

  test('is told of halves of bricks that are laid again whole', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair frost
          brick    red
          thick    1 brick
          bond     english
          rebuild  60 bricks
          salvage  80%
          halves   25%
                   ^^^ salvage-over: 15 bricks are to leave a half, and after those that are laid again 12 are left
      `,
      { ways: ['Keep 12 halves'] },
    );
  });

  test('is not told of all that comes down, nor where how much does is not known', () => {
    silent(repairWith('rebuild 60 bricks\nsalvage 60 bricks'), 'salvage-over');
    silent(repairWith('rebuild 60 bricks\nsalvage 80%\nhalves 20%'), 'salvage-over');
    silent(repairWith('rebuild ? x 4 courses\nsalvage 60 bricks'), 'salvage-over');
  });
});

describe('halves-homeless', () => {
  test('is told where every brick shows', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair frost
          brick    red
          rebuild  60 bricks
          halves   10
          ^^^^^^^^^^^ halves-homeless: 10 of 10 halves are left over
      `,
      { ways: ['Take the line out'] },
    );
  });

  test('is told of more halves than a core has places for', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair gate
          brick    red
          size     1.5 x 1.5 bricks
          rebuild  6 courses
          halves   40%
          ^^^^^^^^^^^^ halves-homeless: There are 6 places for halves in the core. 4 of 10 halves are left over
      `,
      { ways: ['Keep 6 halves'] },
    );
  });

  test('is told of a core that is filled with concrete', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair gate
          brick    red
          size     2 x 2 bricks
          core     concrete
          rebuild  16 courses
          salvage  50%
          halves   20
          ^^^^^^^^^^^ halves-homeless: 20 of 20 halves are left over
      `,
      { ways: ['Take the line out'] },
    );
  });

  test('is not told of as many as have a place', () => {
    silent(
      repairWith('thick 1 brick\nbond english\nrebuild 60 bricks\nhalves 30'),
      'halves-homeless',
    );
  });
});
