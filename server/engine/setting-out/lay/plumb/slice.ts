/** Part of a laid course, from the near side of one of its bricks to the far side of another. */
import { endingBy } from '../../openings/cut-run';
import type { LaidRun, PieceGroup } from '../../types';

/** The bricks of a course between `low` and `high`, mm from its stretch's left end, both the side of a brick or infinite. Repeats are not walked. */
export function sliced(run: LaidRun, low: number, high: number): readonly PieceGroup[] {
  const { joint } = run;
  const start = run.from + run.endJoints.left * joint;
  const end = run.from + run.length - run.endJoints.right * joint;
  const all = { kept: run.groups as PieceGroup[], at: end + joint };
  const { kept, at } = high >= end ? all : endingBy(run.groups, joint, start, high);
  if (low <= start) return kept;
  const back = endingBy(turned(kept), joint, 0, at - joint - low);
  return turned(back.kept);
}

const turned = (groups: readonly PieceGroup[]): PieceGroup[] =>
  groups.map(({ pieces, times }) => ({ pieces: [...pieces].reverse(), times })).reverse();
