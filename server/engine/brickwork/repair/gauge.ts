/** Whether a bought brick keeps the gauge of the standing work, and at what joint. */
import { phrase } from '../../../../shared/phrase';
import { decisionFor } from '../../findings/fit/decision';
import { idleFits } from '../../findings/fit/fit-idle';
import { gaugeOff, gaugeRun, gaugeSettled } from '../../findings/fit/gauge-off';
import { type Named, othersThatKeep } from '../../findings/fit/gauge-ways';
import type { Remark } from '../../findings/remark';
import type { LineFacts } from '../../resolve/env';
import { counted, type Term } from '../../working/term';
import { limitsOf } from '../masonry';
import type { Figure } from '../needs';
import { sizeSaid } from '../said';
import { type Standing, standingBeside, standingFigures } from '../standing/gauge';
import type { Site } from './site';

interface Gauged {
  readonly figures: readonly Figure[];
  readonly remarks: readonly Remark[];
  readonly says: readonly string[];
  readonly does: readonly string[];
}

/** `buys` tells whether any brick is bought. */
export function gaugeIn(site: Site, buys: boolean): Gauged {
  const { facts, env } = site;
  const beside = besideOf(site);
  const idle = idleFits(facts, beside ? [gaugeRun(beside)] : []);
  if (!beside) return { figures: [], remarks: idle, says: [], does: [] };
  const others = () => (buys ? othersThatKeep(beside, boughtIn(site), env) : []);
  const off = gaugeOff(beside, facts, others, env);
  const cut = cutToHeight(beside, site);
  return {
    figures: standingFigures(beside),
    remarks: [...idle, ...(off ? [off] : [])],
    says: cut ? [cut] : [],
    does: cut ? ['cutting'] : [],
  };
}

function besideOf(site: Site): Standing | undefined {
  const { facts, masonry, match, env } = site;
  const line = facts.line('gauge');
  const limits = limitsOf(env, 'beds-accepted', masonry.jointTerms.perpend);
  const courses = line && coursesRebuilt(site, line);
  return line && standingBeside(line, match, masonry.mix, courses, limits, env);
}

/** Courses that are built again, beside the standing ones of a measured gauge. */
function coursesRebuilt({ facts }: Site, gauge: LineFacts): Term | undefined {
  const line = facts.line('rebuild');
  if (!line) return undefined;
  if (line.values.courses) return line.term('courses', phrase`courses rebuilt`);
  const course = (gauge.number('height') ?? 0) / (gauge.number('courses') ?? 0);
  const courses = Math.round((line.number('height') ?? 0) / course);
  if (!Number.isFinite(courses) || courses < 1) return undefined;
  const args = [line.term('height', phrase`height rebuilt`)];
  return counted(phrase`courses rebuilt`, courses, 'courses', { args });
}

/** The line that says what is bought; beside it stands the brick of the wall. */
function boughtIn({ facts, masonry, env }: Site): Named {
  const { brick, jointTerms } = masonry;
  const joint = jointTerms.perpend.value.toNumber();
  const limits = limitsOf(env, 'joints-accepted', jointTerms.perpend);
  const beside = brick.size && { length: brick.size.length, joint, limits };
  return { facts, key: 'match', beside };
}

/** Bricks that a `fit gauge cut` line has cut to height. */
function cutToHeight(beside: Standing, { facts, env }: Site): string | undefined {
  const decision = decisionFor(facts, 'gauge');
  if (decision?.how !== 'cut' || !decision.cut || !gaugeSettled(beside, facts)) return undefined;
  return phrase`Cut new bricks to ${sizeSaid(decision.cut, env)} high, so that courses line up.`;
}
