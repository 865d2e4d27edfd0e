/** Walls that meet, proved together on plan: corners, yards of any bond and thickness, with openings and off the module. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../harness/seed';
import {
  type BondPattern,
  begunWith,
  bondsAt,
  type CornerWall,
  chooseChain,
  layCorners,
  type OpeningSpec,
  type Placing,
  type SettingOut,
  setOut,
  type Thickness,
  wayAt,
} from '../../server/engine/setting-out';
import { rulesOf } from '../../server/engine/setting-out/place/built';
import {
  type LayoutFault,
  type PlanOutline,
  provePlan,
} from '../../server/engine/setting-out/prove';
import { LIMITS, overAll, wall } from './fixtures';
import { courseOnGround, onGround, ring } from './on-plan';
import { area, asPieces } from './proofs';
import { libraryBonds, unlike } from './thick';

/** Walls end to end round a ring, fronts outward: laid as a job lays them. */
function joined(outs: readonly SettingOut[]): { laid: SettingOut[]; bonded: boolean } {
  const count = outs.length;
  const end = (i: number, side: 'left' | 'right', p: Placing): CornerWall => ({
    out: outs[(i + count) % count]!,
    side,
    begun: p.begun,
    gives: side === 'left' ? p.in : p.out,
    inside: false,
  });
  const bonds = (i: number, own: Placing, next: Placing) =>
    bondsAt(end(i, 'right', own), end(i + 1, 'left', next));
  const placings = chooseChain({ walls: count, closed: true, bonds });
  const at = (i: number) => placings[(i + count) % count]!;
  const laid = outs.map((out, i) =>
    layCorners(begunWith(out, at(i).begun), {
      left: wayAt(end(i, 'left', at(i)), end(i - 1, 'right', at(i - 1))),
      right: wayAt(end(i, 'right', at(i)), end(i + 1, 'left', at(i + 1))),
    }),
  );
  return { laid, bonded: outs.every((_, i) => bonds(i, at(i), at(i + 1))) };
}

/** What the four walls together have to fill in a course: all their ground, less their openings. */
function groundOf(outs: readonly SettingOut[], course: number): PlanOutline[] {
  return ring(outs).flatMap(({ out, at }) => {
    const holes = out.spec.openings.filter(
      ({ sill, top }) => sill <= course && (top ?? 1e9) > course,
    );
    const edges = [0, ...holes.flatMap(({ from, width }) => [from, from + width]), out.spec.length];
    const boxes: PlanOutline[] = [];
    for (let i = 0; i < edges.length; i += 2) {
      const along = edges[i + 1]! - edges[i]!;
      const strip = { piece: 'cut' as const, x: edges[i]!, y: 0, along, across: out.thickness };
      const { x, y, right, top } = onGround(strip, at);
      boxes.push(area(x, y, right, top));
    }
    return boxes;
  });
}

function proved(outs: readonly SettingOut[], courses: number): LayoutFault[] {
  const { joint } = rulesOf(outs[0]!.spec);
  return Array.from({ length: courses }, (_, course) =>
    provePlan(course, asPieces(courseOnGround(ring(outs), course)), groundOf(outs, course), joint),
  ).flat();
}

interface Kind {
  readonly title: string;
  readonly thickness: Thickness;
  readonly bond: BondPattern;
}

const KINDS: Kind[] = unlike(
  libraryBonds().filter(({ n, bond }) => n === undefined && bond.lap > 0),
).map((each) => ({ ...each, title: `${each.library} ${each.name} ${each.thickness}` }));

/** An opening well clear of the corners. */
const hole = fc.record({
  from: fc.integer({ min: 9, max: 11 }),
  width: fc.integer({ min: 3, max: 6 }),
  sill: fc.integer({ min: 0, max: 3 }),
  high: fc.integer({ min: 1, max: 4 }),
});

const openingOf = ({
  from,
  width,
  sill,
  high,
}: {
  from: number;
  width: number;
  sill: number;
  high: number;
}): OpeningSpec => ({
  name: 'o',
  from: overAll(from),
  width: 112.5 * width + 10,
  sill,
  top: sill + high,
});

describe.each(KINDS)('a yard in $title', ({ bond, thickness }) => {
  test('four walls with openings are closed and nothing lies in another, of brickwork sizes', () => {
    const sides = fc.array(fc.integer({ min: 13, max: 22 }), { minLength: 2, maxLength: 2 });
    fc.assert(
      fc.property(sides, hole, ([long, short], opening) => {
        const side = (n: number, openings: OpeningSpec[] = []) =>
          setOut(wall({ bond, thickness, length: overAll(2 * n), courses: 8, openings }));
        const walls = [side(long!, [openingOf(opening)]), side(short!), side(long!), side(short!)];
        expect(proved(joined(walls).laid, 8)).toEqual([]);
      }),
      { numRuns: 4 },
    );
  });

  test('of any lengths: closed, and nothing in another', () => {
    const sides = fc.array(fc.integer({ min: 2000, max: 4000 }), { minLength: 2, maxLength: 2 });
    fc.assert(
      fc.property(sides, ([long, short]) => {
        const side = (length: number) =>
          setOut(wall({ bond, thickness, length, courses: 4, limits: LIMITS }));
        const walls = [side(long!), side(short!), side(long!), side(short!)];
        expect(proved(joined(walls).laid, 4)).toEqual([]);
      }),
      { numRuns: 4 },
    );
  });
});
