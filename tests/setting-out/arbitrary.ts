/** Walls of every sort for property tests. */
import fc from 'fast-check';
import type { EndKind, OpeningSpec, WallSpec } from '../../server/engine/setting-out';
import { BOND_NAMES, BONDS, type BondName, LIMITS, overAll, wall } from './fixtures';

export const bondName: fc.Arbitrary<BondName> = fc.constantFrom(...BOND_NAMES);
const end: fc.Arbitrary<EndKind> = fc.constantFrom('stopped', 'toothed', 'butted');
const thickness = fc.constantFrom(1 as const, 2 as const);

/** Any length, any ends, no openings. */
export const plainWall: fc.Arbitrary<WallSpec> = fc
  .record({
    bond: bondName,
    thickness,
    length: fc.integer({ min: 300, max: 200000 }).map((n) => n / 10),
    courses: fc.integer({ min: 1, max: 9 }),
    left: end,
    right: end,
    slack: fc.constantFrom(0, 1, 3),
  })
  .map(({ bond, slack, ...rest }) =>
    wall({
      ...rest,
      bond: BONDS[bond],
      limits: { ...LIMITS, least: 10 - slack, most: 10 + slack },
    }),
  );

/** Openings and piers anywhere, overlapping or outside the wall as often as not. */
export const rudeWall: fc.Arbitrary<WallSpec> = fc
  .tuple(
    plainWall,
    fc.array(
      fc.record({
        from: fc.integer({ min: -500, max: 21000 }),
        width: fc.integer({ min: 1, max: 4000 }),
        sill: fc.integer({ min: 0, max: 8 }),
        top: fc.option(fc.integer({ min: 0, max: 12 })),
        pier: fc.boolean(),
        joins: fc.constantFrom('toothed' as const, 'butted' as const),
      }),
      { maxLength: 5 },
    ),
  )
  .map(([spec, holes]) => ({
    ...spec,
    openings: holes.filter((h) => !h.pier).map((h, i) => ({ ...h, name: `opening ${i}` })),
    piers: holes
      .filter((h) => h.pier)
      .map(({ from, width, top, joins }, i) => {
        const plans = [[{ piece: 'whole' as const, count: 2 }]];
        return { name: `pier ${i}`, from, width, joins, depth: 327.5, courses: top ?? 9, plans };
      }),
  }));

/** Openings in brickwork sizes with room between them, as half bricks. */
const gaps = fc.array(
  fc.record({
    brickwork: fc.integer({ min: 6, max: 30 }),
    width: fc.integer({ min: 3, max: 20 }),
    sill: fc.integer({ min: 0, max: 6 }),
    high: fc.integer({ min: 1, max: 8 }),
  }),
  { minLength: 1, maxLength: 4 },
);

export interface CoordinatedWall {
  spec: WallSpec;
  halves: number;
  holes: { from: number; width: number; sill: number; top: number }[];
}

/** A wall all of whose lengths are brickwork sizes, its openings CO+ and its ends stopped. */
export const coordinatedWall: fc.Arbitrary<CoordinatedWall> = coordinated(
  gaps,
  fc.integer({ min: 6, max: 30 }),
);

/** The same with many openings, as narrow as half a brick, and piers of one to eight half bricks between. */
export const crowdedWall: fc.Arbitrary<CoordinatedWall> = coordinated(
  fc.array(
    fc.record({
      brickwork: fc.integer({ min: 1, max: 8 }),
      width: fc.integer({ min: 1, max: 12 }),
      sill: fc.integer({ min: 0, max: 6 }),
      high: fc.integer({ min: 1, max: 8 }),
    }),
    { minLength: 2, maxLength: 8 },
  ),
  fc.integer({ min: 1, max: 8 }),
);

function coordinated(between: typeof gaps, last: fc.Arbitrary<number>) {
  return fc.record({ bond: bondName, thickness, gaps: between, last }).map(coordinatedOf);
}

interface Coordinated {
  bond: BondName;
  thickness: 1 | 2;
  gaps: { brickwork: number; width: number; sill: number; high: number }[];
  last: number;
}

function coordinatedOf({ bond, thickness, gaps, last }: Coordinated): CoordinatedWall {
  let at = 0;
  const holes = gaps.map(({ brickwork, width, sill, high }) => {
    const from = at + brickwork;
    at = from + width;
    return { from, width, sill, top: sill + high };
  });
  const halves = at + last;
  const openings: OpeningSpec[] = holes.map((h, i) => ({
    name: `opening ${i}`,
    from: overAll(h.from),
    width: 112.5 * h.width + 10,
    sill: h.sill,
    top: h.top,
  }));
  const length = overAll(halves);
  const spec = wall({ bond: BONDS[bond], thickness, length, courses: 16, openings });
  return { spec, halves, holes };
}
