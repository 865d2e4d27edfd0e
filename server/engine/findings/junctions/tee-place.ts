/** A wall that is said to run into another where it cannot, or as it cannot. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { LineFacts } from '../../resolve/env';
import type { Side } from '../../setting-out';
import type { SourceBlock } from '../../workspace/source';
import { headOrigin, type Remark, type RemarkWay, rewrite } from '../remark';
import { freeEnd } from './quoin-unanswered';

export function teePlace(line: LineFacts, side: Side, other: SourceBlock, why: string): Remark {
  const name = line.word('wall');
  return {
    code: 'tee-place',
    about: side,
    severity: 'error',
    origin: line.at('distance'),
    message: phrase`This wall cannot run into ${name} there. ${why} Say how far the near side of this wall is from the left end of ${name}. No ties are counted.`,
    related: [{ origin: headOrigin(other), message: phrase`The wall ${name}` }],
  };
}

/** Two walls that are said to meet in two places. */
export function teeTwice(line: LineFacts, side: Side, other: SourceBlock, why: string): Remark {
  const name = line.word('wall');
  return {
    code: 'tee-place',
    about: side,
    severity: 'error',
    origin: line.at('wall'),
    message: phrase`This wall cannot run into ${name} here. ${why} Two straight walls meet in one place: take one of the two lines out. No ties are counted.`,
    related: [{ origin: headOrigin(other), message: phrase`The wall ${name}` }],
    ways: [freeEnd(line, side)],
  };
}

/**
 * Bonding asked for where courses cannot be run into the other wall: it is tied instead. `elsewhere` is the nearest place at
 * which it would bond, mm from the left end of the other.
 */
export function teeUnbonded(
  line: LineFacts,
  side: Side,
  other: SourceBlock,
  why: string,
  elsewhere?: () => number | undefined,
): Remark {
  const name = line.word('wall');
  return {
    code: 'tee-unbonded',
    about: side,
    severity: 'warning',
    origin: line.at('how'),
    message: phrase`This wall is not bonded into ${name}: ${why} It is laid with a plain joint and ties.`,
    related: [{ origin: headOrigin(other), message: phrase`The wall ${name}` }],
    ways: (onlySure) => [...(onlySure ? [] : moved(line, elsewhere?.())), tied(line)],
  };
}

function moved(line: LineFacts, at: number | undefined): RemarkWay[] {
  if (at === undefined) return [];
  const text = lengthText(line.env, at);
  const title = phrase`Move it to where it can be bonded, ${text} from the left end of ${line.word('wall')}`;
  return [{ title, edits: [rewrite(line.at('distance'), text)] }];
}

function tied(line: LineFacts): RemarkWay {
  const edits = [rewrite(line.at('how'), 'tied')];
  return { title: phrase`Tie it: tied`, edits, preferred: true, sure: true };
}
