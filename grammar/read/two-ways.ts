/** What to say of a number that can be read two ways, and how to write what was meant. */
import { Decimal, type NumberReading, writeNumber } from '../../shared/exact';
import type { Span } from '../../shared/span';
import { unitNamed } from '../../shared/units';
import type { NumberText } from '../syntax';
import { clipped, type Fault, type FaultWay, fault, replace } from './fault';

/** What stands after a number. */
export interface After {
  /** The unit's name. */
  readonly unit?: string;
  /** Number and unit, where no other number shares the unit: they can be replaced together. */
  readonly measure?: Span;
}

type Doubtful = Extract<NumberReading, { faulty: 'two-ways' | 'comma' }>;

/** The smaller unit that drawings and rules are marked in, where three decimals are a way of saying it. */
const FINER: Readonly<Record<string, string>> = { km: 'm', m: 'mm', cm: 'mm' };

/** A fraction after the digits stands as it is. */
export function digitsOf(text: NumberText): Span {
  return { ...text.span, end: text.span.start + text.digits!.length };
}

export function twoWays(text: NumberText, read: Doubtful, after: After): Fault {
  const unit = after.unit ? ` ${after.unit}` : '';
  const at = digitsOf(text);
  const way = (reading: string) => replace(`It is ${clipped(reading)}${unit}`, at, reading);
  const said = `“${clipped(text.digits!)}” can be read two ways: `;
  if (read.faulty === 'comma') {
    const one = clipped(read.decimal) + unit;
    const message = `${said}${one} with a decimal comma, or two numbers, ${read.apart.map(clipped).join(' and ')}. Decimals have a point here: ${one}.`;
    return fault('number-two-ways', 'error', at, message, [way(read.decimal)]);
  }
  const finer = finerOf(text, read, after);
  const mark = text.digits!.includes(',') ? 'comma' : 'point';
  const both = read.readings.map((reading) => `${reading}${unit}`).join(' or ');
  const advice = finer
    ? `If the ${mark} is a decimal ${mark}, write ${finer.text}.`
    : 'Write the one you mean.';
  const message = `${said}${both}. ${advice}`;
  const ways = read.readings.map(way);
  return fault('number-two-ways', 'error', at, message, finer ? [finer.way, ...ways] : ways);
}

/** `4.165 m` is `4165 mm`, which nobody reads another way. */
function finerOf(
  text: NumberText,
  read: Extract<Doubtful, { faulty: 'two-ways' }>,
  { unit, measure }: After,
): { text: string; way: FaultWay } | undefined {
  const from = unit === undefined ? undefined : unitNamed(unit);
  const to = from && Object.hasOwn(FINER, from.name) ? unitNamed(FINER[from.name]!) : undefined;
  if (!from || !to || !measure || text.fraction !== undefined) return undefined;
  const value = Decimal.min(...read.readings).mul(from.factor).div(to.factor);
  const instead = `${writeNumber(value)} ${to.name}`;
  return { text: instead, way: replace(`It is ${instead}`, measure, instead) };
}
