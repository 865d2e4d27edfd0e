/** Which courses of a wall are in which brick: the damp course along the ground, the bands, and the rest. */
import type { LineFacts } from '../../resolve/env';
import {
  between,
  type CourseRange,
  type CutPlace,
  cutList,
  cutsWithin,
  inCourses,
  type SettingOut,
  type Tally,
  tally,
  tallyPier,
} from '../../setting-out';
import type { Masonry } from '../masonry';
import type { WallPlan } from './spec';

/** Courses of one stretch of the wall, over level ground: mm along it, `to` null for all that is above. */
export interface Zone {
  readonly from: number;
  readonly to: number;
  readonly courses: CourseRange;
}

export interface BandZones {
  readonly line: LineFacts;
  readonly zones: readonly Zone[];
}

export interface Zones {
  /** In the wall’s own brick. */
  readonly own: readonly Zone[];
  readonly damp: readonly Zone[];
  readonly bands: readonly BandZones[];
}

/** More bands than anyone lays: each is held against every other. */
export const MOST_BANDS = 20;

/** How many courses from the ground up the damp course is; 0 where there is none. */
export function dpcCourses(masonry: Masonry): number {
  return Math.floor(masonry.facts.line('dpc')?.number('courses') ?? 0);
}

/** The lines of bands, as far as they are taken. */
function bandLines(masonry: Masonry): readonly LineFacts[] {
  return masonry.facts.lines('band').slice(0, MOST_BANDS);
}

/** The courses a band line names, counted from the lowest ground; nothing where it says none. */
export function bandCourses(
  line: LineFacts,
  plan: WallPlan,
): { from: number; to: number } | undefined {
  const first = line.number('first');
  if (first === undefined) return undefined;
  const last = line.number('last') ?? first;
  const base = plan.ground[0]?.level ?? 0;
  const [low, high] = [Math.min(first, last), Math.max(first, last)];
  return { from: base + Math.floor(low) - 1, to: base + Math.floor(high) };
}

/** Course ranges taken one after another: what an earlier one has is not taken again. */
class Taken {
  private readonly taken: { from: number; to: number }[] = [];

  /** What of it is still free, and from then on is not. */
  take(from: number, to: number): CourseRange[] {
    const free = this.free(from, to);
    this.taken.push({ from, to });
    this.taken.sort((a, b) => a.from - b.from);
    return free;
  }

  free(from: number, to: number | null): CourseRange[] {
    const free: CourseRange[] = [];
    let at = from;
    for (const each of this.taken) {
      if (each.to <= at) continue;
      if (to !== null && each.from >= to) break;
      if (each.from > at) free.push({ from: at, to: each.from });
      at = each.to;
    }
    if (to === null || at < to) free.push({ from: at, to });
    return free;
  }
}

/** Every course of every stretch is in exactly one of them: the damp course first, then the bands in the order of their lines. */
export function zonesOf(masonry: Masonry, plan: WallPlan): Zones {
  const damp = dpcCourses(masonry);
  const lines = bandLines(masonry);
  const bands = lines.map((line) => ({ line, zones: [] as Zone[] }));
  const own: Zone[] = [];
  const low: Zone[] = [];
  for (const { from, to, level } of plan.ground) {
    const taken = new Taken();
    const at = (courses: CourseRange): Zone => ({ from, to, courses });
    if (damp > 0) low.push(...taken.take(level, level + damp).map(at));
    for (const { line, zones } of bands) {
      const courses = bandCourses(line, plan);
      const end = courses && Math.min(courses.to, plan.spec.courses);
      if (courses && end! > courses.from) zones.push(...taken.take(courses.from, end!).map(at));
    }
    own.push(...taken.free(0, null).map(at));
  }
  return { own, damp: low, bands };
}

/** What of the wall itself lies in some zones. */
export function tallyZones(out: SettingOut, zones: readonly Zone[], plan: WallPlan): Tally[] {
  const level = plan.ground.length < 2;
  const parts = new Map<number, SettingOut>();
  return zones.map(({ from, to, courses }) => {
    if (level) return tally(out, courses);
    const part = parts.get(from) ?? between(out, ...openAt(from, to, plan));
    parts.set(from, part);
    return tally(inCourses(part, courses), courses);
  });
}

/** What is to be cut in some zones of the wall itself, and where. */
export function cutsInZones(out: SettingOut, zones: readonly Zone[], plan: WallPlan): CutPlace[] {
  const level = plan.ground.length < 2;
  return zones.flatMap(({ from, to, courses }) => {
    const list = cutList(out, courses);
    return level ? list : cutsWithin(list, from, to);
  });
}

/** Farther than courses go on past the ends of their wall, mm. */
const FAR = 1e4;

/** What goes on past the ends of the wall lies in the first stretch and the last. */
function openAt(from: number, to: number, { spec }: WallPlan): [number, number] {
  return [from <= 0 ? from - FAR : from, to >= spec.length ? to + FAR : to];
}

/** What of its piers: each stands on the ground under its middle. */
export function tallyPiers(zones: readonly Zone[], plan: WallPlan): Tally[] {
  const { unit, joints } = plan.spec;
  return plan.piers.flatMap(({ spec }) => {
    const middle = spec.from + spec.width / 2;
    const base = spec.base ?? 0;
    const own = zones.filter(({ from, to }) => middle >= from && middle < to);
    return own.map(({ courses: { from, to } }) =>
      tallyPier(spec, unit, joints, { from: from - base, to: to === null ? null : to - base }),
    );
  });
}
