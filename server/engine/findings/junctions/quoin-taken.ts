/** A corner where one of the walls has no brickwork at its end, but a pier or an opening. */
import { phrase } from '../../../../shared/phrase';
import type { LineFacts } from '../../resolve/env';
import type { Side } from '../../setting-out';
import { type Remark, rewrite } from '../remark';

/** @param other the line of the other wall, and its end @param what stands there: `The pier hanging` */
export function quoinTaken(
  line: LineFacts,
  side: Side,
  what: string,
  other: { readonly line: LineFacts; readonly side: Side },
): Remark {
  const name = line.word('wall');
  const message = phrase`${what} stands where this wall would make its corner with ${name}, so nothing is bonded there. Let ${name} end against it with a plain joint, and say its length up to there.`;
  return {
    code: 'quoin-taken',
    about: side,
    severity: 'warning',
    origin: line.origin,
    message,
    related: [{ origin: other.line.origin, message: phrase`The line of ${name}` }],
    ways: [
      {
        title: phrase`${name} ends against it: ${other.side} butted`,
        edits: [
          rewrite(line.origin, `${side} stopped`),
          rewrite(other.line.origin, `${other.side} butted`),
        ],
      },
    ],
  };
}
