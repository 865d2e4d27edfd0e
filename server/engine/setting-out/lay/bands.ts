import type { EndKind, WallSpec } from '../types';

/** Something the wall stops at, through a range of courses. */
export interface Fixed {
  name: string;
  from: number;
  to: number;
  sill: number;
  top: number;
  /** How brickwork ends against it. */
  end: EndKind;
  opening: boolean;
  /** Left out by a step of the wall or a movement joint: nothing stands there and nothing is named. */
  step?: boolean;
}

/** A clear stretch between fixed points. */
export interface Clear {
  from: number;
  to: number;
  left: EndKind;
  right: EndKind;
}

export interface ClearBand {
  from: number;
  to: number;
  clear: Clear[];
}

const clamp = (value: number, most: number) => Math.min(Math.max(value, 0), most);

/** Courses come whole: part of one is not laid. */
export function wholeCourses({ courses }: WallSpec): number {
  return Math.max(0, Math.floor(courses));
}

/** Every opening and pier of a wall, cut off at the wall's edges, left to right. */
export function fixedPoints(spec: WallSpec): Fixed[] {
  const { length } = spec;
  const courses = wholeCourses(spec);
  const openings = spec.openings.map((o) => ({
    name: o.name,
    from: clamp(o.from, length),
    to: clamp(o.from + o.width, length),
    sill: clamp(Math.floor(o.sill), courses),
    top: clamp(Math.floor(o.top ?? courses), courses),
    end: 'stopped' as const,
    opening: true,
  }));
  const piers = spec.piers.map((p) => ({
    name: p.name,
    from: clamp(p.from, length),
    to: clamp(p.from + p.width, length),
    sill: clamp(Math.floor(p.base ?? 0), courses),
    top: clamp(Math.floor((p.base ?? 0) + p.courses), courses),
    end: p.joins ?? ('butted' as const),
    opening: false,
  }));
  const steps = (spec.steps ?? []).map((s) => ({
    name: '',
    from: clamp(s.from, length),
    to: clamp(s.to, length),
    sill: clamp(Math.floor(s.bottom), courses),
    top: clamp(Math.floor(s.top), courses),
    end: 'stopped' as const,
    opening: false,
    step: true,
  }));
  const movement = (spec.movement ?? []).map((m) => ({
    name: '',
    from: clamp(m.from, length),
    to: clamp(m.from + m.width, length),
    sill: 0,
    top: courses,
    end: 'stopped' as const,
    opening: false,
    step: true,
  }));
  return [...openings, ...piers, ...steps, ...movement]
    .filter((f) => f.to > f.from && f.top > f.sill) // not true of NaN either
    .sort((a, b) => a.from - b.from || a.to - b.to);
}

/** Stretches less long than this are nothing, mm. */
const NOTHING = 1e-6;

/** What is left of a wall between fixed points that come in order of where they start. */
export function clearBetween(spec: WallSpec, fixed: Iterable<Fixed>): Clear[] {
  const clear: Clear[] = [];
  let from = 0;
  let left = spec.left;
  for (const f of fixed) {
    if (f.from > from + NOTHING) clear.push({ from, to: f.from, left, right: f.end });
    if (f.to <= from) continue;
    from = f.to;
    left = f.end;
  }
  if (spec.length > from + NOTHING) clear.push({ from, to: spec.length, left, right: spec.right });
  return clear;
}

/** Courses grouped where the same things interrupt them. A stretch that goes on from band to band is one object in all of them. */
export function clearBands(spec: WallSpec, fixed: readonly Fixed[]): ClearBand[] {
  const levels = new Set([0, wholeCourses(spec)]);
  for (const f of fixed) levels.add(f.sill).add(f.top);
  const sorted = [...levels].sort((a, b) => a - b);
  const standing = standingAt(fixed);
  let clear: Clear[] = [];
  return sorted.slice(1).map((to, i) => {
    const from = sorted[i]!;
    clear = asBefore(clear, clearBetween(spec, standing(from)));
    return { from, to, clear };
  });
}

/** What stands at a level, left to right, asked level by level upward: so that only what is there is looked at. */
function standingAt(fixed: readonly Fixed[]): (level: number) => Fixed[] {
  const starting = new Map<number, number[]>();
  for (const [i, { sill }] of fixed.entries()) {
    const here = starting.get(sill);
    if (here) here.push(i);
    else starting.set(sill, [i]);
  }
  let standing: number[] = [];
  return (level) => {
    const still = standing.filter((i) => fixed[i]!.top > level);
    standing = [...still, ...(starting.get(level) ?? [])].sort((a, b) => a - b);
    return standing.map((i) => fixed[i]!);
  };
}

const sameClear = (a: Clear, b: Clear) =>
  a.from === b.from && a.to === b.to && a.left === b.left && a.right === b.right;

/** Stretches in order, those that the band below has too as the objects they are there. */
function asBefore(below: readonly Clear[], clear: readonly Clear[]): Clear[] {
  let i = 0;
  return clear.map((c) => {
    while (i < below.length && below[i]!.from < c.from) i++;
    const under = below[i];
    return under && sameClear(under, c) ? under : c;
  });
}

/** Pairs that overlap along the wall and in height. */
export function clashesOf(fixed: readonly Fixed[]): { a: string; b: string }[] {
  const clashes: { a: string; b: string }[] = [];
  let open: Fixed[] = [];
  for (const f of fixed.filter(({ step }) => !step)) {
    open = open.filter((o) => o.to > f.from + NOTHING);
    for (const o of open)
      if (o.sill < f.top && f.sill < o.top) clashes.push({ a: o.name, b: f.name });
    open.push(f);
  }
  return clashes;
}
