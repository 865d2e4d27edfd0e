/** Where a wall meets others of its job, as its plans take it. */
import { phrase } from '../../shared/phrase';
import type { Work } from '../engine/brickwork/work';
import type { PlanWork, Quoin, Tee } from '../engine/drawing';
import type { SettingOut } from '../engine/setting-out';

function wallNamed(name: string, works: readonly Work[]): Work | undefined {
  return works.find((work) => work.kind === 'wall' && work.name === name);
}

/** The skin behind a wall’s face, measured from its front. */
export function behindOf({ facts: { backing } }: Work, out: SettingOut): PlanWork['behind'] {
  return backing && { out: backing.settingOut, y: out.thickness + backing.behind };
}

/** A wall as it lies on plan; nothing where it cannot be laid. */
function onPlan(work: Work | undefined, units: PlanWork['units']): PlanWork | undefined {
  const out = work?.facts.laid ?? work?.facts.settingOut;
  if (!work || !out) return undefined;
  return { out, piers: [], behind: behindOf(work, out), plinth: work.facts.plinth, units };
}

/** Corners with walls of the job that can be laid. */
export function quoinsOf({ facts }: Work, works: readonly Work[]): Quoin[] {
  return (facts.joins ?? []).flatMap((join): Quoin[] => {
    const other = wallNamed(join.wall, works);
    const laid = onPlan(other, 'millimetres');
    if (!other || !laid || join.kind !== 'quoin' || !join.otherSide) return [];
    const { side, otherSide, inside, ground, otherGround } = join;
    const { out, behind } = laid;
    const { plinth, corbel } = other.facts;
    const title = phrase`Quoin with ${other.title}`;
    const lies = { side, otherSide, inside, ground, otherGround };
    return [{ title, ...lies, other: out, behind, plinth, corbel }];
  });
}

/** Walls that it runs into, and those that run into it. */
export function teesOf(work: Work, works: readonly Work[], units: PlanWork['units']): Tee[] {
  const named = wallNamed(work.name, works) === work;
  return works.flatMap((each) =>
    (each.facts.tees ?? []).flatMap((join): Tee[] => {
      const own = each === work;
      const other = wallNamed(join.wall, works);
      if (!own && !(named && other === work)) return [];
      const [through, into] = [onPlan(other, units), onPlan(each, units)];
      if (!other || !through || !into) return [];
      const title = own ? phrase`Tee into ${other.title}` : phrase`${each.title} runs into it`;
      const { side, distance = 0, ground, otherGround } = join;
      return [{ title, through, into, side, distance, own, ground, otherGround }];
    }),
  );
}
