import { canBeFilled } from '../fit/halves';
import type { BrokenBond, Decided, Segment, SettingOut, WallSpec } from '../types';
import type { Clear, Fixed } from './bands';
import { clashesOf, clearBands, clearBetween, fixedPoints, wholeCourses } from './bands';
import type { Beside } from './composite';
import { layUnder, openingAt } from './composite';
import type { Craft } from './craft';
import { craftOf, remembered } from './craft-shelf';
import { BRICK, mod } from './grid';
import { layOnGrid } from './phases';
import type { LaidStretch } from './stretch';
import { layStretch, matchLength, rowOf } from './stretch';
import type { Tiling } from './tiling';
import { mirror, shift } from './tiling';

/** What is worked out once for a wall, and what has been laid of it so far. */
interface Site {
  spec: WallSpec;
  craft: Craft;
  fixed: readonly Fixed[];
  /** The wall's own pattern, from its first free end. */
  master: readonly Tiling[];
  /** Every clear stretch there would be if all openings and piers ran the whole height. */
  beside: readonly Clear[];
  alike: Map<string, LaidStretch>;
  placed: Map<string, Segment>;
}

function siteOf(spec: WallSpec): Site {
  const craft = craftOf(spec);
  const fixed = fixedPoints(spec);
  const fromRight = spec.left === 'toothed' && spec.right !== 'toothed';
  const end = toHalves(spec.length, craft.grid.step);
  const own = craft.tilings;
  const master = fromRight ? own.map((tiling) => mirror(tiling, end)) : own;
  const beside = clearBetween(spec, fixed);
  return { spec, craft, fixed, master, beside, alike: new Map(), placed: new Map() };
}

/** Steps nearest a length that are a whole number of half bricks. */
function toHalves(length: number, step: number): number {
  const half = BRICK / 2;
  return half * Math.round(length / (half * step));
}

function masterAt(site: Site, from: number): Tiling[] {
  const by = -toHalves(from, site.craft.grid.step);
  return site.master.map((tiling) => shift(tiling, by));
}

/** Ends nearer than this are the same end, mm. */
const SAME_END = 0.5;

function decidedFor({ decided = [] }: WallSpec, clear: Clear): Decided | undefined {
  const near = (a: number, b: number) => Math.abs(a - b) < SAME_END;
  return decided.find((d) => near(d.from, clear.from) && near(d.to, clear.to));
}

function matchOf({ spec }: Site, clear: Clear) {
  const row = rowOf(
    spec.unit,
    spec.joints.perpend,
    clear,
    decidedFor(spec, clear)?.limits ?? spec.limits,
  );
  return matchLength(row, clear.to - clear.from);
}

/** A stretch between two fixed points with nothing above or below it: like ones are laid once. */
function layBeside(site: Site, clear: Clear): LaidStretch {
  const length = clear.to - clear.from;
  const master = masterAt(site, clear.from);
  const phase = master.map(({ origin, period }) => mod(origin, period));
  const decided = decidedFor(site.spec, clear);
  const way = decided ? JSON.stringify([decided.limits, decided.cutAt]) : '';
  const key = `${length.toFixed(6)} ${clear.left} ${clear.right} ${phase} ${way}`;
  const known = site.alike.get(key);
  if (known) return known;
  const ends = `${clear.left} ${clear.right} ${phase}`;
  const onGrid = (width: number) =>
    remembered(site.craft, `${width} ${ends}`, () => layOnGrid(site.craft, width, clear, master));
  const match = matchOf(site, clear);
  const cutAt = stepsOfCut(decided, match.halves);
  const laid = layStretch(site.craft, length, match, clear, onGrid, cutAt);
  site.alike.set(key, laid);
  return laid;
}

/** Bricks in from an end at which a cut is tried: the end itself stays as the bond has it. */
const IN_FROM_END = [1, 1.5, 2, 2.5];

function stepsOfCut(decided: Decided | undefined, halves: number): readonly number[] {
  const width = (halves * BRICK) / 2;
  const near = IN_FROM_END.map((bricks) => bricks * BRICK).filter((at) => at < width);
  if (decided?.cutAt === 'left') return near;
  return decided?.cutAt === 'right' ? near.map((at) => width - at) : [];
}

/** A stretch that runs under or over openings, or over piers. */
function layAcross(site: Site, clear: Clear, inside: readonly Clear[]): LaidStretch {
  const { craft } = site;
  const match = matchOf(site, clear);
  const beside: Beside[] = inside.map((mine) => ({ clear: mine, stretch: layBeside(site, mine) }));
  const master = masterAt(site, clear.from);
  const gap = inside.length > 1 ? (inside[0]!.to + inside[1]!.from) / 2 : null;
  const under = gap === null ? undefined : (gap - clear.from) / craft.grid.step;
  const onGrid = (width: number) => layUnder(craft, beside, width, clear, master, under);
  const places = under === undefined ? [] : [under];
  return layStretch(craft, clear.to - clear.from, match, clear, onGrid, places);
}

function layClear(site: Site, clear: Clear): Segment {
  const key = `${clear.from} ${clear.to} ${clear.left} ${clear.right}`;
  const known = site.placed.get(key);
  if (known) return known;
  const inside = site.beside.filter((b) => b.from >= clear.from && b.to <= clear.to);
  const alone = inside.length === 1 && inside[0]!.from === clear.from && inside[0]!.to === clear.to;
  const across = !alone && inside.length > 0;
  const laid = across ? layAcross(site, clear, inside) : layBeside(site, clear);
  const { match, runs } = laid;
  const broken = laid.breaks.map(({ at, why }) =>
    brokenAt(site, clear.from + at * site.craft.grid.step, why, across),
  );
  const segment = { ...clear, halves: match.halves, fits: match.fits, broken, runs };
  site.placed.set(key, segment);
  return segment;
}

function brokenAt(site: Site, at: number, why: 'bond' | 'cut', across: boolean): BrokenBond {
  const opening = across ? openingAt(site.fixed, at) : undefined;
  return opening
    ? { at, why, where: 'opening', opening: opening.name }
    : { at, why, where: 'middle' };
}

/** Far above any wall, and far below where counts stop being exact. */
const MOST_COURSES = 1e7;

function makesSense(spec: WallSpec): boolean {
  const { unit, joints, limits, bond } = spec;
  const courses = wholeCourses(spec);
  const sizes = [unit.width, unit.height, unit.height + joints.bed, unit.width - joints.perpend];
  const row = rowOf(unit, joints.perpend, { left: 'stopped', right: 'stopped' }, limits);
  const laid =
    bond.courses.length > 0 && bond.courses.every(({ start }) => Number.isFinite(start ?? 0));
  return (
    canBeFilled(row, spec.length) &&
    joints.perpend >= 0 &&
    sizes.every((size) => size > 0 && Number.isFinite(size)) &&
    courses > 0 &&
    courses <= MOST_COURSES &&
    Number.isFinite(bond.lap) &&
    laid
  );
}

/**
 * Sets a wall out in runs: bands of courses interrupted alike, in each the clear stretches between
 * fixed points, in each one laid run for every course of the bond. Work and memory go with
 * interruptions and courses of the bond, never with bricks.
 *
 * Takes any numbers: what stands outside the wall is cut off at its edge, and what overlaps is told
 * in `clashes`. A wall with no length or no courses, or whose sizes make no sense, has no bands.
 */
export function setOut(spec: WallSpec): SettingOut {
  const site = siteOf(spec);
  const bands = makesSense(spec) ? clearBands(spec, site.fixed) : [];
  const { width, length, height } = spec.unit;
  return {
    spec,
    gauge: height + spec.joints.bed,
    thickness: spec.thickness === 1 ? width : length,
    clashes: clashesOf(site.fixed),
    bands: bands.map(({ from, to, clear }) => ({
      from,
      to,
      segments: clear.map((c) => layClear(site, c)),
    })),
  };
}
