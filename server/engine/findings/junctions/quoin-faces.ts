/** Two walls at a corner whose lines put their fronts where they cannot both be. */

import { phrase } from '../../../../shared/phrase';
import { endSaid } from '../../kinds-said';
import type { LineFacts } from '../../resolve/env';
import type { Side } from '../../setting-out';
import { type Remark, rewrite } from '../remark';

/**
 * Seen from its front, a wall that turns back from the right end of another meets it with its left end: then both fronts are
 * outside the corner, or both inside. Where right meets right, one front is outside and the other inside.
 */
export function quoinFaces(
  line: LineFacts,
  side: Side,
  other: LineFacts,
  end: Side,
): Remark | undefined {
  const inside = line.word('faces') === 'inside';
  const same = inside === (other.word('faces') === 'inside');
  if (same === (side !== end)) return undefined;
  const name = line.word('wall');
  const why =
    side !== end
      ? phrase`the ${endSaid(side)} of this wall meets the ${endSaid(end)} of ${name}, so both fronts are outside the corner or both inside it`
      : phrase`the ${endSaid(side)} of this wall and that of ${name} meet, so the front of one is inside the corner, and its line says inside`;
  const text = `${side} quoin ${name}${inside ? '' : ' inside'}`;
  return {
    code: 'quoin-faces',
    about: side,
    severity: 'warning',
    origin: line.origin,
    message: phrase`These two lines do not make one corner: ${why}.`,
    related: [{ origin: other.origin, message: phrase`The line of ${name}` }],
    ways: [
      {
        title: inside
          ? phrase`The front of this wall is outside the corner`
          : phrase`The front of this wall is inside the corner`,
        edits: [rewrite(line.origin, text)],
      },
      {
        title: phrase`It is the other end of ${name}`,
        edits: [rewrite(other.origin, turned(other, end))],
      },
    ],
  };
}

function turned(other: LineFacts, end: Side): string {
  const inside = other.word('faces') === 'inside' ? ' inside' : '';
  return `${end === 'left' ? 'right' : 'left'} quoin ${other.word('wall')}${inside}`;
}
