import { type Candidate, chooseBonded } from './choose';
import type { Craft } from './craft';
import type { CourseEnd } from './ends';
import { BRICK, EPS } from './grid';
import { firstFrom } from './joints';
import { next, previous, type Tiling } from './tiling';

/** Steps from an end within which its perpends are judged. */
const REACH = 3 * BRICK;
/** What it costs to take another way to end a course than the plain one: less than any lack of lap that shows. */
const OTHERWISE = 0.5;

interface Ending extends Candidate {
  end: CourseEnd;
}

/** Perpends of one way to end a course, from the end inward, as distances from it. */
function perpendsOf({ cells, joint }: CourseEnd, tiling: Tiling, edge: number): number[] {
  const inward = edge > 0 ? previous : next;
  const found: number[] = [];
  let at = 0;
  for (const cell of cells) {
    at += cell.width;
    found.push(at);
  }
  const first = Math.abs(joint.at - edge);
  if (cells.length === 0 && first > EPS) found.push(first);
  let b = joint.at === edge ? joint : inward(tiling, joint);
  for (; Math.abs(b.at - edge) < REACH; b = inward(tiling, b))
    if (Math.abs(b.at - edge) > EPS * 10) found.push(Math.abs(b.at - edge));
  return found;
}

function endings(ways: readonly CourseEnd[], tiling: Tiling, edge: number): Ending[] {
  return ways.map((end, i) => {
    const perpends = perpendsOf(end, tiling, edge);
    return { end, cells: end.cells, cost: i * OTHERWISE, from: 0, to: 0, perpends };
  });
}

/** Perpends above and below, as distances from an end at `edge` inward. */
function bewareFrom({ beware }: Craft, edge: number): number[][] | undefined {
  const inward = edge > 0 ? -1 : 1;
  const far = REACH + BRICK;
  const [low, high] = inward > 0 ? [edge, edge + far] : [edge - far, edge];
  return beware?.map((all) =>
    all
      .slice(firstFrom(all, low), firstFrom(all, high))
      .map((at) => inward * (at - edge))
      .filter((away) => away > 0 && away < far)
      .sort((a, b) => a - b),
  );
}

/**
 * One way to end each course at step `edge`, chosen together so that no perpend at the end stands over
 * another where any choice allows it. Null when a course has no way at all.
 */
export function chooseEnds(
  craft: Craft,
  tilings: readonly Tiling[],
  ways: readonly (readonly CourseEnd[])[],
  edge: number,
): CourseEnd[] | null {
  if (ways.every(({ length }) => length === 1)) return ways.map(([only]) => only!);
  const layers = ways.map((each, i) => endings(each, tilings[i]!, edge));
  const chosen = chooseBonded(layers, craft.lap, bewareFrom(craft, edge)) as Ending[] | null;
  return chosen?.map(({ end }) => end) ?? null;
}
