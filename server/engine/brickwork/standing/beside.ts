/** A wall or a pier that says a gauge of its own: it was measured off something that stands. */
import { gaugeOff, gaugeRun } from '../../findings/fit/gauge-off';
import { othersThatKeep } from '../../findings/fit/gauge-ways';
import type { Remark } from '../../findings/remark';
import type { Term } from '../../working/term';
import { limitsOf, type Masonry } from '../masonry';
import { type Standing, standingBeside } from './gauge';

/** Nothing without a gauge line of its own. */
export function besideStanding(
  { facts, env, brick, mix, jointTerms }: Masonry,
  courses: Term,
): Standing | undefined {
  const line = facts.line('gauge');
  const limits = limitsOf(env, 'beds-accepted', jointTerms.perpend);
  return line && standingBeside(line, brick, mix, courses, limits, env);
}

export function besideRemarks(standing: Standing | undefined, { facts, env }: Masonry): Remark[] {
  if (!standing) return [];
  const others = () => othersThatKeep(standing, { facts, key: 'brick' }, env);
  return [gaugeOff(standing, facts, others, env)].filter((r): r is Remark => r !== undefined);
}

/** The run that a `fit gauge` line decides for. */
export function besideRun(standing: Standing | undefined) {
  return standing ? [gaugeRun(standing)] : [];
}
