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

/** How a stretch is made of its ends. */
type Stretch = (from: number, to: number, left: EndKind, right: EndKind) => Clear;

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

/** Tells unlike pairs of ends apart by one number, all but always; the next number is tried where it does not. */
const GOLDEN = (1 + Math.sqrt(5)) / 2;
/** Stretches less long than this are nothing, mm. */
const NOTHING = 1e-6;

/** What is left of a wall between fixed points that come in order of where they start. */
export function clearBetween(
  spec: WallSpec,
  fixed: readonly Fixed[],
  stretch: Stretch = (from, to, left, right) => ({ from, to, left, right }),
): Clear[] {
  const clear: Clear[] = [];
  let from = 0;
  let left = spec.left;
  for (const f of fixed) {
    if (f.from > from + NOTHING) clear.push(stretch(from, f.from, left, f.end));
    if (f.to <= from) continue;
    from = f.to;
    left = f.end;
  }
  if (spec.length > from + NOTHING) clear.push(stretch(from, spec.length, left, spec.right));
  return clear;
}

/** Courses grouped where the same things interrupt them. A stretch that comes again, in whatever band, is one object. */
export function clearBands(spec: WallSpec, fixed: readonly Fixed[]): ClearBand[] {
  const levels = new Set([0, wholeCourses(spec)]);
  for (const f of fixed) levels.add(f.sill).add(f.top);
  const sorted = [...levels].sort((a, b) => a - b);
  const standing = standingAt(fixed);
  const again = knownAgain();
  let clear: Clear[] = [];
  return sorted.slice(1).map((to, i) => {
    const from = sorted[i]!;
    clear = clearBetween(spec, standing(from), again(clear));
    return { from, to, clear };
  });
}

/** What stands at a level, left to right, asked level by level upward: so that only what is there is looked at. */
function standingAt(fixed: readonly Fixed[]): (level: number) => readonly Fixed[] {
  const starting = new Map<number, number[]>();
  for (const [i, { sill }] of fixed.entries()) {
    const here = starting.get(sill);
    if (here) here.push(i);
    else starting.set(sill, [i]);
  }
  let standing: number[] = [];
  return (level) => {
    const still = standing.filter((i) => fixed[i]!.top > level);
    standing = merged(still, starting.get(level) ?? []);
    return standing.map((i) => fixed[i]!);
  };
}

/** Two lists in order as one. */
function merged(a: readonly number[], b: readonly number[]): number[] {
  const all: number[] = [];
  let i = 0;
  for (const each of b) {
    while (i < a.length && a[i]! < each) all.push(a[i++]!);
    all.push(each);
  }
  while (i < a.length) all.push(a[i++]!);
  return all;
}

const sameClear = (c: Clear, from: number, to: number, left: EndKind, right: EndKind) =>
  c.from === from && c.to === to && c.left === left && c.right === right;

/** Makes the stretches of one band after another, in order, those that were there before as the objects they were. */
function knownAgain(): (below: readonly Clear[]) => Stretch {
  const known = new Map<number, Clear>();
  const find: Stretch = (from, to, left, right) => {
    let place = from + to * GOLDEN;
    for (let at = known.get(place); at; at = known.get(place)) {
      if (sameClear(at, from, to, left, right)) return at;
      place = place * GOLDEN + 1;
    }
    const clear = { from, to, left, right };
    known.set(place, clear);
    return clear;
  };
  return (below) => {
    let i = 0;
    return (from, to, left, right) => {
      while (i < below.length && below[i]!.from < from) i++;
      const under = below[i];
      return under && sameClear(under, from, to, left, right) ? under : find(from, to, left, right);
    };
  };
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
