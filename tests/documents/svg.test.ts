import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawingToSvg, escapeXml } from '../../server/documents/svg';
import { HATCHES, LOOKS } from '../../server/documents/svg-looks';
import { type Drawing, elevation, pierElevation } from '../../server/engine/drawing';
import { setOut } from '../../server/engine/setting-out';
import { coordinatedWall } from '../setting-out/arbitrary';
import { wall } from '../setting-out/fixtures';
import { readXml } from './xml';

const cut = elevation(setOut(wall({ length: 1270 })), { title: 'Wall with a cut' });

describe('SVG of a drawing', () => {
  test('is well-formed, one A4 page across, with words for screen readers', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        const root = readXml(drawingToSvg(elevation(setOut(spec), { title: 'North wall' })));
        expect(root.name).toBe('svg');
        expect(root.attributes).toMatchObject({
          width: '297mm',
          height: '210mm',
          viewBox: '0 0 297 210',
          role: 'img',
        });
        const [title, desc] = root.children;
        expect([title!.name, title!.text]).toEqual(['title', 'North wall']);
        expect([desc!.name, desc!.text.slice(0, 9)]).toEqual(['desc', 'Elevation']);
      }),
      { numRuns: 60 },
    );
  });

  test('is the same bytes each time', () => {
    const again = elevation(setOut(wall({ length: 1270 })), { title: 'Wall with a cut' });
    expect(drawingToSvg(again)).toBe(drawingToSvg(cut));
    expect(drawingToSvg(cut)).not.toMatch(/NaN|Infinity|undefined|-0[^.]|e-\d/);
  });

  test('whatever a name holds comes back as it was, and adds no element', () => {
    const plain = countElements(drawingToSvg({ ...cut, title: 'x' }));
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (title) => {
        const svg = drawingToSvg({ ...cut, title });
        const clean = title.replace(/[^\t\n\r\x20-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, ' ');
        expect(readXml(svg).children[0]!.text).toBe(clean);
        expect(countElements(svg)).toBe(plain);
      }),
      { numRuns: 300 },
    );
    expect(escapeXml(`<a b="c">&'`)).toBe('&lt;a b=&quot;c&quot;&gt;&amp;&#39;');
    expect(escapeXml('a\u0000b\uD800c')).toBe('a b c');
  });

  test('has no script, style sheet, link or outside reference', () => {
    const names = new Set(elements(readXml(drawingToSvg(cut))).map((element) => element.name));
    const known = ['svg', 'title', 'desc', 'defs', 'pattern', 'path', 'circle', 'rect', 'text'];
    expect([...names].filter((name) => !known.includes(name))).toEqual([]);
    expect(drawingToSvg(cut).replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|href/);
  });

  test('a pier has its drawing too', () => {
    const plans = [[{ piece: 'whole' as const, count: 3 }]];
    const pier = { name: 'gate pier', width: 327.5, depth: 327.5, courses: 20, plans };
    const at = 20 * 75 + 10;
    const cap = { kind: 'cap' as const, name: 'cap', from: -36, to: 364, at, height: 75 };
    const root = readXml(drawingToSvg(pierElevation(pier, 75, 'Gate pier', [cap])));
    expect(root.children[1]!.text).toBe(
      'Elevation of a pier, gate pier, 327.5 by 327.5 mm, 20 courses high.',
    );
  });
});

describe('in black and white', () => {
  /** Relative luminance of a colour such as #f3cdb9 (WCAG 2.1). */
  const grey = (colour: string) => {
    const [r, g, b] = [1, 3, 5].map((i) => {
      const part = Number.parseInt(colour.slice(i, i + 2), 16) / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
  };

  test('plain pieces differ in tone, all others have each a hatch of their own', () => {
    const pieces = ['stretcher', 'header', 'half', 'three-quarter', 'closer', 'cut'] as const;
    const plain = pieces.filter((piece) => !LOOKS[piece].hatch);
    const tones = plain.map((piece) => grey(LOOKS[piece].fill)).sort((a, b) => a - b);
    for (const [i, tone] of tones.entries())
      if (i > 0) expect((tone + 0.05) / (tones[i - 1]! + 0.05)).toBeGreaterThan(1.4);
    const hatches = pieces.flatMap((piece) => LOOKS[piece].hatch ?? []);
    expect(new Set(hatches).size).toBe(hatches.length);
    for (const look of Object.values(LOOKS))
      if (look.hatch) expect(HATCHES.join()).toContain(`id="${look.hatch}"`);
  });

  test('a hatched piece is drawn with its hatch over its colour', () => {
    const svg = drawingToSvg(cut);
    expect(svg).toContain('fill="url(#hatch-cross)"');
    expect(svg).toContain('fill="url(#hatch-up)"');
  });
});

test('bricks are gathered: a wall of thousands is a few elements', () => {
  const many = elevation(setOut(wall({ length: 20000, courses: 60 })), { title: 'many' });
  expect(many.boxes.length).toBeGreaterThan(5000);
  expect(countElements(drawingToSvg(many))).toBeLessThan(100);
});

test('a tight sheet ends below its key', () => {
  const drawing: Drawing = elevation(setOut(wall({ length: 20000 })), { title: 'long and low' });
  const height = (svg: string) => Number(readXml(svg).attributes.height!.replace('mm', ''));
  expect(height(drawingToSvg(drawing, undefined, true))).toBeLessThan(90);
});

function elements(root: ReturnType<typeof readXml>): ReturnType<typeof readXml>[] {
  return [root, ...root.children.flatMap(elements)];
}

function countElements(svg: string): number {
  return elements(readXml(svg)).length;
}
