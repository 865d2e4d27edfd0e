/** examples/repointing: a face pointed by area and by joint, copings bedded again, and a face that nobody has seen yet. */
import { cents, nearest, priceUp, shared, sum, up } from './arithmetic';
import { jointed, materialsOf, pointed, purchase, spentOn } from './buying';
import { DRIVE, GANG, repairDays, SMALL_SAND, TERMS, TUB } from './uk';

// Old bricks of 222 x 106 x 63 mm, four courses to 298 mm; joints of 10 mm upright.
const BED = 298 / 4 - 63;
// 13 to 15 m2: the middle is reckoned with.
const AREA = (13 + 15) / 2;
const SLABS = 9;

/** Of English garden wall bond, three courses of stretchers to one of headers, the share of the face that is joint. */
function jointShare(): number {
  const along = (3 * (222 / 232) + 106 / 116) / 4;
  return 1 - (along * 63) / (63 + BED);
}

// A square metre, a millimetre deep, is a litre.
const SOUTH = AREA * jointShare() * 20 + (18 * BED * 25) / 1000;
// Each lies on 750 mm of a wall that is one brick thick, and has one joint of its own section.
const TOP = (SLABS * (750 * 222 * BED + 300 * 60 * 10)) / 1e6;

// A square metre an hour, six metres of joint, two copings.
const HOURS = { south: AREA / 1 + 18 / 6, top: SLABS / 2 };
const ALL_HOURS = HOURS.south + HOURS.top;

/** What is left over would point so much of this brick, raked twice its bed, a tenth lost. */
const EACH = pointed(222, 63, 10, BED) * 1.1;
const JOINTS = jointed(222, 63, 10, BED) * 1000;

function putty(): Record<string, number> {
  const wet = SOUTH * 1.1;
  // Four parts of sand fill the volume, and the putty goes into their voids.
  const mix = { wet, dry: wet * (5 / 4), parts: { 'lime-putty': 1, sand: 4 } };
  const sold = { 'lime-putty': { weighs: 1.4, pack: 20, price: 15.8 }, sand: SMALL_SAND };
  const use = { mixer: TUB, hours: HOURS.south, life: 24, pointing: EACH, joints: JOINTS };
  return materialsOf({ 'old-putty': mix }, sold, { 'old-putty': use });
}

/** 25 kg bags that make 14 l each; worked for four hours. */
function bagged(): Record<string, number> {
  const wet = TOP * 1.1;
  const bags = up(wet / 14);
  const batch = Math.min(TUB, (wet / HOURS.top) * 4);
  const count = up(wet / batch);
  const left = bags * 14 - wet;
  return {
    'mix.coping-lime': wet,
    ...purchase('coping-lime', wet, bags, bags * 8.95),
    'left.coping-lime': left,
    'lays.coping-lime.pointing': left / EACH,
    'lays.coping-lime.joints': (left / EACH) * JOINTS,
    'batches.coping-lime': count,
    'batch.coping-lime': batch,
    'batch.coping-lime.bag': batch / 14,
    'last.coping-lime': wet - (count - 1) * batch,
    'over.coping-lime': count * batch - wet,
  };
}

/** Half as large again when loose, at 2000 kg/m3. */
const wasteOf = (work: string, mortar: number) => ({
  [`${work}.waste`]: (mortar * 1.5) / 1000,
  [`${work}.waste-mass`]: mortar * 2,
});

/** Still to be measured: nothing of it is in any figure, and the job says so. */
const NORTH = ['repointed', 'mortar', 'waste', 'waste-mass', 'hours', 'cost', 'price'];

export function repointing(): Record<string, number> {
  const bought = { ...putty(), ...bagged() };
  const spent = spentOn(bought);
  const { days, paid } = repairDays(ALL_HOURS);
  const labour = cents(paid * GANG);
  // Half a day is driven to like a whole one.
  const travel = cents(up(days) * DRIVE);
  const price = priceUp(cents(spent + labour + travel), TERMS);
  const forTop = bought['cost.coping-lime']! + (labour * HOURS.top) / ALL_HOURS;
  const parts = [spent + labour - forTop, forTop];
  const [costOfSouth, costOfTop] = shared(cents(spent + labour), parts) as [number, number];
  const [priceOfSouth, priceOfTop] = shared(price['job.net']!, parts) as [number, number];
  return {
    'south.repointed': AREA,
    'south.repointed-joints': 18,
    'south.mortar': SOUTH,
    ...wasteOf('south', SOUTH),
    'south.hours': HOURS.south,
    'south.cost': costOfSouth,
    'south.price': priceOfSouth,
    'top.mortar': TOP,
    ...wasteOf('top', TOP),
    'top.hours': HOURS.top,
    'top.cost': costOfTop,
    'top.price': priceOfTop,
    ...Object.fromEntries(NORTH.map((key) => [`north.${key}`, 0])),
    ...bought,
    'job.bricks': 0,
    'job.hours': ALL_HOURS,
    'job.days': days,
    'job.paid': paid,
    'job.waste': (sum(SOUTH, TOP) * 1.5) / 1000,
    'job.waste-mass': sum(SOUTH, TOP) * 2,
    'job.materials': spent,
    'job.labour': labour,
    'job.time': nearest((100 * labour) / price['job.cost']!, 0.1),
    'job.travel': travel,
    'job.others': 0,
    ...price,
  };
}
