/** examples/log-store: a half-brick wall with blocks behind it, and a wall a brick and a half thick in English bond. */
import { cents, nearest, priceUp, shared, sum, up } from './arithmetic';
import { materialsOf, purchase, spentOn } from './buying';
import {
  CLOSER,
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

// 4490 mm: twenty bricks, or nineteen between two half bats. Eighteen courses are 1350 mm, six courses of blocks.
const face = { wholes: 9 * 20 + 9 * 19, halves: 9 * 2 };
const blocks = { wholes: 3 * 10 + 3 * 9, halves: 3 * 2 };
// 2240 mm: ten stretchers; behind them, and before them in the next course, nineteen headers and two closers.
const thick = { wholes: 24 * (10 + 19), closers: 24 * 2 };

const inFace = face.wholes + face.halves / 2;
const inBacking = blocks.wholes + blocks.halves / 2;
const inYard = thick.wholes + thick.closers / 2;

// 4.49 x 1.35 m, a tie to every 0.9 x 0.45 m of it: 14.97.
const TIES = 15;

function mortarOfBack(): number {
  const bricks = face.wholes * WHOLE + face.halves * HALF;
  const block = 440 * 100 * 215 * 1e-6;
  const half = 215 * 100 * 215 * 1e-6;
  const behind = blocks.wholes * block + blocks.halves * half;
  return 4490 * 1350 * (102.5 + 100) * 1e-6 - bricks - behind + FROG * bricks;
}

function mortarOfYard(): number {
  const bricks = thick.wholes * WHOLE + thick.closers * CLOSER;
  return 2240 * 1800 * 327.5 * 1e-6 - bricks + FROG * bricks;
}

const hoursOfBack = inFace / 55 + (4.49 * 1.35) / 1.2;
const hoursOfYard = inYard / 55;

/** The yard wall is thicker and takes more mortar in an hour. */
const PACES = [
  [mortarOfBack(), hoursOfBack],
  [mortarOfYard(), hoursOfYard],
] as const;

function materials(): Record<string, number> {
  const mixes = {
    general: mortarMix(mortarOfBack() + mortarOfYard(), { cement: 1, lime: 1, sand: 6 }),
  };
  const { ballast, ...sold } = SOLD;
  const red = inFace + inYard;
  const bought = { red: up(red * 1.05), blocks: up(inBacking * 1.05) };
  return {
    ...materialsOf(mixes, sold, {
      general: { ...mortarUse(hoursOfBack + hoursOfYard, red + inBacking), paces: PACES },
    }),
    ...purchase('harwick-red', red, bought.red, bought.red * 0.92),
    ...purchase('block-100', inBacking, bought.blocks, bought.blocks * 1.65),
    ...purchase('wall-tie', TIES, TIES, TIES * 0.28),
    'job.bricks': bought.red + bought.blocks,
  };
}

export function logStore(): Record<string, number> {
  const bought = materials();
  const spent = spentOn(bought);
  const hours = hoursOfBack + hoursOfYard;
  const labour = cents(hours * GANG);
  const days = up(hours / DAY, 0.5);
  // Half a day is driven to like a whole one.
  const travel = cents(up(days) * DRIVE);
  const price = priceUp(cents(spent + labour + travel), TERMS);
  // What the back wall takes of what is bought for both, by how much of it goes in.
  const ofMortar = mortarOfBack() / (mortarOfBack() + mortarOfYard());
  const shares = [
    (bought['cost.harwick-red']! * inFace) / (inFace + inYard),
    bought['cost.block-100']!,
    bought['cost.wall-tie']!,
    ...['cement', 'lime', 'sand'].map((name) => bought[`cost.${name}`]! * ofMortar),
    (labour * hoursOfBack) / hours,
  ];
  const all = spent + labour;
  const parts = [sum(...shares), all - sum(...shares)];
  const [costOfBack, costOfYard] = shared(cents(all), parts) as [number, number];
  const [priceOfBack, priceOfYard] = shared(price['job.net']!, parts) as [number, number];
  return {
    'back.cost': costOfBack,
    'back.price': priceOfBack,
    'yard.cost': costOfYard,
    'yard.price': priceOfYard,
    'back.bricks': inFace + inBacking,
    'back.rule': 4.49 * 1.35 * 60,
    'back.area': 4.49 * 1.35,
    'back.courses': 18,
    'back.height': 1.35,
    'back.mortar': mortarOfBack(),
    'back.hours': hoursOfBack,
    'back.backing': inBacking,
    'back.ties': TIES,
    'yard.bricks': inYard,
    'yard.rule': 2.24 * 1.8 * 60 * 3,
    'yard.area': 2.24 * 1.8,
    'yard.courses': 24,
    'yard.height': 1.8,
    'yard.mortar': mortarOfYard(),
    'yard.hours': hoursOfYard,
    ...bought,
    'job.hours': hours,
    'job.days': days,
    'job.materials': spent,
    'job.labour': labour,
    'job.time': nearest((100 * labour) / price['job.cost']!, 0.1),
    'job.travel': travel,
    'job.others': 0,
    ...price,
  };
}
