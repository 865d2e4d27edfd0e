/** Walls that make corners with one another all round, and are too few for it. */
import { phrase } from '../../../../shared/phrase';
import type { BlockFacts, LineFacts } from '../../resolve/env';
import type { Side } from '../../setting-out';
import type { Remark } from '../remark';
import { freeEnd } from './quoin-unanswered';

/** An end of a wall, by its line. */
export interface EndLine {
  readonly line: LineFacts;
  readonly side: Side;
}

/** @param last the end that closes the round; @param first the one that it meets; @param walls how many there are */
export function quoinRound(
  { name }: BlockFacts,
  last: EndLine,
  first: EndLine,
  walls: number,
): Remark {
  const other = last.line.word('wall');
  const few = walls < 4 ? phrase`four of them or more` : phrase`an even number of them`;
  return {
    code: 'quoin-round',
    about: last.side,
    severity: 'error',
    origin: last.line.at('wall'),
    message: phrase`This corner cannot be built: with it ${walls} walls would make corners with each other all round, and straight walls at right angles need ${few}. Leave an end free, or say which wall stands between ${name} and ${other}.`,
    related: [{ origin: first.line.origin, message: phrase`The end that it would meet` }],
    ways: () => {
      const [own, theirs] = [freeEnd(last.line, last.side), freeEnd(first.line, first.side)];
      return [
        {
          title: phrase`No corner there: ${last.side} stopped, and ${first.side} stopped in the wall ${other}`,
          edits: [...own.edits, ...theirs.edits],
          last: true,
        },
      ];
    },
  };
}
