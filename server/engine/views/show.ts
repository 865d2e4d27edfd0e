/** Terms in a reader’s words: each unit with the digits that mean something. */

import type { Exact } from '../../../shared/exact';
import { later, phrase, spoken } from '../../../shared/phrase';
import { counted, showMoney, showNumber } from '../../../shared/show';
import type { Env } from '../resolve/env';
import type { Term } from '../working/term';

/** Most decimals shown, by unit. Everything is exact underneath. */
const DIGITS: Readonly<Record<string, number>> = {
  m: 3,
  m2: 2,
  m3: 3,
  mm: 1,
  ft: 3,
  ft2: 2,
  ft3: 2,
  yd3: 2,
  l: 1,
  kg: 1,
  lb: 1,
  h: 2,
  days: 1,
  bricks: 1,
  bag: 2,
  'bricks/h': 1,
  'l/h': 1,
  'm2/h': 2,
  'm/h': 1,
  'ft2/h': 1,
  'ft/h': 1,
  'pieces/h': 1,
  'ft3/h': 2,
};

/** Small amounts of these are told to more decimals, so that a printed sum comes out. */
const FINER = new Set(['l', 'kg', 'lb', 'ft3', 'm3', 'yd3', 'h', 'm2']);

/** Below ten at least two decimals mean something, below one three. */
function digitsOf(value: Exact, unit: string): number {
  const digits = of(DIGITS, unit) ?? 4;
  if (!FINER.has(unit)) return digits;
  const size = value.abs();
  return Math.max(digits, size.lt(1) ? 3 : size.lt(10) ? 2 : 0);
}

const WORDS: Readonly<Record<string, readonly [string, string]>> = {
  bricks: [later`brick`, later`bricks`],
  brick: [later`brick`, later`bricks`],
  courses: [later`course`, later`courses`],
  course: [later`course`, later`courses`],
  pieces: [later`piece`, later`pieces`],
  piece: [later`piece`, later`pieces`],
  days: [later`day`, later`days`],
  day: [later`day`, later`days`],
  bag: [later`bag`, later`bags`],
  min: [later`min`, later`min`],
  packs: [later`pack`, later`packs`],
  batches: [later`batch`, later`batches`],
  mile: [later`mile`, later`miles`],
};

const SIGNS: Readonly<Record<string, string>> = {
  m2: 'm²',
  m3: 'm³',
  ft2: 'ft²',
  ft3: 'ft³',
  yd3: 'yd³',
  'kg/m3': 'kg/m³',
  'lb/ft3': 'lb/ft³',
  'm2/h': 'm²/h',
  'm3/h': 'm³/h',
  'ft2/h': 'ft²/h',
  'ft3/h': 'ft³/h',
};

/** A unit may be any word of a file, such as a pack called “constructor”: only what the table itself holds counts. */
function of<T>(table: Readonly<Record<string, T>>, unit: string): T | undefined {
  return Object.hasOwn(table, unit) ? table[unit] : undefined;
}

export function showValue(value: Exact, unit: string, env: Env): string {
  if (unit === env.money.code)
    return showMoney(value, env.money.sign, moneyDigits(value, env), env.style);
  const number = showNumber(value, digitsOf(value, unit), env.style);
  if (!unit) return number;
  if (unit === '%') return `${number}%`;
  const words = of(WORDS, unit);
  if (words) return counted(number, spoken(words[0]), spoken(words[1]));
  const each = unit.endsWith('/h') ? of(WORDS, unit.slice(0, -2)) : undefined;
  if (each) return `${number}\u00a0${spoken(each[1])}/h`;
  const word = /^[a-z][a-z-]+[a-z]$/.test(unit);
  const several = word && number !== '1' && !unit.endsWith('s');
  const text = of(SIGNS, unit) ?? (word ? unit.replaceAll('-', ' ') : unit);
  return `${number}\u00a0${several ? phrase`${text}s` : text}`;
}

/** A rate may have more digits than its currency: £0.0125 a brick. */
function moneyDigits(value: Exact, env: Env): number {
  return Math.max(env.money.digits, Math.min(6, value.decimalPlaces()));
}

export function showTerm(term: Term, env: Env): string {
  const some = term.mixed?.filter((part) => !part.value.isZero()) ?? [];
  if (some.length > 1) return some.map((part) => packsText(part, env)).join(' + ');
  return showValue(term.value, term.unit, env);
}

/** Two kinds of pack may go by one name: each says what it holds. */
function packsText({ value, unit, holds }: Term, env: Env): string {
  const text = showValue(value, unit, env);
  return holds ? phrase`${text} of ${showTerm(holds, env)}` : text;
}

/** As many as anyone reads: every figure of a long job may lack the same thousand things. */
const MOST_MISSING = 50;

/** What a figure lacks, each once; of very many the first, and how many more there are. */
export function missingOf(term: Term): string[] {
  const all = [...new Set(term.gaps.map((g) => g.what))];
  const more = all.length - MOST_MISSING;
  return more > 0 ? [...all.slice(0, MOST_MISSING), phrase`and ${more} more`] : all;
}
