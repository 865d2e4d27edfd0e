import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { FIRM, silent, tells } from './tells';

describe('incomplete', () => {
  test('is told of every measure still to be taken, and nothing of it twice', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  ?
        ^^^^^^^^^ incomplete: the length of north is not known
        height  4 courses
      wall south
        brick   red
        stands  held
        thick   2.5 bricks
        ^^^^^^^^^^^^^^^^^^ incomplete: a thickness that is not set out: it can be half a brick, one, one and a half or two bricks
        length  1790 mm
        height  ?
        ^^^^^^^^^ incomplete: the height of south is not known
      pier gate
        brick   red
        size    ?
        ^^^^^^^^^ incomplete: the size of the pier gate is not known
        height  ?
        ^^^^^^^^^ incomplete: the height of the pier gate is not known
      repair frost
        brick    red
        rebuild  ? x 4 courses
        ^^^^^^^^^^^^^^^^^^^^^^ incomplete: how much of frost is rebuilt is not known
        repoint  ? raked 20 mm
                 ^ incomplete: Area repointed is still to be measured
    `);
  });

  test('is told of a gauge whose courses are no higher than their brick, where the gauge is said', () => {
    const found = tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        gauge   4 courses 250 mm
        ^^^^^^^^^^^^^^^^^^^^^^^^ incomplete: the gauge of north leaves no bed joint: its courses are no higher than its brick
        stands  held
        length  2240 mm
        height  8 courses
    `);
    // By hand: 250 / 4 = 62.5 mm, and the brick alone is 65.
    expect(found).toHaveLength(1);
    const higher = (mm: number) =>
      `perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  gauge 4 courses ${mm} mm\n  stands held\n  length 2240 mm\n  height 8 courses\n`;
    silent(higher(280), 'incomplete');
    expect(() => silent(higher(260), 'incomplete')).toThrow();
  });

  test('is told of a size of which a side is still to be measured', () => {
    for (const size of ['? x 225 mm', '450 x ? mm', '450 mm x ?', '? x ?', '?']) {
      const text = `perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  stands held\n  length 1790 mm\n  height 4 courses\n  footing ${size}\n`;
      const { findings } = jobOf(text, { 'firm.perp': FIRM });
      const told = findings.filter((f) => f.place.line === 7 && !f.code.startsWith('caution-'));
      expect(told.map((f) => f.code)).toEqual(['incomplete']);
      expect(told[0]!.message).toContain('footing is still to be measured');
    }
  });

  test('is told of what the work is laid without, and is wrong without', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        bond    english-garden-wall ?
                                    ^ incomplete: the number of the bond of north
        thick   1 brick
        stands  held
        length  2240 mm
        height  8 courses
        dpc     engineering ?
                            ^ incomplete: the damp course of north
        opening window
          from    left 665 mm
          width   910 mm
          sill    ?
                  ^ incomplete: the sill of the opening window
          height  ?
                  ^ incomplete: the height of the opening window
        pier a
          at    left
          size  ?
                ^ incomplete: the size of the pier a is still to be measured
        pier b
        ^^^^^^ incomplete: the size of the pier b is not known
          at    right
    `);
  });

  test('is told of a bond with more courses than anyone means', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        bond    english-garden-wall 1000000
        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ incomplete: or more than 64 before it repeats
        thick   1 brick
        stands  held
        length  2240 mm
        height  8 courses
    `);
  });

  test('is told of a wall without length or height at its heading', () => {
    tells(`
      perpend 1
      use "firm.perp"
      wall north
      ^^^^^^^^^^ incomplete: the length of north is not known
      ^^^^^^^^^^ incomplete: the height of north is not known
        brick   red
        stands  held
    `);
  });

  test('is told at the job’s heading where a price is missing in another file', () => {
    tells(
      `
        perpend 1
        use "ours.perp"
        job "A"
        ^^^^^^^ incomplete: no price is given for Standard brick
        ^^^^^^^ incomplete: no price is given for Cement
        ^^^^^^^ incomplete: no price is given for Hydrated lime
        ^^^^^^^ incomplete: no price is given for Building sand
        ^^^^^^^ incomplete: no gang is given
        wall north
          stands  held
          length  1790 mm
          height  4 courses
      `,
      { files: { 'ours.perp': 'perpend 1\nuse uk\n' } },
    );
  });

  test('is told of a pack whose number is not said, an output of nothing and a day without hours', () => {
    tells(`
      perpend 1
      use "firm.perp"
      brick dear
        size   215 x 102.5 x 65 mm
        price  £500 per pack
        ^^^^^^^^^^^^^^^^^^^^ incomplete: no line says how many dear come in a pack
      cost hire "Hire" 1 at £5 per day
      output
        facework  0 bricks per h
                  ^^^^^^^^ incomplete: one bricklayer is zero
      labour
        day  0 h
             ^^^ incomplete: a day is zero
      wall north
        brick   dear
        stands  held
        length  1790 mm
        height  4 courses
    `);
  });

  test('leaves every other total as it is', () => {
    const wall = (name: string, length: string) =>
      `wall ${name}\n  brick red\n  length ${length}\n  height 4 courses\n`;
    const alone = jobOf(`perpend 1\nuse "firm.perp"\n${wall('a', '1790 mm')}`, {
      'firm.perp': FIRM,
    });
    const both = jobOf(`perpend 1\nuse "firm.perp"\n${wall('a', '1790 mm')}${wall('b', '?')}`, {
      'firm.perp': FIRM,
    });
    const figures = (job: typeof both) =>
      job.works[0]!.figures.map((f) => [f.key, f.term.value.toFixed(), f.term.gaps.length]);
    expect(figures(both)).toEqual(figures(alone));
    expect(both.price.total.value.toFixed()).toBe(alone.price.total.value.toFixed());
    expect(both.price.total.gaps).not.toEqual([]);
  });

  test('is not told where all is said', () => {
    silent(
      'perpend 1\nuse "firm.perp"\nwall a\n  brick red\n  length 1790 mm\n  height 4 courses\n',
      'incomplete',
    );
  });
});
