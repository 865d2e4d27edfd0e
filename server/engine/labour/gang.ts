/** Hours and what they cost: the gang together, and the days it comes. */
import { exact } from '../../../shared/exact';
import { unitNamed } from '../../../shared/units';
import { inUnit } from '../brickwork/lengths';
import { defaultTerm, type Env, LineFacts } from '../resolve/env';
import { perTime } from '../resolve/per';
import {
  counted,
  fact,
  missing,
  named,
  type Origin,
  product,
  quotient,
  sum,
  type Term,
  up,
} from '../working/term';

export interface Gang {
  /** What an hour of all of them costs. */
  readonly rate: Term;
  /** How many lay bricks: those of the trade named first. */
  readonly laying: Term;
  readonly day: Term;
}

/** Each trade's hourly rate times how many of it there are. */
export function gangOf(env: Env): Gang {
  const setting = env.book.setting('labour', 'gang');
  const day = dayOf(env);
  if (!setting) {
    const rate = missing(
      'gang',
      env.money.code,
      'no gang is given: a labour block names who works and what an hour costs',
    );
    return {
      rate,
      laying: counted('bricklayers', 1, '', { note: 'one, as no gang is given' }),
      day,
    };
  }
  const people = peopleOf(new LineFacts(setting.block, setting.line, env)).map((p) => ({
    ...p,
    rate: rateOf(p.trade, env, p.origin, day),
  }));
  const rates = people.map(({ trade, count, rate }) =>
    product(`${trade}, an hour`, env.money.code, [count, rate]),
  );
  return { rate: sum('the gang, an hour', env.money.code, rates), laying: layingOf(people), day };
}

/**
 * Those who lay: of the trade with the highest rate, whatever the order they are named in (common practice: the
 * skilled trade costs most). Of two as dear, the first.
 */
function layingOf(people: readonly { count: Term; rate: Term }[]): Term {
  const dearest = people.reduce((a, b) => (b.rate.value.gt(a.rate.value) ? b : a));
  return { ...dearest.count, note: 'the trade with the highest rate lays' };
}

function peopleOf(line: LineFacts) {
  const list = line.values.gang;
  const of = list?.kind === 'list' ? list.of : [];
  return of.map(({ count, countOf }) => {
    const trade = countOf && 'text' in countOf ? countOf.text : '';
    const origin: Origin = { block: line.block, span: count!.span };
    const value = count?.kind === 'quantity' ? count.low : exact(0);
    return { trade, origin, count: fact(trade, value, '', origin) };
  });
}

function rateOf(trade: string, env: Env, origin: Origin, day: Term): Term {
  const known = env.book
    .all('labour', 'trade')
    .find((s) => isTrade(s.line.syntax.key!.text, trade));
  if (!known)
    return missing(
      `rate of ${trade}`,
      env.money.code,
      `no labour line gives the rate of a ${trade}`,
      origin,
    );
  const line = new LineFacts(known.block, known.line, env);
  const rate = line.term('rate', `rate of a ${trade}`);
  const per = perTime(line.word('unit'));
  if (per === 'day') return quotient(`rate of a ${trade}`, env.money.code, rate, day);
  return per ? rate : perNothing(`the rate of a ${trade}`, line, env.money.code);
}

/** A rate per a word that is neither an hour nor a day. */
function perNothing(what: string, line: LineFacts, unit: string): Term {
  return missing(what, unit, `${what} is neither per h nor per day`, line.at('unit'));
}

/** `2 bricklayers` names the trade `bricklayer`. */
export function isTrade(trade: string, said: string): boolean {
  return trade === said || `${trade}s` === said;
}

function dayOf(env: Env): Term {
  const own = env.book.setting('labour', 'day');
  if (own) return new LineFacts(own.block, own.line, env).term('hours', 'a day');
  return defaultTerm(env, 'day', 'hours', 'a day');
}

/** The gang's hours for an amount of a task: the amount, by what one bricklayer does in an hour, by how many lay. */
export function taskHours(task: string, label: string, amount: Term, env: Env, gang: Gang): Term {
  const setting = env.book.setting('output', task);
  if (!setting) return missing(label, 'h', `no output is given for ${task}`, amount.origin);
  const line = new LineFacts(setting.block, setting.line, env);
  const said = line.term('amount', `${task}, one bricklayer`);
  const per = perTime(line.word('unit'));
  if (!per) return perNothing(`the output of ${task}`, line, 'h');
  if (!alike(said, amount))
    return missing(
      label,
      'h',
      `the output of ${task} is in ${said.unit}, but ${task} is reckoned in ${amount.unit}`,
      line.at('amount'),
    );
  const output = per === 'day' ? quotient(`${task}, an hour`, said.unit, said, gang.day) : said;
  const alone = quotient(`${label}, one bricklayer`, 'h', amount, anHour(output, amount.unit));
  return gang.laying.value.eq(1) ? named(label, alone) : quotient(label, 'h', alone, gang.laying);
}

/** An output in the unit of what is laid, said as what it is: so much in an hour. */
function anHour(output: Term, unit: string): Term {
  const hourly = (term: Term, of: string) => (of ? { ...term, unit: `${of}/h` } : term);
  const converted = inUnit(output, unit);
  if (converted === output) return hourly(output, unit);
  return { ...hourly(converted, unit), args: [hourly(output, output.unit)] };
}

/** Whether one can be divided by the other: an output in square metres says nothing of bricks. */
function alike(a: Term, b: Term): boolean {
  return !a.unit || !b.unit || unitNamed(a.unit)?.dimension === unitNamed(b.unit)?.dimension;
}

/** Days on site, in the steps the firm charges. */
export function daysOf(hours: Term, gang: Gang, env: Env): Term {
  const own = env.book.setting('labour', 'part-day');
  const step = own
    ? new LineFacts(own.block, own.line, env).term('days', 'charged in steps of')
    : defaultTerm(env, 'part-day', 'days', 'charged in steps of');
  const days = quotient('days of work', 'days', hours, gang.day);
  const note = `in steps of ${step.value.toFixed()} day`;
  return up('days', 'days', days, note, step);
}
