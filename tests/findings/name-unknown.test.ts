import { describe, expect, test } from 'vitest';
import { findingsOf, silent, tells } from './tells';

describe('name-unknown', () => {
  test('proposes the name that is nearly the same', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   rad
                  ^^^ name-unknown: Did you mean “red”?
                  ^^^ incomplete: the brick “rad” is not known
          stands  held
          length  1790 mm
          height  4 courses
      `,
      { ways: ['Write red'] },
    );
  });

  test('is told once where two ways of writing a line take the name', () => {
    for (const coping of [
      'brick-on-edge nosuch',
      'tiles 2 courses nosuch',
      'precast 490 x 195 mm nosuch',
    ]) {
      const text = `perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  stands held\n  length 4490 mm\n  height 4 courses\n  coping ${coping}\n`;
      const told = findingsOf('name-unknown', text);
      expect(told.map((f) => f.place.line)).toEqual([7]);
    }
  });

  test('is told of every kind of name a line takes', () => {
    tells(`
      perpend 1
      use "firm.perp"
      brick  ours
        size  215 x 102.5 x 65 mm
      mix ours
        parts  cement 1, gneiss 3
                         ^^^^^^ name-unknown: No material is called “gneiss”
      labour
        gang   1 bricklayer + 1 astronaut
                                ^^^^^^^^^ name-unknown: No trade is called “astronaut”
      defaults
        mix       xylophone
                  ^^^^^^^^^ name-unknown: No mix is called “xylophone”
        exposure  moonlight
                  ^^^^^^^^^ name-unknown: No zone is called “moonlight”
    `);
  });

  test.each(['constructor', '__proto__', 'toString', 'hasOwnProperty'])(
    'is told of %s, which no file gives',
    (name) => {
      tells(`
        perpend 1
        use "firm.perp"
        defaults
          brick  ${name}
                 ${'^'.repeat(name.length)} name-unknown: No brick is called “${name}”
      `);
    },
  );

  test('is not told of names from the job, its firm or the library, nor of what they are called in the plural', () => {
    silent(
      'perpend 1\nuse "firm.perp"\nlabour\n  mason £30 per h\n  gang 2 masons + 2 labourers\nbrick ours\ndefaults\n  brick ours\n  mix general\n  bond flemish\n  exposure zone-3\n',
      'name-unknown',
    );
  });

  test('a repair may be in a wall that stands below it', () => {
    silent(
      'perpend 1\nuse "firm.perp"\nrepair r\n  in a\n  repoint 1 m2 raked 10 mm\nwall a\n  brick red\n  length 1790 mm\n  height 4 courses\n',
      'name-unknown',
    );
  });
});
