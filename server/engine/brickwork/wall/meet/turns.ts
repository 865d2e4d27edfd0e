/** Courses of a wall that run on past its end in turn. */
import {
  type GivingWay,
  givesWay,
  type Parity,
  type SettingOut,
  type Side,
} from '../../../setting-out';
import { SIDES } from './ends';
import type { TiedIn } from './into-thick';
import type { Standing } from './standing';

/** Where courses, or blocks of them, run on past an end in turn: those between stop at it. */
export function turnsOf(
  { out, on, blocks }: Standing,
  begun: Parity,
  tied: TiedIn = {},
): Partial<Record<Side, GivingWay>> {
  const ways: Partial<Record<Side, GivingWay>> = {};
  const courses = [{ from: 0, to: out.spec.courses }];
  for (const side of SIDES) {
    const past = on[side];
    if (!past) continue;
    const block = blocks[side];
    const tie = tied[side];
    const parity = block ? 1 : (tie?.stops ?? teeParity(out, side, past.by, begun));
    ways[side] = { parity, by: past.by, courses, ...(block ? { block } : {}) };
  }
  return ways;
}

/** The courses that stop at the face of the other wall: those that end there with a joint of their own. */
function teeParity(out: SettingOut, side: Side, by: number, begun: Parity): Parity {
  const [even, odd] = givesWay(out, side, by, begun);
  return even && !odd ? 0 : 1;
}
