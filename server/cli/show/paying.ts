/** From cost to price, in rows that add up, and what the price leaves. */
import { rateOf } from '../../documents/rates';
import type { Figure } from '../../engine/brickwork/needs';
import type { TaxGroup } from '../../engine/price/tax/taxes';
import { showTerm, showValue } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { type Io, paint } from '../io';
import { priceRange } from '../range';
import { money } from './money';
import { type Row, table } from './table';

type Figures = ReadonlyMap<string, Figure>;

/** Each step that there is. */
export function paying(job: Job, io: Io): string[] {
  const { price } = job;
  const by: Figures = new Map(price.figures.map((f) => [f.key, f]));
  const rows = [
    row(by, 'materials', 'Materials', job),
    row(by, 'labour', `Labour, ${showTerm(by.get('paid')?.term ?? price.hours, job.env)}`, job),
    ...price.partners.map((p) =>
      rowOf(`${p.labour.label}, ${showTerm(p.hours, job.env)}`, p.labour, job),
    ),
    optional(by, 'travel', `Travel, ${showTerm(price.days, job.env)}`, job),
    optional(by, 'others', 'Other costs', job),
    row(by, 'cost', 'Cost', job),
    optional(by, 'contingency', rated('Contingency', by.get('contingency')?.term, job), job),
    optional(by, 'overhead', rated('Overhead', by.get('overhead')?.term, job), job),
    optional(by, 'profit', profitLabel(by.get('profit')?.term, job), job),
    rounding(by, job),
    ...price.discounts.map((d) => less(d.title, d.amount, d.rate, job)),
    row(by, 'net', 'Price before tax', job),
    ...taxRows(job),
    optional(by, 'rounding', 'Rounding', job),
  ].filter((r): r is Row => r !== undefined);
  const lines = table([...rows, total(job)], ['left', 'right', 'left']);
  return [...lines.slice(0, -1), paint(io, 'bold', lines.at(-1)!)];
}

function row(by: Figures, key: string, label: string, job: Job): Row {
  return rowOf(label, by.get(key)!.term, job);
}

function rowOf(label: string, term: Term, job: Job): Row {
  return [label, money(term, job), term.gaps.length ? 'incomplete' : ''];
}

function optional(by: Figures, key: string, label: string, job: Job): Row | undefined {
  const term = by.get(key)?.term;
  if (!term) return undefined;
  const none = rateOf(term)?.value.isZero() || (term.value.isZero() && !term.gaps.length);
  return none ? undefined : rowOf(label, term, job);
}

function rated(label: string, term: Term | undefined, job: Job): string {
  const rate = term && rateOf(term);
  return rate ? `${label} ${showTerm(rate, job.env)}` : label;
}

/** A mark-up by its rate; of a margin it is the price that it is a part of, and so the rate is told with what is left. */
function profitLabel(term: Term | undefined, job: Job): string {
  return term && !rateOf(term) ? 'Profit, by its margin' : rated('Profit', term, job);
}

function less(title: string, amount: Term, rate: Term | undefined, job: Job): Row {
  const label = rate ? `${title}, ${showTerm(rate, job.env)}` : title;
  return [label, showValue(amount.value.neg(), job.env.money.code, job.env), ''];
}

/** One rate by itself, where it is anything; of several each, with what it is of. */
function taxRows(job: Job): (Row | undefined)[] {
  const { taxes } = job.price;
  const [only] = taxes;
  if (taxes.length === 1 && only!.category !== 'AE') {
    const none = only!.rate.value.isZero() && !only!.rate.gaps.length;
    return [none ? undefined : rowOf(rated(only!.name, only!.tax, job), only!.tax, job)];
  }
  return taxes.map((tax) => taxRow(tax, job));
}

function taxRow({ name, rate, base, tax, owed, category }: TaxGroup, job: Job): Row {
  const { env } = job;
  const of = `of ${showTerm(base, env)}`;
  if (owed) {
    const due = `${of}: ${showTerm(owed.tax, env)}`;
    return [`${name} ${showTerm(owed.rate, env)}, owed by the client`, money(tax, job), due];
  }
  const label = category === 'E' ? `No ${name}` : `${name} ${showTerm(rate, env)}`;
  return [label, money(tax, job), tax.gaps.length ? 'incomplete' : of];
}

/** What the least price, the rounding or the price agreed puts on or takes off, so that the rows above and below agree. */
function rounding(by: Figures, job: Job): Row | undefined {
  const { price, env } = job;
  const worked = ['contingency', 'overhead', 'profit'].reduce((sum, key) => {
    const term = by.get(key)?.term;
    return term ? sum.add(term.value) : sum;
  }, by.get('cost')!.term.value);
  const gap = price.gross.value.sub(worked);
  if (gap.isZero()) return undefined;
  const label = price.agreed
    ? 'To the price agreed'
    : atLeast(price.gross)
      ? 'Up to the least price'
      : 'Rounding';
  return [label, showValue(gap, env.money.code, env), ''];
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

/** What is left of the price, what an hour earns, and what a price that is agreed would have been. */
export function leaving(job: Job): string[] {
  const { price, env } = job;
  const { leaves, margin, earns, asked, deductions } = price;
  if (leaves.gaps.length) return [];
  const rows: Row[] = [
    ['Profit', showTerm(leaves, env), `${showTerm(margin, env)} of the price before tax`],
    ...(earns
      ? [['Earned for each hour paid', showTerm(earns, env), 'wages and profit'] as Row]
      : []),
    ...(asked
      ? [['Worked out, before tax', showTerm(asked.price, env), 'what it would have been'] as Row]
      : []),
    ...deductions.map(
      ({ title, amount, rate, base }): Row => [
        title,
        showTerm(amount, env),
        `${showTerm(rate, env)} of ${showTerm(base, env)} kept back`,
      ],
    ),
  ];
  return table(rows, ['left', 'right', 'left']);
}

/** Stages, and what is held back of them. */
export function staging(job: Job): string[] {
  const { stages, retention } = job.price;
  const days = retention?.days;
  const label = days ? `Held back for ${showTerm(days, job.env)}` : 'Held back';
  const rows = stages.map((s) => rowOf(s.title, s.due, job));
  if (retention) rows.push(rowOf(label, retention.amount, job));
  return table(rows, ['left', 'right', 'left']);
}
