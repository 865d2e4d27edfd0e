/** A brick that cannot keep the gauge of the standing work at a joint anyone would accept, or only if it comes out as it should. */

import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { isAccepted, type Standing } from '../../brickwork/standing/gauge';
import type { BlockFacts, Env } from '../../resolve/env';
import type { Remark } from '../remark';
import { decisionFor } from './decision';
import { gaugeWays, type Other } from './gauge-ways';

/** `others` are bricks that would keep it. Nothing where a `fit gauge` line settles it. */
export function gaugeOff(
  standing: Standing,
  home: BlockFacts,
  others: () => readonly Other[],
  env: Env,
): Remark | undefined {
  const { joint, limits, line, brick } = standing;
  if (joint.gaps.length) return undefined;
  if (isAccepted(joint.value.toNumber(), limits)) return toleranceOff(standing, env);
  if (gaugeSettled(standing, home)) return undefined;
  const message = [
    phrase`${brick.title} ${needs(standing, env)}; ${accepted(standing, env)} is what anyone would accept.`,
    ...withinText(standing, env),
    ...driftText(standing, env),
    phrase`Look for a brick of another height, or tell the client that the courses will not line up.`,
  ].join(' ');
  return {
    code: 'gauge-off',
    severity: 'warning',
    origin: line.origin,
    message,
    ways: () => gaugeWays(standing, home, others(), env),
  };
}

function accepted({ limits }: Standing, env: Env): string {
  return phrase`${lengthText(env, limits.least)} to ${lengthText(env, limits.most)}`;
}

function needs({ joint }: Standing, env: Env): string {
  const mm = joint.value.toNumber();
  if (mm <= 0) return phrase`is too high to keep this gauge at all`;
  return phrase`needs a bed joint of ${lengthText(env, mm)} to keep this gauge`;
}

/** What the ends of its tolerance would need: they do, or not even they. */
function withinText({ joint, within, limits }: Standing, env: Env): string[] {
  if (!within) return [];
  const wide = joint.value.toNumber() > limits.most;
  const best = (wide ? within.least : within.most).value.toNumber();
  const which = phrase`the ${wide ? phrase`largest` : phrase`smallest`} that its tolerance (${within.tolerance.name}) allows`;
  if (isAccepted(best, limits))
    return [phrase`With ${which} it would be ${lengthText(env, best)}: measure what is delivered.`];
  const even = best > 0 ? phrase`would need ${lengthText(env, best)}` : phrase`are too high`;
  return [phrase`Even ${which} ${even}.`];
}

function driftText({ drift }: Standing, env: Env): string[] {
  if (!drift) return [];
  const mm = drift.term.value.toNumber();
  const bed = lengthText(env, drift.bed.value.toNumber());
  const after =
    drift.courses === 1 ? phrase`after one course` : phrase`after ${drift.courses} courses`;
  const way = mm < 0 ? phrase`below` : phrase`above`;
  return [
    phrase`At its usual bed of ${bed} it is ${lengthText(env, Math.abs(mm))} ${way} the standing courses ${after}.`,
  ];
}

/** Its own size does, and some that its tolerance allows do not. */
function toleranceOff(standing: Standing, env: Env): Remark | undefined {
  const { within, limits, line, brick } = standing;
  if (!within) return undefined;
  const [least, most] = [within.least.value.toNumber(), within.most.value.toNumber()];
  if (isAccepted(least, limits) && isAccepted(most, limits)) return undefined;
  const { tolerance } = within;
  const apart = tolerance.apart
    ? phrase` Heights in one delivery may be ${lengthText(env, tolerance.apart.value.toNumber())} apart.`
    : '';
  const message = phrase`Within its tolerance (${tolerance.name}) ${brick.title} needs bed joints of ${lengthText(env, Math.max(0, least))} to ${lengthText(env, most)} to keep this gauge; ${accepted(standing, env)} is what anyone would accept.${apart} Measure some of what is delivered before it is laid.`;
  return {
    code: 'gauge-tolerance',
    severity: 'information',
    origin: line.origin,
    message,
    related: [{ origin: tolerance.origin, message: phrase`Its tolerance` }],
  };
}

/** Whether a `fit gauge` line answers it: joints kept as they come, or bricks cut to a height that does. */
export function gaugeSettled({ joint, course, limits }: Standing, home: BlockFacts): boolean {
  const decision = decisionFor(home, 'gauge');
  if (decision?.how === 'joints') return joint.value.toNumber() > 0;
  if (decision?.how !== 'cut' || decision.cut === undefined) return false;
  return isAccepted(course - decision.cut, limits);
}

/** What a `fit` line may decide of it. */
export function gaugeRun({ joint, limits }: Standing) {
  return { name: 'gauge', open: !isAccepted(joint.value.toNumber(), limits) };
}
