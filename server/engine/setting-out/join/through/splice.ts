/** Part of a course taken out, and other pieces laid there: whole turns of its pattern are stepped over. */
import type { LaidRun, PieceGroup, Segment } from '../../types';
import { drop } from '../trim';
import type { CourseParts, Part, Parted, Way } from './types';
import type { Place } from './window';

const back = (groups: readonly PieceGroup[]): PieceGroup[] =>
  [...groups].reverse().map(({ pieces, times }) => ({ pieces: [...pieces].reverse(), times }));

const groupsOf = ({ pieces }: Way): PieceGroup[] =>
  pieces.length
    ? [
        {
          pieces: pieces.map((p) => ({ piece: p.piece, length: p.to - p.from, count: 1 })),
          times: 1,
        },
      ]
    : [];

/** Groups before the piece that begins at `from`, mm from the left end of the stretch. */
function before(run: LaidRun, from: number): PieceGroup[] {
  const end = run.from + run.length - run.endJoints.right * run.joint;
  return back(drop(back(run.groups), run.joint, end - from + run.joint).rest);
}

/** Groups after the piece that ends at `to`. */
function after(run: LaidRun, to: number): PieceGroup[] {
  const start = run.from + run.endJoints.left * run.joint;
  return drop(run.groups, run.joint, to - start + run.joint).rest;
}

/** The stretch with its courses as they were chosen; what was left as it is stays the same. */
export function laidAgain(
  { whole, parts }: Parted,
  turns: ReadonlyMap<number, CourseParts>,
  place: Place,
): Segment[] {
  const [across, left, right] = parts.map((s) => ({ ...s, runs: [...s.runs] }));
  for (const [turn, { parts: laid }] of turns) {
    const run = whole.runs[turn]!;
    const [first, second] = laid;
    if (!second) {
      if (isNew(first!)) across!.runs[turn] = acrossRun(run, first!, whole);
      continue;
    }
    if (isNew(first!)) left!.runs[turn] = leftRun(run, first!, whole, place);
    if (isNew(second)) right!.runs[turn] = rightRun(run, second, whole, place);
  }
  return [across!, left!, right!];
}

const isNew = ({ now, was }: Part) => now !== was;

function acrossRun(run: LaidRun, { from, to, now }: Part, whole: Segment): LaidRun {
  const kept = { before: before(run, from - whole.from), after: after(run, to - whole.from) };
  return { ...run, groups: [...kept.before, ...groupsOf(now), ...kept.after] };
}

function leftRun(run: LaidRun, { from, now }: Part, whole: Segment, place: Place): LaidRun {
  const groups = [...before(run, from - whole.from), ...groupsOf(now)];
  const endJoints = { ...run.endJoints, right: 1 as const };
  return { ...run, length: place.from - whole.from - run.from, endJoints, groups };
}

function rightRun(run: LaidRun, { to, now }: Part, whole: Segment, place: Place): LaidRun {
  const groups = [...groupsOf(now), ...after(run, to - whole.from)];
  const endJoints = { ...run.endJoints, left: 1 as const };
  const start = place.to - whole.from;
  return { ...run, from: start, length: run.from + run.length - start, endJoints, groups };
}
