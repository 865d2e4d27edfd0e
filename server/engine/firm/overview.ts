/** A firm’s jobs together. Amounts of several currencies are never added up: each has a part of its own. */
import { type Exact, ZERO } from '../../../shared/exact';
import type { FigureStyle } from '../../../shared/show';
import type { Money } from '../resolve/env';
import { daysBetween } from './days';
import type { Settings } from './setting';
import { type JobState, STATES, type State, stateOf } from './state';
import type { FiledJob } from './summary';
import { type QuarterRow, quarters, type TaxesOf } from './turnover';

export interface Overview {
  /** What comes after it is left out, and money is so old. */
  readonly day: string;
  readonly jobs: number;
  /** Files in the notation that hold no job. */
  readonly others: number;
  /** The one with most jobs first. */
  readonly currencies: readonly CurrencyOverview[];
}

export interface CurrencyOverview {
  readonly code: string;
  readonly money: Money;
  /** How it is written for a reader, as the first of its jobs has it. */
  readonly style: FigureStyle;
  /** By state, then by day and name. */
  readonly jobs: readonly JobState[];
  readonly states: Readonly<Record<State, StateTotal>>;
  readonly invoiced: Exact;
  readonly paid: Exact;
  readonly held: Exact;
  readonly owed: Exact;
  /** What is open, invoice by invoice, the oldest first. */
  readonly open: readonly OpenCharge[];
  readonly quarters: readonly QuarterRow[];
}

export interface StateTotal {
  readonly jobs: number;
  /** Tax in it, of those whose price is known. */
  readonly price: Exact;
  /** Jobs whose record does not say at which price. */
  readonly unpriced: number;
}

export interface OpenCharge {
  readonly job: JobState;
  readonly date: string;
  readonly amount: Exact;
  /** Since it was asked for. */
  readonly days: number;
  /** After it was to be paid; nothing where nobody says when that is. */
  readonly late?: number;
}

export function overviewOf(
  filed: readonly FiledJob[],
  settings: Settings,
  day: string,
  taxesOf: TaxesOf = () => undefined,
): Overview {
  const own = filed.filter(({ summary }) => summary.isJob);
  const states = own.map((job) => stateOf(job, settings.of(job), day)).sort(inOrder);
  const byCode = new Map<string, JobState[]>();
  for (const job of states) {
    const { code } = job.setting.money;
    const list = byCode.get(code);
    if (list) list.push(job);
    else byCode.set(code, [job]);
  }
  const currencies = [...byCode.values()].map((jobs) => ofCurrency(jobs, day, taxesOf));
  currencies.sort((a, b) => b.jobs.length - a.jobs.length || (a.code < b.code ? -1 : 1));
  return { day, jobs: own.length, others: filed.length - own.length, currencies };
}

function inOrder(a: JobState, b: JobState): number {
  const state = a.state === b.state ? 0 : STATES.indexOf(a.state) - STATES.indexOf(b.state);
  return state || compared(a.since, b.since) || compared(a.file, b.file);
}

function compared(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function ofCurrency(jobs: readonly JobState[], day: string, taxesOf: TaxesOf): CurrencyOverview {
  const { money, style } = jobs[0]!.setting;
  const { code } = money;
  const add = (of: (job: JobState) => Exact) =>
    jobs.reduce((sum, j) => (of(j).isZero() ? sum : sum.add(of(j))), ZERO);
  return {
    code,
    money,
    style,
    jobs,
    states: Object.fromEntries(STATES.map((s) => [s, stateTotal(s, jobs)])) as Record<
      State,
      StateTotal
    >,
    invoiced: add((j) => j.invoiced),
    paid: add((j) => j.paid),
    held: add((j) => j.held),
    owed: add((j) => j.owed),
    open: openIn(jobs, day),
    quarters: quarters(jobs, taxesOf),
  };
}

function stateTotal(state: State, all: readonly JobState[]): StateTotal {
  const jobs = all.filter((job) => job.state === state);
  return {
    jobs: jobs.length,
    price: jobs.reduce((sum, { price }) => (price ? sum.add(price) : sum), ZERO),
    unpriced: jobs.filter(({ price }) => !price).length,
  };
}

function openIn(jobs: readonly JobState[], day: string): OpenCharge[] {
  const open = jobs.flatMap((job) =>
    job.open.map(({ date, amount }): OpenCharge => {
      const days = daysBetween(date, day) ?? 0;
      const { payment } = job.setting;
      return { job, date, amount, days, late: payment === undefined ? undefined : days - payment };
    }),
  );
  return open.sort((a, b) => compared(a.date, b.date) || compared(a.job.file, b.job.file));
}
