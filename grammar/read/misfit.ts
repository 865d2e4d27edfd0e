/** What to say of a line whose items are not those that its kind takes. */
import { cover, type Span } from '../../shared/span';
import type { LineKind, Slot } from '../lines';
import type { Item, LineSyntax } from '../syntax';
import { describe } from './describe';
import { clipped, type Fault, type FaultWay, fault, replace } from './fault';
import type { Mismatch } from './match';
import { nearest } from './nearest';
import { listed } from './numbers';

/** The fault at the place where matching got no further, with the nearest way out where one is plain. */
export function misfit(kind: LineKind, line: LineSyntax, miss: Mismatch): Fault {
  const item = line.items[miss.at];
  const example = `Write it like this: ${kind.example}`;
  if (!item) {
    const wanted = listed([...new Set(miss.expected.map(describe))]);
    const message = `“${clipped(line.key!.text)}” is not finished: it needs ${wanted}. ${example}`;
    return fault('value-missing', 'error', line.span, message);
  }
  const there = cover(item.span, miss.expected.length ? item.span : line.items.at(-1)!.span);
  if (!miss.expected.length) {
    const message = `Nothing more is read after “${clipped(line.key!.text)}” here. ${example}`;
    return fault('value-spare', 'error', there, message, [replace('Take it out', there, '')]);
  }
  return wrongValue(kind, line, miss, there);
}

function wrongValue(kind: LineKind, line: LineSyntax, miss: Mismatch, there: Span): Fault {
  const wanted = listed([...new Set(miss.expected.map(describe))]);
  const item = line.items[miss.at]!;
  const { hint, way } = help(item, miss.expected);
  const message = `“${clipped(line.key!.text)}” wants ${wanted} here.${hint} Write it like this: ${kind.example}`;
  return fault('value-wrong', 'error', there, message, way ? [way] : []);
}

interface Help {
  readonly hint: string;
  readonly way?: FaultWay;
}

/** What is probably meant by an item that does not fit. */
function help(item: Item, expected: readonly Slot[]): Help {
  if (item.kind === 'word') return { hint: '', way: nearestWord(item.text, item.span, expected) };
  if (item.kind === 'code') return helpCode(item.text, item.span, expected);
  const bare = item.kind === 'measure' && !item.unit;
  const unit = expected.some((s) => s.slot === 'quantity' && !s.bare);
  return { hint: bare && unit ? ' A number here needs its unit.' : '' };
}

function nearestWord(word: string, at: Span, expected: readonly Slot[]): FaultWay | undefined {
  const words = expected.flatMap((s) =>
    s.slot === 'choice' ? s.of : s.slot === 'literal' ? [s.text] : [],
  );
  const meant = nearest(word, words);
  return meant ? replace(`Write ${meant}`, at, meant, true) : undefined;
}

/** `60-75` for a range, `2026-3-2` for a date. */
function helpCode(text: string, at: Span, expected: readonly Slot[]): Help {
  const parts = text.split('-');
  if (expected.some((s) => s.slot === 'date')) {
    const [year = '', month = '', day = ''] = parts;
    const whole = parts.length === 3 && year.length === 4 && month.length < 3 && day.length < 3;
    const meant = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
    return { hint: '', way: whole ? replace(`Write ${meant}`, at, meant, true) : undefined };
  }
  if (!expected.some((s) => s.slot === 'quantity' && s.range)) return { hint: '' };
  const hint = ' A range is written with two points, such as 60..75.';
  const range = parts.join('..');
  return { hint, way: parts.length === 2 ? replace(`Write ${range}`, at, range, true) : undefined };
}
