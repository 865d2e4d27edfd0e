import { describe, expect, test } from 'vitest';
import { jobOfWall } from '../harness/walls';
import { afterWay, findingsOf, silent, tells } from './tells';

const wall = (lines: string) => jobOfWall({ length: '1790 mm', height: '4 courses' }, lines);

describe('bond-thick', () => {
  test('is told of a bond at a thickness it is not given for, with the bonds that are', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          bond    english
          ^^^^^^^^^^^^^^^ bond-thick: English bond is given for one brick, 1.5 bricks or 2 bricks, and this wall is half a brick thick
          stands  held
          length  1790 mm
          height  4 courses
      `,
      { ways: ['Build it in stretcher', 'Build it in third', 'Build it in stack'] },
    );
    expect(found!.severity).toBe('warning');
  });

  test('where the bond is the default, its way out writes a line', () => {
    const text = wall('  thick 1 brick\n');
    const [found] = findingsOf('bond-thick', text);
    expect(found!.message).toContain('need ties');
    expect(found!.ways.map((w) => w.title)).toContain('Build it in english');
    for (const way of found!.ways) silent(afterWay(text, way.edits), 'bond-thick');
  });

  test('is not told of a bond at its own thickness, nor of one that says none', () => {
    silent(wall(''), 'bond-thick');
    silent(wall('  bond flemish\n  thick 1 brick\n'), 'bond-thick');
    silent(wall('  bond ours\n  thick 1 brick\nbond ours\n  course stretcher\n'), 'bond-thick');
  });
});
