/** Turnover and tax by quarter: of what was invoiced, and of what was paid. */
import { type Exact, HUNDRED, roundTo, ZERO } from '../../../shared/exact';
import { taxOn } from '../price/document-totals';
import { type Quarter, quarterOf } from './days';
import type { TaxPart } from './setting';
import type { JobState, Taken } from './state';

/** How the price of a job with several rates is made up: the host may price that job alone; nothing where nobody knows. */
export type TaxesOf = (job: JobState) => readonly TaxPart[] | undefined;

export interface Turnover {
  /** Tax in it. */
  readonly gross: Exact;
  /** Less the tax; of what is known. */
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

/** The earliest first. Jobs of one currency. */
export function quarters(jobs: readonly JobState[], taxesOf: TaxesOf): QuarterRow[] {
  const rows = new Map<string, Quarter & { readonly invoiced: Sum; readonly paid: Sum }>();
  const known = new Map<string, Quarter>();
  for (const job of jobs)
    for (const kind of ['invoiced', 'paid'] as const)
      for (const { date, gross, net } of turnovers(job, kind, taxesOf)) {
        const key = `${date} ${job.setting.quarter}`;
        const quarter = known.get(key) ?? quarterOf(date, job.setting.quarter);
        known.set(key, quarter);
        const row = rows.get(quarter.from) ?? { ...quarter, invoiced: new Sum(), paid: new Sum() };
        rows.set(quarter.from, row);
        row[kind].add(gross, net);
      }
  return [...rows.values()]
    .map(({ from, to, invoiced, paid }) => ({ from, to, invoiced: invoiced.all, paid: paid.all }))
    .sort((a, b) => (a.from < b.from ? -1 : 1));
}

class Sum {
  private known = ZERO;
  private net = ZERO;
  private unknown = ZERO;

  /** Without a `net` its tax is not known. */
  add(gross: Exact, net: Exact | undefined): void {
    if (!net) this.unknown = this.unknown.add(gross);
    else {
      this.known = this.known.add(gross);
      this.net = this.net.add(net);
    }
  }

  get all(): Turnover {
    const { known, net, unknown } = this;
    return { gross: known.add(unknown), net, tax: known.sub(net), unknown };
  }
}

interface Dated {
  readonly date: string;
  readonly gross: Exact;
  readonly net?: Exact;
}

function turnovers(job: JobState, kind: 'invoiced' | 'paid', taxesOf: TaxesOf): Dated[] {
  const entries = job.taken.filter((entry) => entry.kind === kind);
  if (!entries.length) return [];
  const parts = partsOf(job, taxesOf);
  const { digits } = job.setting.money;
  const taxed = parts && new Running(parts, digits);
  return entries.map(({ date, value, kept }: Taken) => {
    const gross = plus(value, kept);
    return { date, gross, net: taxed && gross.sub(taxed.next(gross)) };
  });
}

/** Most have nothing to add: of ten thousand jobs that is worth a look. */
function plus(a: Exact, b: Exact): Exact {
  return b === ZERO ? a : a.add(b);
}

function partsOf(job: JobState, taxesOf: TaxesOf): readonly TaxPart[] | undefined {
  return (job.summary.taxes ? undefined : job.setting.tax) ?? taxesOf(job);
}

/**
 * The tax in one amount after another, as on an invoice of a part of the job: each rate’s base is reckoned on running totals,
 * so that all of a job’s invoices add up, and the tax on what it grew by.
 */
class Running {
  private sum = ZERO;
  private bases: readonly Exact[];

  constructor(
    private readonly parts: readonly TaxPart[],
    private readonly digits: number,
  ) {
    this.bases = parts.map(() => ZERO);
  }

  next(gross: Exact): Exact {
    this.sum = plus(gross, this.sum);
    const before = this.bases;
    this.bases = this.parts.map(({ share, rate }) =>
      rate.isZero() ? ZERO : roundTo(share.mul(this.sum), this.digits),
    );
    const [first, ...others] = this.parts.map(({ rate }, i) => {
      const base = this.bases[i]!;
      return taxOn(before[i] === ZERO ? base : base.sub(before[i]!), rate, this.digits);
    });
    return others.reduce((tax, part) => tax.add(part), first ?? ZERO);
  }
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
