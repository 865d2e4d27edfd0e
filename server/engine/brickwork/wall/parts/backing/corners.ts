/** Where the skin behind a face ends at its corners: skins meet inside the corner, or round it, by themselves. */
import { factsOf } from '../../../../resolve/env';
import {
  backInPlace,
  begunWith,
  type Courses,
  coursesAt,
  type EndKind,
  type GivingWay,
  layCorners,
  type Parity,
  runOn,
  type SettingOut,
  type Side,
  setOut,
  tally,
} from '../../../../setting-out';
import { wallAlone } from '../../meet/alone';
import { levelCourses } from '../../meet/level';
import type { Quoin } from '../../meet/quoins';
import { type Backing, layBacking } from './lay';

/** The end of a skin at a corner of its wall. */
export interface SkinEnd {
  /** Mm that it stops short of the end of the wall; negative where it goes on round the outside. */
  readonly inset: number;
  readonly end: EndKind;
  /** Where the two skins are bonded. */
  readonly way?: GivingWay;
}

export type SkinEnds = Readonly<Partial<Record<Side, SkinEnd>>>;

/** @param gauge of the face that the skin stands behind, mm */
export function skinEnds(own: Backing, gauge: number, quoins: readonly Quoin[]): SkinEnds {
  return Object.fromEntries(quoins.map((quoin) => [quoin.side, skinEnd(own, gauge, quoin)]));
}

/**
 * Behind the other wall’s face and its cavity, where both skins are on the inner side of the corner; past the end of the wall
 * where both are on the outer. Against the other wall, or at its end, where that has no skin on the same side.
 */
function skinEnd(own: Backing, gauge: number, quoin: Quoin): SkinEnd {
  const { line, masonry } = own;
  const { side, otherSide, other, with: theirs } = quoin;
  const inside = factsOf(line.block, masonry.env)!.line(side)?.word('faces') === 'inside';
  const skin = layBacking(wallAlone(other, masonry.env).masonry, theirs.plan);
  // Fronts are on the same side of a corner where a right end meets a left one.
  if (!skin || side === otherSide)
    return inside ? { inset: 0, end: 'stopped' } : { inset: theirs.out.thickness, end: 'butted' };
  const { cavity } = skin;
  const deep = skin.out.thickness;
  const inset = inside ? 0 - cavity - deep : theirs.out.thickness + cavity;
  const way = wayBehind(own.out, gauge, skin.out, quoin);
  if (way) return { inset, end: 'stopped', way };
  // Courses that are not level are not bonded: one skin runs through, the other butts against it.
  return quoin.comesIn ? { inset: inset + deep, end: 'butted' } : { inset, end: 'stopped' };
}

/** Courses run through in turn, counted from the ground at the corner. */
function wayBehind(
  own: SettingOut,
  gauge: number,
  other: SettingOut,
  quoin: Quoin,
): GivingWay | undefined {
  const ground = coursesAt(own, quoin.side)[0]?.from ?? 0;
  const theirs = coursesAt(other, quoin.otherSide);
  const otherGround = theirs[0]?.from ?? 0;
  // On ground that is no whole course of theirs skins begin higher: by as much in both, or they are not level.
  const above = ground * own.gauge - quoin.ground * gauge;
  const otherAbove = otherGround * other.gauge - quoin.otherGround * quoin.with.out.gauge;
  if (!levelCourses(own, other) || Math.abs(above - otherAbove) > own.spec.joints.bed / 2)
    return undefined;
  const lift = ground - otherGround;
  const courses = theirs.map(({ from, to }) => ({ from: from + lift, to: to + lift }));
  const parity = ((ground + (quoin.comesIn ? 1 : 0)) % 2) as Parity;
  return { parity, by: other.thickness, courses };
}

/** The skin with its corners, measured from the end of its wall like its face. */
export function turned({ spec }: SettingOut, ends: SkinEnds): SettingOut {
  const on: Partial<Record<Side, { by: number; end: EndKind }>> = {};
  const ways: Partial<Record<Side, GivingWay>> = {};
  for (const side of ['left', 'right'] as const) {
    const at = ends[side];
    if (!at) continue;
    on[side] = { by: 0 - at.inset, end: at.end };
    if (at.way) ways[side] = at.way;
  }
  const plain = setOut(runOn(spec, on));
  const tries = spec.bond.courses.map((_, begun) => layCorners(begunWith(plain, begun), ways));
  return backInPlace(leastCut(tries), spec, on);
}

/** Begun with the course of the bond that leaves the fewest short cuts at the corners, and then the fewest cuts. */
function leastCut(tries: readonly SettingOut[]): SettingOut {
  const scored = tries.map((out) => {
    const { cuts } = tally(out);
    const cost = cuts.reduce(
      (sum, { length, count }) => sum + count * (length < out.spec.limits.leastCut ? 1e6 : 1),
      0,
    );
    return { out, cost };
  });
  return scored.reduce((a, b) => (b.cost < a.cost ? b : a)).out;
}

/** Mm² of a skin in its corners that are the other skin’s in every second course. */
export function givenAway({ gauge, spec }: SettingOut, ends: SkinEnds): number {
  const ways = Object.values(ends).flatMap(({ way }) => way ?? []);
  const high = (courses: readonly Courses[], parity: Parity) =>
    courses.reduce((sum, { from, to }) => {
      const last = Math.min(to, spec.courses);
      return sum + Math.max(0, upTo(last, parity) - upTo(Math.max(0, from), parity));
    }, 0);
  return ways.reduce((sum, way) => sum + high(way.courses, way.parity) * way.by * gauge, 0);
}

/** Of the courses below `course`, those of one parity. */
function upTo(course: number, parity: Parity): number {
  return Math.ceil((course - parity) / 2);
}
