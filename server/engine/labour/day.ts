/** A working day, what of it goes on other things than the work, and how many of them the work takes. */

import { phrase } from '../../../shared/phrase';
import { inUnit } from '../brickwork/lengths';
import { defaultTerm, type Env, LineFacts } from '../resolve/env';
import { counted, difference, most, product, quotient, sum, type Term, up } from '../working/term';

/** Hours of every day that are paid and lay nothing. */
export interface Around {
  readonly driving?: Term;
  readonly setUp?: Term;
  readonly clearUp?: Term;
  /** All of them; nothing when there are none. */
  readonly all?: Term;
}

/** A working day, as the firm has it. */
export function dayOf(env: Env): Term {
  const own = env.book.setting('labour', 'day');
  if (own) return new LineFacts(own.block, own.line, env).term('hours', phrase`a day`);
  return defaultTerm(env, 'day', 'hours', phrase`a day`);
}

export function aroundOf(env: Env): Around {
  const driving = said(env, 'travel', 'time', phrase`Driving`);
  const setUp =
    said(env, 'labour', 'set-up', phrase`Setting up`) ??
    byDefault(env, 'set-up', phrase`Setting up`);
  const clearUp =
    said(env, 'labour', 'clear-up', phrase`Cleaning down`) ??
    byDefault(env, 'clear-up', phrase`Cleaning down`);
  const parts = [driving, setUp, clearUp].filter((t) => t !== undefined);
  const all = parts.length ? sum(phrase`around the work, a day`, 'h', parts) : undefined;
  return { driving, setUp, clearUp, all };
}

function said(env: Env, kind: 'labour' | 'travel', key: string, label: string): Term | undefined {
  const own = env.book.setting(kind, key);
  const term = own && inUnit(new LineFacts(own.block, own.line, env).term('time', label), 'h');
  return term && something(term);
}

function byDefault(env: Env, key: string, label: string): Term | undefined {
  return something(inUnit(defaultTerm(env, key, 'time', label), 'h'));
}

/** A day without it says nothing of it. */
function something(term: Term): Term | undefined {
  return term.value.isZero() && !term.gaps.length && !term.ranged ? undefined : term;
}

/** Days on site, in the steps the firm charges: the work, by what is left of a day for it. */
export function daysOf(hours: Term, day: Term, around: Around, env: Env): Term {
  const own = env.book.setting('labour', 'part-day');
  const step = own
    ? new LineFacts(own.block, own.line, env).term('days', phrase`charged in steps of`)
    : defaultTerm(env, 'part-day', 'days', phrase`charged in steps of`);
  const days = quotient(phrase`days of work`, 'days', hours, leftOf(day, around));
  return up(phrase`days`, 'days', days, phrase`in steps of ${step.value.toFixed()} day`, step);
}

/** What a day leaves for the work; nothing, when it is all spent around it: then no number of days will do. */
function leftOf(day: Term, { all }: Around): Term {
  if (!all) return day;
  const left = difference(phrase`left of a day for the work`, 'h', inUnit(day, 'h'), all);
  return most(
    phrase`left of a day for the work`,
    'h',
    left,
    counted(phrase`none`, 0, 'h', { note: phrase`no day has less than none` }),
  );
}

/** Days on which somebody comes: half a day is driven to, set up for and cleared up after like a whole one. */
export function visitsOf(days: Term): Term {
  if (!days.ranged && days.value.isInteger()) return days;
  return up(phrase`days there`, 'days', days, phrase`half a day is driven to like a whole one`);
}

/** All hours that are paid: those of the work, and those around it on each day that somebody comes. */
export function paidHours(hours: Term, visits: Term, { all }: Around): Term {
  if (!all) return hours;
  return sum(phrase`Hours paid`, 'h', [
    hours,
    product(phrase`around the work`, 'h', [visits, all]),
  ]);
}
