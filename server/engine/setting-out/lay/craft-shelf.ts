/**
 * Crafts by what they are made of. Walls of one brick and bond share theirs, and with it every break and stretch
 * already found: while somebody types a length, most of it has been laid before.
 */
import type { WallSpec } from '../types';
import { type Craft, quoinFor } from './craft';
import { BRICK, gridOf } from './grid';
import type { Laid } from './phases';
import { tilingsOf } from './tiling';

/** More than any job has at once; then the shelf is cleared. */
const MOST_CRAFTS = 64;
const MOST_KEPT = 2000;

const shelf = new Map<string, Craft>();

/** What is the same for all walls of one brick, bond, thickness and joints: worked out once, and kept. */
export function craftOf(spec: WallSpec): Craft {
  const { unit, joints, bond, thickness, limits } = spec;
  const { leastCut, kerf = 0 } = limits;
  const key = JSON.stringify([unit, joints, bond.courses, bond.lap, thickness, leastCut, kerf]);
  const known = shelf.get(key);
  if (known) return roomy(known);
  if (shelf.size >= MOST_CRAFTS) shelf.clear();
  const grid = gridOf(unit, joints, thickness);
  const tilings = tilingsOf(bond, grid);
  const lap = bond.lap * BRICK;
  const quoin = quoinFor(tilings);
  const craft: Craft = {
    grid,
    tilings,
    lap,
    leastCut,
    mostCut: unit.length - kerf,
    quoin,
    breaks: new Map(),
    laid: new Map(),
  };
  shelf.set(key, craft);
  return craft;
}

function roomy(craft: Craft): Craft {
  if (craft.breaks.size > MOST_KEPT) craft.breaks.clear();
  if (craft.laid.size > MOST_KEPT) craft.laid.clear();
  return craft;
}

/** What was laid under that key, else what `lay` makes; that nothing can be laid is remembered too. */
export function remembered(craft: Craft, key: string, lay: () => Laid | null): Laid | null {
  const known = craft.laid.get(key);
  if (known !== undefined) return known;
  const laid = lay();
  craft.laid.set(key, laid);
  return laid;
}
