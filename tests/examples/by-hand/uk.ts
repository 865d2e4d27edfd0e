/** What the British examples share: the brick, and the terms of the firm (examples/firm.perp). */
import { type Terms, up } from './arithmetic';
import { jointed, type Mix, pointed, type Use } from './buying';

/** 215 x 102.5 x 65 mm, in litres. */
export const WHOLE = (215 * 102.5 * 65) / 1e6;
/** Half a brick less half a joint: 102.5 mm long. */
export const HALF = (102.5 * 102.5 * 65) / 1e6;
/** Split lengthwise: 46.25 mm wide, 215 mm long. */
export const CLOSER = (46.25 * 215 * 65) / 1e6;
export const FROG = 0.07;

/** A bricklayer and half a labourer, an hour. */
export const GANG = 27.5 + 16 / 2;
export const DAY = 7.5;
/** Two runs of 14 miles at 45p, a day. */
export const DRIVE = 2 * 14 * 0.45;

export const TERMS: Terms = { overhead: 0.1, profit: 0.2, round: 5, tax: 0.2, deposit: 0.25 };

/** Kilograms a loose litre, kilograms a bag, and pounds. */
export const SOLD = {
  cement: { weighs: 1.44, pack: 25, price: 6.4 },
  lime: { weighs: 0.6, pack: 25, price: 9.2 },
  sand: { weighs: 1.6, pack: 850, price: 54 },
  ballast: { weighs: 1.75, pack: 850, price: 52 },
};

/** From litres laid: 10% lost, 1.33 loose volumes to one of mortar. */
export function mortarMix(laid: number, parts: Mix['parts']): Mix {
  const wet = laid * 1.1;
  return { wet, dry: wet * 1.33, parts };
}

/** 1 : 6 from litres laid: 5% lost, 1.5 loose volumes to one of concrete. */
export function concreteMix(laid: number): Mix {
  const wet = laid * 1.05;
  return { wet, dry: wet * 1.5, parts: { cement: 1, ballast: 6 } };
}

/** Mortar of standard bricks: a mixer of 90 l, two hours to use it in; 20 mm of pointing, and a tenth lost. */
export function mortarUse(hours: number, bricks: number, life = 2, bed = 10): Use {
  return {
    mixer: 90,
    hours,
    life,
    bricks,
    pointing: pointed(215, 65, 10, bed) * 1.1,
    joints: jointed(215, 65, 10, bed) * 1000,
  };
}

/** Small repairs (examples/repairs.perp): an hour of every day goes on setting up and cleaning down. */
export const AROUND = 1;
/** A tub of 40 l in place of a mixer, and sand by the small bag: up to fourteen of them cost less than a large one. */
export const TUB = 40;
export const SMALL_SAND = { weighs: 1.6, pack: 25, price: 3.6 };

/** Half days in which so many hours of work are done, and the hours that are paid in them. */
export function repairDays(hours: number, atLeast = 0) {
  const days = Math.max(up(hours / (DAY - AROUND), 0.5), atLeast);
  return { days, paid: hours + up(days) * AROUND };
}

export const CONCRETE_USE: Use = { mixer: 90 };
