/** A core told of a pier that has none. */
import { phrase } from '../../../../shared/phrase';
import type { LineFacts } from '../../resolve/env';
import { MOST_HALVES } from '../../setting-out';
import { type Remark, takenOut } from '../remark';

const MOST = MOST_HALVES / 2;

/** In a pier so large that nothing reckons its core: counted through, by area. */
export function coreUnreckoned(
  line: LineFacts,
  name: string,
  along: number,
  across: number,
): Remark {
  const message = phrase`A core is reckoned in piers up to ${MOST} x ${MOST} bricks. This one is ${along} x ${across} bricks: it is counted as if it were bricks all through, and what fills its core is not counted. The price is not complete.`;
  return {
    code: 'core-idle',
    severity: 'warning',
    origin: line.origin,
    message,
    leavesOut: phrase`the core of the pier${name && ` ${name}`} is not reckoned`,
    ways: [takenOut(line, phrase`Bricks all through: take the line out`)],
  };
}

/** Of a pier bonded into its wall, which is laid through and no higher than that wall. */
export function coreInWall(line: LineFacts, name: string): Remark {
  const message = phrase`The pier${name && ` ${name}`} is bonded into its wall, and laid in bricks all through. This line changes nothing.`;
  return {
    code: 'core-idle',
    severity: 'warning',
    origin: line.origin,
    message,
    ways: [takenOut(line)],
  };
}

export function coreIdle(line: LineFacts, along: number, across: number): Remark {
  const message = phrase`A pier of ${along} x ${across} bricks has no core: every brick of it shows. This line changes nothing.`;
  return {
    code: 'core-idle',
    severity: 'warning',
    origin: line.origin,
    message,
    ways: [takenOut(line)],
  };
}
