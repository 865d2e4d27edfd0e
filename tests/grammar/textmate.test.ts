import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { beforeAll, describe, expect, test } from 'vitest';
import onig from 'vscode-oniguruma';
import vsctm from 'vscode-textmate';
import { HEADINGS } from '../../grammar/lines';
import type { Item, LineSyntax } from '../../grammar/syntax';
import { textmateGrammar } from '../../grammar/textmate';
import { unitNamed } from '../../shared/units';
import { blocksOf, fixture, fixtures } from './reading';

interface Piece {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly scopes: string;
}

let grammar: vsctm.IGrammar;

beforeAll(async () => {
  const wasm = createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm');
  await onig.loadWASM(readFileSync(wasm));
  const registry = new vsctm.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (sources) => new onig.OnigScanner(sources),
      createOnigString: (text) => new onig.OnigString(text),
    }),
    loadGrammar: async () =>
      vsctm.parseRawGrammar(JSON.stringify(textmateGrammar()), 'perpend.tmLanguage.json'),
  });
  grammar = (await registry.loadGrammar('source.perpend'))!;
});

/** The pieces of each line, as an editor would colour them. */
function tokenise(text: string): Piece[][] {
  let stack = vsctm.INITIAL;
  return text.split('\n').map((line) => {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, stack);
    stack = ruleStack;
    return tokens.map((token) => ({
      start: token.startIndex,
      end: Math.min(token.endIndex, line.length),
      text: line.slice(token.startIndex, token.endIndex),
      scopes: token.scopes.slice(1).join(' '),
    }));
  });
}

/** What is coloured on a line, in order: text and the scope that says most. */
function coloured(line: string): [string, string][] {
  const pieces = tokenise(line)[0]!.filter((piece) => piece.text.trim());
  return pieces.map((piece) => [
    piece.text,
    piece.scopes.split(' ').at(-1)!.replace('.perpend', ''),
  ]);
}

describe('a line is coloured', () => {
  const heading = 'keyword.control.heading';
  const key = 'support.type.property-name';
  const unit = 'keyword.other.unit';
  const currency = 'keyword.other.unit.currency';
  const number = 'constant.numeric';
  const word = 'keyword.operator.word';

  test.each<[string, [string, string][]]>([
    [
      'perpend 1',
      [
        ['perpend', heading],
        ['1', number],
      ],
    ],
    [
      'wall north "North"  # c',
      [
        ['wall', heading],
        ['north', 'entity.name'],
        ['"North"', 'string.quoted.double'],
        ['# c', 'comment.line.number-sign'],
      ],
    ],
    [
      '  opening gate',
      [
        ['opening', heading],
        ['gate', 'entity.name'],
      ],
    ],
    [
      '  length    7.4 m',
      [
        ['length', key],
        ['7.4', number],
        ['m', unit],
      ],
    ],
    [
      '  length 6 ft 7 5/8in',
      [
        ['length', key],
        ['6', number],
        ['ft', unit],
        ['7 5/8', number],
        ['in', unit],
      ],
    ],
    [
      '  size 215 x 102.5 × 65mm',
      [
        ['size', key],
        ['215', number],
        ['x', 'keyword.operator.by'],
        ['102.5', number],
        ['×', 'keyword.operator.by'],
        ['65', number],
        ['mm', unit],
      ],
    ],
    [
      '  salvage 60..75%',
      [
        ['salvage', key],
        ['60', number],
        ['..', 'keyword.operator.range'],
        ['75', number],
        ['%', unit],
      ],
    ],
    [
      '  bricklayer £27.50 per h',
      [
        ['bricklayer', 'variable.other.key'],
        ['£', currency],
        ['27.50', number],
        ['per', word],
        ['h', unit],
      ],
    ],
    [
      '  price 6.40 EUR each',
      [
        ['price', key],
        ['6.40', number],
        ['EUR', currency],
        ['each', word],
      ],
    ],
    [
      '  loose 1440 kg/m3',
      [
        ['loose', key],
        ['1440', number],
        ['kg/m3', unit],
      ],
    ],
    [
      '  date 2026-03-02',
      [
        ['date', key],
        ['2026-03-02', 'constant.other.date'],
      ],
    ],
    [
      '  ref 26-041',
      [
        ['ref', key],
        ['26-041', 'constant.other.reference'],
      ],
    ],
    [
      '  left stopped',
      [
        ['left', key],
        ['stopped', 'constant.language'],
      ],
    ],
    [
      '  brick harwick-red',
      [
        ['brick', key],
        ['harwick-red', 'variable.other'],
      ],
    ],
    [
      '  coping brick-on-edge',
      [
        ['coping', key],
        ['brick-on-edge', 'constant.language'],
      ],
    ],
    [
      '  bond per-haps 3',
      [
        ['bond', key],
        ['per-haps', 'variable.other'],
        ['3', number],
      ],
    ],
    [
      '  length ?',
      [
        ['length', key],
        ['?', 'constant.language.unknown'],
      ],
    ],
    [
      '  cut-out 3 bricks',
      [
        ['cut-out', key],
        ['3', number],
        ['bricks', unit],
      ],
    ],
    [
      '  phone "a # b',
      [
        ['phone', key],
        ['"a # b', 'string.quoted.double'],
      ],
    ],
    [
      'length 7 m',
      [
        ['length', key],
        ['7', number],
        ['m', unit],
      ],
    ],
    ['# all of it', [['# all of it', 'comment.line.number-sign']]],
    ['  # all of it', [['# all of it', 'comment.line.number-sign']]],
  ])('%s', (line, wanted) => expect(coloured(line)).toEqual(wanted));

  test('and colours nothing into the next, even when it is left open', () => {
    const [, second] = tokenise('wall a "open\n  length 7 m');
    expect(second!.find((piece) => piece.text === 'length')!.scopes).toContain(key);
    expect(second!.some((piece) => piece.scopes.includes('string'))).toBe(false);
  });
});

/** Which scope the reader's own view of an item asks for, by its columns. */
function wanted(item: Item): [number, number, string][] {
  const all = (scope: string): [number, number, string][] => [
    [item.span.start, item.span.end, scope],
  ];
  if (item.kind === 'text') return all('string.quoted.double');
  if (item.kind === 'date') return all('constant.other.date');
  if (item.kind === 'money')
    return [
      [item.sigil.span.start, item.sigil.span.end, 'keyword.other.unit.currency'],
      [item.amount.span.start, item.amount.span.end, 'constant.numeric'],
    ];
  if (item.kind !== 'measure') return [];
  const numbers = [item.low, ...(item.high ? [item.high] : [])].map(
    ({ span }): [number, number, string] => [span.start, span.end, 'constant.numeric'],
  );
  const { unit } = item;
  if (!unit || !unitNamed(unit.text)) return numbers;
  return [...numbers, [unit.span.start, unit.span.end, 'keyword.other.unit']];
}

function keyScope(line: LineSyntax): string {
  const key = line.key!.text;
  const inner = HEADINGS.flatMap((heading) => heading.body ?? []);
  // A word that also stands for a plain line, such as the thickness of a wall, is coloured as one.
  const alike = inner.filter((kind) => kind.key === key);
  const heads =
    line.indent === 0 || (alike.length > 0 && alike.every((kind) => kind.body && !kind.inColumn));
  if (heads) return 'keyword.control.heading';
  const known = inner.flatMap((kind) => [kind, ...(kind.body ?? [])]);
  const open = !known.some((kind) => kind.key === key && !kind.open);
  return open ? 'variable.other.key' : 'support.type.property-name';
}

describe('the examples of the design are coloured as they are read', () => {
  test.each(Object.keys(fixtures))('%s', (name) => {
    const pieces = tokenise(fixture(name));
    let checked = 0;
    const check = (line: number, start: number, end: number, scope: string) => {
      const over = pieces[line]!.filter((piece) => piece.start < end && piece.end > start);
      expect(over[0]!.start).toBe(start);
      expect(over.at(-1)!.end).toBe(end);
      for (const piece of over)
        expect([piece.text, piece.scopes]).toEqual([
          piece.text,
          expect.stringContaining(`${scope}.perpend`),
        ]);
      checked += 1;
    };
    for (const { first, block } of blocksOf(fixture(name))) {
      for (const line of block.syntax.lines) {
        const at = first + line.span.line;
        check(at, line.key!.span.start, line.key!.span.end, keyScope(line));
        for (const item of line.items) for (const each of wanted(item)) check(at, ...each);
        if (line.comment)
          check(at, line.comment.span.start, line.comment.span.end, 'comment.line.number-sign');
      }
    }
    expect(checked).toBeGreaterThan(20);
  });
});
