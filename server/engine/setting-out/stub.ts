import type { Candidate } from './choose';
import { chooseBonded } from './choose';
import type { Filling } from './compose';
import { compose, paletteOf } from './compose';
import type { Grid } from './grid';
import { BRICK } from './grid';
import type { GridCourse } from './laps';
import type { Cell, Tiling } from './tiling';

/** Up to this many steps a stretch has no room for a pattern between two ends: it is laid like a pier. */
export const SHORT = 2.5 * BRICK;
const MOST = 6;

/** The ways to start a short course: plainly, or with a quoin header and its queen closer. */
function quoins(grid: Grid): Cell[][] {
  if (grid.thickness === 1) return [[]];
  const header: Cell = { piece: 'header', width: grid.header };
  return [[], [header, { piece: 'closer', width: grid.closer }]];
}

function fillings(tiling: Tiling, width: number, grid: Grid, leastCut: number): Filling[] {
  const palette = paletteOf(tiling.cells, grid, leastCut);
  const starts = quoins(grid);
  return starts.flatMap((left) =>
    starts.flatMap((right) => {
      const used =
        (left.length + right.length > 0 ? grid.header + grid.closer : 0) *
        (left.length > 0 && right.length > 0 ? 2 : 1);
      return compose(width - used, palette, MOST).map(({ cells, cost }) => ({
        cells: [...left, ...cells, ...[...right].reverse()],
        cost: cost + left.length + right.length,
      }));
    }),
  );
}

function candidate({ cells, cost }: Filling, width: number): Candidate {
  let at = 0;
  const perpends = cells.slice(0, -1).map((cell) => {
    at += cell.width;
    return at;
  });
  return { cells, cost, from: 0, to: width, perpends };
}

/**
 * Lays a stretch too short for its bond's pattern: each course any sequence of pieces that fills it,
 * chosen together so that perpends lap. `width` may be off the grid: one cut then takes the rest.
 */
export function layShort(
  tilings: readonly Tiling[],
  width: number,
  lap: number,
  grid: Grid,
  leastCut: number,
): GridCourse[] | null {
  const layers = tilings.map((tiling) =>
    fillings(tiling, width, grid, leastCut).map((filling) => candidate(filling, width)),
  );
  const chosen = chooseBonded(layers, lap);
  return chosen && chosen.map(({ cells }) => ({ start: 0, groups: [{ cells, times: 1 }] }));
}
