/** A pier that is mended: one of the file, one of a wall, or of the size that the repair says. */
import type { Remark } from '../../findings/remark';
import type { BlockFacts } from '../../resolve/env';
import type { CoursePlan, PierPlan } from '../../setting-out';
import type { SourceBlock } from '../../workspace/source';
import { jointsIn, type Masonry } from '../masonry';
import { asHigh } from '../pier/core';
import { type Plan, planOf } from '../pier/plan';
import { heightIn } from '../wall/height';
import { wallAlone } from '../wall/meet/alone';

export interface PierSite {
  readonly name: string;
  /** Its own lines. */
  readonly facts: BlockFacts;
  /** As high as it stands; of a pier of its own as high as anyone builds, since nothing says how high it is. */
  readonly spec: PierPlan;
  /** Courses it stands high, where that is known. */
  readonly high?: number;
  /** Bonded into its wall course by course, and so laid in bricks all through. */
  readonly bonded?: boolean;
  /** Half bats that a course hides. */
  readonly coreHalves: number;
  /** Every piece of its courses on plan, the lowest first, where they can be laid. */
  readonly placed?: readonly CoursePlan[];
  readonly remarks: readonly Remark[];
}

/** Courses that a pier is planned for where nothing says its height: none is rebuilt higher. */
const HIGHEST = 10_000;

/** A pier of the file. What there is to tell of its plan is told where it stands. */
export function pierOf(masonry: Masonry): PierSite | undefined {
  const plan = planOf(masonry.facts, masonry, []);
  const height = heightIn(masonry, masonry.facts, []);
  return plan && { ...siteWith(plan, masonry, height?.courses), remarks: [] };
}

export function ownPier(masonry: Masonry): PierSite | undefined {
  const remarks: Remark[] = [];
  const plan = planOf(masonry.facts, masonry, remarks);
  return plan && { ...siteWith(plan, masonry, undefined), remarks };
}

function siteWith(plan: Plan, masonry: Masonry, high: number | undefined) {
  const bed = jointsIn(masonry)!.bed;
  return {
    name: plan.name,
    facts: masonry.facts,
    spec: asHigh(plan, masonry.brick.size!, high ?? HIGHEST, bed),
    high,
    coreHalves: halvesHidden(plan),
    placed: plan.laid?.courses,
  };
}

/** A core that is left hollow, or filled with concrete or bats, holds none of the bricks that halves would save. */
function halvesHidden({ laid, core }: Plan): number {
  const bricks = core === undefined || core === 'bricks' || core === 'halves';
  return bricks ? (laid?.coreHalves ?? 0) : 0;
}

/** As it is bonded into its wall. */
export function pierIn(block: SourceBlock, name: string, masonry: Masonry): PierSite | undefined {
  const { laid } = wallAlone(block, masonry.env);
  const pier = laid?.plan.piers.find(({ facts }) => facts.name === name);
  if (!pier) return undefined;
  const { spec, plan, attached, above } = pier;
  // Its courses above the wall are planned for themselves, and so are those that the wall bonds into.
  const placed = attached ? undefined : plan.laid?.courses;
  const coreHalves = attached && !above ? 0 : halvesHidden(plan);
  const bonded = attached !== undefined;
  return {
    name,
    bonded,
    facts: pier.facts,
    spec,
    high: spec.courses,
    coreHalves,
    placed,
    remarks: [],
  };
}
