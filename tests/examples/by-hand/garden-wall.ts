/** examples/garden-wall: a one-brick wall in Flemish bond, 7.3 m x 16 courses, with a gate between two piers. */
import { cents, course, nearest, priceUp, sum, up } from './arithmetic';
import { materialsOf, purchase, spentOn } from './buying';
import {
  CLOSER,
  CONCRETE_USE,
  concreteMix,
  DAY,
  DRIVE,
  FROG,
  GANG,
  HALF,
  mortarMix,
  mortarUse,
  SOLD,
  TERMS,
  WHOLE,
} from './uk';

// Left of the gate stand 2577.5 - 327.5 = 2250 mm: 20 half bricks of 112.5 mm, the last joint against the pier.
// Stretchers and headers in turn; every second course starts with a header and a queen closer.
const LEFT = [course('SHSHSHSHSHSHS'), course('HcSHSHSHSHSHScH')];
// Right of it 7300 - 2577.5 - 1010 - 327.5 = 3385 mm: 30 half bricks and the two joints at its ends. It is
// toothed into the garage: the second course runs on by a quarter of a brick.
const RIGHT = [course('SHSHSHSHSHSHSHSHSHSH'), course('HcSHSHSHSHSHSHSHSHSHS')];

if (LEFT.some((c) => c.halves !== 20)) throw new Error('left of the gate');
if (RIGHT[0]!.halves !== 30 || RIGHT[1]!.halves !== 30.5) throw new Error('right of the gate');

/** Wholes and closers of so many pairs of courses, both sides of the gate. */
function pairs(count: number) {
  const all = [...LEFT, ...RIGHT];
  return {
    wholes: count * sum(...all.map((c) => c.wholes)),
    closers: count * sum(...all.map((c) => c.closers)),
  };
}

// Two courses of engineering brick, then fourteen of Harwick red. Piers: four wholes round a half bat, 18 courses.
const wall = pairs(7);
const damp = pairs(1);
const piers = { wholes: 2 * 16 * 4, halves: 2 * 16 };
const dampPiers = { wholes: 2 * 2 * 4, halves: 2 * 2 };
// On edge, 75 mm each: 2250 / 75 = 30; (3385 - 10) / 75 = 45. On the pier that the gate shuts against 327.5 mm
// is filled by three and two cut to 50 mm, each a brick and a half across: 5 whole, 5 halves.
const onEdge = { wholes: 30 + 45 + 5, halves: 5 };

// Two closers, or two half bats, from a brick.
const inWall = wall.wholes + up(wall.closers / 2);
const inPiers = piers.wholes + piers.halves / 2;
const inCoping = onEdge.wholes + up(onEdge.halves / 2);
const inDamp = damp.wholes + dampPiers.wholes + up(damp.closers / 2) + up(dampPiers.halves / 2);
const red = inWall + inPiers + inCoping;

/** Litres of mortar: the work's volume less the bricks', and the frogs of the red ones. */
function mortar(): number {
  const courses =
    (16 * 2250 + 8 * 3385 + 8 * (3385 + 112.5 / 2)) * 75 * 215 + 2 * 18 * 75 * 327.5 ** 2;
  // Over the wall 102.5 mm high on a bed of 10, 215 mm deep. On the pier five pieces leave four joints of 8.125 mm.
  const joint = (327.5 - 3 * 65 - 2 * 50) / 4;
  const deep = 215 + joint + 102.5;
  const coping = (2250 + 3385) * 215 * (102.5 + 10) + 327.5 * deep * (102.5 + 10);
  const pierCoping = ((215 + 102.5) * 102.5 * (3 * 65 + 2 * 50)) / 1e6;
  const redVolume =
    (wall.wholes + piers.wholes + 75) * WHOLE +
    wall.closers * CLOSER +
    piers.halves * HALF +
    pierCoping;
  const dampVolume =
    (damp.wholes + dampPiers.wholes) * WHOLE + damp.closers * CLOSER + dampPiers.halves * HALF;
  return (courses + coping) / 1e6 - redVolume - dampVolume + FROG * redVolume;
}

// 0.45 x 0.225 m under the whole 7.3 m.
const CONCRETE = 450 * 0.225 * 7.3;

function hours(): number {
  return sum((inWall + inDamp) / 55, inPiers / 35, inCoping / 35, CONCRETE / 350, 1 / 3);
}

function materials(): Record<string, number> {
  const mixes = {
    general: mortarMix(mortar(), { cement: 1, lime: 1, sand: 6 }),
    concrete: concreteMix(CONCRETE),
  };
  const bricks = { red: up(red * 1.05), engineering: up(inDamp * 1.05) };
  return {
    ...materialsOf(mixes, SOLD, {
      general: mortarUse(hours() - CONCRETE / 350, red + inDamp),
      concrete: CONCRETE_USE,
    }),
    ...purchase('harwick-red', red, bricks.red, bricks.red * 0.92),
    ...purchase('engineering', inDamp, bricks.engineering, bricks.engineering * 0.78),
    ...purchase('cap-400', 1, 1, 31.5),
    'job.bricks': bricks.red + bricks.engineering,
  };
}

export function gardenWall(): Record<string, number> {
  const bought = materials();
  const spent = spentOn(bought);
  const labour = cents(hours() * GANG);
  const days = up(hours() / DAY, 0.5);
  // Half a day is driven to like a whole one.
  const travel = cents(up(days) * DRIVE);
  const price = priceUp(cents(spent + labour + travel + 240), TERMS);
  // Faces: 2.25 and 3.385 m, 1.2 m high.
  const area = (2.25 + 3.385) * 1.2;
  return {
    'north.bricks': red + inDamp,
    'north.rule': area * 60 * 2,
    'north.area': area,
    'north.courses': 16,
    'north.height': 1.2,
    'north.mortar': mortar(),
    'north.hours': hours(),
    'north.concrete': CONCRETE,
    'north.cost': cents(spent + labour),
    'north.price': price['job.net']!,
    ...bought,
    'job.hours': hours(),
    'job.days': days,
    'job.materials': spent,
    'job.labour': labour,
    'job.time': nearest((100 * labour) / price['job.cost']!, 0.1),
    'job.travel': travel,
    'job.others': 240,
    ...price,
  };
}
