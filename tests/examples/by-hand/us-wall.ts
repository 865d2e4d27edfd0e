/** examples/us-wall: a one-brick wall in common bond, in inches; 12 and 18 bricks either side of a gate, 16 courses. */
import { cents, course, nearest, priceUp, sum, up } from './arithmetic';
import { jointed, materialsOf, pointed, purchase, spentOn } from './buying';

// 12 bricks are 12 x 8 - 3/8 = 95 5/8 in, 18 are 143 5/8 in; half a brick is 4 in with its joint.
// Courses 1, 7 and 13 are headers with a closer behind the quoin header at either end; the other thirteen are
// stretchers, every second one shifted by half a brick, with a header at either end.
function stretch(bricks: number) {
  const headers = course(`Hc${'H'.repeat(2 * bricks - 3)}cH`);
  const plain = course('S'.repeat(bricks));
  const shifted = course(`H${'S'.repeat(bricks - 1)}H`);
  if ([headers, plain, shifted].some((c) => c.halves !== 2 * bricks)) throw new Error('a course');
  return { wholes: 3 * headers.wholes + 13 * plain.wholes, closers: 3 * headers.closers };
}

const left = stretch(12);
const right = stretch(18);
const wholes = left.wholes + right.wholes;
const closers = left.closers + right.closers;
const laid = wholes + up(closers / 2);

/** Bricks on edge, 2 1/4 in each, whose joint comes nearest 3/8 in. */
function onEdge(length: number): number {
  const joint = (count: number) => (length - 2.25 * count) / (count - 1);
  const few = Math.floor((length + 0.375) / 2.625);
  const off = (count: number) => Math.abs(joint(count) - 0.375);
  return off(few) < off(few + 1) ? few : few + 1;
}

const coping = onEdge(95.625) + onEdge(143.625);
const INCH3 = 1 / 1728;

/** Cubic feet. A course is 8/3 in; the wall is a brick's length thick. */
function mortar(): number {
  const length = 95.625 + 143.625;
  const gross = length * 7.625 * ((16 * 8) / 3 + 3.625 + (8 / 3 - 2.25));
  const whole = 7.625 * 3.625 * 2.25;
  const closer = ((3.625 - 0.375) / 2) * 7.625 * 2.25;
  return (gross - (wholes + coping) * whole - closers * closer) * INCH3;
}

const CONCRETE = 16 * 8 * 275.625 * INCH3;

function hours(): number {
  return sum(laid / 65, coping / 35, CONCRETE / 12);
}

/** Pounds a loose cubic foot, pounds a bag or a load, and dollars. */
const SOLD = {
  'portland-cement': { weighs: 94, pack: 94, price: 16.5 },
  'hydrated-lime': { weighs: 40, pack: 50, price: 15.75 },
  'mason-sand': { weighs: 80, pack: 2000, price: 48 },
  'concrete-sand': { weighs: 100, pack: 2000, price: 44 },
  gravel: { weighs: 90, pack: 2000, price: 46 },
};

function materials(): Record<string, number> {
  const mixed = mortar() * 1.15;
  const concrete = CONCRETE * 1.05;
  const mixes = {
    // Four loose volumes of 1 : 1 : 6 make three of mortar; concrete 1 : 2 : 3 shrinks by a third.
    'type-n': {
      wet: mixed,
      dry: (mixed * 4) / 3,
      parts: { 'portland-cement': 1, 'hydrated-lime': 1, 'mason-sand': 6 },
    },
    concrete: {
      wet: concrete,
      dry: concrete * 1.5,
      parts: { 'portland-cement': 1, 'concrete-sand': 2, gravel: 3 },
    },
  };
  const bricks = up((laid + coping) * 1.05);
  return {
    ...materialsOf(mixes, SOLD, {
      'type-n': {
        mixer: 6,
        hours: hours() - CONCRETE / 12,
        life: 2.5,
        bricks: laid + coping,
        pointing: (pointed(7.625, 2.25, 0.375, 8 / 3 - 2.25) / 12) * 1.15,
        joints: jointed(7.625, 2.25, 0.375, 8 / 3 - 2.25) * 12,
      },
      concrete: { mixer: 6 },
    }),
    ...purchase('dunlin-red', laid + coping, bricks, (bricks * 790) / 1000),
    'job.bricks': bricks,
  };
}

export function usWall(): Record<string, number> {
  const bought = materials();
  const spent = spentOn(bought);
  const labour = cents(hours() * (52 + 31));
  const days = up(hours() / 8, 0.5);
  // Half a day is driven to like a whole one.
  const travel = cents(up(days) * 2 * 11 * 0.7);
  const terms = { overhead: 0.12, profit: 0.15, round: 10, tax: 0, deposit: 0.3 };
  const price = priceUp(cents(spent + labour + travel + 65), terms);
  // Square feet of face: 16 courses of 8/3 in.
  const area = ((95.625 + 143.625) * ((16 * 8) / 3)) / 144;
  return {
    'street.bricks': laid + coping,
    'street.rule': area * 6.75 * 2,
    'street.area': area,
    'street.courses': 16,
    'street.height': (16 * 8) / 3 / 12,
    'street.mortar': mortar(),
    'street.hours': hours(),
    'street.concrete': CONCRETE,
    'street.cost': cents(spent + labour),
    'street.price': price['job.net']!,
    ...bought,
    'job.hours': hours(),
    'job.days': days,
    'job.materials': spent,
    'job.labour': labour,
    'job.time': nearest((100 * labour) / price['job.cost']!, 0.1),
    'job.travel': travel,
    'job.others': 65,
    ...price,
  };
}
