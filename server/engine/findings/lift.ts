/** Brickwork higher than is built up in one day: green mortar cannot carry it. */

import { phrase } from '../../../shared/phrase';
import { lengthText } from '../brickwork/lengths';
import { type BlockFacts, defaultLine, type Env } from '../resolve/env';
import { counted, type Term } from '../working/term';
import type { Remark } from './remark';

/** Days that a height of so many mm takes, a lift a day; nothing where one day is enough or no library says. */
export function daysForHeight(height: number, env: Env): Term | undefined {
  const line = defaultLine(env, 'lift');
  const lift = line?.number('height');
  if (!line || !lift || height <= lift) return undefined;
  const limit = line.term('height', phrase`the most in a day`);
  const note = phrase`${lengthText(env, height)}, a lift a day`;
  return counted(phrase`days that the height takes`, Math.ceil(height / lift), 'days', {
    note,
    args: [limit],
  });
}

/** `height` over all, mm. */
export function higherThanALift(facts: BlockFacts, height: number, env: Env): Remark | undefined {
  const line = defaultLine(env, 'lift');
  const lift = line?.number('height');
  if (!line || !lift || height <= lift) return undefined;
  const days = Math.ceil(height / lift);
  const source = line.line.syntax.comment?.text.replace(/^#\s*/, '') ?? '';
  const message = phrase`${lengthText(env, height)} is more than the ${lengthText(env, lift)} that is built up in a day${source ? ` (${source})` : ''}: it takes ${days} days, however few the hours.`;
  return {
    code: 'lift',
    severity: 'information',
    origin: (facts.line('height') ?? facts.line('rebuild'))?.origin ?? facts.origin,
    message,
    related: [{ origin: line.origin, message: phrase`The most in a day` }],
  };
}
