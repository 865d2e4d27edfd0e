/** What there is to say of a wall beside its counts: what stands in the way, what does not work, what is not safe. */

import { dpcOff } from '../../findings/dpc';
import { idleFits } from '../../findings/fit/fit-idle';
import { openingWidth } from '../../findings/heads/opening-width';
import { higherThanALift } from '../../findings/lift';
import { perpendsAligned } from '../../findings/perpends-aligned';
import type { Remark } from '../../findings/remark';
import { capOverhang } from '../../findings/tops/cap-overhang';
import { standInEachOther } from '../../findings/wall';
import type { BlockFacts } from '../../resolve/env';
import { mostCourses } from '../../setting-out';
import type { Masonry } from '../masonry';
import { besideRun, besideStanding } from '../standing/beside';
import type { CopingLaid } from '../tops/coping';
import type { WallCounts } from './counts';
import { remarkOnRuns } from './fits';
import { heightRun } from './height';
import type { WallPlan } from './spec';
import { footingRemarks } from './tops/stepped-footing';

export function wallRemarks(masonry: Masonry, plan: WallPlan, counts: WallCounts): Remark[] {
  const { facts, env } = masonry;
  const { spec } = plan;
  const runs: Remark[] = [];
  remarkOnRuns(counts.runs, masonry, runs);
  const others = [
    ...plan.openings.map((o) => openingWidth(o, plan, masonry)),
    ...plan.piers.map((p) => capOverhang(p.facts, p.spec.width, p.spec.depth, env)),
    higherThanALift(facts, counts.out.gauge * mostCourses(plan.ground, plan.top), env),
  ];
  const { dpc } = counts;
  return [
    ...counts.out.clashes.map(({ a, b }) => standInEachOther(facts, a, b)),
    ...runs,
    ...others.filter((r): r is Remark => r !== undefined),
    ...perpendsAligned(counts.out, masonry, plan.heads),
    ...footingRemarks(masonry, plan),
    ...(dpc ? dpcOff(dpc.line, dpc.brick, spec.unit, spec.courses) : []),
  ];
}

/** Decisions of the wall itself and of each pier in it that answer nothing. */
export function decisionRemarks(
  copings: readonly CopingLaid[],
  masonry: Masonry,
  plan: WallPlan,
  counts: WallCounts,
): Remark[] {
  const { facts } = masonry;
  const gauge = besideRun(besideStanding(masonry, plan.height.term));
  const runs = counts.runs.map(({ text, fit, segment }) => ({
    name: text.name,
    open: fit.works === 'no' || segment.broken.length > 0,
  }));
  const tops = (home: BlockFacts) =>
    copings
      .filter((c) => c.run.text.home === home)
      .map((c) => ({ name: c.run.text.name, open: !c.works }));
  return [
    ...idleFits(facts, [...runs, ...tops(facts), heightRun(plan.height), ...gauge]),
    ...plan.piers.flatMap((p) => idleFits(p.facts, [...tops(p.facts), heightRun(p.height)])),
  ];
}
