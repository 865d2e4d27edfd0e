/** The tables of money. What is printed adds up: every part is shown to the digits it is summed with. */
import type { Exact } from '../../../shared/exact';
import { rateOf } from '../../documents/rates';
import type { Figure } from '../../engine/brickwork/needs';
import { showTerm, showValue } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { type Io, paint } from '../io';
import { priceRange } from '../range';
import { numberAndUnit, type Row, table } from './table';

/** Everything bought: what the work takes, what is bought of it, and what that costs. */
export function buying(job: Job): string[] {
  const { purchases, materials } = job.price;
  if (!purchases.length) return [];
  const rows = purchases.map((p) => [
    p.title,
    ...quantity(p.needed, job),
    ...quantity(p.bought, job),
    money(p.cost, job),
  ]);
  const head = ['', 'needed', '', 'to buy', '', 'cost'];
  const last = ['Materials', '', '', '', '', money(materials, job)];
  return table([head, ...rows, last], ['left', 'right', 'left', 'right', 'left', 'right']);
}

function quantity(term: Term, job: Job): [string, string] {
  return term.gaps.length && term.value.isZero()
    ? ['?', '']
    : numberAndUnit(showTerm(term, job.env));
}

/** A cost that is not known at all is a question mark, never a nought. */
function money(term: Term, job: Job): string {
  return term.gaps.length && term.value.isZero() ? '?' : showTerm(term, job.env);
}

/** From cost to price, each step that there is. */
export function paying(job: Job, io: Io): string[] {
  const { price } = job;
  const by = new Map(price.figures.map((f) => [f.key, f]));
  const rows = [
    row(by, 'materials', 'Materials', job),
    row(by, 'labour', `Labour, ${showTerm(by.get('paid')?.term ?? price.hours, job.env)}`, job),
    optional(by, 'travel', `Travel, ${showTerm(price.days, job.env)}`, job),
    optional(by, 'others', 'Other costs', job),
    row(by, 'cost', 'Cost', job),
    optional(by, 'overhead', rated('Overhead', by.get('overhead')?.term, job), job),
    optional(by, 'profit', rated('Profit', by.get('profit')?.term, job), job),
    rounding(by, job),
    row(by, 'net', 'Price before tax', job),
    optional(by, 'tax', rated(price.taxName, price.tax, job), job),
  ].filter((r): r is Row => r !== undefined);
  const lines = table([...rows, total(job)], ['left', 'right', 'left']);
  return [...lines.slice(0, -1), paint(io, 'bold', lines.at(-1)!)];
}

function row(by: Map<string, Figure>, key: string, label: string, job: Job): Row {
  const term = by.get(key)!.term;
  return [label, money(term, job), term.gaps.length ? 'incomplete' : ''];
}

function optional(by: Map<string, Figure>, key: string, label: string, job: Job): Row | undefined {
  const term = by.get(key)!.term;
  const none = rateOf(term)?.value.isZero() || (term.value.isZero() && !term.gaps.length);
  return none ? undefined : row(by, key, label, job);
}

function rated(label: string, term: Term | undefined, job: Job): string {
  const rate = term && rateOf(term);
  return rate ? `${label} ${showTerm(rate, job.env)}` : label;
}

/** What the least price and the rounding put on or take off, so that the rows above and below agree. */
function rounding(by: Map<string, Figure>, job: Job): Row | undefined {
  const value = (key: string): Exact => by.get(key)!.term.value;
  const worked = value('cost').add(value('overhead')).add(value('profit'));
  const gap = value('net').sub(worked);
  if (gap.isZero()) return undefined;
  const label = atLeast(job.price.price) ? 'Up to the least price' : 'Rounding';
  return [label, showValue(gap, job.env.money.code, job.env), ''];
}

/** Whether the least price is what the price was made from, by the price's own working. */
function atLeast(term: Term): boolean {
  const [worked] = term.args;
  if (term.op === 'most') return worked !== undefined && !worked.value.eq(term.value);
  return (term.op === 'cents' || term.op === 'nearest') && worked !== undefined && atLeast(worked);
}

function total(job: Job): Row {
  const term = job.price.total;
  const range = priceRange(job);
  const ends = range ? `(${showTerm(range.low, job.env)} to ${showTerm(range.high, job.env)})` : '';
  const incomplete = term.gaps.length ? 'INCOMPLETE' : '';
  return ['Price', money(term, job), [ends, incomplete].filter(Boolean).join(' ')];
}

export function staging(job: Job): string[] {
  const { stages } = job.price;
  return table(
    stages.map((s) => [s.title, money(s.amount, job), s.amount.gaps.length ? 'incomplete' : '']),
    ['left', 'right', 'left'],
  );
}
