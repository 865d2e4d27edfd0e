/** The spread of a job’s price: sampled from the sums that its terms keep, and from work laid again where they do not say. */
import { phrase } from '../../../shared/phrase';
import type { Needs } from '../brickwork/needs';
import type { Work } from '../brickwork/work';
import { type Gang, gangOf } from '../labour/gang';
import type { JobPrice } from '../price/total';
import type { Env } from '../resolve/env';
import type { Scope } from '../resolve/uses';
import { fact, type Term } from '../working/term';
import { lanesOfRuns } from './again';
import { sharesOf } from './alone';
import { type Ranged, rangesIn } from './found';
import { type Lanes, Samples, Unfollowed } from './lanes';
import { groupsOf, Places } from './places';
import { RUNS, SAMPLES } from './points';
import { betweenOf, spreadBetween } from './spread';

/** What the sampling asks of a job. */
export interface Sampled {
  readonly env: Env;
  readonly gang: Gang;
  readonly works: readonly Work[];
  readonly price: JobPrice;
  readonly scope: Pick<Scope, 'files' | 'lent'>;
  plainOf(work: Work): ReadonlySet<object>;
  needsAt(work: Work, at: { readonly env: Env; readonly gang: Gang }): Needs | undefined;
  priceAt(needs: readonly Needs[], env: Env): JobPrice;
}

/** A range, and how much of the spread is its alone, 0 to 1. */
export interface RangeShare extends Ranged {
  readonly share: number;
}

export interface Spread {
  /** In as many jobs alike as the defaults’ price-between has it, the price lies between the two. */
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
  const groups = groupsOf(job.works.map((work) => againFor(work, job)));
  const places = new Places(ranges, (said) => groups.get(said));
  return pricesOf(job, ranges, places, runs);
}

/** Nothing where no range moves the price. */
export function spreadOf(job: Sampled, runs: Runs): Spread | undefined {
  const sampling = samplingOf(job, runs);
  if (!sampling) return undefined;
  const { low, high } = spreadBetween(sampling.prices, betweenOf(job.env));
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
  const lent = scope.lent.flatMap((each) => each.blocks);
  return [...new Set([...works.map((w) => w.block), ...book, ...lent])].flatMap(rangesIn);
}

/** Ranges that work has to be laid again for: those it was laid out by. */
function againFor(work: Work, job: Sampled): ReadonlySet<object> {
  return work.needs.opened ? job.plainOf(work) : NONE;
}

const NONE: ReadonlySet<object> = new Set();

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
    const known = runs.knownIn(places);
    const given = job.works.flatMap((work) => runs.of(work, job, places));
    const samples = new Samples(SAMPLES, (r) => places.valuesOf(r), new Map(given), known);
    return { ranges, places, prices: samples.lanesOf(job.price.total) };
  } catch (fault) {
    if (!(fault instanceof Unfollowed)) throw fault;
    return wholeRuns(job, ranges);
  }
}

/** The whole job again and again, where nothing less will do. */
function wholeRuns(job: Sampled, ranges: readonly Ranged[]): Sampling {
  const places = new Places(ranges, () => 0);
  const totals = Array.from({ length: RUNS }, (_, run) => {
    const at = pickedIn(job, places, run);
    const needs = job.works.map((work) => job.needsAt(work, at) ?? work.needs);
    return job.priceAt(needs, at.env).total.value.toNumber();
  });
  const prices = Float64Array.from(places.runsOf(0), (run) => totals[run]!);
  return { ranges, places, prices };
}

function pickedIn({ env }: Sampled, places: Places, run: number): { env: Env; gang: Gang } {
  const at: Env = { ...env, pick: { of: (said) => places.inRun(said, run) } };
  return { env: at, gang: gangOf(at) };
}

interface Kept {
  readonly env: Env;
  readonly lanes: readonly [Term, Lanes][];
}

/** What was worked out before, kept as long as work stands and ranges that still stand take the same points. */
export class Runs {
  private kept = new WeakMap<Work, Kept>();
  private terms = new WeakMap<Term, Lanes>();
  private places: Places | undefined;

  /** Terms known lane by lane. */
  knownIn(places: Places): WeakMap<Term, Lanes> {
    if (this.places && !places.agreesWith(this.places)) {
      this.kept = new WeakMap();
      this.terms = new WeakMap();
    }
    this.places = places;
    return this.terms;
  }

  /** What work that is laid again comes to; nothing for other work. */
  of(work: Work, job: Sampled, places: Places): Kept['lanes'] {
    if (!work.needs.opened) return [];
    const known = this.kept.get(work);
    if (known?.env === job.env) return known.lanes;
    const needs = Array.from(
      { length: RUNS },
      (_, run) => job.needsAt(work, pickedIn(job, places, run)) ?? work.needs,
    );
    const [first] = job.plainOf(work);
    if (!first) throw new Unfollowed(phrase`${work.name} does not say how it hangs on its ranges`);
    const runs = places.runsOf(places.groupOf(first)!);
    const lanes = lanesOfRuns(work.needs, needs, runs, (range) => places.valuesOf(range));
    this.kept.set(work, { env: job.env, lanes });
    return lanes;
  }
}
