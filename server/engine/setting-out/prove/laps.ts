/** One course on another: how far perpends lap, and that none stands over one where the bond forbids it. */
import { baysOf } from './bays';
import { closerFinder } from './closers';
import {
  type BrokenPlace,
  type BuiltCourse,
  type LayoutFault,
  MOST_TOLD,
  type ProofRules,
  SAME,
} from './types';

/** A joint between two pieces of one course, mm: its middle and its width. */
export interface Perpend {
  readonly at: number;
  readonly width: number;
}

/** Joints between pieces of one stretch, in order. A plain end against other work is none of the bond's. */
function perpendsOf(course: BuiltCourse): Perpend[] {
  return baysOf(course).bays.flatMap(({ pieces }) =>
    pieces.slice(1).map((piece, i) => {
      const before = pieces[i]!.to;
      return { at: (before + piece.from) / 2, width: Math.max(0, piece.from - before) };
    }),
  );
}

/** Judges `upper` over `lower`; `at` of a fault is the perpend of the upper course. */
export function proveLaps(
  lower: BuiltCourse,
  upper: BuiltCourse,
  rules: ProofRules,
): LayoutFault[] {
  const faults: LayoutFault[] = [];
  if (rules.lap <= 0) return faults;
  const enough = lapFinder([...(lower.broken ?? []), ...(upper.broken ?? [])]);
  const wantsCloser = closerFinder(lower, upper);
  const below = perpendsOf(lower);
  let i = 0;
  for (const joint of perpendsOf(upper)) {
    while (i < below.length - 1 && nearer(below[i + 1]!, below[i]!, joint)) i++;
    const other = below[i];
    if (!other || faults.length >= MOST_TOLD) continue;
    const lap = Math.abs(joint.at - other.at);
    const wanted = Math.min(rules.lap, enough(joint.at));
    if (lap >= wanted - SAME) continue;
    const straight = lap < (joint.width + other.width) / 2 - SAME || lap < SAME;
    const bare = wantsCloser(Math.min(joint.at, other.at), Math.max(joint.at, other.at));
    const kind = bare ? 'closer-missing' : straight ? 'aligned' : 'lap-short';
    faults.push({ kind, course: upper.course, at: joint.at, measured: lap, wanted });
  }
  return faults;
}

/** Perpends come in order, so the nearest one below moves only to the right. */
function nearer(next: Perpend, now: Perpend, { at }: Perpend): boolean {
  return Math.abs(next.at - at) <= Math.abs(now.at - at);
}

/** The least lap that is enough at a place, asked from left to right; Infinity where nothing is broken. */
function lapFinder(places: readonly BrokenPlace[]): (at: number) => number {
  const laps = [...new Set(places.map(({ lap }) => lap))].sort((a, b) => a - b);
  const finders = laps.map((lap) => ({ lap, has: placeFinder(places, lap) }));
  return (at) => {
    const [least] = finders.filter(({ has }) => has(at));
    return least?.lap ?? Number.POSITIVE_INFINITY;
  };
}

/** Whether one of the places with this lap takes in a point, asked from left to right. */
function placeFinder(all: readonly BrokenPlace[], lap: number): (at: number) => boolean {
  const places = all.filter((place) => place.lap === lap).sort((a, b) => a.from - b.from);
  let i = 0;
  let reach = Number.NEGATIVE_INFINITY;
  return (at) => {
    for (; i < places.length && places[i]!.from <= at; i++) reach = Math.max(reach, places[i]!.to);
    return at <= reach;
  };
}
