/** What may come next in a line: the slots that could take it, found by the matcher itself, say what fits them. */
import type { LineKind, Slot } from '../../../grammar/lines';
import type { ListSlot } from '../../../grammar/lines/slots';
import { match } from '../../../grammar/read/match';
import type { Item, MeasureItem } from '../../../grammar/syntax';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { namesFor, type Place } from './complete-names';
import { unitsFor } from './complete-units';
import { wordsFor } from './complete-words';
import { thingsNamed } from './names';
import type { Completion } from './types';

export function valuesFor(
  kind: LineKind,
  items: readonly Item[],
  block: SourceBlock | undefined,
  job: Job,
): Completion[] {
  const last = items.at(-1);
  const bare = last?.kind === 'measure' && !last.unit ? last : undefined;
  const place: Place = { kind: meantBy(kind, items, block, job), items, block, job };
  const units = bare ? unitItems(expected(place.kind, items.slice(0, -1)), bare, place) : [];
  const next = expected(place.kind, items).flatMap((slot) =>
    notSaid(slotItems(slot, place), slot, place),
  );
  return distinct([...units, ...next]);
}

/** The line as it is meant: a word of its own that could be a name too is none where nothing is called so. */
function meantBy(
  kind: LineKind,
  [first]: readonly Item[],
  block: SourceBlock | undefined,
  job: Job,
): LineKind {
  const [ways, ...rest] = kind.takes;
  if (ways?.slot !== 'either' || first?.kind !== 'word') return kind;
  const { text } = first;
  if (!ways.of.some(([slot]) => slot?.slot === 'choice' && slot.of.includes(text))) return kind;
  const of = ways.of.filter(
    ([slot]) => slot?.slot !== 'name' || thingsNamed(job, slot.of, text, block).length > 0,
  );
  return { ...kind, takes: [{ ...ways, of }, ...rest] };
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
      return namesFor(slot, place, listOf(slot, place.kind.takes)?.by || undefined);
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

/** The list that the slot is in. */
function listOf(slot: Slot, takes: readonly Slot[]): ListSlot | undefined {
  for (const each of takes) {
    const inner =
      each.slot === 'list' || each.slot === 'optional'
        ? each.slots
        : each.slot === 'either'
          ? each.of.flat()
          : [];
    if (each.slot === 'list' && inner.includes(slot)) return each;
    const found = listOf(slot, inner);
    if (found) return found;
  }
  return undefined;
}

/** A word of a list of words stands in it once. */
function notSaid(found: Completion[], slot: Slot, { kind, items }: Place): Completion[] {
  const list = listOf(slot, kind.takes);
  if (list?.slots.length !== 1) return found;
  const said = new Set(items.map((item) => (item.kind === 'word' ? item.text : '')));
  return found.filter(({ label }) => !said.has(label));
}

/** After a number: units of the dimensions that its slot takes, or trades where it counts people. */
function unitItems(slots: readonly Slot[], number: MeasureItem, place: Place): Completion[] {
  return slots.flatMap((slot) => {
    if (slot.slot === 'counted') return namesFor({ key: slot.key, of: [slot.of] }, place);
    if (slot.slot !== 'quantity' && slot.slot !== 'size') return [];
    return unitsFor(slot, number, place.kind, place.job);
  });
}

function distinct(items: readonly Completion[]): Completion[] {
  const seen = new Set<string>();
  return items.filter((item) => !seen.has(item.label) && seen.add(item.label));
}
