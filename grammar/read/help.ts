/** What is probably meant where an item does not fit, and why it cannot be what it was meant for. */

import { nearest } from '../../shared/nearest';
import { phrase, spoken } from '../../shared/phrase';
import { cover, type Span } from '../../shared/span';
import type { Slot } from '../lines';
import type { Item, LineSyntax } from '../syntax';
import { clipped, type FaultWay, replace } from './fault';
import type { Mismatch } from './match';

export interface Help {
  /** Where the trouble is, when it is not the one item. */
  readonly at?: Span;
  /** Said after what is wanted; begins with a space. */
  readonly hint?: string;
  /** Said in place of what is wanted. */
  readonly instead?: string;
  readonly way?: FaultWay;
}

export function help(line: LineSyntax, { at, expected }: Mismatch): Help {
  const rest = line.items.slice(at);
  const item = rest[0]!;
  if (item.kind === 'word') return helpWord(rest, expected);
  if (item.kind === 'code')
    return { ...helpCode(item.text, item.span, expected), ...noName(rest, expected) };
  return negative(rest, expected) ?? noName(rest, expected) ?? unitless(item, expected);
}

function unitless(item: Item, expected: readonly Slot[]): Help {
  const range = (item.kind === 'measure' || item.kind === 'money') && item.high;
  const counts = expected.filter((s) => COUNTS.has(s.slot));
  if (range && counts.length && !counts.some((s) => 'range' in s && s.range))
    return { hint: onlyOne(counts) };
  const bare = item.kind === 'measure' && !item.unit;
  const unit = expected.some((s) => s.slot === 'quantity' && !s.bare);
  return bare && unit ? { hint: phrase` A number here needs its unit.` } : {};
}

function onlyOne(counts: readonly Slot[]): string {
  const [why] = counts.flatMap((s) => ('fixed' in s && s.fixed) || []);
  return phrase` No range is taken here, only one value${why ? `: ${spoken(why)}` : ''}.`;
}

/** `stoped`; and `brick on edge` for `brick-on-edge`. */
function helpWord(rest: readonly Item[], expected: readonly Slot[]): Help {
  const known = expected.flatMap((s) =>
    s.slot === 'choice' ? s.of : s.slot === 'literal' ? [s.text] : [],
  );
  const words: string[] = [];
  for (const item of rest)
    if (item.kind === 'word') words.push(item.text);
    else break;
  for (let count = Math.min(words.length, 4); count > 0; count--) {
    const candidates = count > 1 ? known.filter((word) => word.includes('-')) : known;
    const meant = nearest(words.slice(0, count).join('-'), candidates);
    if (!meant) continue;
    const at = cover(rest[0]!.span, rest[count - 1]!.span);
    const way = replace(phrase`Write ${meant}`, at, meant, true);
    return { at, hint: phrase` Did you mean “${meant}”?`, way };
  }
  return {};
}

const MINUS = /^[-−–—]$/;
const SIGIL = /^[$£¥€¢₠-₿]$/;
const COUNTS: ReadonlySet<Slot['slot']> = new Set(['quantity', 'counted', 'size', 'money']);

/** `-4.2 m`, `-£5`, `£-5`. */
function negative(rest: readonly Item[], expected: readonly Slot[]): Help | undefined {
  const from = isJunk(rest[0], SIGIL) ? 1 : 0;
  const [minus, number] = rest.slice(from);
  if (!isJunk(minus, MINUS) || !expected.some((s) => COUNTS.has(s.slot))) return undefined;
  if (number?.kind !== 'measure' && (from || number?.kind !== 'money')) return undefined;
  return {
    at: cover(rest[0]!.span, number.span),
    instead: phrase`A number here cannot be negative.`,
    way: replace(phrase`Take the minus away`, { ...minus.span, end: number.span.start }, ''),
  };
}

function isJunk(item: Item | undefined, pattern: RegExp): item is Item {
  return item?.kind === 'junk' && pattern.test(item.text);
}

/** `x1` and `2north`, which look like names and are not read as words. */
function noName(rest: readonly Item[], expected: readonly Slot[]): Help | undefined {
  if (!expected.some((s) => s.slot === 'name' || s.slot === 'new-name')) return undefined;
  const [first, second] = rest;
  if (first?.kind === 'sign' && first.text === 'x' && second && touching(first, second))
    return afterX(first, second);
  const digits = first && digitsFirst(first);
  if (!digits) return undefined;
  return {
    instead: phrase`“${clipped(digits)}” cannot be a name, because it begins with a digit. A name begins with a letter, such as north or wall-2.`,
  };
}

function afterX(sign: Item, second: Item): Help | undefined {
  const whole = digitsFirst(second);
  const rest = whole ?? (second.kind === 'measure' ? second.low.digits : undefined);
  if (!rest) return undefined;
  const at = { ...sign.span, end: second.span.start + rest.length };
  const name = `x-${rest}`;
  return {
    at,
    instead: phrase`“x${clipped(rest)}” cannot be a name, because x before a digit is the sign in a size such as 450 x 225 mm. With a hyphen it can: ${clipped(name)}.`,
    way: replace(phrase`Write ${clipped(name)}`, at, name),
  };
}

/** What is written, when it is one thing without a space that begins with a digit. */
function digitsFirst(item: Item): string | undefined {
  if (item.kind === 'code' || item.kind === 'date') return item.text;
  if (item.kind !== 'measure' || item.high || !item.low.digits || item.low.fraction)
    return undefined;
  const written = `${item.low.digits}${item.unit?.text ?? ''}`;
  return written.length === item.span.end - item.span.start ? written : undefined;
}

function touching(first: Item, second: Item): boolean {
  return first.span.end === second.span.start;
}

/** `60-75` for a range, `2026-3-2` for a date. */
function helpCode(text: string, at: Span, expected: readonly Slot[]): Help {
  const parts = text.split('-');
  if (expected.some((s) => s.slot === 'date')) {
    const [year = '', month = '', day = ''] = parts;
    const whole = parts.length === 3 && year.length === 4 && month.length < 3 && day.length < 3;
    const meant = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
    return whole ? { way: replace(phrase`Write ${meant}`, at, meant, true) } : {};
  }
  if (!expected.some((s) => s.slot === 'quantity' && s.range === 'usual')) return {};
  const hint = phrase` A range is written with two points, such as 60..75.`;
  const range = parts.join('..');
  return {
    hint,
    way: parts.length === 2 ? replace(phrase`Write ${range}`, at, range, true) : undefined,
  };
}
