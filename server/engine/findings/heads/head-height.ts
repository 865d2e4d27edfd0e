/** A lintel or a head whose height is no whole number of courses, so that those beside it do not line up with its top. */

import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { Coursing, Site } from '../../brickwork/wall/heads/site';
import type { LineFacts } from '../../resolve/env';
import { coursesTold } from '../courses';
import { decide, decisionFor } from '../fit/decision';
import type { RunInText } from '../fit/fit';
import type { Remark, RemarkWay } from '../remark';

export interface HighThing {
  /** As a `fit` line calls it: `lintel-height`. */
  readonly run: Pick<RunInText, 'name' | 'home'>;
  readonly line: LineFacts;
  /** “A lintel 100 mm high”. */
  readonly what: string;
  readonly coursing: Coursing;
  /** Others that are whole courses high. */
  readonly others: readonly RemarkWay[];
}

export function headHeight(thing: HighThing, site: Site): Remark | undefined {
  const { run, line, coursing, others } = thing;
  if (coursing.works || decisionFor(run.home, run.name)?.how === 'cut') return undefined;
  const { env } = site.masonry;
  const { courses, over, split } = coursing;
  const gauge = lengthText(env, site.gauge);
  const left = lengthText(env, over);
  const made =
    split > 0
      ? phrase`Bricks cut to ${lengthText(env, split)} high are reckoned with on it`
      : phrase`A bed of ${lengthText(env, over + site.spec.joints.bed)} is reckoned with on it`;
  const message = phrase`${thing.what} does not work in courses of ${gauge}: with its bed it is ${left} short of ${coursesTold(courses)}. ${made} until one of the ways is chosen.`;
  const keep =
    split > 0
      ? phrase`Keep it, with bricks cut to ${lengthText(env, split)} on it`
      : phrase`Keep it, with a thick bed on it`;
  const ways = [
    ...others.map((way, i) => ({ ...way, preferred: i === 0 })),
    decide(run, 'cut', keep),
  ];
  return {
    code: 'head-height',
    about: `${run.home.name} ${run.name}`,
    severity: 'warning',
    origin: line.origin,
    message,
    ways,
  };
}
