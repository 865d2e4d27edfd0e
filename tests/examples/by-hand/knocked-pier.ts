/** examples/knocked-pier: indents cut in the end of a wall, a pier built again, a crack stitched and copings bedded. */
import { cents, nearest, priceUp, shared, sum, up } from './arithmetic';
import { materialsOf, purchase, spentOn } from './buying';
import {
  DRIVE,
  FROG,
  HALF,
  mortarMix,
  mortarUse,
  repairDays,
  SMALL_SAND,
  SOLD,
  TERMS,
  TUB,
  WHOLE,
} from './uk';

// A bricklayer and a whole labourer, an hour.
const GANG = 27.5 + 16;
// Every second course of sixteen, and half a brick of new work into each.
const INDENTS = 16 / 2;
const FILLED = INDENTS / 2;

// Four bricks round half of one, in each of 24 courses.
const DOWN = 24 * 4.5;
// 60 to 75% and 14 to 22 halves: the middle is reckoned with, whole bricks only.
const REUSED = Math.floor(DOWN * 0.675);
const HALVES = (14 + 22) / 2;
// The core has room for one a course; every two of them save a brick.
const SAVED = Math.floor(Math.min(HALVES, 24) / 2);
const SHORT_PIER = DOWN - REUSED - SAVED;
// One in twenty breaks at cleaning.
const CLEANED = Math.ceil(REUSED / 0.95);
// Courses of 75 mm, at most 1.5 m of them in a day.
const LIFTS = Math.ceil((24 * 75) / 1500);
// One at the beginning of the crack, and one to every 450 mm begun.
const BARS = 1 + Math.ceil(1200 / 450);

const solid = (bricks: number) => bricks * WHOLE * (1 - FROG);

/** Litres of mortar to so many bricks of a one-brick wall, joints and frogs: each fills 225 x 75 mm of half its 215. */
const inWall = (bricks: number) => (bricks * 225 * 75 * 107.5) / 1e6 - solid(bricks);

// The cap is wider than the pier: its bed is the plan of the pier, 10 mm thick.
const UNDER_CAP = (327.5 * 327.5 * 10) / 1e6;

function mortarOfPier(): number {
  const course = (327.5 * 327.5 * 75) / 1e6 - (4 * WHOLE + HALF) * (1 - FROG);
  return 24 * course + UNDER_CAP;
}

// On a wall of 215 mm, with one joint of its own section.
const SADDLE = (600 * 215 * 10 + 280 * 75 * 10) / 1e6;
// Four slots of 35 x 10 mm.
const ROUND_BARS = (BARS * 1000 * 35 * 10) / 1e6;

function mortarOfCrack(): number {
  return 2 * SADDLE + ROUND_BARS;
}

/** Half as large again when loose; bricks weigh 1950 kg/m3 over their outside, mortar 2000, concrete 2400. */
function waste(bricks: number, mortar: number, concrete = 0) {
  return {
    loose: ((solid(bricks) + mortar + concrete) * 1.5) / 1000,
    mass: (bricks * WHOLE * 1950 + mortar * 2000 + concrete * 2400) / 1000,
  };
}

const WASTE = {
  end: waste(INDENTS, inWall(INDENTS)),
  // Broken ones, and of those that left a half what is not laid.
  pier: waste(DOWN - REUSED - SAVED, mortarOfPier()),
  crack: waste(0, mortarOfCrack(), (600 * 280 * 75) / 1e6),
};

const HOURS = {
  end: INDENTS / 5 + FILLED / 55,
  // One lays 35 bricks an hour but is brought 30; then the cap, half an hour.
  pier: DOWN / 80 + DOWN / Math.min(35, 30) + CLEANED / 70 + 1 / 2,
  crack: BARS / 2 + 1 / 2 + 1 / 2,
};
const ALL_HOURS = sum(...Object.values(HOURS));
const MORTAR = { end: inWall(FILLED), pier: mortarOfPier(), crack: mortarOfCrack() };
const ALL_MORTAR = sum(...Object.values(MORTAR));

/** Litres and hours, one after the other: bricks and the cap, a saddle new and one bedded again, the bars. */
const PACES = [
  [MORTAR.end, HOURS.end],
  [MORTAR.pier - UNDER_CAP, DOWN / 30],
  [UNDER_CAP, 1 / 2],
  [SADDLE, 1 / 2],
  [SADDLE, 1 / 2],
  [ROUND_BARS, BARS / 2],
] as const;

function materials(): Record<string, number> {
  const mixes = { general: mortarMix(ALL_MORTAR, { cement: 1, lime: 1, sand: 6 }) };
  const sold = { cement: SOLD.cement, lime: SOLD.lime, sand: SMALL_SAND };
  const laying = ALL_HOURS - DOWN / 80 - CLEANED / 70;
  const use = { ...mortarUse(laying, DOWN + FILLED), mixer: TUB, paces: PACES };
  const short = SHORT_PIER + FILLED;
  const bricks = up(short * 1.05);
  return {
    ...materialsOf(mixes, sold, { general: use }),
    ...purchase('harwick-red', short, bricks, bricks * 0.92),
    ...purchase('saddle', 1, 1, 14.5),
    ...purchase('stitch-bar', BARS, BARS, BARS * 6.8),
    'job.bricks': bricks,
  };
}

/** Each piece of work bears what it takes of every purchase, and of the labour by its hours. */
function shares(bought: Record<string, number>, labour: number) {
  const mortar = sum(...['cement', 'lime', 'sand'].map((name) => bought[`cost.${name}`]!));
  const brick = bought['cost.harwick-red']! / (SHORT_PIER + FILLED);
  const part = (work: keyof typeof HOURS) =>
    (mortar * MORTAR[work]) / ALL_MORTAR + (labour * HOURS[work]) / ALL_HOURS;
  return [
    part('end') + brick * FILLED,
    part('pier') + brick * SHORT_PIER,
    part('crack') + bought['cost.saddle']! + bought['cost.stitch-bar']!,
  ];
}

export function knockedPier(): Record<string, number> {
  const bought = materials();
  const spent = spentOn(bought);
  const { days, paid } = repairDays(ALL_HOURS, LIFTS);
  const labour = cents(paid * GANG);
  // Half a day is driven to like a whole one.
  const travel = cents(up(days) * DRIVE);
  const loose = sum(...Object.values(WASTE).map((w) => w.loose));
  const skip = 140 * Math.ceil(loose / 1.5);
  const price = priceUp(cents(spent + labour + travel + skip), TERMS);
  const parts = shares(bought, labour);
  const costs = shared(cents(spent + labour), parts);
  const prices = shared(price['job.net']!, parts);
  return {
    ...worksOf(['end', 'pier', 'crack'], costs, prices),
    'end.indents': INDENTS,
    'end.short': FILLED,
    'pier.down': DOWN,
    'pier.cleaned': CLEANED,
    'pier.reused': REUSED,
    'pier.broken': DOWN - REUSED - HALVES,
    'pier.halves': HALVES,
    'pier.halves-used': 2 * SAVED,
    'pier.short': SHORT_PIER,
    'crack.replaced': 1,
    'crack.bars': BARS,
    ...bought,
    'job.hours': ALL_HOURS,
    'job.days': days,
    'job.paid': paid,
    'job.waste': loose,
    'job.waste-mass': sum(...Object.values(WASTE).map((w) => w.mass)),
    'job.materials': spent,
    'job.labour': labour,
    'job.time': nearest((100 * labour) / price['job.cost']!, 0.1),
    'job.travel': travel,
    'job.others': skip,
    ...price,
  };
}

/** What all three have. */
function worksOf(
  names: readonly (keyof typeof HOURS)[],
  costs: readonly number[],
  prices: readonly number[],
): Record<string, number> {
  return Object.fromEntries(
    names.flatMap((name, i) => [
      [`${name}.mortar`, MORTAR[name]],
      [`${name}.waste`, WASTE[name].loose],
      [`${name}.waste-mass`, WASTE[name].mass],
      [`${name}.hours`, HOURS[name]],
      [`${name}.cost`, costs[i]!],
      [`${name}.price`, prices[i]!],
    ]),
  );
}
