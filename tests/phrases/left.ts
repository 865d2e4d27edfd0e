/** What is left in plain letters of a text that a reader is shown, once all that may be is taken away. */
import { HEADINGS, type LineKind, type Slot } from '../../grammar/lines';
import { UNITS } from '../../shared/units';

/** Letters that are no word: signs of currencies, of trades, of strength classes and of kinds of paper. */
const SIGNS =
  /^(perpend|perp|uk|us|de|world|GBP|EUR|USD|VAT|MwSt|USt|EN|ISO|UBL|ASTM|DIN|BS|PAS|NHL|HTML|PDF|CSV|XLSX|DXF|SVG|JSON)$/;

const words = new Set<string>();
const add = (text: string) => {
  for (const word of text.match(/[A-Za-z]{2,}/g) ?? []) words.add(word);
};

function addKind(kind: LineKind): void {
  add(kind.key);
  for (const slot of kind.takes) addSlot(slot);
  for (const inner of kind.body ?? []) addKind(inner);
}

function addSlot(slot: Slot): void {
  if (slot.slot === 'choice') slot.of.forEach(add);
  if (slot.slot === 'name') slot.of.forEach(add);
  if (slot.slot === 'literal') add(slot.text);
  if ('key' in slot && slot.key) add(slot.key);
  if (slot.slot === 'optional' || slot.slot === 'list') slot.slots.forEach(addSlot);
  if (slot.slot === 'either') slot.of.flat().forEach(addSlot);
}

HEADINGS.forEach(addKind);
for (const { name, also } of UNITS) [name, ...also].forEach(add);

/** The word is one of the notation’s, or a sign. */
export const isNotation = (word: string) => words.has(word) || SIGNS.test(word);

/** Examples of lines as messages and hovers quote them. */
const EXAMPLES = HEADINGS.flatMap(function of(kind): string[] {
  return [kind.example, ...(kind.body ?? []).flatMap(of)];
})
  .concat('1/2 brick or 1 brick')
  .sort((a, b) => b.length - a.length);

/** Words of the language that the notation uses too: alone they may be one, in a row they are a sentence. */
const BOTH = new Set(
  'a an as at by each every for from in is of off on or over per said than to under with'.split(
    ' ',
  ),
);

const SEAM = new RegExp(`(?<=[^A-Za-z-]|^)(?<!, )(?:${[...BOTH].join('|')})(?=[^A-Za-z,-]|$)`, 'g');

/** Code, links, names of files, ids of figures, lengths and what stands in quotation marks are quoted, and not said. */
export function unquoted(text: string): string {
  return text
    .replace(/```[\s\S]*?```|`[^`]*`/g, ' ')
    .replace(/“[^”]*”/g, ' ')
    .replace(/\]\([^)]*\)/g, ' ')
    .replace(/\d\s(?:in|ft)\b|\bper (?:h|day)\b/g, ' ')
    .replace(/[\w./-]+\.perp\b|\b[\w-]+(?:\.[\w-]+)+/g, ' ');
}

export function withoutExamples(text: string): string {
  return EXAMPLES.reduce((rest, example) => rest.replaceAll(example, ' '), text);
}

const wordsIn = (text: string) => text.match(/[A-Za-z]{2,}/g) ?? [];

/** @param own names of the job’s files, and whatever else is written in them without quotation marks */
export function leftIn(text: string, own: ReadonlySet<string>): string[] {
  const found = leftOf(unquoted(text), own);
  // Hardly any text quotes an example: they are looked for where something is left.
  return found.length ? leftOf(unquoted(withoutExamples(text)), own) : [];
}

function leftOf(said: string, own: ReadonlySet<string>): string[] {
  const isOwn = (word: string) =>
    words.has(word) || own.has(word) || own.has(word.replace(/s$/, ''));
  const left = wordsIn(said).filter((word) => !isOwn(word) && !SIGNS.test(word));
  return [...left, ...(said.match(SEAM) ?? [])];
}

/** The words of a file outside its texts: names that it gives, and words that are ours. */
export function wordsOutside(perp: string): Set<string> {
  return new Set(perp.replace(/"[^"]*"|“[^”]*”|#.*$/gm, ' ').match(/[A-Za-z]{2,}/g) ?? []);
}
