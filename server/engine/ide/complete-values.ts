/** What may come next in a line: the slots that could take it, found by the matcher itself, say what fits them. */
import type { LineKind, Slot } from '../../../grammar/lines';
import { match } from '../../../grammar/read/match';
import type { Item, MeasureItem } from '../../../grammar/syntax';
import { type Dimension, type Unit, unitsOf } from '../../../shared/units';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { wordsFor } from './complete-words';
import { hoverThing } from './hover-name';
import { isInner, namedThings, shortName, titleOf } from './names';
import { type Completion, PLAIN } from './types';

export function valuesFor(
  kind: LineKind,
  items: readonly Item[],
  block: SourceBlock | undefined,
  job: Job,
): Completion[] {
  const last = items.at(-1);
  const bare = last?.kind === 'measure' && !last.unit ? last : undefined;
  const units = bare ? unitItems(expected(kind, items.slice(0, -1)), bare, block, job) : [];
  const place: Place = { kind, items, block, job };
  const next = expected(kind, items).flatMap((slot) => slotItems(slot, place));
  return distinct([...units, ...next]);
}

/** Where something is to be put: behind which items of which line. */
interface Place {
  readonly kind: LineKind;
  readonly items: readonly Item[];
  readonly block: SourceBlock | undefined;
  readonly job: Job;
}

/** Something that fits no slot, put where the next item would be: the matcher says what it wanted there. */
const NOTHING = '\u0000';

export function expected(kind: Pick<LineKind, 'takes'>, items: readonly Item[]): readonly Slot[] {
  const end = items.at(-1)?.span.end ?? 0;
  const nothing: Item = { kind: 'junk', span: { line: 0, start: end, end }, text: NOTHING };
  const { mismatch } = match(kind.takes, [...items, nothing]);
  return mismatch?.at === items.length ? mismatch.expected : [];
}

function slotItems(slot: Slot, place: Place): Completion[] {
  const { block, job } = place;
  switch (slot.slot) {
    case 'choice':
      return slot.of.map((word) => ({ label: word, kind: 'choice', insert: word }));
    case 'name':
      return nameItems(slot.of, block, job, listedBy(slot, place.kind.takes));
    case 'literal':
      return /^[a-z]/.test(slot.text) ? [literal(slot.text, place)] : [];
    case 'word':
      return wordsFor(slot.what, block, job);
    default:
      return [];
  }
}

/** With a space behind it only where something has to follow: else Enter ends the line. */
function literal(text: string, { kind, items }: Place): Completion {
  const end = items.at(-1)?.span.end ?? 0;
  const word: Item = { kind: 'word', span: { line: 0, start: end, end }, text };
  const more = match(kind.takes, [...items, word]).values === undefined;
  return { label: text, kind: 'word', insert: more ? `${text} ` : text, more };
}

/** The sign that parts the things of a list, where the slot is in one. */
function listedBy(slot: Slot, takes: readonly Slot[]): string | undefined {
  for (const each of takes) {
    const inner =
      each.slot === 'list' || each.slot === 'optional'
        ? each.slots
        : each.slot === 'either'
          ? each.of.flat()
          : [];
    if (each.slot === 'list' && inner.includes(slot)) return each.by || undefined;
    const found = listedBy(slot, inner);
    if (found) return found;
  }
  return undefined;
}

function nameItems(
  kinds: Extract<Slot, { slot: 'name' }>['of'],
  block: SourceBlock | undefined,
  job: Job,
  by?: string,
): Completion[] {
  return namedThings(job, kinds, block)
    .filter((thing) => thing.block !== block || isInner(thing))
    .map((thing) => ({
      label: thing.name,
      kind: 'name',
      detail: titleOf(thing) || undefined,
      from: thing.block.file === job.file ? undefined : shortName(thing.block.file),
      explains: () => hoverThing([thing], job, PLAIN),
      insert: thing.name,
      commits: by ? [by] : undefined,
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
