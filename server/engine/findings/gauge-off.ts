/** A bought brick that cannot keep the gauge of the standing work at a joint anyone would accept. */

import type { Brick } from '../brickwork/goods';
import { lengthText } from '../brickwork/lengths';
import type { Env, LineFacts } from '../resolve/env';
import type { JointLimits } from '../setting-out';
import type { Term } from '../working/term';
import type { Remark } from './remark';

export function gaugeOff(
  line: LineFacts,
  joint: Term,
  brick: Brick,
  limits: JointLimits,
  env: Env,
): Remark | undefined {
  const needed = joint.value.toNumber();
  if (joint.gaps.length || (needed >= limits.least && needed <= limits.most)) return undefined;
  const accepted = `${lengthText(env, limits.least)} to ${lengthText(env, limits.most)}`;
  const what =
    needed <= 0
      ? 'is too high to keep this gauge at all'
      : `needs a bed joint of ${lengthText(env, needed)} to keep this gauge`;
  const message = `${brick.title} ${what}; ${accepted} is what anyone would accept. Look for a brick of another height, or tell the client that the courses will not line up.`;
  return { code: 'gauge-off', severity: 'warning', origin: line.origin, message };
}
