/** examples/gate-piers: two piers, two bricks square, 26 courses, six bricks on edge to a side. */
import { cents, nearest, priceUp, sum, up } from './arithmetic';
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

// Six wholes and four closers to a course: 6 x 2 + 4 x 1/2 x 2 = 16 quarter squares of 112.5 mm a side, 2 x 2 bricks.
const COURSE = { wholes: 6, closers: 4 };
const DAMP = 2;
const COURSES = 26;
// 440 mm: 6 x 65 + 5 x 10. Two bricks across each.
const ON_EDGE = 12;

const laidRed = (COURSES - DAMP) * (COURSE.wholes + COURSE.closers / 2);
const laidDamp = DAMP * (COURSE.wholes + COURSE.closers / 2);
const red = 2 * (laidRed + ON_EDGE);
const damp = 2 * laidDamp;

function mortarOfOne(): number {
  const gross = (440 * 440 * 75 * COURSES + 440 * 440 * (102.5 + 10)) / 1e6;
  const course = COURSE.wholes * WHOLE + COURSE.closers * CLOSER;
  // Across the top two bricks and a joint: 215 + 10 + 215.
  const onEdge = 6 * 65 * 102.5 * 430 * 1e-6;
  const redVolume = (COURSES - DAMP) * course + onEdge;
  return gross - redVolume - DAMP * course + FROG * redVolume;
}

const MORTAR = 2 * mortarOfOne();
const CONCRETE = 2 * 750 * 0.75 * 0.4;

function hours(): number {
  return sum((2 * (laidRed + laidDamp)) / 35, (2 * ON_EDGE) / 35, CONCRETE / 350);
}

function materials(): Record<string, number> {
  const mixes = {
    strong: mortarMix(MORTAR, { cement: 1, lime: 0.5, sand: 4.5 }),
    concrete: concreteMix(CONCRETE),
  };
  const bricks = { red: up(red * 1.05), engineering: up(damp * 1.05) };
  return {
    ...materialsOf(mixes, SOLD, {
      strong: mortarUse(hours() - CONCRETE / 350, red + damp),
      concrete: CONCRETE_USE,
    }),
    ...purchase('harwick-red', red, bricks.red, bricks.red * 0.92),
    ...purchase('engineering', damp, bricks.engineering, bricks.engineering * 0.78),
    'job.bricks': bricks.red + bricks.engineering,
  };
}

export function gatePiers(): Record<string, number> {
  const bought = materials();
  const spent = spentOn(bought);
  const labour = cents(hours() * GANG);
  const days = up(hours() / DAY, 0.5);
  // Half a day is driven to like a whole one.
  const travel = cents(up(days) * DRIVE);
  const hooks = cents(4 * 11.8);
  const price = priceUp(cents(spent + labour + travel + hooks), TERMS);
  return {
    'gate.bricks': red + damp,
    'gate.courses': COURSES,
    'gate.height': (COURSES * 75) / 1000,
    'gate.mortar': MORTAR,
    'gate.hours': hours(),
    'gate.concrete': CONCRETE,
    'gate.cost': cents(spent + labour),
    'gate.price': price['job.net']!,
    ...bought,
    'job.hours': hours(),
    'job.days': days,
    'job.materials': spent,
    'job.labour': labour,
    'job.time': nearest((100 * labour) / price['job.cost']!, 0.1),
    'job.travel': travel,
    'job.others': hooks,
    ...price,
  };
}
