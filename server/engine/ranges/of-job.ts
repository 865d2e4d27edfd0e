/** The spread of a job’s price: sampled from the sums that its terms keep, and from work laid again where they do not say. */
import type { Needs, Work } from '../brickwork/needs';
import { type Gang, gangOf } from '../labour/gang';
import type { JobPrice } from '../price/total';
import type { Env } from '../resolve/env';
import { fact, type Term } from '../working/term';
import type { SourceFile } from '../workspace/source';
import { lanesOfRuns } from './again';
import { sharesOf } from './alone';
import { type Ranged, rangesIn } from './found';
import { type Lanes, Samples, Unfollowed } from './lanes';
import { Places } from './places';
import { RUNS, SAMPLES } from './points';
import { endsOf } from './spread';

/** What the sampling asks of a job. */
export interface Sampled {
  readonly env: Env;
  readonly gang: Gang;
  readonly works: readonly Work[];
  readonly price: JobPrice;
  readonly scope: { readonly files: readonly SourceFile[] };
  plainOf(work: Work): ReadonlySet<object>;
  needsAt(work: Work, at: { readonly env: Env; readonly gang: Gang }): Needs | undefined;
  priceAt(needs: readonly Needs[], env: Env): JobPrice;
}

/** A range, and how much of the spread is its alone, 0 to 1. */
export interface RangeShare extends Ranged {
  readonly share: number;
}

export interface Spread {
  /** In eight of ten jobs alike the price lies between the two. */
  readonly low: Term;
  readonly high: Term;
  /** The one that most hangs on first; those that move nothing are left out. */
  readonly ranges: readonly RangeShare[];
}

/** Every range of a job, where the samples lie in them, and the price in every sample. */
export interface Sampling {
  readonly ranges: readonly Ranged[];
  readonly places: Places;
  readonly prices: Lanes;
}

/** Nothing where the job holds no range. */
export function samplingOf(job: Sampled, runs: Runs): Sampling | undefined {
  const ranges = rangesOf(job);
  if (!ranges.length) return undefined;
  const again = new Set(job.works.flatMap((work) => againFor(work, job)));
  const places = new Places(ranges, (said) => again.has(said));
  return pricesOf(job, ranges, places, runs);
}

/** Nothing where no range moves the price. */
export function spreadOf(job: Sampled, runs: Runs): Spread | undefined {
  const sampling = samplingOf(job, runs);
  if (!sampling) return undefined;
  const { low, high } = endsOf(sampling.prices);
  if (low === high) return undefined;
  return {
    low: price('low', low, job),
    high: price('high', high, job),
    // Asked for less often than the ends, and dearer.
    get ranges() {
      return shares(sampling);
    },
  };
}

function rangesOf({ works, scope }: Pick<Sampled, 'works' | 'scope'>): readonly Ranged[] {
  const book = scope.files.filter((file) => !file.shipped).flatMap((file) => file.blocks);
  return [...new Set([...works.map((w) => w.block), ...book])].flatMap(rangesIn);
}

/** All that work which is laid again may hang on: its own ranges, those it was laid out by, and those of the book. */
function againFor(work: Work, job: Sampled): readonly object[] {
  if (!work.needs.opened) return [];
  const own = rangesOf({ works: [work], scope: job.scope });
  return [...job.plainOf(work), ...own.map(({ key }) => key)];
}

function price(what: string, value: number, { env }: Sampled): Term {
  return fact(`${what} price`, value.toFixed(env.money.digits), env.money.code);
}

function shares({ ranges, places, prices }: Sampling): RangeShare[] {
  const found = sharesOf(
    prices,
    ranges.map((r) => places.pointsOf(r.key)),
  );
  const all = ranges.map((r, i) => ({ ...r, share: found[i]! }));
  return all.filter((r) => r.share >= TOO_LITTLE).sort((a, b) => b.share - a.share);
}

/** Less than anyone would be told of: what the sampling itself leaves of a range that moves nothing. */
const TOO_LITTLE = 0.005;

function pricesOf(job: Sampled, ranges: readonly Ranged[], places: Places, runs: Runs): Sampling {
  try {
    const given = job.works.flatMap((work) => runs.of(work, job, ranges, places));
    const known = runs.knownIn(places);
    const samples = new Samples(SAMPLES, (r) => places.valuesOf(r), new Map(given), known);
    return { ranges, places, prices: samples.lanesOf(job.price.total) };
  } catch (fault) {
    if (!(fault instanceof Unfollowed)) throw fault;
    return wholeRuns(job, ranges);
  }
}

/** The whole job again and again, where nothing less will do. */
function wholeRuns(job: Sampled, ranges: readonly Ranged[]): Sampling {
  const places = new Places(ranges, () => true);
  const totals = Array.from({ length: RUNS }, (_, run) => {
    const at = pickedIn(job, places, run);
    const needs = job.works.map((work) => job.needsAt(work, at) ?? work.needs);
    return job.priceAt(needs, at.env).total.value.toNumber();
  });
  const prices = Float64Array.from({ length: SAMPLES }, (_, lane) => totals[lane % RUNS]!);
  return { ranges, places, prices };
}

function pickedIn({ env }: Sampled, places: Places, run: number): { env: Env; gang: Gang } {
  const at: Env = { ...env, pick: { of: (said) => places.inRun(said, run) } };
  return { env: at, gang: gangOf(at) };
}

interface Kept {
  readonly order: string;
  readonly env: Env;
  readonly lanes: readonly [Term, Lanes][];
}

/** What work came to in its runs, kept as long as the work stands and its ranges take the same points. */
export class Runs {
  private readonly kept = new WeakMap<Work, Kept>();
  private known = new WeakMap<Term, Lanes>();
  private places: Places | undefined;

  /** What was worked out of terms before, while the ranges that still stand keep their points. */
  knownIn(places: Places): WeakMap<Term, Lanes> {
    if (!this.places || !places.agreesWith(this.places)) this.known = new WeakMap();
    this.places = places;
    return this.known;
  }

  of(work: Work, job: Sampled, ranges: readonly Ranged[], places: Places): Kept['lanes'] {
    if (!work.needs.opened) return [];
    const order = places.orderOf(ranges);
    const known = this.kept.get(work);
    if (known?.order === order && known.env === job.env) return known.lanes;
    const runs = Array.from({ length: RUNS }, (_, run) =>
      job.needsAt(work, pickedIn(job, places, run)),
    );
    const lanes = lanesOfRuns(
      work.needs,
      runs.map((needs) => needs ?? work.needs),
    );
    this.kept.set(work, { order, env: job.env, lanes });
    return lanes;
  }
}
