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
    sill: 0,
    top: clamp(Math.floor(p.courses), courses),
    end: p.joins ?? ('butted' as const),
    opening: false,
  }));
  return [...openings, ...piers]
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

/** Courses grouped where the same things interrupt them. */
export function clearBands(spec: WallSpec, fixed: readonly Fixed[]): ClearBand[] {
  const levels = new Set([0, wholeCourses(spec)]);
  for (const f of fixed) levels.add(f.sill).add(f.top);
  const sorted = [...levels].sort((a, b) => a - b);
  return sorted.slice(1).map((to, i) => {
    const from = sorted[i]!;
    const here = fixed.filter((f) => f.sill <= from && f.top >= to);
    return { from, to, clear: clearBetween(spec, here) };
  });
}

/** Pairs that overlap along the wall and in height. */
export function clashesOf(fixed: readonly Fixed[]): { a: string; b: string }[] {
  const clashes: { a: string; b: string }[] = [];
  let open: Fixed[] = [];
  for (const f of fixed) {
    open = open.filter((o) => o.to > f.from + NOTHING);
    for (const o of open)
      if (o.sill < f.top && f.sill < o.top) clashes.push({ a: o.name, b: f.name });
    open.push(f);
  }
  return clashes;
}
