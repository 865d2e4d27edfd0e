/** Slots in words, for messages, completion and the reference. */
import { later, phrase, spoken } from '../../shared/phrase';
import type { Dimension } from '../../shared/units';
import type { LineKind, Slot } from '../lines';
import type { QuantitySlot } from '../lines/slots';

/** What it is, and an example where it needs one. */
const QUANTITIES: Readonly<Record<Dimension, readonly [string, string?]>> = {
  length: [later`a length`, '7.4 m'],
  area: [later`an area`, '2.4 m2'],
  volume: [later`a volume`, '0.5 m3'],
  mass: [later`a weight`, '25 kg'],
  time: [later`hours`, '7.5 h'],
  day: [later`days`, '30 days'],
  courses: [later`a number of courses`, '18 courses'],
  bricks: [later`a number of bricks`, '1.5 bricks'],
  bags: [later`a number of bags`, '4 bags'],
  people: [later`a number of people`, '2 people'],
  pieces: [later`a number of pieces`, '3 pieces'],
  temperature: [later`a temperature`, '5 C'],
  density: [later`a density`, '1440 kg/m3'],
  strength: [later`a strength`, '4 N/mm2'],
  percent: [later`a percentage`, '20%'],
  number: [later`a plain number`],
};

export function describe(slot: Slot): string {
  switch (slot.slot) {
    case 'quantity':
      return describeQuantity(slot);
    case 'counted':
      return slot.of === 'measure'
        ? phrase`how many of what, such as 6 trowels`
        : phrase`how many of what, such as 1 bricklayer`;
    case 'size':
      return phrase`a size such as ${sizeExample(slot.count[0]!, slot.dimensions[0]!)}`;
    case 'money':
      return phrase`money such as £6.40`;
    case 'choice':
      return slot.of.length === 1 ? phrase`“${slot.of[0]}”` : phrase`one of ${slot.of.join(', ')}`;
    case 'name':
      return phrase`the name of ${slot.of.map(article).join(phrase` or `)}`;
    case 'new-name':
      return phrase`a name, one word such as north`;
    case 'word':
      return phrase`a word for the ${spoken(slot.what)}`;
    case 'text':
      return phrase`a text in double quotes`;
    case 'date':
      return phrase`a date such as 2026-03-02`;
    case 'clock':
      return phrase`a time of day such as 08:00`;
    case 'code':
      return phrase`a reference such as 26-041`;
    case 'literal':
      return phrase`“${slot.text}”`;
    case 'optional':
      return describe(slot.slots[0]!);
    case 'either':
      return oneOf(slot.of.map((group) => group[0]!)).join(phrase`, or `);
    case 'list':
      return describe(slot.slots[0]!);
    case 'rest':
      return phrase`${spoken(slot.what)}, such as cap 400 x 400 mm`;
  }
}

/** Slots of which any will do, in words, each said once: their lists of words are one list. */
export function oneOf(slots: readonly Slot[]): string[] {
  const choices = slots.filter((slot) => slot.slot === 'choice');
  const of = [...new Set(choices.flatMap((slot) => slot.of))];
  const said = slots.map((slot) =>
    slot.slot === 'choice' ? describe({ ...slot, of }) : describe(slot),
  );
  return [...new Set(said)];
}

function describeQuantity(slot: QuantitySlot): string {
  const ways = slot.dimensions.map((dimension) => {
    const [kind, usual] = QUANTITIES[dimension];
    const what = spoken(kind);
    const example = slot.example ?? usual;
    return example ? phrase`${what} such as ${example.replace(' or ', phrase` or `)}` : what;
  });
  if (slot.range === 'usual') ways.push(phrase`a range such as 60..75`);
  return ways.join(phrase`, or `);
}

function sizeExample(count: number, dimension: Dimension): string {
  if (dimension === 'bricks') return '1.5 x 1.5 bricks';
  return count === 3 ? '215 x 102.5 x 65 mm' : '450 x 225 mm';
}

/** `a wall`, `an opening`. */
export function article(noun: string): string {
  return /^[aeio]/.test(noun) ? phrase`an ${noun}` : phrase`a ${noun}`;
}

/** The line in one line: its word and what follows, as the reference's heading for it. */
export function pattern(kind: LineKind): string {
  return [kind.open ? `<${kind.key}>` : kind.key, ...kind.takes.map(patternOf)].join(' ');
}

/** A slot as the pattern of its line shows it. */
export function patternOf(slot: Slot): string {
  switch (slot.slot) {
    case 'quantity':
      return slot.bare
        ? 'number'
        : `${slot.dimensions.join('|')}${slot.range === 'usual' ? '[..]' : ''}`;
    case 'counted':
      return `number ${slot.of}`;
    case 'size':
      return Array(Math.max(...slot.count))
        .fill(slot.dimensions.join('|'))
        .join(' x ');
    case 'choice':
      return slot.of.join('|');
    case 'name':
      return slot.of.join('|');
    case 'new-name':
      return 'name';
    case 'word':
      return slot.what.replaceAll(' ', '-');
    case 'literal':
      return phrase`“${slot.text}”`;
    case 'optional':
      return `[${slot.slots.map(patternOf).join(' ')}]`;
    case 'either':
      return `(${slot.of.map((group) => group.map(patternOf).join(' ')).join(' | ')})`;
    case 'list':
      return `${slot.slots.map(patternOf).join(' ')} [${slot.by || ' '} …]`;
    case 'rest':
      return 'line';
    default:
      return slot.slot === 'text' ? '"text"' : slot.slot;
  }
}
