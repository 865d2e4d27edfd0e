/** examples/enclosure: four one-brick walls in Flemish bond round a yard, 14 courses, a gate in one of them. */
import { cents, course, nearest, priceUp, shared, sum, up } from './arithmetic';
import { materialsOf, purchase } from './buying';
import { CLOSER, DAY, DRIVE, FROG, GANG, mortarMix, mortarUse, SOLD, TERMS, WHOLE } from './uk';

// Faces as they show. 4602.5 mm are 41 half bricks over all, 3252.5 are 29; each side of the gate 1902.5 are 17.
// Every second course begins with a stretcher, the others with a header and a closer.
const LONG = [course(`${'SH'.repeat(13)}S`), course(`Hc${'SH'.repeat(12)}ScH`)];
const SHORT = [course(`${'SH'.repeat(9)}S`), course(`Hc${'SH'.repeat(8)}ScH`)];
const BESIDE = [course('SHSHSHSHSHS'), course('HcSHSHSHSHScH')];
if (LONG.some((c) => c.halves !== 41) || SHORT.some((c) => c.halves !== 29))
  throw new Error('sides');
if (BESIDE.some((c) => c.halves !== 17)) throw new Error('beside the gate');

/** Bricks of a pair of courses. A stretcher at a quoin is the header of the other wall seen on its side: two bricks less. */
function pair([gives, through]: typeof LONG, quoins: number) {
  return {
    wholes: gives!.wholes - 2 * quoins + through!.wholes,
    closers: gives!.closers + through!.closers,
  };
}

const beside = pair(BESIDE, 1);
const SOUTH = { wholes: 2 * beside.wholes, closers: 2 * beside.closers };
const sides = { south: SOUTH, east: pair(SHORT, 2), north: pair(LONG, 2), west: pair(SHORT, 2) };
type Side = keyof typeof sides;
const NAMES = Object.keys(sides) as Side[];

// One pair of courses in engineering brick, six in Harwick red; two closers from a brick.
const red = (side: Side) => 6 * sides[side].wholes + up((6 * sides[side].closers) / 2);
const damp = (side: Side) => sides[side].wholes + up(sides[side].closers / 2);
const all = (side: Side) => red(side) + damp(side);
const over = (amount: (side: Side) => number) => sum(...NAMES.map(amount));

/** Along the wall on plan, mm, both courses of a pair: over all, less the thickness of the walls it stops behind. */
const along: Readonly<Record<Side, number>> = {
  south: 2 * (4602.5 - 797.5) - 2 * 215,
  east: 2 * 3252.5 - 2 * 215,
  north: 2 * 4602.5 - 2 * 215,
  west: 2 * 3252.5 - 2 * 215,
};

function mortar(side: Side): number {
  const { wholes, closers } = sides[side];
  const bricks = wholes * WHOLE + closers * CLOSER;
  return (7 * along[side] * 75 * 215) / 1e6 - 7 * bricks + FROG * 6 * bricks;
}

// The whole ring: its mean girth, less the gate, by its thickness and height.
const girth = 2 * (4602.5 + 3252.5) - 4 * 215 - 797.5;
if (Math.abs(over((side) => along[side]) / 2 - girth) > 1e-9) throw new Error('the corners');

const hours = (side: Side) => all(side) / 55;

function materials(): Record<string, number> {
  const mixes = { general: mortarMix(over(mortar), { cement: 1, lime: 1, sand: 6 }) };
  const { ballast, ...sold } = SOLD;
  const paces = NAMES.map((side) => [mortar(side), hours(side)] as const);
  const bricks = { red: up(over(red) * 1.05), engineering: up(over(damp) * 1.05) };
  return {
    ...materialsOf(mixes, sold, { general: { ...mortarUse(over(hours), over(all)), paces } }),
    ...purchase('harwick-red', over(red), bricks.red, bricks.red * 0.92),
    ...purchase('engineering', over(damp), bricks.engineering, bricks.engineering * 0.78),
    'job.bricks': bricks.red + bricks.engineering,
  };
}

/** Face over all, the gate left out, m². */
const area: Readonly<Record<Side, number>> = {
  south: (4.6025 - 0.7975) * 1.05,
  east: 3.2525 * 1.05,
  north: 4.6025 * 1.05,
  west: 3.2525 * 1.05,
};

export function enclosure(): Record<string, number> {
  const bought = materials();
  const cost = (name: string) => bought[`cost.${name}`]!;
  const mixed = sum(cost('cement'), cost('lime'), cost('sand'));
  const spent = cents(sum(cost('harwick-red'), cost('engineering'), mixed));
  const labour = cents(over(hours) * GANG);
  const days = up(over(hours) / DAY, 0.5);
  // Half a day is driven to like a whole one.
  const travel = cents(up(days) * DRIVE);
  const price = priceUp(cents(spent + labour + travel), TERMS);
  const parts = NAMES.map(
    (side) =>
      (cost('harwick-red') * red(side)) / over(red) +
      (cost('engineering') * damp(side)) / over(damp) +
      (mixed * mortar(side)) / over(mortar) +
      hours(side) * GANG,
  );
  const costs = shared(cents(spent + labour), parts);
  const prices = shared(price['job.net']!, parts);
  const figures: Record<string, number> = {};
  for (const [i, side] of NAMES.entries()) {
    Object.assign(figures, {
      [`${side}.bricks`]: all(side),
      [`${side}.rule`]: area[side] * 60 * 2,
      [`${side}.area`]: area[side],
      [`${side}.courses`]: 14,
      [`${side}.height`]: 1.05,
      [`${side}.mortar`]: mortar(side),
      [`${side}.hours`]: hours(side),
      [`${side}.cost`]: costs[i]!,
      [`${side}.price`]: prices[i]!,
    });
  }
  return {
    ...figures,
    ...bought,
    'job.hours': over(hours),
    'job.days': days,
    'job.materials': spent,
    'job.labour': labour,
    'job.time': nearest((100 * labour) / price['job.cost']!, 0.1),
    'job.travel': travel,
    'job.others': 0,
    ...price,
  };
}
