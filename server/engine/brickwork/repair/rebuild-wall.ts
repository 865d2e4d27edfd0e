/**
 * A length of wall taken down and built again, between toothed ends. Toothing runs out as often as it runs in, so
 * that in any bond so many half bricks come down in every course; it is drawn as it would be laid.
 */
import { exact } from '../../../../shared/exact';
import { type BondPattern, rowOf, setOut, sizeOf, type WallSpec } from '../../setting-out';
import { fact, nearest, product, quotient, sum, type Term, up } from '../../working/term';
import { brickTerms } from '../count';
import { jointsIn, limitsOf } from '../masonry';
import { bondNamedIn } from '../wall/bond';
import { BEHIND, isWhole, wholeRebuilt } from './as-it-stands';
import type { Extent } from './extent';
import { hiddenOf } from './hidden';
import { bedded, endJoints } from './mortar';
import type { Rebuilt } from './rebuild';
import type { Site } from './site';

/** Nothing when it cannot be laid. */
export function wallRebuilt(extent: Extent, site: Site): Rebuilt | undefined {
  const { length, courses } = extent;
  const { thickness, masonry } = site;
  if (!length?.value.gt(0) || !courses?.value.gte(1) || !thickness || !jointsIn(masonry))
    return undefined;
  const halves = halvesIn(length, site);
  const spec = specOf(site, halves.value.toNumber(), courses.value.toNumber());
  if (!spec) return undefined;
  if (isWhole(extent, site)) return wholeRebuilt(extent, site, spec);
  const each = eachHalf(thickness, site);
  const all = product('bricks', 'bricks', [halves, courses, each]);
  const bricks = up('Bricks to build again', 'bricks', all);
  const hidden = hiddenOf(bricks, site);
  const mortar = bedded('building again', bricks, site);
  return {
    bricks,
    mortar: sum('building again', mortar.unit, [mortar, endJoints(courses, site)]),
    ...(hidden ? { places: { halves: hidden, where: BEHIND } } : {}),
    drawn: { settingOut: setOut(spec) },
  };
}

/** A wall has a brick to two half bricks of its length for every half brick that it is thick. */
function eachHalf(thickness: number, { stands }: Site): Term {
  const label = 'bricks to each half brick of length';
  return fact(label, exact(thickness / 2), 'bricks', stands.orDefault('thick')?.origin);
}

/** To the nearest: between toothed ends no part of one comes down. */
function halvesIn(length: Term, { masonry }: Site): Term {
  const [long, , , joint] = brickTerms(masonry);
  const brick = sum('a brick and its joint', 'mm', [long!, joint!]);
  const half = quotient(
    'half a brick',
    'mm',
    brick,
    fact('halves to a brick', exact(2), '', long!.origin),
  );
  const parts = quotient('half bricks', '', length, half);
  return nearest('half bricks long', '', parts, fact('one', exact(1), '', long!.origin));
}

function specOf(site: Site, halves: number, courses: number): WallSpec | undefined {
  const { masonry, stands, env, thickness } = site;
  const unit = masonry.brick.size;
  const joints = jointsIn(masonry);
  const bond = thickness && bondNamedIn(stands, thickness);
  if (!unit || !joints || !bond || halves < 1) return undefined;
  const limits = limitsOf(env, 'joints-accepted', masonry.jointTerms.perpend);
  const ends = { left: 'toothed', right: 'toothed' } as const;
  const row = rowOf(unit, joints.perpend, ends, limits);
  const length = sizeOf(row, Math.max(1, halves - runOn(bond)));
  const none = { openings: [], piers: [] };
  return { unit, joints, bond, thickness, length, courses, ...ends, ...none, limits };
}

/**
 * Between two toothed ends every second course of a half-lapped bond runs on half a brick at each. Set out one
 * half brick shorter, the courses are on average as long as what is taken down.
 */
function runOn({ lap }: BondPattern): number {
  return lap === 0.5 ? 1 : 0;
}
