/** From cost to price, in rows that add up, and what the price leaves. */
import { phrase } from '../../../shared/phrase';
import { type PriceStep, priceSteps } from '../../documents/pages/price/steps';
import { showTerm } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { type Io, paint } from '../io';
import { priceRange } from '../range';
import { money } from './money';
import { type Row, table } from './table';

/** Each step that there is. */
export function paying(job: Job, io: Io): string[] {
  const rows = priceSteps(job).map((step): Row => {
    return [labelOf(step, job), money(step.amount, job), noteOf(step, job)];
  });
  const lines = table(rows, ['left', 'right', 'left']);
  return [...lines.slice(0, -1), paint(io, 'bold', lines.at(-1)!)];
}

type Label = (step: PriceStep, said: { readonly time: string; readonly rate: string }) => string;

const LABELS: Readonly<Record<PriceStep['step'], Label>> = {
  materials: () => phrase`Materials`,
  labour: (_, { time }) => phrase`Labour, ${time}`,
  partner: ({ title }, { time }) => `${title}, ${time}`,
  travel: (_, { time }) => phrase`Travel, ${time}`,
  others: () => phrase`Other costs`,
  cost: () => phrase`Cost`,
  contingency: (_, { rate }) => rated(phrase`Contingency`, rate),
  overhead: (_, { rate }) => rated(phrase`Overhead`, rate),
  // Of a margin the rate is of the price that it is a part of, and so it is told with what is left.
  profit: ({ rate: known }, { rate }) =>
    known ? phrase`Profit ${rate}` : phrase`Profit, by its margin`,
  agreed: () => phrase`To the price agreed`,
  least: () => phrase`Up to the least price`,
  rounding: () => phrase`Rounding`,
  discount: ({ title }, { rate }) => (rate ? `${title}, ${rate}` : title),
  net: () => phrase`Price before tax`,
  tax: (step, { rate }) => (step.tax ? taxLabel(step.tax, rate) : rated(step.title, rate)),
  rest: () => phrase`Rounding`,
  total: () => phrase`Price`,
};

function labelOf(step: PriceStep, { env }: Job): string {
  const rate = step.tax ? (step.tax.owed?.rate ?? step.tax.rate) : step.rate;
  const text = (term: Term | undefined) => (term ? showTerm(term, env) : '');
  return LABELS[step.step](step, { time: text(step.time), rate: text(rate) });
}

function rated(label: string, rate: string): string {
  return rate ? `${label} ${rate}` : label;
}

function taxLabel({ name, owed, category }: NonNullable<PriceStep['tax']>, rate: string): string {
  if (owed) return phrase`${name} ${rate}, owed by the client`;
  return category === 'E' ? phrase`No ${name}` : `${name} ${rate}`;
}

function noteOf({ step, tax, amount }: PriceStep, job: Job): string {
  if (step === 'total') return totalNote(job);
  const of = tax && phrase`of ${showTerm(tax.base, job.env)}`;
  if (tax?.owed) return `${of}: ${showTerm(tax.owed.tax, job.env)}`;
  return amount.gaps.length ? phrase`incomplete` : (of ?? '');
}

function totalNote(job: Job): string {
  const range = priceRange(job);
  const ends = range
    ? phrase`(${showTerm(range.low, job.env)} to ${showTerm(range.high, job.env)})`
    : '';
  const incomplete = job.price.total.gaps.length ? phrase`INCOMPLETE` : '';
  return [ends, incomplete].filter(Boolean).join(' ');
}

/** What is left of the price, what an hour earns, and what a price that is agreed would have been. */
export function leaving(job: Job): string[] {
  const { price, env } = job;
  const { leaves, margin, earns, asked, deductions } = price;
  if (leaves.gaps.length) return [];
  const rows: Row[] = [
    [
      phrase`Profit`,
      showTerm(leaves, env),
      phrase`${showTerm(margin, env)} of the price before tax`,
    ],
    ...(earns
      ? [[phrase`Earned for each hour paid`, showTerm(earns, env), phrase`wages and profit`] as Row]
      : []),
    ...(asked
      ? [
          [
            phrase`Worked out, before tax`,
            showTerm(asked.price, env),
            phrase`what it would have been`,
          ] as Row,
        ]
      : []),
    ...deductions.map(
      ({ title, amount, rate, base }): Row => [
        title,
        showTerm(amount, env),
        phrase`${showTerm(rate, env)} of ${showTerm(base, env)} kept back`,
      ],
    ),
  ];
  return table(rows, ['left', 'right', 'left']);
}

function rowOf(label: string, term: Term, job: Job): Row {
  return [label, money(term, job), term.gaps.length ? phrase`incomplete` : ''];
}

/** Stages, and what is held back of them. */
export function staging(job: Job): string[] {
  const { stages, retention } = job.price;
  const days = retention?.days;
  const label = days ? phrase`Held back for ${showTerm(days, job.env)}` : phrase`Held back`;
  const rows = stages.map((s) => rowOf(s.title, s.due, job));
  if (retention) rows.push(rowOf(label, retention.amount, job));
  return table(rows, ['left', 'right', 'left']);
}
