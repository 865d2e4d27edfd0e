import { describe, expect, test } from 'vitest';
import { silent, tells } from './tells';

describe('name-twice', () => {
  test('is told of two walls of one name, and leads to the first', () => {
    const [found] = tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  1790 mm
        height  4 courses
      wall north
           ^^^^^ name-twice: Two of this file are a wall called “north”
        brick   red
        stands  held
        length  1790 mm
        height  4 courses
    `);
    expect(found!.related.map((r) => r.place.line)).toEqual([2]);
  });

  test('is told of other kinds, whatever their names mean elsewhere', () => {
    tells(`
      perpend 1
      use "firm.perp"
      cost constructor "Skip" 1 at £240
      cost constructor "Skip" 1 at £240
           ^^^^^^^^^^^ name-twice: a cost called “constructor”
      brick red
      brick red
            ^^^ name-twice: a brick called “red”
    `);
  });

  test('is not told of a wall and a pier, nor of a brick that the firm’s file has too', () => {
    const wall = 'wall a\n  brick red\n  length 1790 mm\n  height 4 courses\n';
    const pier = 'pier a\n  brick red\n  size 1 x 1 bricks\n  height 4 courses\n';
    silent(`perpend 1\nuse "firm.perp"\n${wall}${pier}brick red\n  frog 7%\n`, 'name-twice');
  });
});
