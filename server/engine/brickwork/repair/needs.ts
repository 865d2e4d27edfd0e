/** What a repair takes: bricks bought, its mortar and other mixes, pieces, hours, and what is taken away. */
import { daysForHeight } from '../../findings/lift';
import { laidIn } from '../../mortar/lays';
import { sum, type Term, withGaps } from '../../working/term';
import { unitNames } from '../lengths';
import type { MixNeed, Needs, TaskNeed } from '../needs';
import type { Mending } from './mending';
import type { Salvage } from './salvage';
import type { Site } from './site';
import type { Waste } from './waste';

export function needsOf(
  site: Site,
  mendings: readonly Mending[],
  { short, wanted }: Salvage,
  waste: Waste | undefined,
  tasks: readonly TaskNeed[],
): Needs {
  const { name: brick, facts, gaps, origin } = site.match;
  const bricks = short
    ? [{ brick, block: facts?.block, bricks: withGaps(short, gaps), origin }]
    : [];
  const mortar = mendings.flatMap((m) => m.mortar ?? []);
  const own = mortar.length ? [mixOf(site, mortar, wanted, tasks)] : [];
  const mixes = [...own, ...mendings.flatMap((m) => m.mixes ?? [])];
  const pieces = mendings.flatMap((m) => m.pieces ?? []);
  const leastDays = daysForHeight(highOf(mendings), site.env);
  return { bricks, mixes, pieces, tasks, leastDays, ...(waste ? { waste } : {}) };
}

/** Of what is built again, mm: no more than a lift of it goes up in a day. */
export function highOf(mendings: readonly Mending[]): number {
  const { settingOut, pier } = mendings.find((m) => m.rebuilt)?.rebuilt ?? {};
  if (settingOut) return settingOut.gauge * settingOut.spec.courses;
  return pier ? (pier.unit.height + pier.joints.bed) * pier.plan.courses : 0;
}

function mixOf(
  { masonry, env }: Site,
  mortar: readonly Term[],
  wanted: Term | undefined,
  tasks: readonly TaskNeed[],
): MixNeed {
  const { mix } = masonry;
  const litres = withGaps(sum('Mortar', unitNames(env).volume, mortar), mix.gaps);
  const lays = laidIn(litres, wanted ? [wanted] : [], tasks, masonry);
  return { mix: mix.name, block: mix.facts?.block, litres, origin: mix.origin, lays };
}
