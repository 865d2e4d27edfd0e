/** The length of every cut is on the sheet: on the cut, or by a letter that the key explains. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  asBlocks,
  type Drawing,
  elevation,
  LETTER_LANDSCAPE,
  type Mark,
  type Sheet,
  topPlans,
  toSheet,
  toSheets,
  wallPlans,
} from '../../server/engine/drawing';
import { lengthOn } from '../../server/engine/drawing/lengths';
import { setOut } from '../../server/engine/setting-out';
import { rudeWall } from '../setting-out/arbitrary';
import { BONDS, wall } from '../setting-out/fixtures';
import { wordsOn } from './marks';
import { onEdge } from './samples';

type Text = Extract<Mark, { kind: 'text' }>;
type Box = Extract<Mark, { kind: 'box' }>;

/** What the key of a sheet says of each letter: “cut a 52.5, b 60 mm”, over as many rows as it takes. */
function lettersOn(sheet: Sheet): Map<string, string> {
  const words = wordsOn(sheet);
  const first = words.findIndex((text) => /^cut \S/.test(text));
  const list = first < 0 ? '' : words.slice(first).join(' ').slice(4);
  const pairs = list.matchAll(/(?:^|, )([a-z]+) ([\d'"/ x.-]+?)(?=,| mm|$| [a-z])/g);
  return new Map([...pairs].map(([, letter, size]) => [letter!, size!.trim()]));
}

const textsOn = ({ marks }: Sheet) => marks.filter((m): m is Text => m.kind === 'text');
const cutsOn = ({ marks }: Sheet) =>
  marks.filter((m): m is Box => m.kind === 'box' && m.ink === 'cut' && !m.key);

/** What is written in the middle of a box or beside it, as high as that. */
function writtenOn(box: Box, texts: readonly Text[]): string[] {
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  return texts
    .filter(({ backed, turned, size, ...at }) => {
      const level = turned ? Math.abs(at.y - y) : Math.abs(at.y - size * 0.36 - y);
      return backed && level < 0.01 && Math.abs(at.x - x) < 8;
    })
    .map(({ text }) => text);
}

function expectSized(drawing: Drawing, sheet: Sheet) {
  const letters = lettersOn(sheet);
  const texts = textsOn(sheet);
  for (const box of cutsOn(sheet)) {
    const size = lengthOn(drawing.units, box.width * sheet.scale);
    const said = writtenOn(box, texts).map((text) => letters.get(text) ?? text);
    expect(said).toContain(size);
  }
}

describe('cuts on a sheet', () => {
  test('are sized, however small they are on it', () => {
    const drawn = fc.property(rudeWall, fc.constantFrom('millimetres', 'feet'), (spec, units) => {
      const out = setOut(spec as Parameters<typeof setOut>[0]);
      const drawing = elevation(out, { title: 'w', units: units as Drawing['units'] });
      expectSized(drawing, toSheet(drawing, LETTER_LANDSCAPE));
    });
    fc.assert(drawn, { numRuns: 60 });
  });

  test('of many lengths each have a letter of their own, in a key as long as it has to be', () => {
    const openings = Array.from({ length: 12 }, (_, i) => {
      const name = `o${i}`;
      return { name, from: 700 + i * 1531.7, width: 611.3 + 17 * i, sill: 2, top: 7 };
    });
    const spec = wall({ bond: BONDS.flemish, thickness: 2, length: 22_000, openings });
    const drawing = elevation(setOut(spec), { title: 'many', units: 'feet' });
    const sheet = toSheet(drawing, LETTER_LANDSCAPE);
    const sizes = new Set(drawing.labels.flatMap((l) => (l.cut === undefined ? [] : [l.text])));
    expect(sizes.size).toBeGreaterThan(23);
    const letters = lettersOn(sheet);
    expect(new Set(letters.values())).toEqual(sizes);
    expect(letters.size).toBe(sizes.size);
    expectSized(drawing, sheet);
    for (const { x, y } of textsOn(sheet)) {
      expect(x).toBeLessThan(sheet.width);
      expect(y).toBeLessThan(sheet.height);
    }
  });

  test('without letters where all have room', () => {
    const drawing = elevation(setOut(wall({ length: 1270 })), { title: 'few' });
    const sheet = toSheet(drawing);
    expect(lettersOn(sheet).size).toBe(0);
    expectSized(drawing, sheet);
  });

  test('are listed for all drawings of a set, not for the first alone', () => {
    const [a, b] = [setOut(wall({ length: 1270 })), setOut(wall({ length: 1310 }))];
    const groups = [a, b].flatMap((out) => wallPlans(out, { title: '' }).groups);
    const sizes = groups.flatMap(({ drawings }) =>
      drawings.flatMap(({ labels }) => labels.flatMap((l) => (l.cut ? [l.text] : []))),
    );
    expect(new Set(sizes).size).toBeGreaterThan(1);
    const set = { ...wallPlans(a, { title: '' }), groups };
    const [key] = toSheets(set)
      .flatMap(wordsOn)
      .filter((text) => text.startsWith('cut '));
    for (const size of new Set(sizes)) expect(key).toContain(size);
  });

  test('of a coping that a strip parts are as long as they are', () => {
    const parted = { ...onEdge, from: 0, to: 2500, wholes: 31, cut: { length: 52.5, count: 3 } };
    const sheets = toSheets(topPlans([parted], { title: '', thickness: 215 }));
    expect(sheets.flatMap(wordsOn)).toContain('cut 52.5 mm');
  });

  test('over a lintel are sized both ways', () => {
    const corners = [
      [0, 750],
      [215, 750],
      [215, 795],
      [0, 795],
    ];
    const points = corners.map(([x, y]) => ({ x: x!, y: y! }));
    const shapes = [{ style: 'cut' as const, points }];
    const sheet = toSheet(elevation(setOut(wall()), { title: 'split', shapes }));
    expect(wordsOn(sheet)).toContain('215 x 45');
    expect(wordsOn(sheet)).toContain('cut 215 x 45 mm');
  });
});

test('a block that is not whole is hatched as a cut, and sized', () => {
  const block = { length: 440, width: 100, height: 215 };
  const out = setOut(wall({ unit: block, length: 4490, courses: 4 }));
  const plain = elevation(out, { title: 'back' });
  const halves = plain.boxes.filter(({ style }) => style === 'half');
  expect(halves.length).toBeGreaterThan(0);
  const drawing = asBlocks(plain);
  const cut = drawing.boxes.filter(({ style }) => style === 'cut');
  expect(cut).toHaveLength(halves.length);
  expect(drawing.boxes.every(({ style }) => style === 'cut' || style === 'block')).toBe(true);
  expect(drawing.keys.map(({ text }) => text)).toEqual(['block', 'cut']);
  const sheet = toSheet(drawing);
  expectSized(drawing, sheet);
  // Half a block and its joint: (440 - 10) / 2.
  expect(wordsOn(sheet)).toContain('cut 215 mm');
});
