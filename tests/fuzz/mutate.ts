/** What can go wrong with a text: a line or a word lost, doubled, moved or cut off, and rubbish put in. */
import fc from 'fast-check';

export interface Mutation {
  readonly kind:
    | 'delete'
    | 'double'
    | 'swap'
    | 'cut'
    | 'word-out'
    | 'word-double'
    | 'word-cut'
    | 'insert';
  /** Parts of the whole: which line, which place in it. */
  readonly line: number;
  readonly place: number;
  readonly other: number;
  readonly rubbish: string;
}

const part = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });

/** Anything at all: whole characters and halves of them, controls, marks that turn text round. */
export const rubbish: fc.Arbitrary<string> = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.string({ unit: 'grapheme', maxLength: 6 }),
  fc
    .array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 6 })
    .map((codes) => String.fromCharCode(...codes)),
  fc.constantFrom(
    '\0',
    '\ufeff',
    '\u202e',
    '\ud800',
    '\u2028',
    '\r',
    '"',
    '”',
    '1,450',
    '-5 m',
    '1e308 m',
    '99999999999 m',
    '0 mm',
    '0',
    '?',
    '..',
    'x',
    '__proto__',
    'constructor',
    'toString',
    '<img src=x>',
    '½',
    '1/0 m',
    'GBP',
    '€',
  ),
);

export const mutation: fc.Arbitrary<Mutation> = fc.record({
  kind: fc.constantFrom(
    'delete',
    'double',
    'swap',
    'cut',
    'word-out',
    'word-double',
    'word-cut',
    'insert',
    'insert',
  ),
  line: part,
  place: part,
  other: part,
  rubbish,
});

function replaced<T>(list: readonly T[], at: number, ...instead: T[]): T[] {
  return [...list.slice(0, at), ...instead, ...list.slice(at + 1)];
}

/** The lines after a mutation of one of those `within` (all when left out). */
export function mutated(
  lines: readonly string[],
  { kind, line, place, other, rubbish: text }: Mutation,
  within: readonly [number, number] = [0, lines.length],
): string[] {
  const at = within[0] + Math.floor(line * (within[1] - within[0]));
  const old = lines[at] ?? '';
  const column = Math.floor(place * (old.length + 1));
  switch (kind) {
    case 'delete':
      return replaced(lines, at);
    case 'double':
      return replaced(lines, at, old, old);
    case 'swap': {
      const with_ = within[0] + Math.floor(other * (within[1] - within[0]));
      return replaced(replaced(lines, at, lines[with_] ?? ''), with_, old);
    }
    case 'cut':
      return replaced(lines, at, old.slice(0, column));
    case 'insert':
      return replaced(lines, at, old.slice(0, column) + text + old.slice(column));
    default:
      return replaced(lines, at, words(old, kind, place));
  }
}

function words(line: string, kind: Mutation['kind'], place: number): string {
  const parts = line.split(/(?<=\S)(?=\s)/);
  const at = Math.floor(place * parts.length);
  const word = parts[at] ?? '';
  if (kind === 'word-out') return replaced(parts, at).join('');
  if (kind === 'word-double') return replaced(parts, at, word, word).join('');
  return replaced(parts, at, word.slice(0, Math.ceil(word.length / 2))).join('');
}
