/** What must hold of every text whatever: made from nothing, and made from the examples by spoiling them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitLines } from '../../grammar/blocks';
import { HEADINGS } from '../../grammar/lines';
import { format, formatEdits } from '../../grammar/print';
import { read } from '../../grammar/read/read';
import { withEdits } from '../harness/edits';
import { blocksOf, commentsOf, faultsOf, fixtures, meaning } from './reading';

const SETTINGS = { seed: 20260302, numRuns: 300 } as const;

/** Half of a surrogate pair, NUL, odd spaces and ends of lines among the rest. */
const anyText = fc
  .array(
    fc.oneof(
      fc.string({ unit: 'binary', maxLength: 12 }),
      fc.string({ unit: 'grapheme', maxLength: 12 }),
      fc.constantFrom('\ud800', '\udc00', '\u0000', '\ufeff', '\u2028', '\v', '\t', '\u00a0'),
      fc.constantFrom(
        '\n',
        '\r\n',
        '\r',
        '\n  ',
        '\n    ',
        ' ',
        '# ',
        '"',
        '“',
        '„',
        '\\',
        '..',
        '£',
        '/',
        '1,450',
      ),
      fc.constantFrom(
        'wall ',
        'opening ',
        'length ',
        'height ',
        'x',
        ' per ',
        '7 5/8 in',
        '60..75%',
        'm²',
      ),
    ),
    { maxLength: 40 },
  )
  .map((parts) => parts.join(''));

const INNER = HEADINGS.flatMap((heading) =>
  (heading.body ?? []).flatMap((line) => [line, ...(line.body ?? [])]),
);

/** Lines of any kind in any order, at any depth: most of them wrong where they stand. */
const shuffled = fc
  .array(
    fc.tuple(
      fc.constantFrom('', ' ', '  ', '\t', '    ', '      '),
      fc.constantFrom(
        ...[...HEADINGS, ...INNER].map((kind) => kind.example),
        '# c',
        '',
        'opning x',
      ),
      fc.constantFrom('', ' # c', '  ', ' "', ' ?'),
    ),
    { maxLength: 25 },
  )
  .map((lines) => lines.map((parts) => parts.join('')).join('\n'));

/** Piers and openings in a wall, where indentation and words compete most. */
const nested = fc
  .array(
    fc.tuple(
      fc.constantFrom('', '  ', '    ', '      '),
      fc.constantFrom(
        'opening a',
        'pier b',
        'openng c',
        'height 3 courses',
        'length 7 m',
        'from left 1 m',
        'size 1 x 1 bricks',
        'job "x"',
        'lenght 1',
        '# c',
        '"t"',
      ),
    ),
    { maxLength: 12 },
  )
  .map((lines) => ['wall w', ...lines.map((parts) => parts.join(''))].join('\n'));

type Spoil = (parts: string[], at: number, other: number) => string[];

const SPOILS: readonly Spoil[] = [
  (parts, at) => parts.toSpliced(at, 1),
  (parts, at) => parts.toSpliced(at, 0, parts[at] ?? ''),
  (parts, at, other) => parts.with(at, parts[other]!).with(other, parts[at]!),
  (parts, at, other) => parts.with(at, parts[at]!.slice(0, other % (parts[at]!.length + 1))),
];

/** An example with lines or tokens taken away, doubled, swapped or cut off. */
const spoiled = fc
  .tuple(
    fc.constantFrom(...Object.values(fixtures)),
    fc.array(fc.tuple(fc.boolean(), fc.constantFrom(...SPOILS), fc.nat(), fc.nat()), {
      minLength: 1,
      maxLength: 6,
    }),
  )
  .map(([text, spoils]) => spoils.reduce(spoilOnce, text));

function spoilOnce(
  text: string,
  [byLine, spoil, at, other]: readonly [boolean, Spoil, number, number],
): string {
  const parts = text.split(byLine ? /(?<=\n)/ : /(?<=\s)(?=\S)|(?<=\S)(?=\s)/);
  return spoil(parts, at % parts.length, other % parts.length).join('');
}

const texts = fc.oneof(anyText, shuffled, nested, spoiled);

const always = (name: string, holds: (text: string) => void): void => {
  test(name, () => {
    fc.assert(fc.property(texts, holds), SETTINGS);
  });
};

/** Codes that a formatter may settle. */
function codesOf(text: string): string[] {
  const kept = faultsOf(text).filter(
    ({ code, severity }) =>
      code !== 'indent-astray' && !(code === 'heading-indented' && severity === 'warning'),
  );
  return kept.map((fault) => fault.code).sort();
}

describe('reading any text', () => {
  always('finds faults only at places that there are', (text) => {
    const lines = splitLines(text);
    for (const fault of faultsOf(text))
      for (const at of [
        fault.place,
        ...fault.ways.flatMap((way) => way.edits.map((e) => e.span)),
      ]) {
        expect(at.line).toBeLessThan(lines.length);
        expect(0 <= at.start && at.start <= at.end && at.end <= lines[at.line]!.length).toBe(true);
      }
  });

  always('says of each fault what it is, in words', (text) => {
    for (const { code, message } of faultsOf(text)) {
      expect(code).toMatch(/^[a-z]+(-[a-z]+)+$/);
      expect(message).toMatch(/^.{10,}[.…]?/s);
      expect(message).not.toMatch(/undefined|NaN|\[object/);
    }
  });

  always('covers every character that is no space', (text) => {
    for (const { lines, block } of blocksOf(text))
      for (const line of block.syntax.lines) {
        const said = [
          ...(line.key ? [line.key] : []),
          ...line.items,
          ...(line.comment ? [line.comment] : []),
        ];
        const left = said.reduceRight(
          (rest, { span }) => rest.slice(0, span.start) + rest.slice(span.end),
          lines[line.span.line]!,
        );
        expect(left).toMatch(/^[ \t\u00a0\u202f\ufeff]*$/);
      }
  });

  always('reads a block the same alone and among others', (text) => {
    for (const { lines, block } of blocksOf(text)) {
      const alone = read(lines);
      expect(JSON.stringify(alone)).toBe(JSON.stringify(block));
      const [again, ...more] = blocksOf(lines.join('\n'));
      expect(more).toEqual([]);
      expect(JSON.stringify(again!.block)).toBe(JSON.stringify(block));
    }
  });
});

describe('formatting any text', () => {
  always('again changes nothing', (text) => {
    const once = format(text);
    expect(format(once)).toBe(once);
  });

  always('keeps what it says', (text) => {
    expect(meaning(format(text))).toEqual(meaning(text));
  });

  always('keeps its faults, but for those of indentation', (text) => {
    expect(codesOf(format(text))).toEqual(codesOf(text));
  });

  always('keeps every comment, in its order', (text) => {
    expect(commentsOf(format(text))).toEqual(commentsOf(text));
  });

  always('keeps every digit and every letter of its lines', (text) => {
    const letters = (of: string) => of.replace(/[ \t\u00a0\u202f\ufeff\r\n]/g, '');
    const plain = (of: string) => letters(of).replace(/[“”„×*/…\\"]|per|²|³|°|\.\.\.?|2|3|x/g, '');
    expect(plain(format(text))).toBe(plain(text));
  });

  always('is the same by its edits', (text) => {
    const edits = formatEdits(text);
    expect(withEdits(text, edits)).toBe(format(text));
    expect(formatEdits(format(text))).toEqual([]);
  });

  always('leaves no space at the end of a line, no tabs before one, one end at the end', (text) => {
    const after = format(text).replace(/^\ufeff/, '');
    for (const line of after.split(/\r?\n/)) expect(line).not.toMatch(/[ \t\u00a0]$|^ *\t/);
    if (after) expect(after).toMatch(/[^\r\n]\r?\n$/);
  });
});
