/** How a job stands on a day, by what its record says up to then. */
import { type Exact, exact, ZERO } from '../../../shared/exact';
import type { Money } from '../resolve/env';
import { type Charge, charges, unpaid } from './charges';
import type { Setting } from './setting';
import type { FiledJob, JobEntry, Written } from './summary';

export const STATES = ['not-sent', 'out', 'lost', 'in-hand', 'done', 'paid'] as const;
/** `in-hand`: won, and not all invoiced yet. `done`: all invoiced. `paid`: and nothing of it open or held back. */
export type State = (typeof STATES)[number];

/** What was asked for, came in, or is held back, in the job’s currency. */
export interface Taken {
  readonly kind: JobEntry['kind'];
  readonly date: string;
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
  const { file, summary } = job;
  const entries = inOrder(summary.entries, day);
  const { money } = setting;
  const taken: Taken[] = [];
  let foreign = 0;
  for (const entry of entries)
    if (isForeign(entry, money)) foreign += 1;
    else if (PAYING.has(entry.kind)) taken.push(takenOf(entry));
  const { price, moved } = priceOf(entries, money);
  const owing = owingOf(taken);
  const last = lastOf(entries);
  const { invoiced, paid, held, owed, open } = owing;
  // Written out: of ten thousand jobs, spreading costs as much as all else.
  return {
    file,
    summary,
    setting,
    state: stateBy(last, price, owing),
    since: last?.date ?? '',
    taken,
    price,
    priceMoved: moved,
    invoiced,
    paid,
    held,
    owed,
    open,
    leftOut: summary.unread + foreign,
  };
}

/** Most records are written in order. */
function inOrder(all: readonly JobEntry[], day: string): readonly JobEntry[] {
  const stands = all.every(({ date }, i) => date <= day && (i === 0 || all[i - 1]!.date <= date));
  return stands ? all : all.filter((entry) => entry.date <= day).sort(byDate);
}

function byDate(a: JobEntry, b: JobEntry): number {
  return a.date < b.date ? -1 : a.date > b.date ? 1 : 0;
}

/** What is owed hangs on these; what was sent or spent is no payment. */
const PAYING: ReadonlySet<string> = new Set(['invoiced', 'paid', 'retained', 'released']);

function takenOf(entry: JobEntry): Taken {
  const { kind, date, money: said, deducted } = entry;
  return { kind, date, value: exact(said![0]), kept: deducted ? exact(deducted[0]) : ZERO };
}

/** In another currency than its job. */
function isForeign({ money: said, deducted }: JobEntry, money: Money): boolean {
  return !isIn(said, money) || !isIn(deducted, money);
}

function isIn(said: Written | undefined, { sign, code }: Money): boolean {
  return said === undefined || said[1] === sign || said[1] === code;
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
  const moved =
    fixed !== undefined && after.some((e) => e.kind === 'accepted' && e.options?.length);
  const price = fixed && !isForeign(fixed, money) ? exact(fixed.money![0]) : undefined;
  return { price, moved };
}

function owingOf(taken: readonly Taken[]): Owing {
  let [invoiced, paid, held] = [ZERO, ZERO, ZERO];
  for (const { kind, value, kept } of taken) {
    if (kind === 'invoiced') invoiced = invoiced.add(value);
    else if (kind === 'paid') paid = paid.add(kept === ZERO ? value : value.add(kept));
    else held = kind === 'retained' ? held.add(value) : held.sub(value);
  }
  const owed = taken.length ? invoiced.sub(paid).sub(held) : ZERO;
  const open = owed.gt(0) ? unpaid(charges(taken), paid) : [];
  return { invoiced, paid, held, owed: owed.gt(0) ? owed : ZERO, open };
}
