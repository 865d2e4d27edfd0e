/** What to say of a number that can be read two ways, and how to write what was meant. */

import { Decimal, type NumberReading, writeNumber } from '../../shared/exact';
import { phrase } from '../../shared/phrase';
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

type Doubtful = Extract<NumberReading, { faulty: 'two-ways' }>;

/** The smaller unit that drawings and rules are marked in, where three decimals are a way of saying it. */
const FINER: Readonly<Record<string, string>> = { km: 'm', m: 'mm', cm: 'mm' };

/** A fraction after the digits stands as it is. */
export function digitsOf(text: NumberText): Span {
  return { ...text.span, end: text.span.start + text.digits!.length };
}

export function twoWays(text: NumberText, read: Doubtful, after: After): Fault {
  const unit = after.unit ? ` ${after.unit}` : '';
  const at = digitsOf(text);
  const { says, first } = read.apart ? oneOrTwo(read, unit) : oneOrOther(text, read, after);
  const message = phrase`“${clipped(text.digits!)}” can be read two ways: ${says}`;
  const ways = read.readings.map((reading) =>
    replace(phrase`It is ${clipped(reading)}${unit}`, at, reading),
  );
  return fault('number-two-ways', 'error', at, message, first ? [first, ...ways] : ways);
}

interface Said {
  readonly says: string;
  /** A way out to offer before the readings as they are. */
  readonly first?: FaultWay;
}

/** `4,2`. */
function oneOrTwo({ readings, apart }: Extract<Doubtful, { apart: object }>, unit: string): Said {
  const one = clipped(readings[0]) + unit;
  const two = apart.map(clipped).join(phrase` and `);
  return {
    says: phrase`${one} with a decimal comma, or two numbers, ${two}. Decimals have a point here: ${one}.`,
  };
}

/** `1,450` and `1.450`. */
function oneOrOther(text: NumberText, { readings }: Doubtful, after: After): Said {
  const unit = after.unit ? ` ${after.unit}` : '';
  const both = readings.map((reading) => `${reading}${unit}`).join(phrase` or `);
  const finer = finerOf(text, readings, after);
  if (!finer) return { says: phrase`${both}. Write the one you mean.` };
  const says = text.digits!.includes(',')
    ? phrase`${both}. If the comma is a decimal comma, write ${finer.text}.`
    : phrase`${both}. If the point is a decimal point, write ${finer.text}.`;
  return { says, first: finer.way };
}

/** `4.165 m` is `4165 mm`, which nobody reads another way. */
function finerOf(
  text: NumberText,
  readings: readonly string[],
  { unit, measure }: After,
): { text: string; way: FaultWay } | undefined {
  const from = unit === undefined ? undefined : unitNamed(unit);
  const to = from && Object.hasOwn(FINER, from.name) ? unitNamed(FINER[from.name]!) : undefined;
  if (!from || !to || !measure || text.fraction !== undefined) return undefined;
  const value = Decimal.min(...readings)
    .mul(from.factor)
    .div(to.factor);
  const instead = `${writeNumber(value)} ${to.name}`;
  return { text: instead, way: replace(phrase`It is ${instead}`, measure, instead) };
}
