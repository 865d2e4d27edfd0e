/** examples/de-mauer: a one-brick wall in Blockverband, NF, twelve courses; 24 and 16 half bricks either side of a gate. */
import { cents, course, nearest, priceUp, sum, up } from './arithmetic';
import { jointed, materialsOf, pointed, purchase, spentOn } from './buying';

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

/** Kilograms a loose litre, kilograms a bag or a load, and euros. */
const SOLD = {
  zement: { weighs: 1.25, pack: 25, price: 5.9 },
  kalkhydrat: { weighs: 0.6, pack: 25, price: 7.4 },
  sand: { weighs: 1.6, pack: 1000, price: 46 },
  kies: { weighs: 1.75, pack: 1000, price: 39 },
};

function materials(): Record<string, number> {
  const mixed = mortar() * 1.1;
  const concrete = CONCRETE * 1.05;
  const mixes = {
    'mg-iia': { wet: mixed, dry: mixed * 1.33, parts: { zement: 1, kalkhydrat: 1, sand: 6 } },
    beton: { wet: concrete, dry: concrete * 1.5, parts: { zement: 1, kies: 6 } },
  };
  const bricks = up((laid + coping) * 1.03);
  return {
    ...materialsOf(mixes, SOLD, {
      'mg-iia': {
        mixer: 90,
        hours: hours() - CONCRETE / 350,
        life: 2,
        bricks: laid + coping,
        pointing: pointed(240, 71, 10, 250 / 3 - 71) * 1.1,
        joints: jointed(240, 71, 10, 250 / 3 - 71) * 1000,
      },
      beton: { mixer: 90 },
    }),
    ...purchase('moorsiel-rot', laid + coping, bricks, bricks * 0.88),
    'job.bricks': bricks,
  };
}

export function deMauer(): Record<string, number> {
  const bought = materials();
  const spent = spentOn(bought);
  const labour = cents(hours() * (41 + 29 / 2));
  const days = up(hours() / 8, 0.5);
  // Half a day is driven to like a whole one.
  const travel = cents(up(days) * 2 * 17 * 0.52);
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
    'job.time': nearest((100 * labour) / price['job.cost']!, 0.1),
    'job.travel': travel,
    'job.others': 260,
    ...price,
  };
}
