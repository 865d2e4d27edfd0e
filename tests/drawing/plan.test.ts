import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Box,
  type Drawing,
  planOf,
  toSheets,
  turnedTo,
  wallPlans,
} from '../../server/engine/drawing';
import { planPlaces } from '../../server/engine/drawing/plan/plan-places';
import { type PlacedPiece, placeCourse, setOut } from '../../server/engine/setting-out';
import { plainWall } from '../setting-out/arbitrary';
import { BONDS, overAll, UK, wall } from '../setting-out/fixtures';
import { wordsOn } from './marks';
import { laidPier, piers, yard } from './samples';

const BRICKS = ['stretcher', 'header', 'half', 'three-quarter', 'closer', 'cut'];
const bricksIn = ({ boxes }: Drawing) => boxes.filter(({ style }) => BRICKS.includes(style));
const places = (out: typeof yard) => planPlaces(out).map(({ title }) => title);

const piece = (x: number, y: number, along: number, across: number): PlacedPiece => {
  return { piece: 'whole', x, y, along, across };
};

describe('places on plan', () => {
  test('ends, reveals and piers, from the left', () => {
    const seen = ['Left end', 'Window, left reveal', 'Window, right reveal', 'Pier', 'Right end'];
    expect(places(yard)).toEqual(seen);
  });

  test('a pier beside an opening shows its reveal, and one at an end shows the end', () => {
    const gate = { name: 'Gate', from: 2000, width: 1000, sill: 0, top: null };
    const plans = [[{ piece: 'whole' as const, count: 6 }]];
    const at = (name: string, from: number) => ({
      name,
      from,
      width: 327.5,
      depth: 327.5,
      courses: 12,
      plans,
    });
    const out = setOut(
      wall({ length: 6000, openings: [gate], piers: [at('A', 1672.5), at('B', 5672.5)] }),
    );
    expect(places(out)).toEqual(['Left end', 'A', 'Gate, right reveal', 'B']);
  });

  test('a short wall is drawn whole', () => {
    expect(places(setOut(wall({ length: overAll(8) })))).toEqual(['The whole length']);
  });
});

describe('plan', () => {
  test('of a short wall has every brick of two courses', () => {
    const short = plainWall.map((spec) => ({ ...spec, length: Math.min(spec.length, 1300) }));
    fc.assert(
      fc.property(short, (spec) => {
        const out = setOut(spec);
        const { groups } = wallPlans(out, { title: 'wall', course: 0 });
        const drawn = groups.flatMap(({ drawings }) => drawings.toReversed());
        const laid = [0, 1].filter((c) => c < spec.courses).map((c) => placeCourse(out, c));
        const some = laid.filter((pieces) => pieces.length);
        expect(drawn.map((d) => bricksIn(d).length)).toEqual(some.map((pieces) => pieces.length));
      }),
      { numRuns: 100 },
    );
  });

  test('takes two courses that differ: in garden wall bond the headers and the stretchers on them', () => {
    const out = setOut(wall({ length: 5000, thickness: 2, bond: BONDS.englishGarden }));
    const [end] = wallPlans(out, { title: 'wall' }).groups;
    expect(end!.drawings.map(({ title }) => title)).toEqual(['Course 2', 'Course 1']);
    const styles = end!.drawings.map((d) => new Set(bricksIn(d).map(({ style }) => style)));
    expect(styles[0]).toEqual(new Set(['stretcher']));
    expect(styles[1]).toEqual(new Set(['header', 'closer']));
  });

  test('the course asked for is the lower', () => {
    const [end] = wallPlans(yard, { title: 'yard', course: 4 }).groups;
    expect(end!.drawings.map(({ title }) => title)).toEqual(['Course 6', 'Course 5']);
  });

  test('a cut is hatched, and sized both ways where it is cut both ways', () => {
    const cuts = [
      { ...piece(0, 0, 140, 102.5), piece: 'cut' as const },
      { ...piece(0, 112.5, 140, 80), piece: 'cut' as const },
    ];
    const drawing = planOf({
      title: 'Cut',
      description: '',
      units: 'millimetres',
      unit: UK,
      window: { left: 0, right: 140, front: 0, back: 192.5 },
      goesOn: { left: false, right: false },
      pieces: cuts,
      along: [0, 140],
      through: [0, 192.5],
    });
    expect(drawing.labels.map(({ text }) => text)).toEqual(['140', '140 x 80']);
    expect(new Set(drawing.boxes.map(({ style }) => style))).toEqual(new Set(['cut']));
    const groups = [{ title: '', drawings: [drawing] }];
    const set = { title: '', description: '', units: drawing.units, scale: 20, groups, notes: [] };
    // “140 x 80” is longer than its piece on paper.
    expect(toSheets(set).flatMap(wordsOn)).toContain('cut a 140, b 140 x 80 mm');
    expect(toSheets({ ...set, scale: 10 }).flatMap(wordsOn)).toContain('cut 140, 140 x 80 mm');
  });

  test('a pier stands in its place between the wall’s bricks, none on another', () => {
    const { groups } = wallPlans(yard, { title: 'yard', piers });
    const { drawings } = groups.find(({ title }) => title === 'Pier')!;
    for (const drawing of drawings) {
      const boxes = bricksIn(drawing);
      const own = boxes.filter(({ x, width }) => x >= 3500 && x + width <= 3500 + laidPier.width);
      expect(own).toHaveLength(laidPier.courses[0]!.pieces.length);
      expect(overlaps(boxes)).toEqual([]);
    }
    expect(drawings[0]!.chains[1]).toMatchObject({ side: 'right', form: 'between' });
    // 327.5 mm about the middle of 215 mm: 56.25 mm on each side.
    expect(drawings[0]!.chains[1]!.stops).toEqual([-56.25, 0, 215, 271.25]);
  });

  test('the work that goes on is cut off at a break line, free ends are not', () => {
    const { groups } = wallPlans(yard, { title: 'yard', piers });
    const breaks = (title: string) => {
      const { drawings } = groups.find((group) => group.title === title)!;
      const strokes = drawings[0]!.strokes.filter(({ style }) => style === 'break');
      return strokes.length / 5; // five lines to each
    };
    expect(['Left end', 'Pier', 'Window, left reveal'].map(breaks)).toEqual([1, 2, 1]);
    for (const { drawings } of groups)
      for (const { boxes, extent } of drawings)
        for (const { x, width } of boxes) {
          expect(x).toBeGreaterThanOrEqual(extent.left - 0.001);
          expect(x + width).toBeLessThanOrEqual(extent.right + 0.001);
        }
  });

  test('hundreds of openings are not all drawn, and it says so', () => {
    const openings = Array.from({ length: 100 }, (_, i) => {
      return { name: `o${i}`, from: 1000 + 2000 * i, width: 900, sill: 2, top: 6 };
    });
    const set = wallPlans(setOut(wall({ length: 202000, openings })), { title: 'long' });
    expect(set.groups).toHaveLength(60);
    expect(set.notes).toContain('142 more places are not drawn.');
    expect(toSheets(set).length).toBeLessThan(40);
  });
});

describe('a wall turned to its quoin', () => {
  const out = setOut(wall({ length: overAll(12) }));
  const other = setOut(wall({ length: overAll(16) }));
  // The brick of the other wall that lies in the corner: at its left end, and at its right.
  const atLeft = piece(0, 0, 215, 102.5);
  const atRight = piece(overAll(16) - 215, 0, 215, 102.5);
  const L = overAll(12);

  test.each([
    // Fronts outside: the other wall's front is the outer face, its length runs away from the corner.
    ['right', 'left', false, atLeft, { x: L - 102.5, y: 0 }],
    ['left', 'right', false, atRight, { x: 0, y: 0 }],
    // Fronts inside: the corner is at the back, and the other wall runs forward from it.
    ['right', 'left', true, atLeft, { x: L - 102.5, y: 102.5 - 215 }],
    ['left', 'right', true, atRight, { x: 0, y: 102.5 - 215 }],
    // One of the two turned about: its own front is then inside.
    ['right', 'right', false, atRight, { x: L - 102.5, y: 0 }],
  ] as const)('%s end with its %s, inside %s', (side, otherSide, inside, brick, at) => {
    const quoin = { title: 'Quoin', side, otherSide, other, inside };
    const turned = turnedTo(out, quoin, brick);
    expect(turned).toMatchObject({ turned: true, along: 215, across: 102.5 });
    expect(turned.x).toBeCloseTo(at.x, 6);
    expect(turned.y).toBeCloseTo(at.y, 6);
  });

  test('what is its front lies on the outer side where fronts are outside', () => {
    const quoin = { title: '', side: 'right', otherSide: 'left', other, inside: false } as const;
    const thick = setOut(wall({ length: overAll(16), thickness: 2, bond: BONDS.english }));
    const front = turnedTo(out, { ...quoin, other: thick }, piece(0, 0, 215, 102.5));
    const back = turnedTo(out, { ...quoin, other: thick }, piece(0, 112.5, 215, 102.5));
    expect(front.x).toBeGreaterThan(back.x);
  });
});

function overlaps(boxes: readonly Box[]): [Box, Box][] {
  const apart = (a: Box, b: Box) => a.x + a.width <= b.x + 0.01 || a.y + a.height <= b.y + 0.01;
  return boxes.flatMap((a, i) =>
    boxes.slice(i + 1).flatMap((b): [Box, Box][] => (apart(a, b) || apart(b, a) ? [] : [[a, b]])),
  );
}
