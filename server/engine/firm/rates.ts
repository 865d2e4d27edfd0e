/** What an output line says, beside what past jobs show. */
import type { QuantityValue } from '../../../grammar/read/values';
import { unitNamed } from '../../../shared/units';
import { dayOf } from '../labour/day';
import type { Setting as Found } from '../resolve/book';
import { defaultLine, type Env } from '../resolve/env';
import { perTime } from '../resolve/per';
import type { Enough, MeasuredOutput } from './outputs';

/** An output as a line gives it, in an hour; twice the same where it is no range. */
export interface Rate {
  readonly found: Found;
  readonly low: number;
  readonly high: number;
}

/** Of the nearest file that has it, in the unit that was measured; nothing where it is in another kind of unit. */
export function rateNow({ task, unit }: Pick<MeasuredOutput, 'task' | 'unit'>, env: Env) {
  const found = env.book.setting('output', task);
  const amount = found?.line.values.amount;
  if (!found || amount?.kind !== 'quantity') return undefined;
  const per = perTime(textOf(found, 'unit'));
  const factor = factorTo(unit, amount);
  if (!per || factor === undefined) return undefined;
  const hours = per === 'day' ? dayOf(env).value.toNumber() : 1;
  const at = (value: QuantityValue['low']) => (value.toNumber() * factor) / hours;
  const rate: Rate = { found, low: at(amount.low), high: at(amount.high ?? amount.low) };
  return Number.isFinite(rate.low) && Number.isFinite(rate.high) ? rate : undefined;
}

function textOf({ line }: Found, key: string): string {
  const value = line.values[key];
  return value && 'text' in value ? value.text : '';
}

function factorTo(unit: string, { unit: said }: QuantityValue): number | undefined {
  const to = unitNamed(unit);
  if (!said || !to || said.dimension !== to.dimension) return undefined;
  return said.factor.div(to.factor).toNumber();
}

/** Whether all that the measured mean may be lies above or below what the line says. */
export function isOff({ low, high }: MeasuredOutput, rate: Rate): boolean {
  return low !== undefined && high !== undefined && (rate.high < low || rate.low > high);
}

/** Nothing where no library says it: then nothing is offered. */
export function enoughIn(env: Env): Enough | undefined {
  const line = defaultLine(env, 'outputs-measured');
  const of = (key: string) => {
    const value = line?.values[key];
    return value?.kind === 'quantity' ? value.low.toNumber() : Number.NaN;
  };
  const enough = { days: of('days'), jobs: of('jobs'), sure: of('sure') / 100 };
  return enough.days >= 0 && enough.jobs >= 0 && enough.sure > 0 && enough.sure < 1
    ? enough
    : undefined;
}

/** As a line of the notation has it: never three digits after a point, which could be thousands. */
export function rateText(
  value: number,
  { low = 0, high = Infinity }: Partial<MeasuredOutput> = {},
) {
  const least = value >= 100 ? 0 : value >= 10 ? 1 : 2;
  const digits = [least, 1, 2, 4, 6].find((each) => {
    const shown = Number(value.toFixed(each));
    return each >= least && shown > 0 && shown >= low && shown <= high;
  });
  return String(Number(value.toFixed(digits ?? 6)));
}
