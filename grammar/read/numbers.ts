/** Numbers and units of an item, exact, or a fault that says what is wrong with them. */

import { Decimal, type Exact, readFraction, readNumber } from '../../shared/exact';
import { nearest } from '../../shared/nearest';
import { later, phrase, spoken } from '../../shared/phrase';
import { cover } from '../../shared/span';
import { type Dimension, type Unit, unitNamed, unitsOf } from '../../shared/units';
import type { NumberText } from '../syntax';
import { clipped, type Fault, fault, replace } from './fault';
import { type After, digitsOf, twoWays } from './two-ways';

export type Outcome<T> = { readonly value: T } | { readonly fault: Fault };

/**
 * The most that any job could mean, in base units (mm, m2, l, kg, h, counts). Above it a slip of the
 * pen is certain, and the work of laying it out pointless.
 */
const MOST: Readonly<Record<Dimension, number>> = {
  length: 1e7,
  area: 1e6,
  volume: 1e8,
  mass: 1e8,
  time: 1e5,
  day: 1e5,
  courses: 1e4,
  bricks: 1e8,
  bags: 1e7,
  people: 1e4,
  pieces: 1e8,
  temperature: 1e4,
  density: 1e5,
  strength: 1e3,
  percent: 1e3,
  number: 1e9,
};

export function exactOf(text: NumberText, after: After = {}): Outcome<Exact> {
  let value = new Decimal(0);
  if (text.digits !== undefined) {
    const read = readNumber(text.digits);
    if (read.faulty) return { fault: numberFault(text, read, after) };
    if (text.digits.length > 30) return { fault: tooLong(text) };
    value = read.value;
  }
  if (text.fraction === undefined) return { value };
  if (text.fraction.length > 15) return { fault: tooLong(text) };
  const part = readFraction(text.fraction);
  if (!part) {
    const message = phrase`${text.fraction} divides by zero. Write the fraction with a number below the line.`;
    return { fault: fault('number-unreadable', 'error', text.span, message) };
  }
  return { value: value.add(part) };
}

function numberFault(
  text: NumberText,
  read: Exclude<ReturnType<typeof readNumber>, { value: Exact }>,
  after: After,
): Fault {
  if (read.faulty !== 'marks') return twoWays(text, read, after);
  const message = phrase`“${clipped(text.digits!)}” is no number. Write 1450, 1,450.00 or 14.5.`;
  return fault('number-unreadable', 'error', digitsOf(text), message);
}

function tooLong(text: NumberText): Fault {
  return fault(
    'number-absurd',
    'error',
    text.span,
    phrase`No measurement has so many digits. Write at most 30.`,
  );
}

export function checkMost(
  value: Exact,
  unit: Unit,
  text: NumberText,
  own?: number,
): Fault | undefined {
  const limit = own ?? MOST[unit.dimension];
  if (value.mul(unit.factor).lte(limit)) return undefined;
  const name = unit.name === '%' ? '%' : ` ${unit.name}`;
  const most = phrase`at most ${new Decimal(limit).div(unit.factor).toSignificantDigits(3).toFixed()}${name}`;
  const over = own === undefined ? phrase`more than any job has` : phrase`more than there can be`;
  const message = phrase`${value.toFixed()}${name} is ${over} (${most}). Check the number and its unit.`;
  return fault('number-absurd', 'error', text.span, message);
}

/** A part of a thing that is only counted whole, or fewer than make sense. */
export function checkWhole(value: Exact, text: NumberText, least: number): Fault | undefined {
  if (value.isInteger() && value.gte(least)) return undefined;
  const beside = [...new Set([value.floor().toFixed(), value.ceil().toFixed()])];
  const fit = beside.filter((number) => Number(number) >= least);
  const ways = (fit.length ? fit : [`${least}`]).map((number) =>
    replace(phrase`Write ${number}`, text.span, number),
  );
  const message = phrase`${clipped(writtenNumber(text))} is no count: this comes in whole ones${least ? phrase`, at least ${least}` : ''}.`;
  return fault('number-whole', 'error', text.span, message, ways);
}

/** `5..2`: perhaps turned round, perhaps a digit is missing. */
export function backwards(low: NumberText, high: NumberText): Fault {
  const at = cover(low.span, high.span);
  const turned = `${writtenNumber(high)}..${writtenNumber(low)}`;
  const message = phrase`A range goes from the less to the more: ${clipped(turned)}. Check both numbers.`;
  const way = replace(phrase`Write ${clipped(turned)}`, at, turned);
  return fault('range-backwards', 'error', at, message, [way]);
}

/** `7 5/8` as it stands in the text, but for the space in it. */
function writtenNumber({ digits, fraction }: NumberText): string {
  return [digits, fraction].filter((part) => part !== undefined).join(' ');
}

/** What units measure, in words. */
const NAMES: Readonly<Record<Dimension, string>> = {
  length: later`length`,
  area: later`area`,
  volume: later`volume`,
  mass: later`mass`,
  time: later`time`,
  day: later`day`,
  courses: later`courses`,
  bricks: later`bricks`,
  bags: later`bags`,
  people: later`people`,
  pieces: later`pieces`,
  temperature: later`temperature`,
  density: later`density`,
  strength: later`strength`,
  percent: later`percent`,
  number: later`number`,
};

/** The unit a word names, if it is of one of the dimensions. */
export function unitFor(
  word: { text: string; span: NumberText['span'] },
  dimensions: readonly Dimension[],
): Outcome<Unit> {
  const found = unitNamed(word.text);
  if (found && dimensions.includes(found.dimension)) return { value: found };
  const allowed = dimensions.flatMap((d) => unitsOf(d));
  const names = allowed.map((u) => u.name);
  const wrong = found
    ? phrase`a unit of ${spoken(NAMES[found.dimension])}`
    : phrase`no unit that is known`;
  const message = phrase`“${clipped(word.text)}” is ${wrong}; here it takes ${listed(names)}.`;
  const meant = nearest(
    word.text,
    allowed.flatMap((u) => [u.name, ...u.also]),
  );
  const ways = !found && meant ? [replace(phrase`Write ${meant}`, word.span, meant, true)] : [];
  return { fault: fault('unit-wrong', 'error', word.span, message, ways) };
}

export function listed(words: readonly string[], joint: 'or' | 'and' = 'or'): string {
  if (words.length < 2) return words.join('');
  const some = words.slice(0, -1).join(', ');
  const last = words.at(-1);
  return joint === 'or' ? phrase`${some} or ${last}` : phrase`${some} and ${last}`;
}
