import { describe, test } from 'vitest';
import { silent, tells } from './tells';

describe('line-idle', () => {
  test('is told of a number after a bond that takes none', () => {
    tells(`
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          thick   1 brick
          bond    english 4
                          ^ line-idle: takes no number
          length  1790 mm
          height  4 courses
      `);
  });

  test('is told of salvage and match with nothing to work on', () => {
    tells(`
        perpend 1
        use "firm.perp"
        repair frost
          brick    red
          repoint  2 m2 raked 20 mm
          salvage  60%
          ^^^^^^^^^^^^ line-idle: Nothing comes down here
          match    red
          ^^^^^^^^^^^^ line-idle: No brick is bought
      `);
  });

  test('is not told of a bond that takes a number, nor where bricks come down', () => {
    silent(
      'perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  stands held\n  thick 1 brick\n  bond english-garden-wall 5\n  length 1790 mm\n  height 6 courses\n',
      'line-idle',
    );
    silent(
      'perpend 1\nuse "firm.perp"\nrepair frost\n  brick red\n  rebuild 1.35 m x 4 courses\n  salvage 60%\n  match red\n',
      'line-idle',
    );
  });
});

describe('figures-unreadable', () => {
  test('is told of a sample that shows no way to write figures', () => {
    tells(`
        perpend 1
        use "firm.perp"
        defaults
          figures  "abc"
                   ^^^^^ figures-unreadable: 1.234,56
      `);
  });

  test('is not told of the samples of the libraries', () => {
    for (const sample of ['£1,234.56', '1.234,56 €', "CHF 1'234.56"])
      silent(`perpend 1\nuse "firm.perp"\ndefaults\n  figures "${sample}"\n`, 'figures-unreadable');
  });
});
