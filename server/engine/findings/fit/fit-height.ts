/** A height that is no whole number of courses. */

import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { Masonry } from '../../brickwork/masonry';
import type { BlockFacts, LineFacts } from '../../resolve/env';
import type { Fit, LengthWay } from '../../setting-out';
import { coursesText, coursesTold } from '../courses';
import { type Remark, type RemarkWay, rewrite } from '../remark';
import { decisionFor, settled } from './decision';
import { type RunInText, waysOf } from './fit';
import { numbersText } from './fit-words';

export function heightUnfit(
  facts: BlockFacts,
  line: LineFacts,
  fit: Fit,
  masonry: Masonry,
): Remark | undefined {
  if (settled(fit, decisionFor(facts, 'height'))) return undefined;
  const { env } = masonry;
  const run: RunInText = {
    name: 'height',
    home: facts,
    pieces: phrase`courses`,
    move: (way) => otherHeight(line, way, masonry),
  };
  const joints = fit.works === 'joints';
  const message = joints
    ? phrase`${coursesTold(fit.pieces.wholes)} ${fit.pieces.wholes === 1 ? phrase`makes` : phrase`make`} this height with bed joints of ${lengthText(env, fit.joint!)}. Say so in courses if that is meant.`
    : phrase`This height is no whole number of courses: ${numbersText(fit, run, env)}. ${reckonedWith(fit.pieces.wholes)}`;
  const keep = joints ? [inCourses(line, fit.pieces.wholes, '')] : [];
  const ways = joints
    ? keep
    : waysOf(fit, run, env).filter((w) => !w.edits.some(({ text }) => text.includes(' cut ')));
  return {
    code: joints ? 'height-joints' : 'fit-height',
    severity: joints ? 'hint' : 'warning',
    origin: line.origin,
    message,
    ways,
  };
}

function reckonedWith(courses: number): string {
  return courses === 1
    ? phrase`1 course is reckoned with.`
    : phrase`${courses} courses are reckoned with.`;
}

function otherHeight(line: LineFacts, way: LengthWay, masonry: Masonry): RemarkWay {
  return inCourses(line, way.wholes, `, ${lengthText(masonry.env, way.length)}`);
}

function inCourses(line: LineFacts, courses: number, more: string): RemarkWay {
  return {
    title: phrase`Build ${coursesTold(courses)}${more}`,
    edits: [rewrite(line.at('height'), coursesText(courses))],
  };
}
