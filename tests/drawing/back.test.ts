import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawingOf } from '../../server/documents/work-drawing';
import { type Drawing, elevation, mirrored } from '../../server/engine/drawing';
import { pierBricks, seenFrom } from '../../server/engine/drawing/pier-bricks';
import { setOut, tallyFace } from '../../server/engine/setting-out';
import { jobOf } from '../engine/world';
import { rudeWall } from '../setting-out/arbitrary';
import { overAll, UK, wall } from '../setting-out/fixtures';
import { laidPier, onEdge, piers, yard } from './samples';

const BRICKS = ['stretcher', 'header', 'half', 'three-quarter', 'closer', 'cut'] as const;
const back = (drawing: Parameters<typeof elevation>[0]) =>
  elevation(drawing, { title: 'back', face: 'back' });

/** English, one and a half bricks: a course shows headers on one side and stretchers on the other (Palmer, English bond). */
const THICK = {
  name: 'english',
  lap: 0.25,
  courses: [
    { units: ['stretcher'], back: { units: ['header'], start: 0.25 } },
    { units: ['header'], start: 0.25, back: { units: ['stretcher'] } },
  ],
} as const;

describe('the back of a wall', () => {
  test('draws the bricks that the tally counts there, piece by piece', () => {
    fc.assert(
      fc.property(rudeWall, (spec) => {
        const out = setOut(spec);
        const face = tallyFace(out, undefined, 'back');
        const { boxes } = back(out);
        for (const style of BRICKS)
          expect(boxes.filter((box) => box.style === style)).toHaveLength(face[style]);
      }),
      { numRuns: 60 },
    );
  });

  test('of a thick wall is its back row: stretchers behind headers', () => {
    const out = setOut(wall({ bond: THICK, thickness: 3, length: overAll(24), courses: 2 }));
    const styles = (drawing: Drawing, course: number) =>
      new Set(drawing.boxes.filter(({ y }) => y === course * 75 + 10).map(({ style }) => style));
    const front = elevation(out, { title: 'front' });
    expect(styles(front, 0)).toEqual(new Set(['stretcher']));
    expect(styles(back(out), 0)).toEqual(new Set(['header', 'closer']));
    expect(styles(back(out), 1)).toEqual(new Set(['stretcher']));
  });

  test('of a thick wall shows its own pieces cut to lie over a head: the course over them laps in both faces', () => {
    // Bricks on edge, 102.5 and a bed, are 37.5 short of two courses: the rest is cut, and lapped by the next course (41 mm of 56: common practice).
    const job = jobOf(`perpend 1
use uk
wall w
  bond flemish
  thick 1.5 bricks
  length 4490 mm
  height 16 courses
  stands held
  opening o
    from left 1340 mm
    width 1360 mm
    height 7 courses
    head brick-on-edge
    lintel 100 x 65 mm
    bearing 102.5 mm
    fit head-height cut
`);
    const joints = (pieces: readonly (readonly [number, number])[]) =>
      pieces
        .toSorted(([a], [b]) => a - b)
        .slice(1)
        .map(([from]) => from);
    for (const face of ['front', 'back'] as const) {
      const drawing = drawingOf(job.works[0]!, job.env, { face })!;
      const top = drawing.shapes.filter(({ style }) => style === 'cut');
      const split = top.map(({ points }) => {
        const xs = points.map(({ x }) => x);
        return [Math.min(...xs), Math.max(...xs)] as const;
      });
      const y = Math.min(...top.flatMap(({ points }) => points.map((p) => p.y)));
      const over = drawing.boxes.filter((box) => box.y > y + 27.5 && box.y < y + 75);
      const next = joints(over.map(({ x, width }) => [x, x + width] as const));
      expect(split.length).toBeGreaterThan(3);
      for (const at of joints(split))
        expect(Math.min(...next.map((x) => Math.abs(x - at)))).toBeGreaterThan(40);
    }
  });

  test('is seen from behind: left is right, and dimensions run from its own left', () => {
    const drawing = elevation(yard, { title: 'back', face: 'back', piers, toppings: [onEdge] });
    const opening = drawing.boxes.find(({ style }) => style === 'opening')!;
    // The window begins 1340 mm from the left end of 5000 mm and is 1022.5 mm wide.
    expect(opening.x).toBeCloseTo(5000 - 1340 - 1022.5, 6);
    const running = drawing.chains.find(
      ({ side, form }) => side === 'below' && form === 'running',
    )!;
    expect(running.stops).toEqual([0, 1172.5, 1500, 2637.5, 3660, 5000]);
    expect(drawing.description).toMatch(/^Elevation of the back of a wall 5000 mm long/);
  });

  test('a part of it is the part that is asked for, counted from its own left end', () => {
    const visible = { from: 300, to: 1100, courses: { from: 2, to: 5 } };
    const part = elevation(yard, { title: 'part', face: 'back', visible });
    expect(part.extent).toEqual({ left: 300, right: 1100, bottom: 150, top: 375 });
    const whole = back(yard).boxes.filter(
      ({ x, y, width }) => x < 1100 && x + width > 300 && y >= 150 && y < 375,
    );
    expect(part.boxes.length).toBe(whole.filter(({ style }) => style !== 'pier').length);
  });

  test('mirrored twice it is what it was', () => {
    fc.assert(
      fc.property(rudeWall, (spec) => {
        const drawing = elevation(setOut(spec), { title: 'wall' });
        const again = mirrored(mirrored(drawing, spec.length), spec.length);
        expect(again.boxes.map(({ x }) => x)).toEqual(
          drawing.boxes.map(({ x }) => expect.closeTo(x, 6)),
        );
        expect(again.chains.map(({ stops }) => stops)).toEqual(
          drawing.chains.map(({ stops }) => stops.map((stop) => expect.closeTo(stop, 6))),
        );
      }),
      { numRuns: 30 },
    );
  });
});

describe('a pier in a face', () => {
  test('shows brick by brick what its plans lay in front, and behind from behind', () => {
    const courses = { from: 0, to: 99 };
    const view = { unit: UK, bed: 10, units: 'millimetres', courses } as const;
    const front = pierBricks(piers[0]!, { ...view, face: 'front' });
    // 1 1/2 bricks square, bonded through: a header and a stretcher in each course.
    expect(front.boxes).toHaveLength(2 * 14);
    const rows = [0, 1].map((course) =>
      front.boxes.filter(({ y }) => y === course * 75 + 10).map(({ style, x }) => [style, x]),
    );
    expect(rows).toEqual([
      [
        ['stretcher', 3500],
        ['header', 3725],
      ],
      [
        ['header', 3500],
        ['stretcher', 3612.5],
      ],
    ]);
  });

  test('a brick behind shows where nothing stands before it', () => {
    const whole = { piece: 'whole' as const, along: 215, across: 102.5 };
    const pieces = [
      { ...whole, x: 0, y: 112.5 },
      { ...whole, x: 112.5, y: 0 },
    ];
    const course = { pieces, hidden: [], core: [] };
    expect(seenFrom(course, 'front')).toEqual([
      { style: 'stretcher', x: 112.5, width: 215 },
      { style: 'stretcher', x: 0, width: 112.5 },
    ]);
    expect(seenFrom(course, 'back')).toEqual([
      { style: 'stretcher', x: 0, width: 215 },
      { style: 'stretcher', x: 215, width: 112.5 },
    ]);
  });

  test('stands brick by brick in the wall’s elevation, above the wall too', () => {
    const { boxes, keys } = elevation(yard, { title: 'yard', piers });
    expect(boxes.filter(({ style }) => style === 'pier')).toEqual([]);
    expect(keys.map(({ style }) => style)).not.toContain('pier');
    const over = boxes.filter(({ y }) => y >= 10 * 75 + 10);
    expect(over).toHaveLength(2 * 4);
    const { width } = laidPier;
    expect(Math.max(...over.map((box) => box.x + box.width))).toBeCloseTo(3500 + width, 6);
  });

  test('is plain where the wall has too many bricks to draw', () => {
    const { boxes } = elevation(yard, { title: 'yard', piers, mostBricks: 10 });
    expect(boxes.map(({ style }) => style)).toContain('pier');
  });
});
