import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { feetText } from '../../server/engine/brickwork/lengths';
import {
  type Box,
  bricksOf,
  type Drawing,
  elevation,
  LETTER_LANDSCAPE,
  toSheet,
} from '../../server/engine/drawing';
import { lengthOn } from '../../server/engine/drawing/lengths';
import { setOut, tally, tallyFace } from '../../server/engine/setting-out';
import { coordinatedWall, rudeWall } from '../setting-out/arbitrary';
import { bricksOf as walked } from '../setting-out/expand';
import { BONDS, overAll, wall } from '../setting-out/fixtures';
import { cornersOf, wordsOn } from './marks';
import { piers, yard } from './samples';

const BRICKS = ['stretcher', 'header', 'half', 'three-quarter', 'closer', 'cut'] as const;
const bricksIn = (drawing: Drawing) =>
  drawing.boxes.filter((box) => BRICKS.some((style) => style === box.style));

const window = { name: 'window', from: overAll(12), width: 9 * 112.5 + 10, sill: 3, top: 8 };

describe('elevation', () => {
  test('draws the bricks that the tally counts, piece by piece', () => {
    fc.assert(
      fc.property(rudeWall, (spec) => {
        const out = setOut(spec);
        const drawing = elevation(out, { title: 'wall' });
        const face = tallyFace(out);
        for (const style of BRICKS)
          expect(drawing.boxes.filter((box) => box.style === style)).toHaveLength(face[style]);
      }),
      { numRuns: 200 },
    );
  });

  test('bricks do not overlap: sorted along each course they only rise', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        const bricks = bricksIn(elevation(setOut(spec), { title: 'w' }));
        for (const y of new Set(bricks.map((b) => b.y))) {
          const row = bricks.filter((b) => b.y === y);
          const sorted = row.toSorted((a, b) => a.x - b.x);
          const touching = sorted.filter((b, i) => i > 0 && end(sorted[i - 1]!) > b.x - 5);
          expect(touching).toEqual([]);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('a part of a wall is what of the whole lies in it', () => {
    const out = setOut(wall({ length: overAll(60), bond: BONDS.flemish, thickness: 2 }));
    const [low, high] = [1500, 4000];
    const courses = { from: 2, to: 7 };
    const whole = bricksIn(elevation(out, { title: 'all' }));
    const part = bricksIn(
      elevation(out, { title: 'part', visible: { from: low, to: high, courses } }),
    );
    const seen = whole.filter((b) => b.x < high && end(b) > low && b.y >= 150 && b.y < 525);
    expect(part).toHaveLength(seen.length);
    const clipped = seen.map((b) => Math.min(end(b), high) - Math.max(b.x, low));
    expect(part.map((b) => b.width)).toEqual(clipped.map((width) => expect.closeTo(width, 6)));
  });

  test('stepping over repeats finds the same bricks as walking them all', () => {
    fc.assert(
      fc.property(rudeWall, fc.nat(20000), fc.nat(3000), (spec, at, wide) => {
        const low = at + 0.3711; // never just on the edge of a brick
        for (const { from, segments } of setOut(spec).bands)
          for (const segment of segments) {
            const all = walked(segment, from).filter((b) => b.from < low + wide && b.to > low);
            const found = [...bricksOf(segment, from, low, low + wide)];
            expect(found.map((b) => b.piece)).toEqual(all.map((b) => b.piece));
          }
      }),
      { numRuns: 300 },
    );
  });

  test('a wall of too many bricks is drawn as areas, quickly, and says so', () => {
    const out = setOut(wall({ length: 1e6, courses: 2000 }));
    expect(tally(out).wholes).toBeGreaterThan(8e6);
    const drawing = elevation(out, { title: 'long' });
    expect(drawing.boxes.map((box) => box.style)).toEqual(['brickwork']);
    expect(drawing.notes).toHaveLength(1);
    expect(drawing.description).toContain('bricks not shown one by one');
  });

  test('a cut is labelled with its length, and in the key', () => {
    const drawing = elevation(setOut(wall({ length: 1270 })), { title: 'cut' });
    // Which cuts a length takes is for setting-out to choose; the drawing names each of them.
    const cuts = drawing.boxes.filter(({ style }) => style === 'cut').map(({ width }) => width);
    const lengths = [...new Set(cuts)].sort((a, b) => a - b).map((w) => lengthOn('millimetres', w));
    expect(lengths.length).toBeGreaterThan(0);
    expect(drawing.labels).toHaveLength(cuts.length);
    expect(new Set(drawing.labels.map((label) => label.text))).toEqual(new Set(lengths));
    expect(wordsOn(toSheet(drawing))).toContain(`cut ${lengths.join(', ')} mm`);
  });

  test('dimensions: each run and opening, the same from the left end, over all; heights of sill, head and top', () => {
    const { chains, rod } = elevation(setOut(wall({ length: overAll(40), openings: [window] })), {
      title: 'dimensions',
    });
    expect(chains).toEqual([
      { side: 'below', form: 'between', stops: [0, 1340, 2362.5, 4490] },
      { side: 'below', form: 'running', stops: [0, 1340, 2362.5, 4490] },
      { side: 'below', form: 'between', stops: [0, 4490] },
      { side: 'right', form: 'running', stops: [0, 225, 600, 750] },
    ]);
    expect(rod).toEqual({ gauge: 75, courses: 10, every: 4 });
  });

  test('what toothed ends reach over is dimensioned too: 8 bricks in each course, every other half a brick on', () => {
    const ends = { left: 'toothed', right: 'toothed' } as const;
    const length = 15 * 112.5 + 10;
    const { chains, extent } = elevation(setOut(wall({ length, ...ends })), { title: 'toothed' });
    const below = chains.filter(({ side }) => side === 'below').map(({ stops }) => stops);
    // 8 x 225 - 10 = 1790, the half brick 112.5 more: from 102.5 before one end to 102.5 past the other.
    expect(below).toEqual([
      [0, 1697.5],
      [-102.5, 1800],
    ]);
    expect([extent.left, extent.right]).toEqual([-102.5, 1800]);
  });

  test('the top of a coping has its height; a cap, of which no line says how thick it is, has none', () => {
    const out = setOut(wall({ length: overAll(12), courses: 10 }));
    const at = 10 * 75 + 10;
    const edge = { from: 0, to: 1340, at, height: 102.5, piece: 65, wholes: 18, joint: 10 };
    const coped = elevation(out, {
      title: 'coped',
      toppings: [{ kind: 'brick-on-edge', ...edge }],
    });
    expect(coped.chains.at(-1)!.stops).toEqual([0, 750, 862.5]);
    const cap = { kind: 'cap' as const, name: 'cap', from: 0, to: 1340, at, height: 50 };
    const capped = elevation(out, { title: 'capped', toppings: [cap] });
    expect(capped.chains.at(-1)!.stops).toEqual([0, 750]);
    expect(capped.notes).toEqual(['Caps are drawn without their true thickness.']);
  });

  test('in feet: to a sixteenth of an inch, at a scale of a rule for feet', () => {
    // 22 ft 11 5/8 in
    const out = setOut(wall({ length: 275.625 * 25.4 }));
    const sheet = toSheet(elevation(out, { title: 'feet', units: 'feet' }), LETTER_LANDSCAPE);
    const texts = sheet.marks.flatMap((mark) => (mark.kind === 'text' ? mark.text : []));
    expect(texts).toContain(`22'-11 5/8"`);
    expect(texts).toContain('Scale 1:32, 3/8" to the foot. Sizes in feet and inches.');
    expect(texts.filter((text) => /\d\.\d|mm/.test(text))).toEqual([]);
  });

  test.each([
    [304.8, `1'-0"`, '1 ft'],
    [304.8 - 25.4 / 32, `1'-0"`, '1 ft'], // half a sixteenth under a foot goes up to it
    [304.8 - 25.4 / 16, `11 15/16"`, '11 15/16 in'],
    [57.15, `2 1/4"`, '2 1/4 in'],
    [25.4 * 36.375, `3'-3/8"`, '3 ft 3/8 in'],
    [0, '0"', '0 in'],
  ])('%f mm is %s', (mm, drawn, said) => {
    expect(lengthOn('feet', mm)).toBe(drawn);
    expect(feetText(mm)).toBe(said);
  });

  test('courses in another brick are lined, brick by brick, through the piers too', () => {
    const bands = [{ name: 'blue', from: 4, to: 6 }];
    const drawing = elevation(yard, { title: 'bands', bands, piers });
    const { boxes, keys } = drawing;
    const lined = boxes.filter(({ style }) => style === 'band');
    const within = bricksIn(drawing).filter(({ y }) => y === 310 || y === 385);
    const at = ({ x, y, width, height }: Box) => [x, y, width, height];
    expect(lined.map(at)).toEqual(within.map(at));
    expect(keys).toContainEqual({ style: 'band', text: 'courses in blue' });
    const plain = elevation(yard, { title: 'plain', bands, mostBricks: 1 });
    const areas = plain.boxes.filter(({ style }) => style === 'band');
    expect(areas.map(({ y, height }) => [y, height])).toEqual(areas.map(() => [300, 150]));
    expect(areas.length).toBeGreaterThan(0);
  });

  test('the damp-proof course stops at an opening that goes down through it', () => {
    const gate = { ...window, sill: 0, top: null };
    const out = setOut(wall({ length: overAll(40), openings: [gate] }));
    const lines = elevation(out, { title: 'dpc', dpc: 2 }).strokes.filter((s) => s.style === 'dpc');
    expect(lines.map(({ from, to }) => [from.x < 1, to.x])).toEqual([
      [true, 1340],
      [false, expect.any(Number)],
    ]);
    expect(lines[1]!.from).toEqual({ x: 2362.5, y: 150 });
  });
});

function end(box: Box): number {
  return box.x + box.width;
}

describe('sheet', () => {
  test('keeps to the paper, at a usual scale, in letters of 1.8 mm and more', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        const sheet = toSheet(elevation(setOut(spec), { title: 'wall' }));
        expect([5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200]).toContain(sheet.scale);
        const out = sheet.marks.filter((mark) => {
          const { xs, ys } = cornersOf(mark);
          const past = (at: number, most: number) => at < 5 || at > most - 5;
          return xs.some((x) => past(x, 297)) || ys.some((y) => past(y, 210));
        });
        expect(out).toEqual([]);
        const sizes = sheet.marks.flatMap((mark) => (mark.kind === 'text' ? mark.size : []));
        expect(Math.min(...sizes)).toBeGreaterThanOrEqual(1.8);
      }),
      { numRuns: 150 },
    );
  });

  test('a part far along a wall is put on the same paper', () => {
    const out = setOut(wall({ length: 50000 }));
    const visible = { from: 40000, to: 42000, courses: { from: 2, to: 8 } };
    const sheet = toSheet(elevation(out, { title: 'part', visible }));
    const boxes = sheet.marks.flatMap((mark) => (mark.kind === 'box' ? mark : []));
    expect(sheet.scale).toBe(10);
    for (const { x, y, width, height } of boxes) {
      expect(x).toBeGreaterThanOrEqual(10);
      expect(x + width).toBeLessThanOrEqual(287);
      expect(y).toBeGreaterThanOrEqual(10);
      expect(y + height).toBeLessThanOrEqual(200);
    }
  });

  test('the work is to scale: a brick of 215 x 65 at 1:10 is 21.5 x 6.5 mm on paper', () => {
    const sheet = toSheet(elevation(setOut(wall({ length: 1340 })), { title: 'wall' }));
    expect(sheet.scale).toBe(10);
    const brick = sheet.marks.find((mark) => mark.kind === 'box' && mark.ink === 'stretcher');
    expect(brick).toMatchObject({ width: 21.5, height: 6.5 });
  });
});
