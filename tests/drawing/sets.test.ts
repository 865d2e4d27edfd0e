/** Sheets of several small drawings: plans, copings from above, gauge rods. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  elevation,
  LETTER_LANDSCAPE,
  type Mark,
  pierElevation,
  rodSet,
  type Sheet,
  topPlans,
  toSheets,
  wallPlans,
  withReused,
} from '../../server/engine/drawing';
import { textWidth } from '../../server/engine/drawing/sheet/paper';
import { pierPlans, setOut } from '../../server/engine/setting-out';
import { coordinatedWall } from '../setting-out/arbitrary';
import { wall } from '../setting-out/fixtures';
import { cornersOf, wordsOn } from './marks';
import { cap, onEdge, sheets } from './samples';

type Text = Extract<Mark, { kind: 'text' }>;
const textsOf = (sheet: Sheet) =>
  sheet.marks.flatMap((m): Text[] => (m.kind === 'text' ? [m] : []));
const wordsOf = (all: readonly Sheet[]) => all.flatMap(textsOf).map(({ text }) => text);

/** Round the letters of a text, mm on paper: capitals are 0.72 of the size. */
function roundOf({ x, y, size, align, turned, text }: Text) {
  const wide = textWidth(text, size);
  const back = align === 'start' ? 0 : align === 'end' ? wide : wide / 2;
  const high = size * 0.72;
  return turned
    ? { left: x - high, right: x, top: y - wide + back, bottom: y + back }
    : { left: x - back, right: x - back + wide, top: y - high, bottom: y };
}

/** Pairs of texts of which one stands in the other. */
function collisions(sheet: Sheet): string[] {
  const rounds = textsOf(sheet).map((text) => ({ ...roundOf(text), text: text.text }));
  return rounds.flatMap((a, i) =>
    rounds
      .slice(i + 1)
      .filter(
        (b) =>
          a.left < b.right - 0.2 &&
          b.left < a.right - 0.2 &&
          a.top < b.bottom - 0.2 &&
          b.top < a.bottom - 0.2,
      )
      .map((b) => `${sheet.title}: ${a.text} | ${b.text}`),
  );
}

/** Marks that lie off the paper, or over its edge. */
function outside({ marks, width, height }: Sheet): Mark[] {
  return marks.filter((mark) => {
    const { xs, ys } = cornersOf(mark);
    const past = (at: number, most: number) => at < 5 || at > most - 5;
    return xs.some((x) => past(x, width)) || ys.some((y) => past(y, height));
  });
}

describe('sheets', () => {
  test.each(Object.entries(sheets))('%s: nothing off the paper, no text on another', (_, pages) => {
    expect(pages.flatMap(outside)).toEqual([]);
    expect(pages.flatMap(collisions)).toEqual([]);
    const sizes = pages.flatMap(textsOf).map(({ size }) => size);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(1.8);
  });

  test('plans of any wall keep to the paper at one usual scale', () => {
    fc.assert(
      fc.property(coordinatedWall, fc.boolean(), ({ spec }, feet) => {
        const units = feet ? ('feet' as const) : ('millimetres' as const);
        const set = wallPlans(setOut(spec), { title: 'wall', units });
        const pages = toSheets(set, feet ? LETTER_LANDSCAPE : undefined);
        expect(new Set(pages.map(({ scale }) => scale))).toEqual(new Set([feet ? 8 : 10]));
        expect(pages.flatMap(outside)).toEqual([]);
        expect(pages.flatMap(collisions)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test('a title of any length leaves the drawings at their scale, on the paper', () => {
    const long = 'Wall behind the old bakehouse '.repeat(40);
    const gate = { name: long, from: 1000, width: 900, sill: 0, top: null };
    const out = setOut(wall({ length: 4000, openings: [gate] }));
    const pages = toSheets(wallPlans(out, { title: 'x' }));
    expect(pages[0]!.scale).toBe(10);
    expect(pages.flatMap(outside)).toEqual([]);
  });
});

describe('the coping from above', () => {
  const set = topPlans([onEdge, cap], { title: 'coping', thickness: 215 });

  test('is every brick across the wall, in lengths under one another', () => {
    const [first, second, third] = set.groups;
    expect(set.groups.map(({ title }) => title)).toEqual([
      'Brick on edge, 0 mm to 3490 mm',
      'Brick on edge, 0 mm to 3490 mm, carried on',
      'Cap, 400 x 400 mm',
    ]);
    const boxes = [...first!.drawings[0]!.boxes, ...second!.drawings[0]!.boxes];
    // The brick at 2400 mm is parted: half of it on each strip.
    expect(boxes).toHaveLength(45 + 2 + 1);
    for (const { y, height } of boxes) expect([y, height]).toEqual([0, 215]);
    expect(third!.drawings[0]!.boxes).toMatchObject([{ style: 'cap', width: 400, height: 400 }]);
  });

  test('cuts are hatched, sized and placed in running dimensions', () => {
    const [drawing] = set.groups[0]!.drawings;
    expect(drawing!.labels.map(({ text }) => text)).toEqual(['52.5', '52.5']);
    // Where each begins; how long it is stands on it.
    expect(drawing!.chains[0]!.stops).toEqual([0, 1725, 1787.5, 2400]);
    expect(toSheets(set).flatMap(wordsOn)).toContain('cut 52.5 mm');
  });

  test('a cap shows how far it stands over its pier', () => {
    const { chains } = set.groups[2]!.drawings[0]!;
    // 400 mm over 327.5 mm: 36.25 mm on each side.
    expect(chains[1]).toMatchObject({ form: 'between', stops: [-92.5, -56.25, 271.25, 307.5] });
  });

  test('rows laid another way round have joints of their own, and stand out over both faces', () => {
    // Over one and a half bricks: a tile across and one along it, 265 + 10 + 165 mm; 56.25 mm out over each face.
    const row = (length: number, count: number) => ({
      pieces: Array.from({ length: count }, () => ({ length, cut: false })),
      joint: 10,
    });
    const rows = [row(165, 3), row(265, 2)];
    const tiles = {
      ...onEdge,
      kind: 'tiles' as const,
      from: 0,
      to: 540,
      height: 11,
      deep: [265, 165],
    };
    const { groups } = topPlans([{ ...tiles, ...rows[0]!, rows, between: 10 }], {
      title: 'tiles',
      thickness: 327.5,
    });
    const { boxes, extent } = groups[0]!.drawings[0]!;
    expect([extent.bottom, extent.top]).toEqual([-56.25, 327.5 + 56.25]);
    const at = boxes.map(({ x, y, width, height }) => [x, y, width, height]);
    expect(at).toEqual([
      [0, -56.25, 165, 265],
      [175, -56.25, 165, 265],
      [350, -56.25, 165, 265],
      [0, 218.75, 265, 165],
      [275, 218.75, 265, 165],
    ]);
  });

  test('a coping too long to draw says so', () => {
    const run = { ...onEdge, to: 1e7, wholes: 500 };
    const long = topPlans([run], { title: 'long', thickness: 215 });
    expect(long.groups).toHaveLength(40);
    expect(long.notes).toContain('Only the first part is drawn.');
  });
});

describe('the gauge rod', () => {
  const rod = { title: 'rod', gauge: 75, courses: 34 };
  const levels = [
    { at: 600, name: 'head' },
    { at: 150, name: 'damp-proof course' },
    { at: 640, name: 'springing' },
    { at: 600, name: 'sill' },
  ];

  test('has every course once, its number and its running height', () => {
    const set = rodSet({ ...rod, levels: [] });
    const labels = set.groups.flatMap(({ drawings }) => drawings[0]!.labels);
    const heights = labels.map(({ text }) => Number(text)).filter((n) => n > 34);
    const expected = Array.from({ length: 34 }, (_, i) => (i + 1) * 75);
    expect([...new Set(heights)].sort((a, b) => a - b)).toEqual(expected);
    expect(set.groups.map(({ title }) => title)).toEqual(['Courses 0 to 20', 'Courses 20 to 34']);
    const marks = set.groups.flatMap(({ drawings }) => drawings[0]!.strokes);
    expect(marks.filter(({ style }) => style === 'rod')).toHaveLength(21 + 15);
  });

  test('levels are named once, at their height; what lies between courses has it written', () => {
    const [first] = rodSet({ ...rod, levels }).groups;
    const { labels, strokes } = first!.drawings[0]!;
    const names = labels.map(({ text }) => text).filter((text) => /[a-z]/.test(text));
    expect(names).toEqual(['damp-proof course', 'head, sill', 'springing 640']);
    const marked = strokes.filter(({ style }) => style === 'mark').map(({ from }) => from.y);
    expect(marked).toEqual([150, 600, 640]);
  });

  test('is to scale: a course of 75 mm is 7.5 mm on paper', () => {
    const [page] = toSheets(rodSet({ ...rod, courses: 2, levels: [] }));
    const ticks = page!.marks.flatMap((m) => (m.kind === 'line' && m.ink === 'rod' ? m.y1 : []));
    expect(ticks).toHaveLength(3);
    expect(ticks[0]! - ticks[1]!).toBeCloseTo(7.5, 6);
    expect(wordsOf([page!])).toContain('Scale 1:10. Sizes in millimetres.');
  });

  test('a tower is marked as far as is read, and says how far; absurd levels are left out', () => {
    const wild = [1e300, -5, Number.NaN].map((at) => ({ at, name: 'wild' }));
    const pages = toSheets(rodSet({ ...rod, courses: 1e7, levels: wild }));
    expect(pages.flatMap(outside)).toEqual([]);
    expect(pages.length).toBeLessThan(20);
    expect(wordsOf(pages)).toContain('Marked up to course 600.');
    expect(wordsOf(pages).join()).not.toMatch(/wild|NaN|e\+/);
  });
});

describe('work built again', () => {
  const out = setOut(wall({ length: 4490, courses: 10 }));
  const reusedIn = (share: number) => {
    const { boxes } = withReused(elevation(out, { title: 'frost' }), share, 'a part of a wall');
    const whole = boxes.filter(({ style }) => style === 'stretcher' || style === 'header').length;
    return [boxes.filter(({ style }) => style === 'reused').length, whole] as const;
  };

  test.each([0, 0.25, 0.67, 1])('%f of its whole bricks are marked as reused', (share) => {
    const [reused, whole] = reusedIn(share);
    expect(Math.abs(reused - share * whole)).toBeLessThan(1);
  });

  test('each mark lies on a brick, and the key and a note tell of it', () => {
    const { boxes, keys, notes } = withReused(
      elevation(out, { title: 'frost' }),
      0.67,
      'a part of a wall',
    );
    const at = ({ x, y }: { x: number; y: number }) => `${x} ${y}`;
    const bricks = new Set(boxes.filter(({ style }) => style !== 'reused').map(at));
    for (const box of boxes) if (box.style === 'reused') expect(bricks).toContain(at(box));
    expect(keys).toContainEqual({ style: 'reused', text: 'reused brick' });
    expect(notes.join()).toContain('Dotted: reused, 67 of 100; without dots: new.');
  });

  test('courses of a pier as much as a length of wall', () => {
    const unit = { length: 215, width: 102.5, height: 65 };
    const { courses } = pierPlans({ width: 3, depth: 3, unit, joint: 10 })!;
    const plans = courses.map(({ pieces }) => [{ piece: 'whole' as const, count: pieces.length }]);
    const plan = { name: '', width: 327.5, depth: 327.5, courses: 14, plans };
    const face = pierElevation(plan, 75, 'gate', [], { placed: { unit, courses } });
    const { boxes, description, strokes } = withReused(face, 0.5, 'a pier');
    const whole = boxes.filter(({ style }) => style === 'stretcher' || style === 'header').length;
    const reused = boxes.filter(({ style }) => style === 'reused').length;
    expect(whole).toBeGreaterThan(14);
    expect(Math.abs(reused - whole / 2)).toBeLessThan(1);
    expect(description).toContain('Elevation of a pier. Dotted: reused, 50 of 100');
    expect(strokes.filter(({ style }) => style === 'ground')).toEqual([]);
  });
});
