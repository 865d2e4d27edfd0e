/** What carries the skin behind a face over an opening. A brick of 102.5 mm, a cavity of 75 and a block of 100: 277.5 mm. */
import { describe, expect, test } from 'vitest';
import { afterWay, findingsIn, silent } from './tells';

const shed = (lines: string, wall = '') =>
  `perpend 1\nuse "firm.perp"\nwall shed\n  brick red\n  stands held\n  length 2240 mm\n  height 18 courses\n${wall}  opening window\n    from left 665 mm\n    width 910 mm\n    sill 3 courses\n    height 9 courses\n${lines}`;
const SKIN = '  backing block-100 cavity 75 mm\n';
const codes = (text: string) => findingsIn(text).map((f) => f.code);

describe('skin-uncarried', () => {
  test('is told of a lintel under the face alone; one under both clears it', () => {
    const text = shed('    lintel 100 x 65 mm slab\n', SKIN);
    const found = findingsIn(text).find((f) => f.code === 'skin-uncarried')!;
    expect(found.severity).toBe('information');
    expect(found.message).toContain(
      'the lintel is 100 mm wide, and the two skins and what is between them are 277.5 mm thick',
    );
    expect(found.ways.map((w) => w.title)).toEqual(['A lintel 275 mm wide, under both skins']);
    silent(afterWay(text, found.ways[0]!.edits), 'skin-uncarried');
  });

  test('is not told of a lintel under both, nor of a wall of one skin', () => {
    silent(shed('    lintel 275 x 65 mm slab\n', SKIN), 'skin-uncarried');
    silent(shed('    lintel 100 x 65 mm slab\n'), 'skin-uncarried');
  });

  test('is told of an arch, which a lintel cannot be made wider for', () => {
    const text = shed('    head segmental rise 130 mm\n', SKIN);
    expect(codes(text)).toContain('skin-uncarried');
    expect(findingsIn(text).find((f) => f.code === 'skin-uncarried')!.ways).toEqual([]);
  });
});
