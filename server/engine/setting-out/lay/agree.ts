import type { PoorLap, Segment } from '../types';
import { shortLaps, windowsOf } from './clash';
import type { Craft } from './craft';
import { brokenLap } from './craft';
import { BRICK } from './grid';
import { jointsOf } from './joints';
import type { Meetings } from './meetings';

/** Of a brick: by so much laps come short where joints of long courses and of short ones differ a little. */
const SLACK = 1 / 48;
/** Times that stretches are looked at again. */
const SWEEPS = 3;
/** Stretches of one wall laid again, at most: no wall that anyone builds has so many that clash. */
const MOST_AGAIN = 400;
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
  let left = MOST_AGAIN;
  let clashing = clashes(laying);
  let stirred: ReadonlySet<string> = clashing;
  for (let sweep = 0; sweep < SWEEPS && clashing.size > 0 && stirred.size > 0; sweep++) {
    const next = new Set<string>();
    for (const key of clashing) {
      if (!stirred.has(key) || left-- <= 0) continue;
      const now = laying.placed.get(key)!;
      if (!improve(laying, key, now)) continue;
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

/** What a stretch lacks of lap, mm in all: with its neighbours, and from course to course in itself. */
function lackOf(laying: Laying, segment: Segment, key: string): { beside: number; own: number } {
  const { placed, meetings, craft } = laying;
  const { module: brick } = craft.grid;
  const lap = lapOf(laying);
  const lack = (other: Segment, courses: { mine: number; theirs: number }) =>
    shortLaps(segment, other, courses, brick, lap).reduce((sum, s) => sum + lap - s.lap, 0);
  let beside = 0;
  for (const meeting of meetings.get(key) ?? []) beside += lack(placed.get(meeting.key)!, meeting);
  const cycle = segment.runs.length;
  let own = 0;
  for (let mine = 0; mine < cycle && cycle > 1; mine++)
    own += lack(segment, { mine, theirs: (mine + 1) % cycle });
  return { beside, own };
}

/** Takes the first way to lay a stretch that lacks nothing, or the one that lacks least, and never one less bonded in itself. */
function improve(laying: Laying, key: string, now: Segment): boolean {
  const lack = lackOf(laying, now, key);
  if (lack.beside === 0) return false;
  let best = { segment: now, ...lack };
  const seen = new Set<string>();
  for (const segment of laying.again(now, wary(laying, now, key), placesBeside(laying, now, key))) {
    const text = JSON.stringify(segment.runs);
    if (seen.has(text)) continue;
    seen.add(text);
    if (seen.size > MOST_WAYS) break;
    const { beside, own } = lackOf(laying, segment, key);
    if (own > lack.own + 1e-6 || beside >= best.beside - 1e-6) continue;
    best = { segment, beside, own };
    if (beside === 0) break;
  }
  laying.placed.set(key, best.segment);
  return best.segment !== now;
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
