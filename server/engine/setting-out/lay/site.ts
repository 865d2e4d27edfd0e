import { canBeFilled } from '../fit/halves';
import type { BrokenBond, Decided, Segment, WallSpec } from '../types';
import type { Clear, Fixed } from './bands';
import { clearBetween, fixedPoints } from './bands';
import type { Beside } from './composite';
import { layUnder, onePattern, openingsOver, within } from './composite';
import type { Craft } from './craft';
import { craftOf, remembered } from './craft-shelf';
import { BRICK, mod } from './grid';
import { keyOf } from './meetings';
import { layOnGrid } from './phases';
import type { LaidStretch, Match } from './stretch';
import { layStretch, matchLength, rowOf } from './stretch';
import type { Tiling } from './tiling';
import { mirror, shift } from './tiling';
import { waysAcross, waysAlone } from './ways';

/** What is worked out once for a wall, and what has been laid of it so far. */
export interface Site {
  spec: WallSpec;
  craft: Craft;
  fixed: readonly Fixed[];
  /** The wall's own pattern, from its first free end. */
  master: readonly Tiling[];
  /** Every clear stretch there would be if all openings and piers ran the whole height. */
  beside: readonly Clear[];
  alike: Map<string, LaidStretch>;
  /** What was laid for each of `beside`. */
  laidBeside: Map<Clear, LaidStretch>;
  /** By their ends, and by the stretch itself: most go on from band to band. */
  placed: Map<string | Clear, Segment>;
  /** The openings, for finding the one over a break. */
  openingAt: (at: number) => Fixed | undefined;
}

export function siteOf(spec: WallSpec): Site {
  const craft = craftOf(spec);
  const fixed = fixedPoints(spec);
  const fromRight = spec.left === 'toothed' && spec.right !== 'toothed';
  const end = fromRight ? overAll(spec, craft) : 0;
  const own = craft.tilings;
  const master = fromRight ? own.map((tiling) => mirror(tiling, end)) : own;
  // Perpends keep plumb past a step of the wall, as if it went on.
  const beside = clearBetween(
    spec,
    fixed.filter(({ step }) => !step),
  );
  const found = { alike: new Map(), laidBeside: new Map(), placed: new Map() };
  return { spec, craft, fixed, master, beside, openingAt: openingsOver(fixed), ...found };
}

/** Steps that the whole wall is set out to: what its joints make of its length, not what the best joint would. */
function overAll(spec: WallSpec, { grid }: Craft): number {
  const row = rowOf(spec.unit, spec.joints.perpend, spec, spec.limits);
  if (!canBeFilled(row, spec.length)) return toHalves(spec.length, grid.step);
  return (matchLength(row, spec.length).halves * BRICK) / 2;
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
  const cutAt = stepsOfCut(decided?.cutAt, match.halves);
  const laid = layStretch(site.craft, length, match, clear, onGrid, cutAt);
  site.alike.set(key, laid);
  return laid;
}

/** Bricks in from an end at which a cut is tried: the end itself stays as the bond has it. */
const IN_FROM_END = [1, 1.5, 2, 2.5];

function stepsOfCut(end: Decided['cutAt'], halves: number): readonly number[] {
  const width = (halves * BRICK) / 2;
  const near = IN_FROM_END.map((bricks) => bricks * BRICK).filter((at) => at < width);
  if (end === 'left') return near;
  return end === 'right' ? near.map((at) => width - at) : [];
}

/** The same for one of `beside`, which many bands run past. */
function laidBeside(site: Site, clear: Clear): LaidStretch {
  const known = site.laidBeside.get(clear);
  if (known) return known;
  const laid = layBeside(site, clear);
  site.laidBeside.set(clear, laid);
  return laid;
}

/** A stretch that runs under or over openings, or over piers. */
function layAcross(site: Site, clear: Clear, inside: readonly Clear[]): LaidStretch {
  const { craft } = site;
  const match = matchOf(site, clear);
  const { beside, under } = besideOf(site, clear, inside);
  const master = masterAt(site, clear.from);
  const onGrid = (width: number) => layUnder(craft, beside, width, clear, master, under);
  const places = under === undefined ? [] : [under];
  const key = match.fits ? unbrokenKey(craft, clear, match.halves, beside, master) : null;
  const known = key === null ? undefined : site.alike.get(key);
  if (known) return known;
  const laid = layStretch(craft, clear.to - clear.from, match, clear, onGrid, places);
  if (key !== null && laid.breaks.length === 0) site.alike.set(key, laid);
  return laid;
}

/** What a stretch hangs on whose neighbours' patterns run on from one to the next; null where they do not. */
function unbrokenKey(
  craft: Craft,
  clear: Clear,
  halves: number,
  beside: readonly Beside[],
  master: readonly Tiling[],
): string | null {
  const only = onePattern(craft, beside, (halves * BRICK) / 2, clear);
  if (!only) return null;
  const phase = (tilings: readonly Tiling[]) =>
    tilings.map(
      ({ origin, period, cells }) => `${mod(origin, period)}/${cells.map(({ width }) => width)}`,
    );
  return `past ${(clear.to - clear.from).toFixed(6)} ${clear.left} ${clear.right} ${phase(only)} ${phase(master)}`;
}

export function layClear(site: Site, clear: Clear): Segment {
  const known = site.placed.get(clear);
  if (known) return known;
  const key = keyOf(clear);
  const segment = site.placed.get(key) ?? newSegment(site, clear);
  site.placed.set(key, segment).set(clear, segment);
  return segment;
}

function besideOf(site: Site, clear: Clear, past: readonly Clear[]) {
  const beside: Beside[] = past.map((mine) => ({ clear: mine, stretch: laidBeside(site, mine) }));
  const gap = past.length > 1 ? (past[0]!.to + past[1]!.from) / 2 : null;
  const under = gap === null ? undefined : (gap - clear.from) / site.craft.grid.step;
  return { beside, under };
}

/** The stretches of `beside` that one runs past; none for one that is such a stretch itself. */
function pastOf({ beside }: Site, clear: Clear): readonly Clear[] {
  const inside = within(beside, clear);
  const alone = inside.length === 1 && inside[0]!.from === clear.from && inside[0]!.to === clear.to;
  return alone ? [] : inside;
}

function newSegment(site: Site, clear: Clear): Segment {
  const past = pastOf(site, clear);
  const across = past.length > 0;
  const laid = across ? layAcross(site, clear, past) : layBeside(site, clear);
  return segmentOf(site, clear, laid, across);
}

/** Every way to lay a stretch again with a craft that knows its neighbours, `near` the steps at which those are broken. */
export function* layAgain(
  site: Site,
  clear: Clear,
  craft: Craft,
  near: readonly number[],
): Generator<Segment> {
  const past = pastOf(site, clear);
  const across = past.length > 0;
  const match = matchOf(site, clear);
  const width = (match.halves * BRICK) / 2;
  const { under, beside } = besideOf(site, clear, past);
  const master = masterAt(site, clear.from);
  const cutAt = across ? [] : stepsOfCut(decidedFor(site.spec, clear)?.cutAt, match.halves);
  const usual = under === undefined ? cutAt : [under];
  const ways = across
    ? waysAcross(craft, beside, width, clear, master, near)
    : waysAlone(craft, width, clear, master, near);
  for (const way of ways)
    for (const places of cutsToTry(usual, match)) {
      const laid = layStretch(craft, clear.to - clear.from, match, clear, () => way, places);
      yield segmentOf(site, clear, laid, across);
    }
}

/** Where a cut that there has to be may go: where it would anyhow, or near either end, so that the rest keeps plumb. */
function cutsToTry(usual: readonly number[], { fits, halves }: Match): (readonly number[])[] {
  if (fits) return [usual];
  return [usual, ...(['left', 'right'] as const).map((end) => stepsOfCut(end, halves))];
}

function segmentOf(site: Site, clear: Clear, laid: LaidStretch, across: boolean): Segment {
  const { match, runs } = laid;
  const { from, to, left, right } = clear;
  const broken = laid.breaks.map(({ at, why }) =>
    brokenAt(site, clear.from + at * site.craft.grid.step, why, across),
  );
  return { from, to, left, right, halves: match.halves, fits: match.fits, broken, runs };
}

function brokenAt(site: Site, at: number, why: 'bond' | 'cut', across: boolean): BrokenBond {
  const opening = across ? site.openingAt(at) : undefined;
  return opening
    ? { at, why, where: 'opening', opening: opening.name }
    : { at, why, where: 'middle' };
}
