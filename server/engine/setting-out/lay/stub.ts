import { type Candidate, chooseBonded } from './choose';
import { compose, type Filling, paletteOf } from './compose';
import { brokenLap, type Craft } from './craft';
import { BRICK, type Grid } from './grid';
import type { GridCourse } from './laps';
import { atOrAfter, atOrBefore, type Cell, type Tiling } from './tiling';

/** Up to this many steps a stretch has no room for a pattern between two ends: it is laid like a pier. */
export const SHORT = 2.5 * BRICK;
const MOST = 6;
/** What a piece of a quoin costs: it is how a course ought to end, so little. */
const QUOIN = 0.25;

/** The ways to start a short course: plainly, or with a quoin header and its queen closer. */
function quoins(grid: Grid): Cell[][] {
  if (grid.thickness === 1) return [[]];
  const header: Cell = { piece: 'header', width: grid.header };
  return [[], [header, { piece: 'closer', width: grid.closer }]];
}

function fillings(tiling: Tiling, width: number, craft: Craft): Filling[] {
  const { grid } = craft;
  const palette = paletteOf(tiling.cells, craft);
  const starts = quoins(grid);
  return starts.flatMap((left) =>
    starts.flatMap((right) => {
      const used =
        (left.length + right.length > 0 ? grid.header + grid.closer : 0) *
        (left.length > 0 && right.length > 0 ? 2 : 1);
      return compose(width - used, palette, MOST).map(({ cells, cost }) => ({
        cells: [...left, ...cells, ...[...right].reverse()],
        cost: cost + (left.length + right.length) * QUOIN,
      }));
    }),
  );
}

function candidate({ cells, cost }: Filling, width: number, thickness: number): Candidate {
  let at = 0;
  const perpends = cells.slice(0, -1).map((cell) => {
    at += cell.width;
    return at;
  });
  const parts = thickness > 1 && cells.every(({ piece }) => piece !== 'header');
  return { cells, cost, from: 0, to: width, parts, perpends };
}

/** What it costs that perpends stand a brick off the pattern: it decides only between ways that are as good. */
const OFF_PATTERN = 0.1;

/** How far the perpends of a course stand off those of a pattern on the whole, in bricks. */
function offPattern(perpends: readonly number[], tiling: Tiling): number {
  const off = perpends.map((at) =>
    Math.min(at - atOrBefore(tiling, at).at, atOrAfter(tiling, at).at - at),
  );
  return off.reduce((sum, steps) => sum + steps, 0) / BRICK / Math.max(1, off.length);
}

/**
 * Lays a stretch too short for its bond's pattern: each course any sequence of pieces that fills it,
 * chosen together so that perpends lap, and of ways as good those nearest the wall's `pattern`. `width` may be off the
 * grid: one cut then takes the rest.
 */
export function layShort(
  craft: Craft,
  width: number,
  pattern?: readonly Tiling[],
): GridCourse[] | null {
  const layers = craft.tilings.map((tiling, i) =>
    fillings(tiling, width, craft).map((filling) => {
      const found = candidate(filling, width, craft.grid.thickness);
      const off = pattern ? OFF_PATTERN * offPattern(found.perpends, pattern[i]!) : 0;
      return { ...found, cost: found.cost + off };
    }),
  );
  const chosen = chooseBonded(layers, brokenLap(craft), craft.beware);
  return chosen?.map(({ cells }) => ({ start: 0, groups: [{ cells, times: 1 }] })) ?? null;
}
