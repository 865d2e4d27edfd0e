/**
 * What the gang really does in an hour, from the days of past jobs: amounts and hours as the record has them. A mean of a
 * sample, not a figure of a job: so plain numbers, told with how many days it rests on and how sure it is.
 */
import type { Settings } from './setting';
import { studentT } from './student';
import type { FiledJob, JobEntry } from './summary';

export interface MeasuredOutput {
  /** A word of the output block. */
  readonly task: string;
  readonly unit: string;
  /** Jobs and days it rests on. */
  readonly jobs: number;
  readonly days: number;
  /** Of those who lay, where the others of the gang serve. */
  readonly hours: number;
  readonly amount: number;
  /** All of the amount by all of the hours: a long day counts for more than a short one. */
  readonly mean: number;
  /** Between which the mean of all such days lies, as surely as was asked; nothing where there is one only. */
  readonly low?: number;
  readonly high?: number;
  /** Whether it was reckoned from job to job, or with too few jobs from day to day. */
  readonly by: 'jobs' | 'days';
  /** The worst and the best day. */
  readonly least: number;
  readonly most: number;
  /** Jobs left out: on a day of the task nobody wrote how much was done. */
  readonly without: number;
}

/** What it takes to believe a mean, as the library’s line says it. */
export interface Enough {
  readonly days: number;
  readonly jobs: number;
  /** Above 0, below 1. */
  readonly sure: number;
}

/** Amounts by hours: a day, or a job. */
interface Sample {
  hours: number;
  amount: number;
}

/** In the order of tasks, then of units. Whatever the order of the jobs. */
export function measuredOutputs(
  filed: readonly FiledJob[],
  settings: Settings,
  enough: Enough,
): MeasuredOutput[] {
  const tasks = new Map<string, Task>();
  const inOrder = [...filed].sort((a, b) => (a.file < b.file ? -1 : 1));
  for (const job of inOrder)
    for (const [task, days] of workedIn(job.summary.entries)) {
      const known = tasks.get(task) ?? new Task(task);
      tasks.set(task, known);
      known.take(days, task === BY_ALL ? 1 : settings.of(job).laying);
    }
  const names = [...tasks.keys()].sort();
  return names.flatMap((name) => tasks.get(name)!.measured(enough));
}

/** Done by all of the gang alike: its output line is of one of them, whoever it is. */
const BY_ALL = 'load-out';

function workedIn(entries: readonly JobEntry[]): Map<string, JobEntry[]> {
  const found = new Map<string, JobEntry[]>();
  for (const entry of entries) {
    if (entry.kind !== 'worked' || !entry.task) continue;
    const list = found.get(entry.task);
    if (list) list.push(entry);
    else found.set(entry.task, [entry]);
  }
  return found;
}

/** A task over all jobs: days by job, in each unit. */
class Task {
  private readonly byUnit = new Map<string, Sample[][]>();
  private without = 0;

  constructor(private readonly name: string) {}

  /**
   * The days of a job. Of one where some day has no amount, nothing is taken: what was done on it may stand under another
   * day, which would make that one look better than it was.
   */
  take(entries: readonly JobEntry[], laying: number): void {
    const units = new Set(entries.map((e) => e.amount?.[1]));
    const [unit] = units;
    const days = [...daysOf(entries, laying).values()];
    const fit = days.every(({ hours, amount }) => hours > 0 && amount > 0 && amount < 1e12);
    if (units.size !== 1 || unit === undefined || !fit) {
      this.without += 1;
      return;
    }
    const known = this.byUnit.get(unit) ?? [];
    this.byUnit.set(unit, known);
    known.push(days);
  }

  measured(enough: Enough): MeasuredOutput[] {
    const units = [...this.byUnit.keys()].sort();
    return units.map((unit) => {
      const of = { task: this.name, unit, without: this.without };
      return { ...of, ...meanOf(this.byUnit.get(unit)!, enough) };
    });
  }
}

/** Lines of one day are one sample. */
function daysOf(entries: readonly JobEntry[], laying: number): Map<string, Sample> {
  const days = new Map<string, Sample>();
  for (const { date, hours, amount } of entries) {
    const day = days.get(date) ?? { hours: 0, amount: 0 };
    day.hours += Number(hours) * laying;
    day.amount += Number(amount?.[0] ?? 0);
    days.set(date, day);
  }
  return days;
}

function meanOf(jobs: readonly (readonly Sample[])[], enough: Enough) {
  const days = jobs.flat();
  const by = jobs.length >= Math.max(2, enough.jobs) ? 'jobs' : 'days';
  const samples = by === 'jobs' ? jobs.map(sumOf) : days;
  const { hours, amount } = sumOf(days);
  const rates = days.map((d) => d.amount / d.hours);
  return {
    jobs: jobs.length,
    days: days.length,
    hours,
    amount,
    mean: amount / hours,
    ...between(samples, enough.sure),
    by: by as 'jobs' | 'days',
    least: rates.reduce((a, b) => Math.min(a, b)),
    most: rates.reduce((a, b) => Math.max(a, b)),
  };
}

function sumOf(samples: readonly Sample[]): Sample {
  const sum = { hours: 0, amount: 0 };
  for (const { hours, amount } of samples) {
    sum.hours += hours;
    sum.amount += amount;
  }
  return sum;
}

/**
 * The interval of a ratio of two sums: R = Σy / Σx, its variance Σ(y − R x)² / (n (n − 1) x̄²), with Student’s t of n − 1
 * degrees of freedom (Cochran, Sampling Techniques, 3rd edition 1977, sections 2.11 and 6.3, from memory). With hours all
 * alike it is the plain interval of a mean.
 */
export function between(
  samples: readonly Readonly<Sample>[],
  sure: number,
): { readonly low?: number; readonly high?: number } {
  const n = samples.length;
  if (n < 2) return {};
  const { hours, amount } = sumOf(samples);
  const ratio = amount / hours;
  const squares = samples.reduce((sum, s) => sum + (s.amount - ratio * s.hours) ** 2, 0);
  const error = Math.sqrt((squares * n) / (n - 1)) / hours;
  const reach = studentT((1 + sure) / 2, n - 1) * error;
  return { low: Math.max(0, ratio - reach), high: ratio + reach };
}

/** Whether so many days of so many jobs are enough to say that a rate is another. */
export function isEnough({ days, jobs, low }: MeasuredOutput, enough: Enough): boolean {
  return low !== undefined && days >= enough.days && jobs >= enough.jobs;
}
