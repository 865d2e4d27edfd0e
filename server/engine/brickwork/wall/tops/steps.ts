/** Where the top of a wall and the ground under it step, in whole courses, from what its lines say. */

import { phrase } from '../../../../../shared/phrase';
import type { Remark } from '../../../findings/remark';
import { fallInSteps } from '../../../findings/tops/falls';
import { nothingLeft, stepOutside } from '../../../findings/tops/step';
import { tooMany } from '../../../findings/wall';
import type { LineFacts } from '../../../resolve/env';
import {
  type Level,
  levelsOf,
  MOST_STEPS,
  type Step,
  type StepAt,
  stepsOf,
  stretchesOf,
} from '../../../setting-out';
import type { Masonry } from '../../masonry';

/** A wall’s two lines in courses above its lowest ground, and how many courses there are from there to its highest top. */
export interface Stepped {
  readonly ground: readonly Level[];
  readonly top: readonly Level[];
  readonly courses: number;
  /** What of the whole rectangle is not built. */
  readonly steps: readonly Step[];
}

type Key = 'ground' | 'top';

/** `courses` are those at the left end; a wall without steps is that high all along. */
export function steppedIn(
  masonry: Masonry,
  length: number,
  courses: number,
  remarks: Remark[],
): Stepped {
  const ground = levelsOf(length, 0, stepsIn('ground', masonry, length, remarks));
  const top = levelsOf(length, courses, stepsIn('top', masonry, length, remarks));
  const lowest = Math.min(...ground.map(({ level }) => level));
  const raised = (levels: readonly Level[]) =>
    levels.map((each) => ({ ...each, level: each.level - lowest }));
  const lines = { ground: raised(ground), top: raised(top) };
  const gone = stretchesOf(lines.ground, lines.top).find((s) => s.top <= s.bottom);
  if (gone) remarks.push(nothingLeft(masonry, gone));
  const all = Math.max(0, ...lines.top.map(({ level }) => level));
  return { ...lines, courses: all, steps: stepsOf(lines.ground, lines.top, all) };
}

function stepsIn(key: Key, masonry: Masonry, length: number, remarks: Remark[]): StepAt[] {
  const lines = masonry.facts.lines(key);
  if (lines.length > MOST_STEPS) remarks.push(tooMany(masonry.facts, phrase`steps`, MOST_STEPS));
  return lines.slice(0, MOST_STEPS).flatMap((line) => {
    if (line.word('how') === 'falls') return fallInSteps(line, masonry, length, remarks);
    return stepIn(line, masonry, length, remarks);
  });
}

function stepIn(line: LineFacts, masonry: Masonry, length: number, remarks: Remark[]): StepAt[] {
  const at = line.number('at');
  const courses = Math.floor(line.number('courses') ?? 0);
  if (at === undefined || courses < 1) return [];
  if (at <= 0 || at >= length) {
    remarks.push(stepOutside(line, masonry, length));
    return [];
  }
  return [{ at, by: line.word('way') === 'down' ? -courses : courses }];
}
