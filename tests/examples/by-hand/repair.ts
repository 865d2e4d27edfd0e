/** examples/repair: a length taken down and built again, bricks cut out, joints repointed, coping laid again. */
import { cents, nearest, priceUp, sum, up } from './arithmetic';
import { materialsOf, purchase, spentOn } from './buying';
import {
  DRIVE,
  FROG,
  GANG,
  mortarMix,
  mortarUse,
  repairDays,
  SMALL_SAND,
  TERMS,
  TUB,
  WHOLE,
} from './uk';

// 1.35 m are 12 half bricks of 112.5 mm. Through a one-brick wall every half brick of length is one brick.
const REBUILT = 12 * 9;
// 1350 / 75 mm
const ON_EDGE = 18;
const DOWN = REBUILT + ON_EDGE;
const CUT_OUT = 3;
// 60 to 75% is not known before the work: the middle is reckoned with, whole bricks only.
const REUSED = Math.floor(DOWN * 0.675);
// One in twenty breaks at cleaning.
const CLEANED = Math.ceil(REUSED / 0.95);
// A tenth of what comes down leaves a half. Of a Flemish wall every third brick is a stretcher at the back, where
// there is room for two of them; so all are laid.
const HALVES = Math.floor(DOWN / 10);
const LAID_HALVES = Math.min(HALVES, (2 * REBUILT) / 3);
const SAVED = Math.floor(LAID_HALVES / 2);
const SHORT = DOWN + CUT_OUT - REUSED - SAVED;
// Four courses stand 310 mm high: 77.5 mm each, so a bed of 12.5 over the old bricks of 65 mm.
const GAUGE = 310 / 4;
const BED = GAUGE - 65;

function mortar(): number {
  // Between toothed ends: 12 half bricks and a joint at either end, 215 mm thick.
  const rebuilt = ((12 * 112.5 + 10) * 9 * GAUGE * 215) / 1e6 - REBUILT * WHOLE * (1 - FROG);
  // Round one brick: all four joints of its face, 102.5 mm deep, and one behind it in a one-brick wall.
  const face = (215 + 2 * 10) * (65 + 2 * BED) - 215 * 65;
  const around = (CUT_OUT * (face * 102.5 + 215 * 65 * 10)) / 1e6;
  // Of a Flemish face, a header beside each stretcher, the share that is joint; 20 mm deep, over 2.4 m2.
  const pointed = 2.4 * (1 - ((215 + 102.5) * 65) / ((225 + 112.5) * GAUGE)) * 20;
  // Each brick on edge has one joint of 10 mm beside it and a bed of 10 mm under it.
  const coping = (ON_EDGE * (215 * 102.5 * 10 + 215 * 65 * 10)) / 1e6;
  return sum(rebuilt, around, pointed, coping);
}

/** All bricks that are not laid again, whole or as halves, and all the old mortar: as much as takes its place. */
function waste() {
  const bricks = DOWN - REUSED - SAVED + CUT_OUT;
  const stood = bricks * WHOLE * (1 - FROG) + mortar();
  // Half as large again when loose; a brick weighs 1950 kg/m3 over its outside, old mortar 2000.
  return { loose: (stood * 1.5) / 1000, mass: (bricks * WHOLE * 1950 + mortar() * 2000) / 1000 };
}

function hours(): number {
  return sum(DOWN / 80, REBUILT / 55, CLEANED / 70, CUT_OUT / 5, 2.4 / 1, ON_EDGE / 35);
}

function materials(): Record<string, number> {
  const mixes = { 'lime-soft': mortarMix(mortar(), { 'hydraulic-lime': 1, sand: 3 }) };
  const sold = { 'hydraulic-lime': { weighs: 0.65, pack: 25, price: 16.5 }, sand: SMALL_SAND };
  // 8% are turned away; sold in packs of 80.
  const packs = up(up(SHORT * 1.08) / 80);
  // Taking down and cleaning lay nothing; hydraulic lime is worked for eight hours.
  const use = mortarUse(hours() - DOWN / 80 - CLEANED / 70, DOWN + CUT_OUT, 8, BED);
  return {
    ...materialsOf(mixes, sold, { 'lime-soft': { ...use, mixer: TUB } }),
    ...purchase('harwick-antique', SHORT, packs * 80, packs * 124),
    'job.bricks': packs * 80,
  };
}

export function repair(): Record<string, number> {
  const bought = materials();
  const spent = spentOn(bought);
  const { days, paid } = repairDays(hours());
  const labour = cents(paid * GANG);
  // Half a day is driven to like a whole one.
  const travel = cents(up(days) * DRIVE);
  // Trestles by the day, and the tip by the tonne.
  const others = cents(cents(28 * days) + cents((52 * waste().mass) / 1000));
  const price = priceUp(cents(spent + labour + travel + others), TERMS);
  return {
    'frost.down': DOWN,
    'frost.cleaned': CLEANED,
    'frost.reused': REUSED,
    'frost.broken': DOWN - REUSED - HALVES,
    'frost.halves': HALVES,
    'frost.halves-used': 2 * SAVED,
    'frost.cut-out': CUT_OUT,
    'frost.repointed': 2.4,
    'frost.recoped': ON_EDGE,
    // The new brick is 67 mm high.
    'frost.joint-needed': GAUGE - 67,
    // Nine courses of the new brick at its usual joint of 10 mm, beside nine that stand.
    'frost.drift': 9 * (67 + 10 - GAUGE),
    'frost.short': SHORT,
    'frost.mortar': mortar(),
    'frost.waste': waste().loose,
    'frost.waste-mass': waste().mass,
    'frost.hours': hours(),
    'frost.match.weathered-multi.joint': GAUGE - 65,
    // Laid at the 10 mm of its mix.
    'frost.match.weathered-multi.drift': 9 * (65 + 10 - GAUGE),
    // Sold singly, 5% turned away.
    'frost.match.weathered-multi.cost': cents(up(SHORT * 1.05) * 1.1),
    'frost.match.weathered-multi.left': 0,
    'frost.match.harwick-antique.joint': GAUGE - 67,
    'frost.match.harwick-antique.drift': 9 * (67 + 10 - GAUGE),
    'frost.match.harwick-antique.cost': bought['cost.harwick-antique']!,
    // A pack of 80 less those that are laid or turned away.
    'frost.match.harwick-antique.left': 80 - up(SHORT * 1.08),
    'frost.cost': cents(spent + labour),
    'frost.price': price['job.net']!,
    ...bought,
    'job.hours': hours(),
    'job.days': days,
    'job.paid': paid,
    'job.waste': waste().loose,
    'job.waste-mass': waste().mass,
    'job.materials': spent,
    'job.labour': labour,
    'job.time': nearest((100 * labour) / price['job.cost']!, 0.1),
    'job.travel': travel,
    'job.others': others,
    ...price,
  };
}
