/**
 * A length of wall taken down and built again, between toothed ends. It is laid, and what is laid is what is counted,
 * listed and drawn. Toothing runs out as often as it runs in: it is set out as long as brings what is laid nearest to so
 * many half bricks in every course.
 */

import { exact } from '../../../../shared/exact';
import { phrase, spoken } from '../../../../shared/phrase';
import {
  ALL_COURSES,
  cutList,
  rowOf,
  type SettingOut,
  setOut,
  sizeOf,
  type Tally,
  tally,
  type WallSpec,
} from '../../setting-out';
import { fact, nearest, quotient, sum, type Term } from '../../working/term';
import { brickTerms, countBricks, laidFrom, mortarOf } from '../count';
import { cutPart } from '../cuts/sheet';
import { jointsIn, limitsOf } from '../masonry';
import { bondNamedIn } from '../wall/bond';
import { BEHIND, inputsOf, isWhole, topmost } from './as-it-stands';
import type { Extent } from './extent';
import { hiddenOf } from './hidden';
import type { Rebuilt } from './rebuild';
import type { Site } from './site';

/** Nothing when it cannot be laid. */
export function wallRebuilt(extent: Extent, site: Site): Rebuilt | undefined {
  const { length, courses } = extent;
  const { thickness, masonry } = site;
  if (!length?.value.gt(0) || !courses?.value.gte(1) || !thickness || !jointsIn(masonry))
    return undefined;
  const halves = halvesIn(length, site);
  const spec = specOf(site, courses.value.toNumber());
  if (!spec || halves.value.lt(1)) return undefined;
  const out = isWhole(extent, site)
    ? setOut(topmost(spec, site.withOpenings!))
    : toothed(spec, halves.value.toNumber());
  return counted(out, extent, site);
}

function counted(out: SettingOut, extent: Extent, site: Site): Rebuilt {
  const { masonry, env } = site;
  const all = tally(out);
  const inputs = inputsOf(extent, site);
  const counts = countBricks(phrase`Bricks to build again`, [all], masonry, inputs);
  const laid = [{ tally: all, brick: masonry.brick }];
  const halves = hiddenOf(counts.bricks, site);
  return {
    bricks: counts.bricks,
    mortar: mortarOf(phrase`building again`, laid, env, laidFrom(masonry, inputs)),
    ...(halves ? { places: { halves, where: spoken(BEHIND) } } : {}),
    drawn: { settingOut: out },
    cuts: () => cutPart(masonry.brick.title, counts, cutList(out, ALL_COURSES)),
  };
}

/** To the nearest: between toothed ends no part of one comes down. */
function halvesIn(length: Term, { masonry }: Site): Term {
  const [long, , , joint] = brickTerms(masonry);
  const brick = sum(phrase`a brick and its joint`, 'mm', [long!, joint!]);
  const half = quotient(
    phrase`half a brick`,
    'mm',
    brick,
    fact(phrase`halves to a brick`, exact(2), '', long!.origin),
  );
  const parts = quotient(phrase`half bricks`, '', length, half);
  return nearest(
    phrase`half bricks long`,
    '',
    parts,
    fact(phrase`one`, exact(1), '', long!.origin),
  );
}

/** Of what is built again, all but its length. */
function specOf(site: Site, courses: number): WallSpec | undefined {
  const { masonry, stands, env, thickness } = site;
  const unit = masonry.brick.size;
  const joints = jointsIn(masonry);
  const bond = thickness && bondNamedIn(stands, thickness);
  if (!unit || !joints || !bond) return undefined;
  const limits = limitsOf(env, 'joints-accepted', masonry.jointTerms.perpend);
  const ends = { left: 'toothed', right: 'toothed' } as const;
  const none = { openings: [], piers: [] };
  return { unit, joints, bond, thickness, length: 0, courses, ...ends, ...none, limits };
}

/** Half bricks that it may be set out longer than what comes down, the likeliest first: courses run on past it. */
const RUN_ON = [0, -1, -2, 1];

function toothed(spec: WallSpec, halves: number): SettingOut {
  const { unit, joints, limits, courses, thickness } = spec;
  const row = rowOf(unit, joints.perpend, { left: 'toothed', right: 'toothed' }, limits);
  const wanted = (halves * courses * thickness) / 2;
  const tried = RUN_ON.filter((by) => halves + by >= 1).map((by) => {
    const out = setOut({ ...spec, length: sizeOf(row, halves + by) });
    return { out, off: Math.abs(bricksIn(tally(out)) - wanted) };
  });
  return tried.reduce((best, each) => (each.off < best.off - NEAR ? each : best)).out;
}

/** Nearer than this is as near, bricks. */
const NEAR = 1e-6;

/** Two half bats are a brick. */
function bricksIn({ wholes, halves, threeQuarters, closers, cuts }: Tally): number {
  const cut = cuts.reduce((all, { count }) => all + count, 0);
  return wholes + threeQuarters + (halves + closers + cut) / 2;
}
