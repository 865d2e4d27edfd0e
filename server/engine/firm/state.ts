/** How a job stands on a day, by what its record says up to then. */
import { type Exact, exact, ZERO } from '../../../shared/exact';
import type { Money } from '../resolve/env';
import { type Charge, charges, unpaid } from './charges';
import type { Setting } from './setting';
import type { FiledJob, JobEntry, Written } from './summary';

export const STATES = ['not-sent', 'out', 'lost', 'in-hand', 'done', 'paid'] as const;
/** `in-hand`: won, and not all invoiced yet. `done`: all invoiced. `paid`: and nothing of it open or held back. */
export type State = (typeof STATES)[number];

/** An entry whose amount is in the job’s currency. */
export interface Taken extends JobEntry {
  readonly value: Exact;
  /** Of `paid`: kept back by the client as tax; none elsewhere. */
  readonly kept: Exact;
}

export interface JobState extends FiledJob {
  readonly setting: Setting;
  readonly state: State;
  /** The day of the entry that says so. */
  readonly since: string;
  /** Entries with money, up to the day; by date, of one day as written. */
  readonly taken: readonly Taken[];
  /** Tax in it: as it was last sent, or accepted at a price. */
  readonly price?: Exact;
  /** Options were accepted later, and nobody said at which price: it is another. */
  readonly priceMoved: boolean;
  readonly invoiced: Exact;
  /** With what the client kept back as tax. */
  readonly paid: Exact;
  readonly held: Exact;
  readonly owed: Exact;
  /** What is open of it, the oldest first. */
  readonly open: readonly Charge[];
  /** Entries left out: in another currency, or lines that cannot be read. */
  readonly leftOut: number;
}

/** @param day what comes after it is left out */
export function stateOf(job: FiledJob, setting: Setting, day: string): JobState {
  const entries = job.summary.entries.filter((e) => e.date <= day).sort(byDate);
  const { money } = setting.env;
  const taken = entries.flatMap((entry) => takenIn(entry, money));
  const withMoney = entries.filter((entry) => entry.money);
  const { price, moved } = priceOf(entries, money);
  const owing = owingOf(taken);
  const last = lastOf(entries);
  return {
    ...job,
    setting,
    state: stateBy(last, price, owing),
    since: last?.date ?? '',
    taken,
    price,
    priceMoved: moved,
    ...owing,
    leftOut: job.summary.unread + withMoney.length - taken.length,
  };
}

function byDate(a: JobEntry, b: JobEntry): number {
  return a.date < b.date ? -1 : a.date > b.date ? 1 : 0;
}

function takenIn(entry: JobEntry, money: Money): Taken[] {
  const value = valueOf(entry.money, money);
  const kept = entry.deducted ? valueOf(entry.deducted, money) : ZERO;
  return value && kept ? [{ ...entry, value, kept }] : [];
}

function valueOf(written: Written | undefined, { sign, code }: Money): Exact | undefined {
  if (!written) return undefined;
  return written[1] === sign || written[1] === code ? exact(written[0]) : undefined;
}

/** The entry that says how it stands: a yes holds until a no, and work and invoices show that there was one. */
function lastOf(entries: readonly JobEntry[]): JobEntry | undefined {
  const said = entries.findLastIndex(({ kind }) => kind === 'accepted' || kind === 'lost');
  const verdict = entries[said];
  if (verdict?.kind === 'accepted') return verdict;
  const since = entries.slice(said + 1);
  const shows = since.find(({ kind }) => SHOWS.has(kind));
  return shows ?? since.findLast(({ kind }) => kind === 'sent') ?? verdict;
}

const SHOWS: ReadonlySet<string> = new Set(['worked', 'invoiced', 'paid']);

type Owing = Pick<JobState, 'invoiced' | 'paid' | 'held' | 'owed' | 'open'>;

function stateBy(last: JobEntry | undefined, price: Exact | undefined, owing: Owing): State {
  if (!last) return 'not-sent';
  if (last.kind === 'sent') return 'out';
  if (last.kind === 'lost') return 'lost';
  if (!price || owing.invoiced.isZero() || owing.invoiced.lt(price)) return 'in-hand';
  return owing.owed.isZero() && owing.held.lte(0) ? 'paid' : 'done';
}

/** As `fixedPrice` of a job has it: what was sent last, or accepted at a price after that. */
function priceOf(entries: readonly JobEntry[], money: Money) {
  const at = entries.findLastIndex(
    (e) => (e.kind === 'sent' || e.kind === 'accepted') && e.money !== undefined,
  );
  const fixed = entries[at];
  const after = entries.slice(at + 1);
  const moved = fixed !== undefined && after.some((e) => e.kind === 'accepted' && e.options?.length);
  return { price: valueOf(fixed?.money, money), moved };
}

function owingOf(taken: readonly Taken[]): Owing {
  const add = (kind: string) =>
    taken.reduce((all, e) => (e.kind === kind ? all.add(e.value).add(e.kept) : all), ZERO);
  const [invoiced, paid] = [add('invoiced'), add('paid')];
  const held = add('retained').sub(add('released'));
  const owed = invoiced.sub(paid).sub(held);
  const open = owed.gt(0) ? unpaid(charges(taken), paid) : [];
  return { invoiced, paid, held, owed: owed.gt(0) ? owed : ZERO, open };
}
