/** examples/stepped-wall: a one-brick wall in English bond, 5.84 m, down a slope in two steps, its top down in one. */
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
  mortarMix,
  mortarUse,
  SOLD,
  TERMS,
  WHOLE,
} from './uk';

// A stretcher course of n bricks, and the header course over it: closers beside both quoin headers.
const stretchers = (bricks: number) => course('S'.repeat(bricks));
const headers = (bricks: number) => course(`Hc${'H'.repeat(2 * bricks - 3)}cH`);

// From the lowest ground: 2 courses of 10 bricks, 2 of 18, 8 of 26, and 2 of 12 left of the step in the top.
const PAIRS = [
  { bricks: 10, pairs: 1 },
  { bricks: 18, pairs: 1 },
  { bricks: 26, pairs: 4 },
  { bricks: 12, pairs: 1 },
];
const LENGTHS = [2 * 2240, 2 * 4040, 8 * 5840, 2 * 2690];

for (const { bricks } of PAIRS)
  for (const each of [stretchers(bricks), headers(bricks)])
    if (each.halves !== 2 * bricks) throw new Error(`${bricks} bricks`);

const all = {
  wholes: sum(
    ...PAIRS.map((p) => p.pairs * (stretchers(p.bricks).wholes + headers(p.bricks).wholes)),
  ),
  closers: sum(...PAIRS.map((p) => p.pairs * headers(p.bricks).closers)),
};

// The damp course is the lowest two of each part of the ground, a course of stretchers and one of headers. Over the
// upper two parts the pieces whose middles lie between one step and the next: eight stretchers; a header, a closer and
// fifteen headers. Over the lowest, where the wall ends, ten stretchers and a whole course of headers.
const damp = {
  wholes: 2 * (8 * 2 + 16) + stretchers(10).wholes + headers(10).wholes,
  closers: 2 * 1 + headers(10).closers,
};
// The seventh course from the upper ground is the eleventh from the lowest: stretchers, twenty-six bricks long.
const band = stretchers(26).wholes;
const own = { wholes: all.wholes - damp.wholes - band, closers: all.closers - damp.closers };

const inDamp = damp.wholes + up(damp.closers / 2);
const inWall = own.wholes + up(own.closers / 2);
// On edge, 75 mm each: 2690 is 36 of them less a joint; 3150 below the step is 42 and the joint against the wall.
const onEdge = 36 + 42;
const red = inWall + onEdge;

// Tiles 165 mm along the wall, halves 77.5 mm. Over 2690 mm both courses have 15 and a half, with 15 joints of
// 9.17 mm. Over 3150 mm and against the wall 18, then 17 between two halves, joints of 10 mm.
const HALF_TILE = (165 - 10) / 2;
const RUNS = [
  { over: 2690, tiles: 15, halves: 1, joints: 15 },
  { over: 2690, tiles: 15, halves: 1, joints: 15 },
  { over: 3150, tiles: 18, halves: 0, joints: 18 },
  { over: 3150, tiles: 17, halves: 2, joints: 19 },
];
const alongOf = (run: (typeof RUNS)[number]) => run.tiles * 165 + run.halves * HALF_TILE;
for (const run of RUNS) {
  const joint = (run.over - alongOf(run)) / run.joints;
  if (joint < 8 || joint > 13) throw new Error(`a joint of ${joint} mm`);
}
// Four halves from two tiles.
const TILES = sum(...RUNS.map((run) => run.tiles)) + sum(...RUNS.map((run) => run.halves)) / 2;

function mortar(): number {
  const courses = sum(...LENGTHS) * 75 * 215;
  const edge = (2690 + 3150) * 215 * (102.5 + 10);
  const tiles = (2690 + 3150) * 2 * 265 * (11 + 10) - sum(...RUNS.map(alongOf)) * 265 * 11;
  const reds = (own.wholes + onEdge) * WHOLE + own.closers * CLOSER;
  const others = (damp.wholes + band) * WHOLE + damp.closers * CLOSER;
  return (courses + edge + tiles) / 1e6 - reds - others + FROG * reds;
}

// A strip under 5.84 m. Each step is 150 mm: it laps by 300 mm, the most of twice that, its 225 mm, and 300 mm.
const CONCRETE = 450 * 0.225 * 5.84 + 2 * 450 * 0.15 * 0.3;

const hours = () => sum((inWall + inDamp + band) / 55, onEdge / 35, TILES / 60, CONCRETE / 350);

function materials(): Record<string, number> {
  const mixes = {
    general: mortarMix(mortar(), { cement: 1, lime: 1, sand: 6 }),
    concrete: concreteMix(CONCRETE),
  };
  const bricks = { red: up(red * 1.05), engineering: up(inDamp * 1.05) };
  // The antique is sold in packs of 80; 8% of it is turned away.
  const packs = up((band * 1.08) / 80);
  return {
    ...materialsOf(mixes, SOLD, {
      general: mortarUse(hours() - CONCRETE / 350, red + inDamp + band),
      concrete: CONCRETE_USE,
    }),
    ...purchase('harwick-red', red, bricks.red, bricks.red * 0.92),
    ...purchase('engineering', inDamp, bricks.engineering, bricks.engineering * 0.78),
    ...purchase('harwick-antique', band, packs * 80, packs * 124),
    ...purchase('creasing-tile', TILES, TILES, TILES * 0.62),
    'job.bricks': bricks.red + bricks.engineering + packs * 80,
  };
}

export function steppedWall(): Record<string, number> {
  const bought = materials();
  const spent = spentOn(bought);
  const labour = cents(hours() * GANG);
  const days = up(hours() / DAY, 0.5);
  // Half a day is driven to like a whole one.
  const travel = cents(up(days) * DRIVE);
  const price = priceUp(cents(spent + labour + travel + 240), TERMS);
  const area = (sum(...LENGTHS) * 75) / 1e6;
  return {
    'west.bricks': red + inDamp + band,
    'west.rule': area * 60 * 2,
    'west.area': area,
    'west.courses': 10,
    // Twelve courses between the first step of the ground and the step of the top.
    'west.height': 0.9,
    'west.mortar': mortar(),
    'west.hours': hours(),
    'west.concrete': CONCRETE,
    'west.cost': cents(spent + labour),
    'west.price': price['job.net']!,
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
