/** examples/repair: a length taken down and built again, bricks cut out, joints repointed, coping laid again. */
import { cents, priceUp, sum, up } from './arithmetic';
import { materialsOf, purchase } from './buying';
import { DAY, DRIVE, FROG, GANG, mortarMix, SOLD, TERMS, WHOLE } from './uk';

// 1.35 m are 12 half bricks of 112.5 mm. Through a one-brick wall every half brick of length is one brick.
const DOWN = 12 * 9;
// 1350 / 75 mm
const ON_EDGE = 18;
const CUT_OUT = 3;
// 60 to 75% is not known before the work: the middle is reckoned with, whole bricks only.
const REUSED = Math.floor((DOWN + ON_EDGE) * 0.675);
const SHORT = DOWN + ON_EDGE + CUT_OUT - REUSED;
// Four courses stand 310 mm high: 77.5 mm each, so a bed of 12.5 over the old bricks of 65 mm.
const GAUGE = 310 / 4;
const BED = GAUGE - 65;

function mortar(): number {
  // Between toothed ends: 12 half bricks and a joint at either end, 215 mm thick.
  const rebuilt = ((12 * 112.5 + 10) * 9 * GAUGE * 215) / 1e6 - DOWN * WHOLE * (1 - FROG);
  // Round one brick: its bed, 225 mm long, and an upright joint, both 102.5 mm deep.
  const around = (CUT_OUT * (225 * BED * 102.5 + 10 * 65 * 102.5)) / 1e6;
  // The share of a stretcher face that is joint, 20 mm deep, over 2.4 m2.
  const pointed = 2.4 * (1 - (215 * 65) / (225 * GAUGE)) * 20;
  // Each brick on edge has one joint of 10 mm beside it and a bed of 10 mm under it.
  const coping = (ON_EDGE * (215 * 102.5 * 10 + 215 * 65 * 10)) / 1e6;
  return sum(rebuilt, around, pointed, coping);
}

function hours(): number {
  return sum((DOWN + ON_EDGE) / 80, DOWN / 55, REUSED / 70, CUT_OUT / 5, 2.4 / 1, ON_EDGE / 35);
}

function materials(): Record<string, number> {
  const mixes = { 'lime-soft': mortarMix(mortar(), { 'hydraulic-lime': 1, sand: 3 }) };
  const sold = { 'hydraulic-lime': { weighs: 0.65, pack: 25, price: 16.5 }, sand: SOLD.sand };
  // 8% are turned away; sold in packs of 80.
  const packs = up(up(SHORT * 1.08) / 80);
  return {
    ...materialsOf(mixes, sold),
    ...purchase('harwick-antique', SHORT, packs * 80, packs * 124),
    'job.bricks': packs * 80,
  };
}

export function repair(): Record<string, number> {
  const bought = materials();
  const costs = Object.entries(bought).filter(([key]) => key.startsWith('cost.'));
  const spent = cents(sum(...costs.map(([, cost]) => cost)));
  const labour = cents(hours() * GANG);
  const days = up(hours() / DAY, 0.5);
  const travel = cents(days * DRIVE);
  const trestles = cents(28 * days);
  const price = priceUp(cents(spent + labour + travel + trestles), TERMS);
  return {
    'frost.down': DOWN,
    'frost.reused': REUSED,
    'frost.cut-out': CUT_OUT,
    'frost.repointed': 2.4,
    'frost.recoped': ON_EDGE,
    // The new brick is 67 mm high.
    'frost.joint-needed': GAUGE - 67,
    // Nine courses of the new brick at its usual joint of 10 mm, beside nine that stand.
    'frost.drift': 9 * (67 + 10 - GAUGE),
    'frost.short': SHORT,
    'frost.mortar': mortar(),
    'frost.hours': hours(),
    'frost.cost': cents(spent + labour),
    'frost.price': price['job.net']!,
    ...bought,
    'job.hours': hours(),
    'job.days': days,
    'job.materials': spent,
    'job.labour': labour,
    'job.travel': travel,
    'job.others': trestles,
    ...price,
  };
}
