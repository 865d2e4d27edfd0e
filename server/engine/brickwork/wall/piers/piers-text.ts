/** How the piers of a wall are laid, in words for a working. */
import { phrase } from '../../../../../shared/phrase';
import { coursesText, planText } from '../../pier/pier-text';
import type { WallPlan } from '../spec';
import type { PierFacts } from './placed';

/** Piers that are alike are told once, by the name of the first. */
export function piersText(plan: WallPlan): string[] {
  const told = new Set<string>();
  return plan.piers.flatMap((pier) => {
    const lines = linesOf(pier);
    const key = lines.join();
    if (told.has(key)) return [];
    told.add(key);
    const bonded = pier.attached ? phrase`, with what it reaches into the wall` : '';
    return [phrase`Pier ${pier.spec.name}${bonded}:`, ...lines.map((line) => `  ${line}`)];
  });
}

function linesOf({ spec, plan, attached }: PierFacts): string[] {
  if (!attached) return planText(spec, plan);
  const { above } = spec;
  if (!above) return coursesText(spec);
  const free = planText({ ...spec, plans: above.plans }, plan);
  const high = spec.courses - above.from;
  const many = `${high} ${high === 1 ? phrase`course` : phrase`courses`}`;
  return [...coursesText(spec), phrase`Above the wall, ${many}:`, ...free];
}
