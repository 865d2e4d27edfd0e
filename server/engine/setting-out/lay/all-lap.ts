import type { Band, LaidRun, Segment } from '../types';
import { type Courses, lapsUnder } from './clash';
import { mod } from './grid';

/** Bricks from an end of a stretch past which that end is nothing to what lies on it: more than laps are looked at from any end. */
const FAR = 8;
/** Places nearer than this are the same, mm. */
const SAME = 1e-4;

/** The longest part of a run that is one piece or pattern repeated, mm from the stretch's left end. */
interface Body {
  from: number;
  to: number;
  repeat: number;
}

/** More runs than any memory holds. */
const MOST_RUNS = 2 ** 26;

interface Seen {
  readonly number: number;
  readonly body: Body;
}

function bodyOf({ from, joint, endJoints, groups }: LaidRun): Body {
  let longest: Body = { from: 0, to: 0, repeat: 1 };
  let at = from + endJoints.left * joint;
  for (const { pieces, times } of groups) {
    let width = 0;
    for (const { count, length } of pieces) width += count * (length + joint);
    const to = at + width * times;
    const repeat = pieces.length === 1 ? pieces[0]!.length + joint : width;
    if (to - at > longest.to - longest.from) longest = { from: at, to, repeat };
    at = to;
  }
  return longest;
}

/**
 * Finds out whether all perpends of a wall lap those below by at least `lap` mm, so that nothing has to be laid again.
 * The same runs lie on one another over and over, and a short one over the middle of a long one always alike where
 * it stands alike in the long one's repeat: each way of lying on one another is looked at once.
 */
export class AllLap {
  private readonly seen = new Map<LaidRun, Seen>();
  /** Of two runs, the place or places where they lap well. */
  private readonly good = new Map<number, number | Set<number>>();

  constructor(
    private readonly brick: number,
    private readonly lap: number,
  ) {}

  /** @param cycle courses of the bond */
  holds(bands: readonly Band[], cycle: number): boolean {
    return bands.every((band, i) => i === 0 || this.laps(bands[i - 1]!.segments, band, cycle));
  }

  private laps(below: readonly Segment[], { from, segments }: Band, cycle: number): boolean {
    const courses = { mine: from % cycle, theirs: (from + cycle - 1) % cycle };
    for (let i = 0, j = 0; i < below.length && j < segments.length; ) {
      const [under, over] = [below[i]!, segments[j]!];
      const meet = under !== over && under.from < over.to && over.from < under.to;
      if (meet && !this.lapsOn(over, under, courses)) return false;
      if (under.to < over.to) i++;
      else j++;
    }
    return true;
  }

  private lapsOn(over: Segment, under: Segment, courses: Courses): boolean {
    const upper = this.look(over.runs[courses.mine % over.runs.length]!);
    const lower = this.look(under.runs[courses.theirs % under.runs.length]!);
    const pair = upper.number * MOST_RUNS + lower.number;
    const place = this.placeOf(over, upper.body, under, lower.body);
    if (this.isGood(pair, place)) return true;
    if (lapsUnder(over, under, courses, this.brick, this.lap).length > 0) return false;
    this.nowGood(pair, place);
    return true;
  }

  private look(run: LaidRun): Seen {
    let seen = this.seen.get(run);
    if (!seen) {
      seen = { number: this.seen.size, body: bodyOf(run) };
      this.seen.set(run, seen);
    }
    return seen;
  }

  private isGood(pair: number, place: number): boolean {
    const good = this.good.get(pair);
    return typeof good === 'object' ? good.has(place) : good === place;
  }

  /** Most pairs lie on one another in one way. */
  private nowGood(pair: number, place: number): void {
    const good = this.good.get(pair);
    if (typeof good === 'object') good.add(place);
    else this.good.set(pair, good === undefined ? place : new Set([good, place]));
  }

  /** How the two stand along one another: in the repeat of one whose ends are far off, else end from end. */
  private placeOf(over: Segment, upper: Body, under: Segment, lower: Body): number {
    if (this.spans(under, lower, over)) return 3 * within(lower, over.from - under.from) + 1;
    if (this.spans(over, upper, under)) return 3 * within(upper, under.from - over.from) + 2;
    return 3 * Math.round((over.from - under.from) / SAME);
  }

  /** Whether a stretch runs on unbroken in its repeat far past both ends of another. */
  private spans(long: Segment, body: Body, short: Segment): boolean {
    if (long.broken.length > 0) return false;
    const far = FAR * this.brick;
    const from = Math.max(long.from, long.from + body.from);
    const to = Math.min(long.to, long.from + body.to);
    return from < short.from - far && to > short.to + far;
  }
}

const within = ({ from, repeat }: Body, at: number) => Math.round(mod(at - from, repeat) / SAME);
