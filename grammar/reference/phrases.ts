/** What a slot takes, in words for the reference; the example beside them shows how it looks. */
import type { Dimension } from '../../shared/units';
import type { Slot } from '../lines';
import type { QuantitySlot } from '../lines/slots';
import { article } from '../read/describe';
import { listed } from '../read/numbers';

const QUANTITY: Readonly<Record<Dimension, string>> = {
  length: 'a length',
  area: 'an area',
  volume: 'a volume',
  mass: 'a weight',
  time: 'hours',
  day: 'days',
  courses: 'courses',
  bricks: 'bricks',
  bags: 'bags',
  people: 'people',
  pieces: 'pieces',
  temperature: 'a temperature',
  density: 'a density',
  strength: 'a strength',
  percent: 'a percentage',
  number: 'a number',
};

/** All that a line takes, one after another. Empty for a line that is its word alone. */
export function takes(slots: readonly Slot[]): string {
  return slots.map(phrase).join(', then ');
}

function phrase(slot: Slot): string {
  switch (slot.slot) {
    case 'quantity':
      return quantity(slot);
    case 'counted':
      return `a number and ${article(slot.of)}`;
    case 'size':
      return `${slot.count.join(' or ')} sides in ${slot.dimensions.map(unitsIn).join(' or ')}`;
    case 'money':
      return 'money';
    case 'choice':
      return words(slot.of);
    case 'name':
      return `the name of ${listed(slot.of.map(article))}`;
    case 'new-name':
      return 'a name that it gets';
    case 'word':
      return slot.what.includes(' or ') && !slot.what.startsWith('unit ')
        ? slot.what
        : article(slot.what);
    case 'text':
      return slot.blank ? 'a text, or `?` while it is not known' : 'a text';
    case 'date':
      return 'a date';
    case 'clock':
      return 'a time of day';
    case 'code':
      return 'a reference';
    case 'literal':
      return words([slot.text]);
    case 'optional':
      return `_(if wanted: ${takes(slot.slots)})_`;
    case 'either':
      return either(slot.of);
    case 'list':
      return `${takes(slot.slots)}; more of them ${slot.by ? `after \`${slot.by}\`` : 'may follow'}`;
    case 'rest':
      return slot.what;
  }
}

function quantity(slot: QuantitySlot): string {
  const ways = slot.dimensions.map((d) => (slot.whole ? whole(QUANTITY[d]) : QUANTITY[d]));
  return listed(slot.range === 'usual' ? [...ways, 'a range'] : ways);
}

/** `a whole number`, `whole bricks`. */
function whole(what: string): string {
  return what.startsWith('a ') ? what.replace('a ', 'a whole ') : `whole ${what}`;
}

/** Alternatives of one word each are one list of words; longer ones are kept apart. */
function either(of: readonly (readonly Slot[])[]): string {
  const single = of.map((group) => (group.length === 1 ? wordsOf(group[0]!) : []));
  if (single.every((group) => group.length)) return words(single.flat());
  if (of.every((group) => group.length === 1)) return listed(of.map(takes));
  return of.map(takes).join('; or ');
}

function wordsOf(slot: Slot): readonly string[] {
  if (slot.slot === 'choice') return slot.of;
  return slot.slot === 'literal' ? [slot.text] : [];
}

function words(of: readonly string[]): string {
  return listed(of.map((word) => `\`${word}\``));
}

function unitsIn(dimension: Dimension): string {
  return dimension === 'length' ? 'a unit of length' : dimension;
}
