/** What a repair takes: bricks bought, its mortar and other mixes, pieces, hours, and what is taken away. */
import { phrase } from '../../../../shared/phrase';
import { daysForHeight } from '../../findings/lift';
import { TaskOrder } from '../../labour/order';
import { laidIn, laysMortar } from '../../mortar/lays';
import { sum, type Term, withGaps } from '../../working/term';
import { unitNames } from '../lengths';
import type { MixNeed, Needs, Pace, TaskNeed } from '../needs';
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
  const own = mortar.length ? [mixOf(site, mortar, wanted, tasks, mendings)] : [];
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
  mendings: readonly Mending[],
): MixNeed {
  const { mix } = masonry;
  const litres = withGaps(sum(phrase`Mortar`, unitNames(env).volume, mortar), mix.gaps);
  const paces = pacesOf(mendings, tasks, new TaskOrder(env));
  const lays = { ...laidIn(litres, wanted ? [wanted] : [], tasks, masonry), paces };
  return { mix: mix.name, block: mix.facts?.block, litres, origin: mix.origin, lays };
}

/** Each mending goes at its own: laying takes ten times the mortar in an hour that pointing does. */
function pacesOf(
  mendings: readonly Mending[],
  tasks: readonly TaskNeed[],
  order: TaskOrder,
): readonly Pace[] {
  let from = 0;
  const all = mendings.flatMap(({ mortar, tasks: own = [] }) => {
    // The tasks of all mendings stand in their order.
    const laying = tasks.slice(from, from + own.length).filter(laysMortar);
    from += own.length;
    const hours = laying.map((task) => task.hours);
    const at = Math.max(...laying.map(({ task }) => order.placeOf(task)));
    return mortar && hours.length
      ? [{ at, litres: mortar, hours: sum(phrase`hours of laying`, 'h', hours) }]
      : [];
  });
  return all.sort((a, b) => a.at - b.at);
}
