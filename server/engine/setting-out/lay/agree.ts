import type { PoorLap, Segment } from '../types';
import { shortLaps, windowsOf } from './clash';
import type { Craft } from './craft';
import { brokenLap } from './craft';
import { BRICK } from './grid';
import { jointsOf } from './joints';
import type { Meetings } from './meetings';

/** Of a brick: by so much laps come short where joints of long courses and of short ones differ a little. */
const SLACK = 1 / 48;
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
  readonly again: (now: Segment, craft: Craft, places: readonly number[]) => Iterable<Segment>;
}

/** What stands in place of what was laid before, and what still laps too little. */
export interface Agreed {
  readonly instead: ReadonlyMap<Segment, Segment>;
  readonly poorLaps: readonly PoorLap[];
}

/** Lap that a sill or a head is to have, mm. */
function lapOf({ craft }: Laying): number {
  return (brokenLap(craft) / BRICK - SLACK) * craft.grid.module;
}

/** Lap below which one perpend all but stands over another, mm: an eighth of a brick, common practice. */
function leastOf(laying: Laying): number {
  return Math.min(lapOf(laying), laying.craft.grid.module / 8);
}

/**
 * Lays again those stretches whose perpends stand over others' above or below, each with an eye to
 * its neighbours as they stand, as long as anything is gained; the rest stay as they are. What is
 * left over is told.
 */
export function agree(laying: Laying): Agreed {
  const instead = new Map<Segment, Segment>();
  if (laying.craft.lap <= 0 || laying.meetings.size === 0) return { instead, poorLaps: [] };
  const first = new Map<string, Segment>();
  let left = MOST_SPENT;
  const tried = new Map<string, number>();
  let clashing = clashes(laying);
  let stirred: ReadonlySet<string> = clashing;
  for (let sweep = 0; sweep < SWEEPS && clashing.size > 0 && stirred.size > 0; sweep++) {
    const next = new Set<string>();
    for (const key of clashing) {
      if (!stirred.has(key) || left <= 0) continue;
      const now = laying.placed.get(key)!;
      const beside = besideOf(laying, now, key);
      // What no way mended before is tried again only where its neighbours have made it worse.
      if (beside <= (tried.get(key) ?? 0) + 1e-6) continue;
      left -= laying.meetings.get(key)!.length + BREAK * now.broken.length;
      const mended = improve(laying, key, now, beside);
      tried.set(key, mended.beside);
      if (mended.segment === now) continue;
      if (!first.has(key)) first.set(key, now);
      for (const { key: neighbour } of laying.meetings.get(key) ?? []) next.add(neighbour);
    }
    stirred = next;
    if (next.size > 0) clashing = clashes(laying);
  }
  for (const [key, segment] of first) instead.set(segment, laying.placed.get(key)!);
  return { instead, poorLaps: clashing.size > 0 ? poorLaps(laying) : [] };
}

/** Stretches that clash with another, each pair looked at once. */
function clashes(laying: Laying): Set<string> {
  const found = new Set<string>();
  for (const { key, other } of poorPairs(laying)) found.add(key).add(other);
  return found;
}

function* poorPairs(laying: Laying) {
  const { placed, meetings, craft } = laying;
  const lap = leastOf(laying);
  for (const [key, mine] of meetings)
    for (const meeting of mine) {
      if (!meeting.upper) continue;
      const [a, b] = [placed.get(key)!, placed.get(meeting.key)!];
      const short = shortLaps(a, b, meeting, craft.grid.module, lap);
      if (short.length > 0) yield { key, other: meeting.key, course: meeting.course, short };
    }
}

function poorLaps(laying: Laying): PoorLap[] {
  const found: PoorLap[] = [];
  for (const { course, short } of poorPairs(laying)) {
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
  const lack = lackOf(laying, lapOf(laying));
  let beside = 0;
  for (const meeting of laying.meetings.get(key) ?? []) {
    beside += lack(segment, laying.placed.get(meeting.key)!, meeting);
    if (beside >= most) break;
  }
  return beside;
}

/** What it lacks from course to course in itself. */
function ownOf(laying: Laying, segment: Segment): number {
  const lack = lackOf(laying, lapOf(laying));
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

/** Takes the first way to lay a stretch that lacks nothing, or the one that lacks least, and never one less bonded in itself. */
function improve(laying: Laying, key: string, now: Segment, lack: number): Mended {
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
  laying.placed.set(key, best.segment);
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
