import type { UnitSize } from '../types';
import type { Tally } from './tally';

/** Whole bricks that a tally takes, by what they are for. */
export interface BricksNeeded {
  total: number;
  wholes: number;
  /** Bricks halved for bats. */
  forHalves: number;
  forThreeQuarters: number;
  /** Bricks split lengthwise for queen closers. */
  forClosers: number;
  forCuts: number;
}

/** Bricks for `count` pieces of which a brick gives two where it is `room` enough for both and the kerf. */
function twoFromOne(count: number, piece: number, room: number, kerf: number): number {
  return 2 * piece + kerf <= room + 1e-9 ? Math.ceil(count / 2) : count;
}

/**
 * Bricks for cuts, two from a brick where they go: the longest left is paired with the longest that
 * still fits beside it. No other pairing makes more pairs, since a partner that suits a longer cut
 * suits every shorter one.
 */
function forCuts(cuts: Tally['cuts'], brick: number, kerf: number): number {
  const left = cuts.map(({ length, count }) => ({ length, count }));
  left.sort((a, b) => a.length - b.length);
  let bricks = 0;
  for (let high = left.length - 1; high >= 0; high--) {
    const long = left[high]!;
    for (let low = high - 1; low >= 0 && long.count > 0; low--) {
      const short = left[low]!;
      if (long.length + kerf + short.length > brick + 1e-9) continue;
      const pairs = Math.min(long.count, short.count);
      long.count -= pairs;
      short.count -= pairs;
      bricks += pairs;
    }
    bricks += twoFromOne(long.count, long.length, brick, kerf);
    long.count = 0;
  }
  return bricks;
}

/**
 * Whole bricks for a tally. `kerf` is what a saw takes, mm; 0 for a bolster. Two half bats come from a
 * brick, two queen closers from a brick split lengthwise, one three-quarter bat from a brick, and two
 * cuts where their lengths and the kerf allow. Halves and closers that the kerf leaves no room for
 * come one from a brick. A kerf on every brick is the caller's to know.
 */
export function bricksNeeded(tally: Tally, unit: UnitSize, joint: number, kerf = 0): BricksNeeded {
  const { length, width } = unit;
  const need = {
    wholes: tally.wholes,
    forHalves: twoFromOne(tally.halves, (length - joint) / 2, length, kerf),
    forThreeQuarters: tally.threeQuarters,
    forClosers: twoFromOne(tally.closers, (width - joint) / 2, width, kerf),
    forCuts: forCuts(tally.cuts, length, kerf),
  };
  const { wholes, forHalves, forThreeQuarters, forClosers } = need;
  return { ...need, total: wholes + forHalves + forThreeQuarters + forClosers + need.forCuts };
}
