import { canBeFilled } from '../fit/halves';
import type { BrokenBond, Decided, Segment, WallSpec } from '../types';
import { Alike, type Like, type Moved } from './alike';
import { type Clear, clearBetween, type Fixed, fixedPoints } from './bands';
import {
  type Beside,
  layUnder,
  onePattern,
  openingsOver,
  type Past,
  runsThrough,
  within,
  zonesBeside,
} from './composite';
import type { Craft } from './craft';
import { craftOf, remembered } from './craft-shelf';
import { BRICK, mod } from './grid';
import { layOnGrid } from './phases';
import { nameOf } from './shelf';
import { type LaidStretch, layStretch, type Match, matchLength, rowOf } from './stretch';
import { mirror, shift, type Tiling } from './tiling';
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
  alike: Alike;
  /** What was laid for each of `beside`, by its place there. */
  laidBeside: (LaidStretch | undefined)[];
  /** By the stretch itself, which is one object in all bands. */
  placed: Map<Clear, Segment>;
  /** The openings, for finding the one over a break. */
  openingAt: (at: number) => Fixed | undefined;
}

/** A wall before its stretches are laid: its craft, its fixed points, and the bond it begins with. */
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
  const found = { alike: new Alike(), laidBeside: beside.map(() => undefined), placed: new Map() };
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

/** The wall's own pattern in the steps of a stretch. */
function masterAt({ master, craft }: Site, from: number): Moved {
  return { tilings: master, by: -toHalves(from, craft.grid.step) };
}

const movedBy = ({ tilings, by }: Moved): Tiling[] => tilings.map((tiling) => shift(tiling, by));

/** Ends nearer than this are the same end, mm. */
const SAME_END = 0.5;

/** What a reader has decided for that stretch, told by its two ends. */
export function decidedFor({ decided }: WallSpec, clear: Clear): Decided | undefined {
  if (!decided || decided.length === 0) return undefined;
  const near = (a: number, b: number) => Math.abs(a - b) < SAME_END;
  return decided.find((d) => near(d.from, clear.from) && near(d.to, clear.to));
}

function matchOf({ spec }: Site, clear: Clear, decided: Decided | undefined): Match {
  const limits = decided?.limits ?? spec.limits;
  return matchLength(rowOf(spec.unit, spec.joints.perpend, clear, limits), clear.to - clear.from);
}

function likeOf(site: Site, clear: Clear, past: Moved | null): Like {
  return { length: clear.to - clear.from, ends: clear, master: masterAt(site, clear.from), past };
}

/** A stretch between two fixed points with nothing above or below it: like ones are laid once. */
function layBeside(site: Site, clear: Clear): LaidStretch {
  const decided = decidedFor(site.spec, clear);
  const like = likeOf(site, clear, null);
  const known = decided ? undefined : site.alike.find(like);
  if (known) return known;
  const laid = layNew(site, clear, like.master, decided);
  if (!decided) site.alike.keep(like, laid);
  return laid;
}

function layNew(site: Site, clear: Clear, at: Moved, decided: Decided | undefined) {
  const { craft } = site;
  const master = movedBy(at);
  const phase = master.map(({ origin, period }) => mod(origin, period));
  const ends = `${clear.left} ${clear.right} ${phase}`;
  const onGrid = (width: number) =>
    remembered(craft, `${width} ${ends}`, () => layOnGrid(craft, width, clear, master));
  const match = matchOf(site, clear, decided);
  const cutAt = stepsOfCut(decided?.cutAt, match.halves);
  return layStretch(craft, clear.to - clear.from, match, clear, onGrid, cutAt);
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
function laidBeside(site: Site, place: number): LaidStretch {
  const known = site.laidBeside[place];
  if (known) return known;
  const laid = layBeside(site, site.beside[place]!);
  site.laidBeside[place] = laid;
  return laid;
}

/** A stretch that runs under or over openings, or over piers. Like ones are laid once where one pattern runs through. */
function layAcross(site: Site, clear: Clear, past: Past): LaidStretch {
  const decided = decidedFor(site.spec, clear);
  const match = matchOf(site, clear, decided);
  const only = match.fits && !decided ? throughAll(site, clear, past, match) : null;
  const like = only && likeOf(site, clear, only);
  const known = like && site.alike.find(like);
  if (known) return known;
  const laid = layPast(site, clear, match, past, only);
  if (like && laid.breaks.length === 0) site.alike.keep(like, laid);
  return laid;
}

function layPast(
  site: Site,
  clear: Clear,
  match: Match,
  past: Past,
  only: Moved | null,
): LaidStretch {
  const { craft } = site;
  const master = movedBy(masterAt(site, clear.from));
  const under = underOf(site, clear, past);
  const zonings = (width: number) =>
    only
      ? [[{ tilings: movedBy(only), to: Number.POSITIVE_INFINITY }]]
      : zonesBeside(clear, besideOf(site, past), width, craft.grid.step);
  const onGrid = (width: number) => layUnder(craft, zonings(width), width, clear, master, under);
  const places = under === undefined ? [] : [under];
  return layStretch(craft, clear.to - clear.from, match, clear, onGrid, places);
}

/** The pattern of all that a stretch runs past, where it is one and the same. */
function throughAll(site: Site, clear: Clear, past: Past, { halves }: Match): Moved | null {
  const width = (halves * BRICK) / 2;
  const { step } = site.craft.grid;
  const laid = (place: number) => laidBeside(site, place);
  const through = runsThrough(site.beside, laid, past, clear, width, step);
  if (through) return through;
  const tilings = onePattern(site.craft, besideOf(site, past), width, clear);
  return tilings && { tilings, by: 0 };
}

/** A stretch laid so that it agrees with those it meets; the same object each time it is asked for. */
export function layClear(site: Site, clear: Clear): Segment {
  const known = site.placed.get(clear);
  if (known) return known;
  const segment = newSegment(site, clear);
  site.placed.set(clear, segment);
  return segment;
}

/** A stretch laid as if nothing stood over or under it. */
export function layAlone(site: Site, clear: Clear): Segment {
  return segmentOf(site, clear, layBeside(site, clear), false);
}

function besideOf(site: Site, { first, end }: Past): Beside[] {
  const beside: Beside[] = [];
  for (let i = first; i < end; i++)
    beside.push({ clear: site.beside[i]!, stretch: laidBeside(site, i) });
  return beside;
}

/** Steps to the middle of the first opening that a stretch runs past; undefined where it runs past none. */
function underOf({ beside, craft }: Site, clear: Clear, { first, end }: Past): number | undefined {
  if (end - first < 2) return undefined;
  const gap = (beside[first]!.to + beside[first + 1]!.from) / 2;
  return (gap - clear.from) / craft.grid.step;
}

/** The stretches of `beside` that one runs past; none for one that is such a stretch itself. */
function pastOf({ beside }: Site, clear: Clear): Past {
  const past = within(beside, clear);
  const { from, to } = beside[past.first] ?? clear;
  const alone = past.end - past.first === 1 && from === clear.from && to === clear.to;
  return alone ? { first: 0, end: 0 } : past;
}

const isAcross = ({ first, end }: Past) => end > first;

function newSegment(site: Site, clear: Clear): Segment {
  const past = pastOf(site, clear);
  const across = isAcross(past);
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
  const across = isAcross(past);
  const decided = decidedFor(site.spec, clear);
  const match = matchOf(site, clear, decided);
  const width = (match.halves * BRICK) / 2;
  const under = underOf(site, clear, past);
  const master = movedBy(masterAt(site, clear.from));
  const cutAt = across ? [] : stepsOfCut(decided?.cutAt, match.halves);
  const usual = under === undefined ? cutAt : [under];
  const ways = across
    ? waysAcross(craft, besideOf(site, past), width, clear, master, near)
    : waysAlone(craft, width, clear, master, near);
  for (const way of ways)
    for (const places of cutsToTry(usual, match)) {
      const laid = layStretch(craft, clear.to - clear.from, match, clear, () => way, places);
      yield segmentOf(site, clear, laid, across);
    }
}

/** All that laying a stretch again hangs on beside what it lies on and bears, in words. */
export function siteWords(site: Site, clear: Clear): string {
  const { from, to, left, right } = clear;
  const { spec, fixed } = site;
  const { tilings, by } = masterAt(site, from);
  const past = besideOf(site, pastOf(site, clear)).map((each) => {
    const { clear: own, stretch } = each;
    return `${own.from} ${own.to} ${stretch.width} ${nameOf(stretch.zones)}`;
  });
  // Breaks under or over an opening are told by its name.
  const over = fixed.filter((f) => f.opening && f.from < to && f.to > from);
  const named = over.map((f) => `${f.name} ${f.from} ${f.to}`);
  const laid = [spec.limits, decidedFor(spec, clear) ?? null, named, past];
  return `${from} ${to} ${left} ${right} ${by} ${nameOf(tilings)} ${JSON.stringify(laid)}`;
}

/** Where a cut that there has to be may go: where it would anyhow, or near either end, so that the rest keeps plumb. */
function cutsToTry(usual: readonly number[], { fits, halves }: Match): (readonly number[])[] {
  if (fits) return [usual];
  return [usual, ...(['left', 'right'] as const).map((end) => stepsOfCut(end, halves))];
}

function segmentOf(site: Site, clear: Clear, laid: LaidStretch, across: boolean): Segment {
  const { match, runs } = laid;
  const { from, to, left, right } = clear;
  const broken = laid.breaks.length === 0 ? UNBROKEN : brokenOf(site, clear, laid, across);
  return { from, to, left, right, halves: match.halves, fits: match.fits, broken, runs };
}

/** Most stretches share it. */
const UNBROKEN: Segment['broken'] = [];

function brokenOf(site: Site, clear: Clear, { breaks }: LaidStretch, across: boolean) {
  const { step } = site.craft.grid;
  return breaks.map(({ at, why }) => brokenAt(site, clear.from + at * step, why, across));
}

function brokenAt(site: Site, at: number, why: 'bond' | 'cut', across: boolean): BrokenBond {
  const opening = across ? site.openingAt(at) : undefined;
  return opening
    ? { at, why, where: 'opening', opening: opening.name }
    : { at, why, where: 'middle' };
}
