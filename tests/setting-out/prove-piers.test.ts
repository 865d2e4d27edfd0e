/** Piers proved by the checker that knows nothing of them: all four faces of those alone, attached ones with their wall on plan. */
import { describe, expect, test } from 'vitest';
import {
  attachPiers,
  type CoreFill,
  type CoursePlan,
  faceOf,
  type PieceCount,
  type PierLaid,
  type PlacedPiece,
  pierPlans,
  placeCourse,
  setOut,
} from '../../server/engine/setting-out';
import { rulesOf } from '../../server/engine/setting-out/place/built';
import {
  type BuiltCourse,
  type LayoutFault,
  proveFace,
  provePlan,
} from '../../server/engine/setting-out/prove';
import { LIBRARIES } from '../engine/world';
import { BONDS, EXACT, UK, wall } from './fixtures';
import { area } from './proofs';

const JOINT = 10;
const HALF = 112.5;
const HALVES = [1, 2, 3, 4, 5];
const SIZES = HALVES.flatMap((width) =>
  HALVES.filter((d) => d <= width).map((d) => [width, d] as const),
);
const SIDES = ['front', 'back', 'left', 'right'] as const;
const QUARTER = { ...rulesOf(wall({ bond: BONDS.english, thickness: 2, limits: EXACT })) };

/** One face, three turns of its courses: the first stands on the last too. */
function face({ courses, width, depth }: PierLaid, side: (typeof SIDES)[number]): BuiltCourse[] {
  const long = side === 'front' || side === 'back' ? width : depth;
  return Array.from({ length: 2 * courses.length + 1 }, (_, course) => ({
    course,
    pieces: faceOf(courses[course % courses.length]!, side).map(({ piece, from, length }) => {
      return { piece, from, to: from + length };
    }),
    outline: [{ from: 0, to: long, left: 'stopped', right: 'stopped' }],
  }));
}

const facesOf = (laid: PierLaid): LayoutFault[] =>
  SIDES.flatMap((side) => proveFace(face(laid, side), QUARTER));

/** A core that is left open is filled with something else, to the faces of the bricks round it. */
function planOf({ pieces, core }: CoursePlan, { width, depth }: PierLaid): LayoutFault[] {
  const fill = core.map(({ x, y, width: w, height }): PlacedPiece => {
    const [along, across] = [w - 2 * JOINT, height - 2 * JOINT];
    return { piece: 'cut', x: x + JOINT, y: y + JOINT, along, across };
  });
  return provePlan(0, [...pieces, ...fill], [area(0, 0, width, depth)], EXACT);
}

function proved(laid: PierLaid): LayoutFault[] {
  return [...facesOf(laid), ...laid.courses.flatMap((course) => planOf(course, laid))];
}

describe('a pier that stands alone', () => {
  test.each(SIZES)(
    '%i x %i half bricks, with each core: faces and plan without a fault',
    (w, d) => {
      for (const core of [undefined, 'bricks', 'halves', 'concrete', 'hollow'] as (
        | CoreFill
        | undefined
      )[]) {
        const laid = pierPlans({ width: w, depth: d, unit: UK, joint: JOINT, core })!;
        expect([core, proved(laid)]).toEqual([core, []]);
      }
    },
  );

  test('by its counts in each library: closers beside quoin headers, quarter laps on all four faces', () => {
    for (const { name, width, depth, counts } of plansOfLibraries()) {
      const laid = pierPlans({ width, depth, unit: UK, joint: JOINT, counts });
      expect([name, laid && proved(laid)]).toEqual([name, []]);
    }
  });

  test('what is sown into a plan is caught', () => {
    const laid = pierPlans({ width: 3, depth: 3, unit: UK, joint: JOINT })!;
    const [first] = laid.courses;
    const kinds = (courses: readonly CoursePlan[]) =>
      new Set(proved({ ...laid, courses }).map(({ kind }) => kind));
    expect(kinds([first!, first!])).toContain('aligned');
    expect(kinds([{ ...first!, pieces: first!.pieces.slice(1) }, laid.courses[1]!])).toContain(
      'gap',
    );
  });
});

interface Told {
  readonly name: string;
  readonly width: number;
  readonly depth: number;
  readonly counts: PieceCount[][];
}

/** Every pier plan that is shipped, in half bricks. */
function plansOfLibraries(): Told[] {
  return Object.keys(LIBRARIES).flatMap((library) => {
    const text = LIBRARIES[library]!.text;
    return [...text.matchAll(/^pier-plan ([\d.]+) x ([\d.]+) bricks?\n((?: {2}.*\n)+)/gm)].map(
      ([, w, d, body]) => ({
        name: `${library} ${w} x ${d}`,
        width: 2 * Number(w),
        depth: 2 * Number(d),
        counts: [...body!.matchAll(/^ {2}course +(.*)$/gm)].map(([, line]) =>
          line!.split(', ').map((each) => {
            const [piece, count] = each.split(' ');
            return { piece: piece as PieceCount['piece'], count: Number(count) };
          }),
        ),
      }),
    );
  });
}

describe('an attached pier with its wall', () => {
  const LENGTH = 24 * HALF - JOINT;
  const CASES = (['stretcher', 'english', 'flemish', 'header', 'monk'] as const).flatMap((bond) =>
    [0, 9, 18, 10.5].flatMap((at) =>
      [
        { front: 0, back: 1 },
        { front: 1, back: 0 },
        { front: 1, back: 1 },
      ].map((out) => ({ bond, at, ...out })),
    ),
  );

  /** As wall and pier lie together in one course, and what both have to fill. */
  function built({ bond, at, front, back }: (typeof CASES)[number], width: number) {
    const through = bond === 'stretcher' ? 1 : 2;
    const from = at * HALF;
    const depth = (through + front + back) * HALF - JOINT;
    const pier = { name: 'p', from, width: width * HALF - JOINT, depth, courses: 8, plans: [] };
    const shape = { width, wall: through, front, back };
    const spec = wall({
      bond: BONDS[bond],
      thickness: through as 1 | 2,
      length: LENGTH,
      courses: 8,
      limits: EXACT,
      piers: [pier],
    });
    const { spec: told, laid } = attachPiers(spec, [{ index: 0, shape }], setOut);
    const low = -front * HALF;
    const outline = [
      area(0, 0, LENGTH, through * HALF - JOINT),
      area(from, low, from + pier.width, low + depth),
    ];
    return { out: setOut(told), plan: laid.get(0), from, outline };
  }

  test('every course on plan is closed, nothing in another: in five bonds, at ends, between, off the half brick', () => {
    let bonded = 0;
    for (const given of CASES)
      for (const width of [2, 3, 4]) {
        const { out, plan, from, outline } = built(given, width);
        if (!plan) continue;
        bonded++;
        const courses = [...Array(8).keys()].map((course) => [
          ...placeCourse(out, course),
          ...plan.courses[course % plan.courses.length]!.pieces.map((p) => ({
            ...p,
            x: p.x + from,
          })),
        ]);
        const faults = courses.flatMap((pieces, i) => provePlan(i, pieces, outline, EXACT));
        expect([given, width, faults]).toEqual([given, width, []]);
      }
    // The few that no plan bonds are told of by `pier-unbonded`, and laid beside the wall.
    expect(bonded).toBeGreaterThan(CASES.length * 3 * 0.6);
  });
});
