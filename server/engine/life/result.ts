/** What became of a job: what it cost, what it leaves and earns, beside what was reckoned. */

import { roundTo, ZERO } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import type { Figure } from '../brickwork/needs';
import type { JobPrice } from '../price/total';
import {
  cents,
  counted,
  difference,
  named,
  product,
  quotient,
  sum,
  type Term,
} from '../working/term';
import type { Job } from '../workspace/job';
import { agreedJob, heldPrice } from './agreed';
import { type Owed, owedFigures, owedOf } from './owed';
import { type JobRecord, PARTS, type Part, recordOf } from './record';
import { peopleOf, type TaskResult, taskResults } from './tasks';

export interface PartResult {
  readonly part: Part;
  readonly estimated: Term;
  readonly actual: Term;
  /** Nothing of it is recorded: the estimate stands for it. */
  readonly asEstimated: boolean;
}

export interface Result {
  /** The job as it was agreed. */
  readonly job: Job;
  /** Before tax. */
  readonly net: Term;
  readonly parts: readonly PartResult[];
  readonly cost: { readonly estimated: Term; readonly actual: Term };
  readonly overhead: Term;
  readonly leaves: { readonly estimated: Term; readonly actual: Term };
  /** What it leaves as a part of the price before tax, in percent. */
  readonly margin: { readonly estimated: Term; readonly actual: Term };
  /** Wages and profit for each hour of the gang; nothing where no hours are recorded. */
  readonly earns?: { readonly estimated?: Term; readonly actual: Term };
  /** Of one person, all together. */
  readonly hours: { readonly estimated: Term; readonly actual: Term };
  readonly tasks: readonly TaskResult[];
  readonly owed: Owed;
  /** Not all of the price is invoiced yet: hours and costs may still come. */
  readonly soFar: boolean;
}

/** Nothing before anything is worked or spent. */
export function resultOf(job: Job): Result | undefined {
  const record = recordOf(job);
  if (!job.isJob || (!record.worked.length && !record.spent.length)) return undefined;
  const agreed = agreedJob(job);
  const { price } = agreed;
  const { code } = job.env.money;
  const people = peopleOf(price.gang);
  const hours = sum(
    phrase`Hours worked`,
    'h',
    record.worked.map((w) => w.hours),
  );
  const parts = partsOf(record, price, { hours, people }, job);
  const cost = sum(
    phrase`What it cost`,
    code,
    parts.map((p) => p.actual),
  );
  const net = netOf(job, price);
  const overhead = priceFigure(price, 'overhead', code);
  const leaves = difference(
    phrase`What it leaves`,
    code,
    net,
    sum(phrase`cost and overhead`, code, [cost, overhead]),
  );
  const wages = price.partners.length
    ? wagesOf(price, { hours, people }, job)
    : parts.find((p) => p.part === 'labour')!.actual;
  const owed = owedOf(job);
  return {
    job: agreed,
    net,
    parts,
    cost: { estimated: price.cost, actual: cost },
    overhead,
    leaves: { estimated: price.leaves, actual: leaves },
    margin: { estimated: price.margin, actual: marginOf(leaves, net) },
    earns: record.worked.length
      ? { estimated: price.earns, actual: earned(wages, leaves, hours, people, job) }
      : undefined,
    hours: {
      estimated: product(phrase`Hours estimated`, 'h', [price.paid, people]),
      actual: hours,
    },
    tasks: taskResults(job, agreed),
    owed,
    soFar: owed.toInvoice.value.gt(0),
  };
}

/** The price that was given, where it is another than the job’s: with as much tax in it. */
function netOf(job: Job, price: JobPrice): Term {
  const given = heldPrice(job);
  if (given.value.eq(price.total.value) || price.total.value.isZero())
    return named(phrase`Price before tax`, price.price);
  const share = quotient(phrase`before tax, of the price`, '', price.price, price.total);
  const net = product(phrase`Price before tax`, given.unit, [given, share]);
  return cents(
    phrase`Price before tax`,
    net,
    job.env.money.digits,
    phrase`of the price that was given`,
  );
}

function priceFigure({ figures }: JobPrice, key: string, code: string): Term {
  return figures.find((f) => f.key === key)?.term ?? counted(key, 0, code);
}

/** Its own and its partners’. */
function labourOf(price: JobPrice, code: string): Term {
  const own = priceFigure(price, 'labour', code);
  if (!price.partners.length) return own;
  return sum(phrase`Labour`, code, [own, ...price.partners.map((p) => p.labour)]);
}

interface Time {
  readonly hours: Term;
  readonly people: Term;
}

function partsOf(record: JobRecord, price: JobPrice, time: Time, job: Job): PartResult[] {
  const { code } = job.env.money;
  return PARTS.map((part) => {
    const estimated = part === 'labour' ? labourOf(price, code) : priceFigure(price, part, code);
    const spent = record.spent.filter((s) => s.part === part).map((s) => s.amount);
    const wages = part === 'labour' && record.worked.length ? [wagesOf(price, time, job)] : [];
    // Nothing paid for work yet: then what partners charge is as it was reckoned.
    const due = wages.length && !spent.length ? price.partners.map((p) => p.labour) : [];
    const all = [...wages, ...spent, ...due];
    const actual = all.length
      ? sum(estimated.label, code, all)
      : named(estimated.label, estimated, phrase`as estimated: nothing of it is recorded`);
    return { part, estimated, actual, asEstimated: !all.length };
  });
}

/** Each hour at what one of the gang costs on average: the record does not say who worked it. */
function wagesOf({ gang }: JobPrice, { hours, people }: Time, job: Job): Term {
  const { code, digits } = job.env.money;
  const each = quotient(phrase`an hour of one person`, code, gang.rate, people);
  return cents(phrase`wages`, product(phrase`wages`, code, [hours, each]), digits);
}

function marginOf(leaves: Term, net: Term): Term {
  const percent = net.value.isZero() ? ZERO : roundTo(leaves.value.div(net.value).mul(100), 1);
  return counted(phrase`What it leaves, of the price before tax`, percent, '%', {
    args: [leaves, net],
    note: phrase`in a hundred of the price before tax, to a tenth`,
  });
}

function earned(labour: Term, leaves: Term, hours: Term, people: Term, job: Job): Term {
  const { code, digits } = job.env.money;
  const all = sum(phrase`wages and profit`, code, [labour, leaves]);
  const gang = quotient(phrase`hours of the gang`, 'h', hours, people);
  return cents(
    phrase`Earned for each hour of the gang`,
    quotient(phrase`earned an hour`, code, all, gang),
    digits,
  );
}

/** Under `result.`. */
export function resultFigures(result: Result): Figure[] {
  const { net, parts, cost, overhead, leaves, margin, earns, hours, tasks, owed } = result;
  return [
    { key: 'net', term: net },
    ...parts.map((p) => ({ key: p.part, term: p.actual })),
    { key: 'cost', term: cost.actual },
    { key: 'overhead', term: overhead },
    { key: 'leaves', term: leaves.actual },
    { key: 'margin', term: margin.actual },
    ...(earns ? [{ key: 'earns', term: earns.actual }] : []),
    { key: 'hours', term: hours.actual },
    { key: 'hours-estimated', term: hours.estimated },
    ...tasks.flatMap(taskFigures),
    ...owedFigures(owed),
  ].map(({ key, term }) => ({ key: `result.${key}`, term }));
}

function taskFigures({ task, ...of }: TaskResult): Figure[] {
  const id = `task.${task || 'other'}`;
  const found: [string, Term | undefined][] = [
    ['hours', of.worked],
    ['estimated', of.estimated],
    ['amount', of.amount],
    ['amount-estimated', of.amountEstimated],
    ['output', of.output],
  ];
  return found.flatMap(([key, term]) => (term ? [{ key: `${id}.${key}`, term }] : []));
}
