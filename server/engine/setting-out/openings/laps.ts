/** Perpends beside what is let into a wall, and those over and under them. */
import { STILL_LAP } from '../lay/choose';
import { BRICK } from '../lay/grid';
import type { PoorLap, SettingOut, WallSpec } from '../types';
import type { Gap } from './carve';
import { lapOver, perpendsAt } from './near';

/** Bricks from an end of a gap within which anything may be cut for it. */
const REACH = 2.5;
/** Poor laps told of one wall. */
const MOST_TOLD = 200;
/** Places nearer than this are the same, mm. */
const SAME = 0.01;

const brickOf = ({ unit, joints }: WallSpec) => unit.length + joints.perpend;

/** What laps beside a gap, mm: what rules still call a lap, 41 mm of 56, or what the bond asks for if that is less. */
export function carvedLap(spec: WallSpec): number {
  const brick = brickOf(spec);
  return Math.max(0, Math.min((spec.bond.lap - 1 / 48) * brick, STILL * brick));
}

/** Of a brick. */
const STILL = (BRICK / 4 - STILL_LAP) / BRICK;

/** Where anything may be cut for the end of a gap, mm along the wall. */
export function aboutIn(spec: WallSpec, at: number) {
  const brick = brickOf(spec);
  return { low: at - REACH * brick, high: at + REACH * brick, brick };
}

/** An end of a gap, and the course it is in. */
interface End {
  readonly course: number;
  readonly at: number;
  /** The middle of the joint beside it, where it is upright. */
  readonly joint?: number;
}

function endsOf(gaps: ReadonlyMap<number, readonly Gap[]>, { joints }: WallSpec): End[] {
  return [...gaps].flatMap(([course, here]) =>
    here.flatMap(({ from, to, upright }) => [
      { course, at: from, joint: upright ? from - joints.perpend / 2 : undefined },
      { course, at: to, joint: upright ? to + joints.perpend / 2 : undefined },
    ]),
  );
}

/** Perpends of `course` about an end that lap too little over the course below. */
function poorOver({ bands, spec }: SettingOut, course: number, at: number): PoorLap[] {
  const about = aboutIn(spec, at);
  const lap = carvedLap(spec);
  const under = perpendsAt(bands, course - 1, about);
  return perpendsAt(bands, course, about).flatMap((x) => {
    const mine = lapOver(x, under);
    return mine < lap - SAME ? [{ course, at: x, lap: mine }] : [];
  });
}

/** A perpend right over or under the joint at an upright end: a straight joint two courses high. */
function poorAtEnd({ bands, spec }: SettingOut, { course, at, joint }: End): PoorLap[] {
  if (joint === undefined) return [];
  const about = aboutIn(spec, at);
  return [course - 1, course + 1].flatMap((other) => {
    const lap = lapOver(joint, perpendsAt(bands, other, about));
    return lap < spec.joints.perpend ? [{ course: Math.max(course, other), at: joint, lap }] : [];
  });
}

/** How far a place in a wall, mm from its left end, is from the nearest perpend of a course before anything was let in. */
export function lapAt(out: SettingOut, course: number, at: number): number {
  const { bands, spec } = out.uncarved ?? out;
  return lapOver(at, perpendsAt(bands, course, aboutIn(spec, at)));
}

/** What laps too little only since gaps were let in, the lowest first. */
export function newlyPoor(
  carved: SettingOut,
  before: SettingOut,
  gaps: ReadonlyMap<number, readonly Gap[]>,
): PoorLap[] {
  if (carvedLap(before.spec) <= 0) return [];
  const found: PoorLap[] = [];
  for (const end of endsOf(gaps, before.spec)) {
    found.push(...poorAtEnd(carved, end));
    for (const course of [end.course, end.course + 1]) {
      const poor = poorOver(carved, course, end.at);
      if (poor.length === 0) continue;
      const known = poorOver(before, course, end.at);
      found.push(...poor.filter((p) => !known.some((k) => isSame(k, p))));
    }
    if (found.length > MOST_TOLD) break;
  }
  return once(found)
    .slice(0, MOST_TOLD)
    .map((lap) => ({ ...lap, carved: true }));
}

/** The same of the back of a wall that has rows behind its face, where both courses have the hindmost. */
export function newlyPoorInBack(
  carved: SettingOut,
  before: SettingOut,
  gaps: ReadonlyMap<number, readonly Gap[]>,
): PoorLap[] {
  const [now, was] = [carved.rows.at(-1), before.rows.at(-1)];
  if (carved.rows.length < 2 || !now || !was) return [];
  const has = (course: number) => now.depths[course % now.depths.length]! > 0;
  const seen = [
    { ...carved, bands: now.bands },
    { ...before, bands: was.bands },
  ] as const;
  return newlyPoor(...seen, gaps)
    .filter(({ course }) => has(course) && has(course - 1))
    .map((lap) => ({ ...lap, back: true }));
}

const isSame = (a: PoorLap, b: PoorLap) => a.course === b.course && Math.abs(a.at - b.at) < SAME;

function once(laps: readonly PoorLap[]): PoorLap[] {
  const sorted = [...laps].sort((a, b) => a.course - b.course || a.at - b.at);
  return sorted.filter((lap, i) => i === 0 || !isSame(sorted[i - 1]!, lap));
}
