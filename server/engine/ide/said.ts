/** The values of a line, each with the slot it fills: the table drives the editor as it drives the reader. */

import { headingNamed, type LineKind, lineOf } from '../../../grammar/lines';
import type { NamedKind, Slot } from '../../../grammar/lines/slots';
import { match } from '../../../grammar/read/match';
import type { ReadLine, RestValue, Value, Values } from '../../../grammar/read/values';

export interface Said {
  readonly slot: Slot;
  readonly value: Value;
  /** Kinds of thing that a name may mean; empty for what is no name. */
  readonly names: readonly NamedKind[];
}

export function saidOf(line: ReadLine): Said[] {
  const found: Said[] = [];
  gather(line.kind.takes, line.values, found);
  return found;
}

function gather(slots: readonly Slot[], values: Values, found: Said[]): void {
  for (const slot of slots) {
    if (slot.slot === 'optional') gather(slot.slots, values, found);
    else if (slot.slot === 'either') for (const group of slot.of) gather(group, values, found);
    else if (slot.slot !== 'literal') take(slot, values, found);
  }
}

type Keyed = Exclude<Slot, { slot: 'optional' | 'either' | 'literal' }>;

function take(slot: Keyed, values: Values, found: Said[]): void {
  const value = values[slot.key];
  if (value?.kind === 'rest') {
    lineIn(value, found);
    return;
  }
  if (slot.slot === 'list') {
    if (value?.kind === 'list') for (const each of value.of) gather(slot.slots, each, found);
    return;
  }
  if (value && !found.some((said) => said.value === value))
    found.push({ slot, value, names: slot.slot === 'name' ? slot.of : [] });
  const trade = slot.slot === 'counted' ? values[`${slot.key}Of`] : undefined;
  if (slot.slot === 'counted' && trade) found.push({ slot, value: trade, names: [slot.of] });
}

/** Headings that a line of an option can be of. Lines of one word mean the same under all of them. */
const WRITTEN_ANEW = ['wall', 'pier', 'repair', 'opening', 'pier in wall', 'cost'];

/** The values of a line that an option writes anew. Whose line it is is not asked: its word tells what it takes. */
function lineIn({ items: [word, ...items] }: RestValue, found: Said[]): void {
  if (word?.kind !== 'word') return;
  for (const parent of WRITTEN_ANEW.map(headingOf)) {
    const kind = parent && lineOf(parent, word.text);
    const values = kind && match(kind.takes, items).values;
    if (!values) continue;
    gather(kind.takes, values, found);
    return;
  }
}

function headingOf(name: string): LineKind | undefined {
  const wall = headingNamed('wall')!;
  if (name === 'opening') return lineOf(wall, 'opening');
  return name === 'pier in wall' ? lineOf(wall, 'pier') : headingNamed(name);
}
