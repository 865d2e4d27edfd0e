/** Units after a number: those of the dimensions that its slot takes, as far as anybody would write so much in them. */
import type { LineKind, Slot } from '../../../grammar/lines';
import type { QuantitySlot, SizeSlot } from '../../../grammar/lines/slots';
import { exactOf } from '../../../grammar/read/numbers';
import type { Value } from '../../../grammar/read/values';
import type { MeasureItem } from '../../../grammar/syntax';
import { type Dimension, type Unit, unitsOf } from '../../../shared/units';
import type { Job } from '../workspace/job';
import { exampleOf } from './example';
import type { Completion } from './types';

/** The units of the job's own system first. */
export function unitsFor(
  slot: QuantitySlot | SizeSlot,
  number: MeasureItem,
  kind: LineKind,
  job: Job,
): Completion[] {
  const many = amountIn(number);
  if (slot.slot === 'quantity' && (slot.bare || (slot.whole && !isWhole(many)))) return [];
  const offers = (slot.slot === 'quantity' && slot.offers) || slot.dimensions;
  return offers.flatMap((dimension) => {
    if (dimension === 'courses' && !isWhole(many)) return [];
    const usual = usualIn(dimension, slot, kind);
    return inOrder(likely(unitsOf(dimension), many, usual), job).map((u) => unitItem(u, number));
  });
}

function inOrder(units: readonly Unit[], { env }: Job): readonly Unit[] {
  const own = env.imperial ? 'imperial' : 'metric';
  const [ours, other] = [[] as Unit[], [] as Unit[]];
  for (const unit of units) (!unit.system || unit.system === own ? ours : other).push(unit);
  return [...ours, ...other];
}

/** What is usual in a place, in base units, and how many times as much or as little one may still mean. */
interface Usual {
  readonly amount: number;
  readonly most: number;
  readonly least: number;
}

/** Where none is likely, the one that comes nearest to what is usual. */
function likely(units: readonly Unit[], many: number, usual: Usual | undefined): readonly Unit[] {
  if (!usual) return units;
  const times = (unit: Unit) => ((many || 1) * unit.factor.toNumber()) / usual.amount;
  // Of nothing the unit is the same whatever it is.
  const least = many ? usual.least : 0;
  const found = units.filter((unit) => times(unit) <= usual.most && times(unit) >= least);
  if (found.length) return found;
  const off = (unit: Unit) => Math.abs(Math.log(times(unit)));
  return units.filter((unit) => units.every((other) => off(unit) <= off(other)));
}

/** As the line’s example has it: 450 miles of footing nobody means. Else, more loosely, as such amounts mostly are in a job. */
function usualIn(dimension: Dimension, slot: Slot, kind: LineKind): Usual | undefined {
  const said = exampleOf(kind).said.find((each) => each.slot === slot)?.value;
  const own = exampled(said, dimension);
  if (own) return { amount: own, most: 100, least: 1 / 1500 };
  const amount = USUAL[dimension];
  return amount === undefined ? undefined : { amount, most: 20, least: 1 / 5000 };
}

function exampled(value: Value | undefined, dimension: Dimension): number | undefined {
  const [amount, unit] =
    value?.kind === 'quantity'
      ? [value.low, value.unit]
      : value?.kind === 'size'
        ? [value.sides[0]!.value, value.sides[0]!.unit]
        : [];
  return unit?.dimension === dimension ? amount!.mul(unit.factor).toNumber() : undefined;
}

const USUAL: Partial<Record<Dimension, number>> = {
  length: 5000,
  area: 30,
  volume: 100,
  mass: 25,
  time: 4,
};

/** Of a range the more; nothing that can be read is one. */
function amountIn({ low, high }: MeasureItem): number {
  const read = exactOf(high ?? low);
  return 'value' in read ? read.value.toNumber() : 1;
}

function isWhole(many: number): boolean {
  return Number.isInteger(many);
}

const COUNTS: ReadonlySet<Dimension> = new Set([
  'courses',
  'bricks',
  'bags',
  'people',
  'day',
  'pieces',
]);

function unitItem(unit: Unit, number: MeasureItem): Completion {
  const several = COUNTS.has(unit.dimension) && !isOne(number);
  const word = several ? (unit.also[0] ?? unit.name) : unit.name;
  const detail = word === unit.name ? unit.also[0] : undefined;
  return { label: word, kind: 'unit', detail, insert: word };
}

/** One, or less than one: 1 brick, 1/2 brick. */
function isOne({ low, high }: MeasureItem): boolean {
  return !high && (low.digits === undefined || (low.digits === '1' && !low.fraction));
}
