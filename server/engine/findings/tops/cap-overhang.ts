/** A cap that does not reach far enough over the faces to throw water clear of them. */

import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { type BlockFacts, defaultLine, type Env } from '../../resolve/env';
import type { Remark } from '../remark';
import { piecesLarger } from './piece-ways';

/** A cap that reaches far enough over faces of so many mm, in the steps that a library asks for caps in. */
export function capFor(faces: readonly number[], reach: number, env: Env): number[] {
  const step = defaultLine(env, 'cap-step')?.number('length') ?? 0;
  const up = (mm: number) => (step > 0 ? Math.ceil(mm / step - 1e-9) * step : mm);
  return faces.map((side) => up(side + 2 * reach));
}

/** `width` and `depth` of the pier, mm. Nothing when no library says how far a cap should reach. */
export function capOverhang(
  facts: BlockFacts,
  width: number,
  depth: number,
  env: Env,
): Remark | undefined {
  const line = facts.line('cap');
  const sides = line?.sides('size');
  const wanted = defaultLine(env, 'coping-overhang');
  const reach = wanted?.number('length');
  if (!line || !sides || !wanted || reach === undefined) return undefined;
  const over = Math.min((sides[0]! - width) / 2, (sides[1]! - depth) / 2);
  if (over >= reach) return undefined;
  const enough = [...capFor([width, depth], reach, env), ...sides.slice(2)];
  const how =
    over < 0
      ? phrase`does not cover the pier`
      : phrase`reaches ${lengthText(env, over)} over the faces`;
  const source = wanted.line.syntax.comment?.text.replace(/^#\s*/, '') ?? '';
  const message = phrase`This cap ${how}; ${lengthText(env, reach)} with a drip keeps water off them${source ? ` (${source})` : ''}.`;
  return {
    code: 'cap-overhang',
    severity: 'information',
    origin: line.at('size'),
    message,
    related: [{ origin: wanted.origin, message: phrase`How far it should reach` }],
    ways: piecesLarger(line, enough, phrase`A cap of`, env),
  };
}
