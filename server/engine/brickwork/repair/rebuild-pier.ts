/** The topmost courses of a pier, taken down and built again by its plan. */
import { phrase } from '../../../../shared/phrase';
import { defaultTerm } from '../../resolve/env';
import {
  type CoursePlan,
  type CutPlace,
  cutsInPier,
  type PierPlan,
  tallyPier,
} from '../../setting-out';
import { fact, product, type Term } from '../../working/term';
import { countBricks, laidFrom, mortarOf } from '../count';
import { cutPart } from '../cuts/sheet';
import { jointsIn } from '../masonry';
import { coreConcrete } from '../pier/core';
import { sideTerms } from '../pier/plan-terms';
import { massOf } from './capping';
import type { Extent } from './extent';
import type { PierSite } from './pier-site';
import type { Rebuilt } from './rebuild';
import type { Site } from './site';

/** Nothing when it is not known how much of it comes down. */
export function pierRebuilt(extent: Extent, site: Site, pier: PierSite): Rebuilt | undefined {
  const { masonry, env } = site;
  const unit = masonry.brick.size!;
  const joints = jointsIn(masonry)!;
  const high = extent.courses;
  const courses = Math.min(high?.value.toNumber() ?? 0, pier.spec.courses);
  if (!high || courses < 1) return undefined;
  const lowest = pier.high === undefined ? 0 : pier.high - courses;
  const range = { from: lowest, to: lowest + courses };
  const all = tallyPier(pier.spec, unit, joints, range);
  const inputs = [high, ...sideTerms(pier.facts)];
  const counts = countBricks(phrase`Bricks to build again`, [all], masonry, inputs);
  const laid = [{ tally: all, brick: masonry.brick }];
  const plan = { ...pier.spec, courses };
  const from = laidFrom(masonry, inputs);
  const placed = pier.placed && turned(pier.placed, lowest);
  return {
    bricks: counts.bricks,
    mortar: mortarOf(phrase`building again`, laid, env, from),
    ...concreteOf(pier, plan, from, site),
    places: { halves: inCore(pier, high), where: phrase`in the core` },
    cuts: () => cutPart(masonry.brick.title, counts, cutsFrom(pier.spec, range)),
    drawn: { pier: { plan, unit, joints, placed, coreHalves: pier.coreHalves * courses } },
  };
}

/** What is cut for some of its courses, counted from the lowest of them. */
function cutsFrom(spec: PierPlan, range: { from: number; to: number }): CutPlace[] {
  const shift = ({ from, to }: CutPlace) => ({ from: from - range.from, to: to - range.from });
  return cutsInPier(spec, range).map((place) => ({ ...place, ...shift(place) }));
}

function inCore({ coreHalves, facts }: PierSite, courses: Term): Term {
  const each = fact(phrase`halves that a course hides`, coreHalves, '', facts.line('size')?.origin);
  return product(phrase`halves in the core`, '', [courses, each]);
}

/** Concrete in its core comes down with it, and is placed again. */
function concreteOf(
  pier: PierSite,
  plan: PierPlan,
  from: readonly Term[],
  site: Site,
): Pick<Rebuilt, 'mixes' | 'blocks'> {
  const need = pier.bonded ? undefined : coreConcrete(pier.facts, site.env, plan, from);
  if (!need) return {};
  const density = defaultTerm(site.env, 'precast-density', 'density', phrase`density of concrete`);
  const mass = massOf(phrase`old concrete`, need.litres, density, site);
  return { mixes: [need], blocks: [{ volume: need.litres, mass }] };
}

/** The plan of the lowest of them first. */
function turned(courses: readonly CoursePlan[], from: number): CoursePlan[] {
  return courses.map((_, i) => courses[(i + from) % courses.length]!);
}
