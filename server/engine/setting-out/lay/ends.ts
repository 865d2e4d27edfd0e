import type { EndKind } from '../types';
import type { Craft } from './craft';
import { BRICK, EPS } from './grid';
import {
  atOrAfter,
  atOrBefore,
  type Boundary,
  type Cell,
  next,
  previous,
  type Tiling,
} from './tiling';

/** One end of one course: `cells` from the end inward, then the pattern from `joint`. */
export interface CourseEnd {
  cells: readonly Cell[];
  joint: Boundary;
}

const same = (a: number, b: number) => Math.abs(a - b) < EPS * 10;

/** A one-brick wall: a queen closer stands next to the quoin header, never at the very end; or a bat does for both. */
function closeOneBrick(stub: number, { grid, quoin }: Craft): Cell[] | null {
  const { header, closer } = grid;
  const head: Cell = { piece: 'header', width: header };
  const bat: Cell = { piece: 'three-quarter', width: header + closer };
  const lap = quoin === 'closer' ? [head, { piece: 'closer' as const, width: closer }] : [bat];
  if (same(stub, header)) return [head];
  if (same(stub, header + closer)) return lap;
  if (same(stub, BRICK)) return [{ piece: 'stretcher', width: BRICK }];
  if (same(stub, header + closer + header)) return [...lap, head];
  if (same(stub, BRICK + header)) return [{ piece: 'stretcher', width: BRICK }, head];
  return null;
}

/** A half-brick wall has no closers: the lap is made with bats. */
function closeWithBats(stub: number): Cell[] | null {
  const half: Cell = { piece: 'half', width: BRICK / 2 };
  const long: Cell = { piece: 'three-quarter', width: (BRICK * 3) / 4 };
  if (same(stub, half.width)) return [half];
  if (same(stub, long.width)) return [long];
  if (same(stub, BRICK)) return [{ piece: 'stretcher', width: BRICK }];
  if (same(stub, long.width + half.width)) return [long, half];
  return null;
}

/** Pieces that fill `stub` steps at a free end, from the end inward; null when none decently do: a quarter brick never. */
function close(stub: number, craft: Craft): Cell[] | null {
  const { grid, leastCut, mostCut } = craft;
  const known = grid.thickness === 1 ? closeWithBats(stub) : closeOneBrick(stub, craft);
  if (known) return known;
  const length = stub * grid.step - grid.joint;
  const sawn = length >= leastCut - EPS && length <= mostCut + EPS;
  const decent = stub > BRICK / 4 + EPS && stub < BRICK && sawn;
  return decent ? [{ piece: 'cut', width: stub }] : null;
}

/**
 * A three-quarter bat in place of quoin header and closer, which puts no perpend where theirs would
 * stand over others (common practice; the rule in Germany).
 */
function otherwise(cells: readonly Cell[] | null, { grid }: Craft): Cell[][] {
  if (cells?.[1]?.piece !== 'closer') return [];
  return [[{ piece: 'three-quarter', width: grid.header + grid.closer }, ...cells.slice(2)]];
}

/**
 * A free end, where `stub` steps lie before the pattern's first joint: every way to fill it, taking in
 * none, one or two of the pattern's next pieces. The first is how the course ends unless its
 * neighbours ask for another; bats in place of closers come last, but where what stands above or below is known.
 */
function free(
  stub: number,
  joint: Boundary,
  inward: (from: Boundary) => Boundary,
  craft: Craft,
): CourseEnd[] {
  const found: CourseEnd[] = [];
  const last: CourseEnd[] = [];
  let wide = stub;
  let at = joint;
  for (let taken = 0; taken < 3; taken++) {
    const cells = wide < EPS * 10 ? [] : close(wide, craft);
    const here = at;
    if (cells) found.push({ cells, joint: here });
    const bats = otherwise(cells, craft).map((other) => ({ cells: other, joint: here }));
    (craft.beware ? found : last).push(...bats);
    const inner = inward(at);
    wide += Math.abs(inner.at - at.at);
    at = inner;
  }
  return [...found, ...last];
}

/** How a course may start at step `edge`, best first; a toothed course takes the nearest joint, running on where two are as near. */
export function leftEnds(tiling: Tiling, edge: number, kind: EndKind, craft: Craft): CourseEnd[] {
  const after = atOrAfter(tiling, edge);
  if (kind !== 'toothed') return free(after.at - edge, after, (b) => next(tiling, b), craft);
  const before = atOrBefore(tiling, edge);
  return [{ cells: [], joint: edge - before.at <= after.at - edge + EPS ? before : after }];
}

/** How a course may stop at step `edge`; cells are still given from the end inward. */
export function rightEnds(tiling: Tiling, edge: number, kind: EndKind, craft: Craft): CourseEnd[] {
  const before = atOrBefore(tiling, edge);
  if (kind !== 'toothed') return free(edge - before.at, before, (b) => previous(tiling, b), craft);
  const after = atOrAfter(tiling, edge);
  return [{ cells: [], joint: after.at - edge <= edge - before.at + EPS ? after : before }];
}
