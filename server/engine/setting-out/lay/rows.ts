import type { BondPattern, CoursePattern, RowPattern } from '../types';

/** Half bricks deep, front to back, of the rows of one course. */
type Depths = (1 | 2)[];

const partsOf = ({ core, back, ...front }: CoursePattern): (RowPattern | undefined)[] => [
  front,
  core,
  back,
];

/** What it costs to lay a row so deep: nothing as its units are, more where stretchers are doubled or headers snapped. */
function strain({ units }: RowPattern, deep: 1 | 2): number {
  const headers = units.filter((unit) => unit === 'header').length;
  if (headers === 0) return deep === 2 ? 1 : 0;
  if (deep === 2) return 0;
  return headers === units.length ? 4 : 2;
}

function* choices(rows: number): Generator<Depths> {
  if (rows === 0) yield [];
  else
    for (const rest of choices(rows - 1)) for (const deep of [1, 2] as const) yield [deep, ...rest];
}

/** Depths of rows that together are `thickness` half bricks, as little strained as may be; null when none are. */
function bestDepths(rows: readonly RowPattern[], thickness: number): Depths | null {
  let best: { depths: Depths; cost: number } | null = null;
  for (const depths of choices(rows.length)) {
    if (depths.reduce((sum: number, deep) => sum + deep, 0) !== thickness) continue;
    const cost = depths.reduce((sum, deep, i) => sum + strain(rows[i]!, deep), 0);
    if (!best || cost < best.cost) best = { depths, cost };
  }
  return best?.depths ?? null;
}

/**
 * How deep each row is in each course: `depths[row][course]`, 0 where a course has no such row.
 * Headers are as long as a row of two half bricks is deep, and snapped to half bats in a row of one;
 * stretchers lie singly in a row of one and in pairs in a row of two. Null when the bond does not say
 * how a wall of this thickness is filled.
 */
export function depthsOf({ courses }: BondPattern, thickness: number): (0 | 1 | 2)[][] | null {
  const rows: (0 | 1 | 2)[][] = [[], [], []];
  for (const course of courses) {
    const parts = partsOf(course);
    const depths = bestDepths(
      parts.filter((part) => part !== undefined),
      thickness,
    );
    if (!depths) return null;
    for (const [i, part] of parts.entries()) rows[i]!.push(part ? depths.shift()! : 0);
  }
  return rows.filter((row, i) => i === 0 || row.some((deep) => deep > 0));
}

/**
 * The bond of each row, front to back, each with every course of the cycle. A course without the row
 * is filled with its front, so that the courses next to it are still laid to lap with something.
 */
export function rowsOf(bond: BondPattern): BondPattern[] {
  return [0, 1, 2].flatMap((row) => {
    const parts = bond.courses.map((course) => partsOf(course));
    if (row > 0 && parts.every((part) => part[row] === undefined)) return [];
    const courses = parts.map((part) => part[row] ?? part[0]!);
    return [{ ...bond, courses }];
  });
}
