import { type Nesting, roomIn, sizeIn } from './stock';

/**
 * Whole bricks that no way of cutting does without (Martello and Toth's bound L2 for packing bins, 1990,
 * by hand from their definition; the bats at hand count as far as they could ever help: each takes at most
 * its own length of pieces, or one big piece less).
 *
 * For each threshold: pieces longer than a brick less the threshold have a brick each; longer than
 * half a brick have one each too, and take of the shorter ones, down to the threshold, what room they leave.
 */
export function fewestBricks(nesting: Nesting): number {
  const room = roomIn(nesting, nesting.brick);
  const sizes = nesting.asked
    .map(({ length, count }) => ({ size: sizeIn(nesting, length), count }))
    .sort((a, b) => b.size - a.size);
  const batRoom = nesting.bats.reduce((sum, b) => sum + roomIn(nesting, b.length) * b.count, 0);
  const batCount = nesting.bats.reduce((sum, b) => sum + b.count, 0);
  const thresholds = [0, ...sizes.map((s) => s.size).filter((size) => size <= room / 2)];
  let best = 0;
  for (const least of new Set(thresholds)) {
    let big = 0;
    let middle = 0;
    let middleSize = 0;
    let smallSize = 0;
    for (const { size, count } of sizes) {
      if (size > room - least) big += count;
      else if (size > room / 2) {
        middle += count;
        middleSize += size * count;
      } else if (size >= least) smallSize += size * count;
    }
    const beside = middle * room - middleSize + batRoom;
    const more = Math.max(0, Math.ceil((smallSize - beside) / room - 1e-9));
    best = Math.max(best, big + middle + more - batCount);
  }
  return best;
}
