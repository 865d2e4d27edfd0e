/** Turnover and tax by quarter: of what was invoiced, and of what was paid. */
import { type Exact, HUNDRED, roundTo, ZERO } from '../../../shared/exact';
import { type Quarter, quarterOf } from './days';
import type { TaxPart } from './setting';
import type { JobState, Taken } from './state';

/** How the price of a job with several rates is made up: the host may price that job alone; nothing where nobody knows. */
export type TaxesOf = (job: JobState) => readonly TaxPart[] | undefined;

export interface Turnover {
  /** Tax in it. */
  readonly gross: Exact;
  /** Before tax; of what is known. */
  readonly net: Exact;
  readonly tax: Exact;
  /** So much of `gross` is of jobs whose tax is not known: it is neither in `net` nor in `tax`. */
  readonly unknown: Exact;
}

export interface QuarterRow extends Quarter {
  readonly invoiced: Turnover;
  /** With what clients kept back as the firm’s tax: it is paid for the firm. */
  readonly paid: Turnover;
}

const NOTHING: Turnover = { gross: ZERO, net: ZERO, tax: ZERO, unknown: ZERO };

/** The earliest first. Jobs of one currency. */
export function quarters(jobs: readonly JobState[], taxesOf: TaxesOf): QuarterRow[] {
  const rows = new Map<string, { -readonly [key in keyof QuarterRow]: QuarterRow[key] }>();
  const known = new Map<string, Quarter>();
  for (const job of jobs)
    for (const kind of ['invoiced', 'paid'] as const)
      for (const { date, turnover } of turnovers(job, kind, taxesOf)) {
        const key = `${date} ${job.setting.quarter}`;
        const quarter = known.get(key) ?? quarterOf(date, job.setting.quarter);
        known.set(key, quarter);
        const row = rows.get(quarter.from) ?? { ...quarter, invoiced: NOTHING, paid: NOTHING };
        row[kind] = added(row[kind], turnover);
        rows.set(quarter.from, row);
      }
  return [...rows.values()].sort((a, b) => (a.from < b.from ? -1 : 1));
}

export function added(a: Turnover, b: Turnover): Turnover {
  const add = (one: Exact, other: Exact) => (other === ZERO ? one : one.add(other));
  return {
    gross: add(a.gross, b.gross),
    net: add(a.net, b.net),
    tax: add(a.tax, b.tax),
    unknown: add(a.unknown, b.unknown),
  };
}

interface Dated {
  readonly date: string;
  readonly turnover: Turnover;
}

function turnovers(job: JobState, kind: 'invoiced' | 'paid', taxesOf: TaxesOf): Dated[] {
  const entries = job.taken.filter((entry) => entry.kind === kind);
  if (!entries.length) return [];
  const parts = partsOf(job, taxesOf);
  const { digits } = job.setting.env.money;
  let [sum, base] = [ZERO, ZERO];
  return entries.map(({ date, value, kept }: Taken) => {
    const gross = kept === ZERO ? value : value.add(kept);
    if (!parts) return { date, turnover: notKnown(gross) };
    sum = sum.add(gross);
    const before = base;
    base = baseOf(sum, parts, digits);
    const net = base.sub(before);
    return { date, turnover: { gross, net, tax: gross.sub(net), unknown: ZERO } };
  });
}

function partsOf(job: JobState, taxesOf: TaxesOf): readonly TaxPart[] | undefined {
  return (job.summary.taxes ? undefined : job.setting.tax) ?? taxesOf(job);
}

function notKnown(gross: Exact): Turnover {
  return { ...NOTHING, gross, unknown: gross };
}

/**
 * What of an amount is before tax. Asked of running totals, as an invoice of a part of the job is made out: each is what
 * there is up to it, less what there was before, so that all of a job’s invoices add up.
 */
function baseOf(sum: Exact, parts: readonly TaxPart[], digits: number): Exact {
  if (parts.every(({ rate }) => rate.isZero())) return sum;
  return parts.reduce((net, { share }) => net.add(roundTo(share.mul(sum), digits)), ZERO);
}

/** Bases of a price, each as a part of the price with its tax. */
export function shareOfTotal(
  taxes: readonly { readonly base: Exact; readonly rate: Exact }[],
): readonly TaxPart[] | undefined {
  const total = taxes.reduce(
    (sum, { base, rate }) => sum.add(base).add(base.mul(rate).div(HUNDRED)),
    ZERO,
  );
  if (total.lte(0)) return undefined;
  return taxes.map(({ base, rate }) => ({ share: base.div(total), rate }));
}
