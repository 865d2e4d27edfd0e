/** examples/de-mauer: a one-brick wall in Blockverband, NF, twelve courses; 24 and 16 half bricks either side of a gate. */
import { cents, course, priceUp, sum, up } from './arithmetic';

// Half a brick is 125 mm with its joint: 24 x 125 - 10 = 2990 mm, 16 x 125 - 10 = 1990 mm.
function stretch(halves: number) {
  const plain = course('S'.repeat(halves / 2));
  const headers = course(`Hc${'H'.repeat(halves - 3)}cH`);
  if (plain.halves !== halves || headers.halves !== halves) throw new Error('a course');
  return { wholes: 6 * (plain.wholes + headers.wholes), closers: 6 * headers.closers };
}

const left = stretch(24);
const right = stretch(16);
const wholes = left.wholes + right.wholes;
const closers = left.closers + right.closers;
const laid = wholes + up(closers / 2);

/** Bricks on edge, 71 mm each, whose joint comes nearest 10 mm. */
function onEdge(length: number): number {
  const off = (count: number) => Math.abs((length - 71 * count) / (count - 1) - 10);
  const few = Math.floor((length + 10) / 81);
  return off(few) < off(few + 1) ? few : few + 1;
}

const coping = onEdge(2990) + onEdge(1990);

/** Litres. Twelve courses of 1000 / 12 mm; on edge 115 mm high, on a bed as thick as the others. */
function mortar(): number {
  const bed = 1000 / 12 - 71;
  const gross = (2990 + 1990) * 240 * (1000 + 115 + bed);
  const bricks = (wholes + coping) * 240 * 115 * 71 + closers * 52.5 * 240 * 71;
  return (gross - bricks) / 1e6;
}

const CONCRETE = 400 * 0.3 * 5.99;

function hours(): number {
  return sum(laid / 48, coping / 30, CONCRETE / 350);
}

function materials(): Record<string, number> {
  const mixed = mortar() * 1.1;
  const concrete = CONCRETE * 1.05;
  const dry = mixed * 1.33;
  const bulk = concrete * 1.5;
  const bought = {
    zement: up(((dry / 8 + bulk / 7) * 1.25) / 25),
    kalk: up(((dry / 8) * 0.6) / 25),
    sand: up((((dry * 6) / 8) * 1.6) / 1000),
    kies: up((((bulk * 6) / 7) * 1.75) / 1000),
    bricks: up((laid + coping) * 1.03),
  };
  return {
    'mix.mg-iia': mixed,
    'mix.beton': concrete,
    'buy.moorsiel-rot': bought.bricks,
    'cost.moorsiel-rot': cents(bought.bricks * 0.88),
    'buy.zement': bought.zement,
    'cost.zement': cents(bought.zement * 5.9),
    'buy.kalkhydrat': bought.kalk,
    'cost.kalkhydrat': cents(bought.kalk * 7.4),
    'buy.sand': bought.sand,
    'cost.sand': bought.sand * 46,
    'buy.kies': bought.kies,
    'cost.kies': bought.kies * 39,
    'job.bricks': bought.bricks,
  };
}

export function deMauer(): Record<string, number> {
  const bought = materials();
  const costs = Object.entries(bought).filter(([key]) => key.startsWith('cost.'));
  const spent = cents(sum(...costs.map(([, cost]) => cost)));
  const labour = cents(hours() * (41 + 29 / 2));
  const days = up(hours() / 8, 0.5);
  const travel = cents(days * 2 * 17 * 0.52);
  const terms = { overhead: 0.14, profit: 0.12, round: 10, tax: 0.19, deposit: 0.3 };
  const price = priceUp(cents(spent + labour + travel + 260), terms);
  const area = 2.99 + 1.99;
  return {
    'nord.bricks': laid + coping,
    'nord.rule': area * 48 * 2,
    'nord.area': area,
    'nord.courses': 12,
    'nord.height': 1,
    'nord.mortar': mortar(),
    'nord.hours': hours(),
    'nord.concrete': CONCRETE,
    'nord.cost': cents(spent + labour),
    'nord.price': price['job.net']!,
    ...bought,
    'job.hours': hours(),
    'job.days': days,
    'job.materials': spent,
    'job.labour': labour,
    'job.travel': travel,
    'job.others': 260,
    ...price,
  };
}
