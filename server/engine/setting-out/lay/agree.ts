import type { JointLimits, PoorLap, Segment } from '../types';
import { shortLaps, windowsOf } from './clash';
import type { Craft } from './craft';
import { jointsOf } from './joints';
import { leastLapOf, stillLapOf, wholeLapOf } from './least-laps';
import type { Meetings } from './meetings';
import { growPlumb } from './plumb/grow';
import { Answers, nameOf } from './shelf';
import { mendedByUnfit } from './unfit';

/** Times that stretches are looked at again: a third time hardly ever gains anything. */
const SWEEPS = 2;
/**
 * Work spent on laying stretches of one wall again, each counted by what it lies on and bears and where it is broken:
 * no wall that anyone builds has so many that clash. Protects the tool.
 */
const MOST_SPENT = 600;
const BREAK = 5;
/** Ways tried for one of them. */
const MOST_WAYS = 6;
/** Poor laps told of one wall. */
const MOST_TOLD = 200;

/** What is laid, and how to lay one stretch otherwise, with a craft that knows its neighbours and where they are broken. */
export interface Laying {
  readonly craft: Craft;
  /** By {@link keyOf}, among others. */
  readonly placed: Map<unknown, Segment>;
  readonly meetings: Meetings;
  readonly limits: JointLimits;
  readonly again: (now: Segment, craft: Craft, places: readonly number[]) => Iterable<Segment>;
  /** All that this hangs on beside its neighbours, in words. */
  readonly site: (now: Segment) => string;
  /** The stretch that runs past one, laid as if the wall had no openings. */
  readonly wholeOf: (now: Segment) => Segment | null;
}

/** What stands in place of what was laid before, and what still laps too little. */
export interface Agreed {
  readonly instead: ReadonlyMap<Segment, Segment>;
  readonly poorLaps: readonly PoorLap[];
}

/**
 * Mends what perpends stand over others'. Where every stretch works in whole and half bricks, some way of laying those
 * that clash keeps all of them in bond. Where one does not, it alone is cut if that is enough: see `unfit.ts`. Else
 * they are laid in the perpends of the whole wall and cut at the reveals: see `plumb/`. What is left over is told.
 */
export function agree(laying: Laying): Agreed {
  const { placed, meetings, craft } = laying;
  if (craft.lap <= 0 || meetings.size === 0) return { instead: new Map(), poorLaps: [] };
  const first = new Map([...meetings.keys()].map((key) => [key, placed.get(key)!]));
  const works = [...first.values()].every(({ fits }) => fits);
  if (works || !unfitMended(laying, first)) mendAll(laying, works);
  const changed = [...first].filter(([key, segment]) => placed.get(key) !== segment);
  const instead = new Map(changed.map(([key, segment]) => [segment, placed.get(key)!]));
  return { instead, poorLaps: poorLaps(laying) };
}

/** All that clash alike: by other ways first where every stretch works, else by cutting. */
function mendAll(laying: Laying, works: boolean): void {
  if (works) layOtherwise(laying);
  const left = growPlumb(laying, (keys) => poorPairs(laying, stillLapOf(laying.craft), keys));
  if (left && !works) layOtherwise(laying);
}

/** Whether it was enough to cut what does not work, and to lay what does in other ways. */
function unfitMended(laying: Laying, first: ReadonlyMap<string, Segment>): boolean {
  const lap = stillLapOf(laying.craft);
  const still = (keys?: ReadonlySet<string>) => poorPairs(laying, lap, keys);
  return mendedByUnfit(laying.placed, first, {
    plumb: (may) => growPlumb(laying, still, may),
    otherwise: (may) => layOtherwise(laying, { may, lap, orNone: true }),
    clash: (both = () => true) => {
      for (const { key, other } of still()) if (both(key) && both(other)) return true;
      return false;
    },
  });
}

interface Otherwise {
  /** Which stretches; all of them when left out. */
  readonly may?: (key: string) => boolean;
  /** Those that lap by less clash, mm. */
  readonly lap?: number;
  /** Looks at each but once, and at no more as soon as two of them still clash that are looked at no more. */
  readonly orNone?: boolean;
}

/**
 * Lays again those stretches whose perpends stand over others' above or below, each with an eye to
 * its neighbours as they stand, as long as anything is gained; the rest stay as they are. False where it stopped short.
 */
function layOtherwise(laying: Laying, { may = all, lap, orNone }: Otherwise = {}): boolean {
  const sweeps = orNone ? 1 : SWEEPS;
  let left = MOST_SPENT;
  const tried = new Map<string, number>();
  let clashing = clashes(laying, lap);
  let stirred: ReadonlySet<string> = clashing;
  for (let sweep = 0; sweep < sweeps && clashing.size > 0 && stirred.size > 0; sweep++) {
    const next = new Set<string>();
    const waiting = new Set([...clashing].filter((key) => stirred.has(key) && may(key)));
    for (const key of [...waiting]) {
      if (left <= 0) continue;
      waiting.delete(key);
      left -= layOneOtherwise(laying, key, tried, next);
      if (orNone && stillClashes(laying, key, lap, (other) => may(other) && !waiting.has(other)))
        return false;
    }
    stirred = next;
    if (next.size > 0) clashing = clashes(laying, lap);
  }
  return true;
}

const all = () => true;

/** Tells what work it took; `next` then has those beside it that had better be looked at again. */
function layOneOtherwise(
  laying: Laying,
  key: string,
  tried: Map<string, number>,
  next: Set<string>,
): number {
  const now = laying.placed.get(key)!;
  const beside = besideOf(laying, now, key);
  // What no way mended before is tried again only where its neighbours have made it worse.
  if (beside <= (tried.get(key) ?? 0) + 1e-6) return 0;
  const meetings = laying.meetings.get(key)!;
  const mended = improve(laying, key, now, beside);
  tried.set(key, mended.beside);
  if (mended.segment !== now) for (const { key: neighbour } of meetings) next.add(neighbour);
  return meetings.length + BREAK * now.broken.length;
}

function stillClashes(
  laying: Laying,
  key: string,
  lap: number | undefined,
  such: (other: string) => boolean,
): boolean {
  for (const { other } of poorPairs(laying, lap, new Set([key]))) if (such(other)) return true;
  return false;
}

/** Stretches that clash with another, each pair looked at once. */
function clashes(laying: Laying, lap?: number): Set<string> {
  const found = new Set<string>();
  for (const { key, other } of poorPairs(laying, lap)) found.add(key).add(other);
  return found;
}

/** Stretches of which perpends of one lap by less than `lap` mm with the other's: all of them, or those of some that have any. */
function* poorPairs(laying: Laying, lap = leastLapOf(laying.craft), some?: ReadonlySet<string>) {
  const { placed, meetings, craft } = laying;
  for (const key of some ?? meetings.keys())
    for (const meeting of meetings.get(key) ?? []) {
      const { key: other, course, mine, theirs, upper } = meeting;
      // Each pair is found from its upper one, or from the only one that was asked for.
      if (!upper && (!some || some.has(other))) continue;
      const [a, b] = [placed.get(key)!, placed.get(other)!];
      const short = upper
        ? shortLaps(a, b, meeting, craft.grid.module, lap)
        : shortLaps(b, a, { mine: theirs, theirs: mine }, craft.grid.module, lap);
      if (short.length > 0) yield { key, other, course, short };
    }
}

function poorLaps(laying: Laying): PoorLap[] {
  const found: PoorLap[] = [];
  for (const { course, short } of poorPairs(laying, stillLapOf(laying.craft))) {
    found.push(...short.map(({ at, lap }) => ({ course, at, lap })));
    if (found.length >= MOST_TOLD) break;
  }
  return found.sort((a, b) => a.course - b.course || a.at - b.at).slice(0, MOST_TOLD);
}

/** What two courses that lie on one another lack of lap, mm in all. */
function lackOf({ craft }: Laying, lap: number) {
  const { module: brick } = craft.grid;
  return (a: Segment, b: Segment, courses: { mine: number; theirs: number }) =>
    shortLaps(a, b, courses, brick, lap).reduce((sum, s) => sum + lap - s.lap, 0);
}

/** What a stretch lacks of lap with its neighbours, mm in all; looked at no further than `most`. */
function besideOf(laying: Laying, segment: Segment, key: string, most = Number.POSITIVE_INFINITY) {
  const lack = lackOf(laying, wholeLapOf(laying.craft));
  let beside = 0;
  for (const meeting of laying.meetings.get(key) ?? []) {
    beside += lack(segment, laying.placed.get(meeting.key)!, meeting);
    if (beside >= most) break;
  }
  return beside;
}

/** What it lacks from course to course in itself. */
function ownOf(laying: Laying, segment: Segment): number {
  const lack = lackOf(laying, wholeLapOf(laying.craft));
  const cycle = segment.runs.length;
  let own = 0;
  for (let mine = 0; mine < cycle && cycle > 1; mine++)
    own += lack(segment, segment, { mine, theirs: (mine + 1) % cycle });
  return own;
}

interface Mended {
  readonly segment: Segment;
  readonly beside: number;
}

const known = new Answers<Mended>();

/** The same stretch among the same neighbours is mended alike. */
function improve(laying: Laying, key: string, now: Segment, lack: number): Mended {
  const words = `${laying.site(now)}|${nameOf(now)}|${nearWords(laying, key)}`;
  const mended = known.of(laying.craft, words, () => mendedOf(laying, key, now, lack));
  laying.placed.set(key, mended.segment);
  return mended;
}

function nearWords({ placed, meetings }: Laying, key: string): string {
  const all = meetings.get(key)!;
  return all
    .map(({ key: other, mine, theirs }) => `${mine} ${theirs} ${nameOf(placed.get(other)!)}`)
    .join();
}

/** Takes the first way to lay a stretch that lacks nothing, or the one that lacks least, and never one less bonded in itself. */
function mendedOf(laying: Laying, key: string, now: Segment, lack: number): Mended {
  const own = ownOf(laying, now);
  let best: Mended = { segment: now, beside: lack };
  const seen = new Set<string>();
  for (const segment of laying.again(now, wary(laying, now, key), placesBeside(laying, now, key))) {
    const text = JSON.stringify(segment.runs);
    if (seen.has(text)) continue;
    seen.add(text);
    if (seen.size > MOST_WAYS) break;
    const beside = besideOf(laying, segment, key, best.beside - 1e-6);
    if (beside >= best.beside - 1e-6 || ownOf(laying, segment) > own + 1e-6) continue;
    best = { segment, beside };
    if (beside === 0) break;
  }
  return best;
}

/** The craft for laying one stretch again: it knows the perpends next to it, course by course, in its own steps. */
function wary({ craft, placed, meetings }: Laying, segment: Segment, key: string): Craft {
  const beware: number[][] = craft.tilings.map(() => []);
  const { module: brick, joint, step } = craft.grid;
  const half = segment.left === 'stopped' ? joint / 2 : -joint / 2;
  for (const { key: other, mine, theirs } of meetings.get(key) ?? []) {
    const them = placed.get(other)!;
    for (const [low, high] of windowsOf(segment, them, brick))
      for (const at of jointsOf(them, theirs, low, high))
        beware[mine]!.push((at - segment.from + half) / step);
  }
  for (const perpends of beware) perpends.sort((a, b) => a - b);
  return { ...craft, breaks: new Map(), laid: new Map(), beware };
}

/** Steps from a stretch's left end at which its neighbours are broken. */
function placesBeside({ craft, placed, meetings }: Laying, segment: Segment, key: string) {
  const broken = (meetings.get(key) ?? []).flatMap((meeting) => placed.get(meeting.key)!.broken);
  const inside = broken.filter(({ at }) => at > segment.from && at < segment.to);
  const places = inside.map(({ at }) => (at - segment.from) / craft.grid.step);
  return [...new Set(places)].slice(0, MOST_PLACES);
}

/** A long stretch past many openings is not tried with a break at every one of its neighbours'. */
const MOST_PLACES = 12;
