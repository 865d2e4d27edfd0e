/** What may come next in a line: the slots that could take it, found by the matcher itself, say what fits them. */
import type { LineKind, Slot } from '../../../grammar/lines';
import { match } from '../../../grammar/read/match';
import type { Item, MeasureItem } from '../../../grammar/syntax';
import { type Dimension, type Unit, unitsOf } from '../../../shared/units';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { wordsFor } from './complete-words';
import { namedThings, shortName, titleOf } from './names';
import type { Completion } from './types';

export function valuesFor(
  kind: LineKind,
  items: readonly Item[],
  block: SourceBlock | undefined,
  job: Job,
): Completion[] {
  const last = items.at(-1);
  const bare = last?.kind === 'measure' && !last.unit ? last : undefined;
  const units = bare ? unitItems(expected(kind, items.slice(0, -1)), bare, block, job) : [];
  const next = expected(kind, items).flatMap((slot) => slotItems(slot, block, job));
  return distinct([...units, ...next]);
}

/** Something that fits no slot, put where the next item would be: the matcher says what it wanted there. */
const NOTHING = '\u0000';

function expected(kind: LineKind, items: readonly Item[]): readonly Slot[] {
  const end = items.at(-1)?.span.end ?? 0;
  const nothing: Item = { kind: 'junk', span: { line: 0, start: end, end }, text: NOTHING };
  const { mismatch } = match(kind.takes, [...items, nothing]);
  return mismatch?.at === items.length ? mismatch.expected : [];
}

function slotItems(slot: Slot, block: SourceBlock | undefined, job: Job): Completion[] {
  switch (slot.slot) {
    case 'choice':
      return slot.of.map((word) => ({ label: word, kind: 'choice', insert: word }));
    case 'name':
      return nameItems(slot.of, block, job);
    case 'literal':
      return /^[a-z]/.test(slot.text)
        ? [{ label: slot.text, kind: 'word', insert: `${slot.text} ` }]
        : [];
    case 'word':
      return wordsFor(slot.what, block, job);
    default:
      return [];
  }
}

function nameItems(
  kinds: Extract<Slot, { slot: 'name' }>['of'],
  block: SourceBlock | undefined,
  job: Job,
): Completion[] {
  return namedThings(job, kinds, block).map((thing) => ({
    label: thing.name,
    kind: 'name',
    detail: titleOf(thing) || undefined,
    explains: thing.block.file === job.file ? undefined : shortName(thing.block.file),
    insert: thing.name,
  }));
}

/** After a number: units of the dimensions that its slot takes, or trades where it counts people. */
function unitItems(
  slots: readonly Slot[],
  number: MeasureItem,
  block: SourceBlock | undefined,
  job: Job,
): Completion[] {
  return slots.flatMap((slot) => {
    if (slot.slot === 'counted') return nameItems([slot.of], block, job);
    if (slot.slot !== 'quantity' && slot.slot !== 'size') return [];
    if (slot.slot === 'quantity' && slot.bare) return [];
    return slot.dimensions.flatMap((d) => inDimension(d, number, job));
  });
}

/** The units of the job's own system first. */
function inDimension(dimension: Dimension, number: MeasureItem, job: Job): Completion[] {
  const own = job.env.imperial ? 'imperial' : 'metric';
  const units = unitsOf(dimension);
  const sorted = [
    ...units.filter((u) => !u.system || u.system === own),
    ...units.filter((u) => u.system && u.system !== own),
  ];
  return sorted.map((unit) => unitItem(unit, number));
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

function distinct(items: readonly Completion[]): Completion[] {
  const seen = new Set<string>();
  return items.filter((item) => !seen.has(item.label) && seen.add(item.label));
}
