/** Bricks, bonds and walls that the setting-out tests share. Sizes: see the publications named in each test. */
import type { BondPattern, JointLimits, UnitSize, WallSpec } from '../../server/engine/setting-out';

export const UK: UnitSize = { length: 215, width: 102.5, height: 65 };
export const UK_JOINTS = { bed: 10, perpend: 10 };
export const LIMITS: JointLimits = { least: 7, best: 10, most: 13, leastCut: 50 };
/** So tight that only the exact joint will do. */
export const EXACT: JointLimits = { least: 10, best: 10, most: 10, leastCut: 50 };

const S = 'stretcher';
const H = 'header';

export const BONDS = {
  stretcher: { name: 'stretcher', lap: 0.5, courses: [{ units: [S] }, { units: [S], start: 0.5 }] },
  english: { name: 'english', lap: 0.25, courses: [{ units: [S] }, { units: [H], start: 0.25 }] },
  flemish: {
    name: 'flemish',
    lap: 0.25,
    courses: [{ units: [S, H] }, { units: [S, H], start: 0.75 }],
  },
  header: { name: 'header', lap: 0.25, courses: [{ units: [H] }, { units: [H], start: 0.25 }] },
  stack: { name: 'stack', lap: 0, courses: [{ units: [S] }] },
  englishGarden: {
    name: 'english-garden-wall',
    lap: 0.25,
    courses: [
      { units: [H], start: 0.25 },
      { units: [S] },
      { units: [S], start: 0.5 },
      { units: [S] },
    ],
  },
  flemishGarden: {
    name: 'flemish-garden-wall',
    lap: 0.25,
    courses: [
      { units: [S, S, S, H], start: 1.5 },
      { units: [S, S, S, H], start: -0.25 },
    ],
  },
  monk: {
    name: 'monk',
    lap: 0.25,
    courses: [{ units: [S, S, H] }, { units: [S, S, H], start: 1.25 }],
  },
} as const satisfies Record<string, BondPattern>;

export type BondName = keyof typeof BONDS;
export const BOND_NAMES = Object.keys(BONDS) as BondName[];
export const ONE_BRICK_BONDS = BOND_NAMES.filter((name) => name !== 'stretcher');

/** A ten-course half-brick wall in stretcher bond, ends stopped, with whatever is said otherwise. */
export function wall(part: Partial<WallSpec> = {}): WallSpec {
  return {
    unit: UK,
    joints: UK_JOINTS,
    bond: BONDS.stretcher,
    thickness: 1,
    length: 2240,
    courses: 10,
    left: 'stopped',
    right: 'stopped',
    openings: [],
    piers: [],
    limits: LIMITS,
    ...part,
  };
}

/** Length over all of so many half bricks with both ends free: 112.5 n - 10. */
export const overAll = (halves: number) => 112.5 * halves - 10;
