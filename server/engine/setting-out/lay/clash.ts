import type { LaidRun, Segment } from '../types';
import { firstFrom, jointsOf } from './joints';

/** Bricks on either side of an end or a break within which laps are looked at. */
const REACH = 3;
/** Places between, looked at where two stretches have unlike joints, so that their perpends drift apart. */
const BETWEEN = 8;

/** From and to, mm along the wall. */
export type Window = [number, number];

/** Which course of one stretch meets which of another. */
export interface Courses {
  readonly mine: number;
  readonly theirs: number;
}

const places = new WeakMap<Segment, readonly number[]>();

function breaksIn(segment: Segment, low: number, high: number): readonly number[] {
  if (segment.broken.length === 0) return segment.broken as readonly never[];
  let all = places.get(segment);
  if (!all) {
    all = segment.broken.map(({ at }) => at);
    places.set(segment, all);
  }
  return all.length === 0 ? all : all.slice(firstFrom(all, low), firstFrom(all, high));
}

/**
 * Where perpends of two stretches may come too near one another, as far as both go: at their ends
 * and breaks; elsewhere patterns run that are laid to lap.
 */
export function windowsOf(a: Segment, b: Segment, brick: number): Window[] {
  const low = Math.max(a.from, b.from) - brick;
  const high = Math.min(a.to, b.to) + brick;
  const reach = REACH * brick;
  const places = [
    Math.min(a.from, b.from),
    Math.max(a.from, b.from),
    Math.min(a.to, b.to),
    Math.max(a.to, b.to),
  ];
  for (const at of between(a, b, low, high)) places.push(at);
  for (const each of [a, b])
    for (const at of breaksIn(each, low - reach, high + reach)) places.push(at);
  const windows: Window[] = [];
  if (places.length > 4) places.sort((x, y) => x - y);
  for (const at of places) {
    const [from, to] = [Math.max(low, at - reach), Math.min(high, at + reach)];
    const last = windows.at(-1);
    if (to <= from) continue;
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else windows.push([from, to]);
  }
  return windows;
}

function between(a: Segment, b: Segment, low: number, high: number): number[] {
  if (Math.abs(a.runs[0]!.joint - b.runs[0]!.joint) < 1e-6) return [];
  return Array.from({ length: BETWEEN }, (_, i) => low + ((high - low) * (i + 1)) / (BETWEEN + 1));
}

/** Pairs of runs that lap well enough, with how far one stands along the other and the lap that was asked for. */
const fine = new WeakMap<LaidRun, WeakMap<LaidRun, Set<string>>>();

function fineAt(a: LaidRun, b: LaidRun): Set<string> {
  let others = fine.get(a);
  if (!others) {
    others = new WeakMap();
    fine.set(a, others);
  }
  let places = others.get(b);
  if (!places) {
    places = new Set();
    others.set(b, places);
  }
  return places;
}

/**
 * Perpends of the first that lap by less than `lap` mm where a course of one stretch lies on one of another.
 * Like stretches meet over and over in a large wall: unbroken pairs that were found good are not looked at again.
 */
export function shortLaps(
  a: Segment,
  b: Segment,
  { mine, theirs }: Courses,
  brick: number,
  lap: number,
): { at: number; lap: number }[] {
  const look = () => lapsUnder(a, b, { mine, theirs }, brick, lap);
  const [over, under] = [a.runs[mine % a.runs.length], b.runs[theirs % b.runs.length]];
  if (a.broken.length + b.broken.length > 0 || !over || !under) return look();
  const known = fineAt(over, under);
  const place = `${Math.round((b.from - a.from) * 1e4)} ${lap}`;
  if (known.has(place)) return [];
  const short = look();
  if (short.length === 0) known.add(place);
  return short;
}

/** The same, looked at afresh. */
export function lapsUnder(
  a: Segment,
  b: Segment,
  { mine, theirs }: Courses,
  brick: number,
  lap: number,
): { at: number; lap: number }[] {
  const short: { at: number; lap: number }[] = [];
  for (const [low, high] of windowsOf(a, b, brick)) {
    const under = jointsOf(b, theirs, low - lap, high + lap);
    let j = 0;
    for (const at of jointsOf(a, mine, low, high)) {
      while (j < under.length - 1 && Math.abs(under[j + 1]! - at) <= Math.abs(under[j]! - at)) j++;
      const nearest = under.length > 0 ? Math.abs(under[j]! - at) : Number.POSITIVE_INFINITY;
      if (nearest < lap) short.push({ at, lap: nearest });
    }
  }
  return short;
}
