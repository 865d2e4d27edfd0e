/** Which part of the price an invoice asks for: all of it, a stage, or what is left. */
import { type Exact, ZERO } from '../../../shared/exact';
import { heldPrice } from '../../engine/life/agreed';
import { type Invoiced, recordOf } from '../../engine/life/record';
import type { Job } from '../../engine/workspace/job';
import { fromLines, fromTerms } from '../from';
import type { From } from '../paper/model';

/** What is asked of {@link billed}; with nothing, the last invoice of the record, else the next stage, else the rest. */
export interface Asked {
  readonly number?: string;
  /** A stage by its place from 1, or by its title. */
  readonly stage?: string;
  readonly amount?: Exact;
  /** ISO 8601. */
  readonly date?: string;
}

export interface Billed {
  readonly number: string;
  readonly date: string;
  /** What it is for, where it is not all of the work. */
  readonly title: string;
  /** With tax. */
  readonly amount: Exact;
  /** With tax: what other invoices asked for before this one. */
  readonly before: Exact;
  /** With tax: what the client pays in all. */
  readonly whole: Exact;
  /** The stage, the record’s line, or what the price hangs on. */
  readonly from?: From;
}

/** @returns a sentence where there is nothing to bill, or no such thing */
export function billed(job: Job, asked: Asked): Billed | string {
  const whole = heldPrice(job).value;
  const { invoiced } = recordOf(job);
  const fresh = asked.stage !== undefined || asked.amount !== undefined || asked.date !== undefined;
  const found = fresh
    ? undefined
    : asked.number === undefined
      ? invoiced.at(-1)
      : invoiced.find((each) => each.number === asked.number);
  if (found) return recorded(found, invoiced, whole);
  const before = sumOf(invoiced);
  const from = fromTerms(heldPrice(job));
  const common = { number: asked.number ?? '', date: asked.date ?? '', before, whole, from };
  if (asked.amount) return { ...common, title: '', amount: asked.amount };
  return staged(job, asked.stage, before, whole, common);
}

function recorded(found: Invoiced, all: readonly Invoiced[], whole: Exact): Billed {
  const before = sumOf(all.slice(0, all.indexOf(found)));
  const { number, date, what } = found;
  const from = fromLines(found.line);
  return { number, date, title: what, amount: found.amount.value, before, whole, from };
}

function staged(
  job: Job,
  wanted: string | undefined,
  before: Exact,
  whole: Exact,
  common: Omit<Billed, 'title' | 'amount'>,
): Billed | string {
  const { stages } = job.price;
  const left = whole.sub(before);
  const named = wanted === undefined ? undefined : stageNamed(job, wanted);
  if (wanted !== undefined && !named)
    return `There is no stage “${wanted}”. ${stages.length ? `Stages: ${stages.map((s) => s.title).join('; ')}.` : 'The price has none.'}`;
  if (named) return { ...common, ...stageOf(named) };
  if (!whole.gt(0)) return 'There is no price to invoice yet.';
  if (!left.gt(0)) return 'All of the price is invoiced already.';
  const next = nextStage(job, before);
  return next?.amount.value.lt(left)
    ? { ...common, ...stageOf(next) }
    : { ...common, title: '', amount: left };
}

function stageOf({ title, amount, line }: Job['price']['stages'][number]) {
  return { title, amount: amount.value, from: fromLines(line) };
}

function stageNamed(job: Job, wanted: string) {
  const { stages } = job.price;
  return stages.find((s) => s.title === wanted) ?? stages[Number(wanted) - 1];
}

/** The first that the invoices so far do not reach. */
function nextStage(job: Job, before: Exact) {
  let until = ZERO;
  return job.price.stages.find((stage) => {
    until = until.add(stage.amount.value);
    return until.gt(before);
  });
}

function sumOf(all: readonly Invoiced[]): Exact {
  return all.reduce((sum, each) => sum.add(each.amount.value), ZERO);
}
