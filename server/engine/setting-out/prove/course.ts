/** One course by itself: every stretch filled from end to end, each joint within limits, each piece its size. */
import { type Bay, baysOf } from './bays';
import { closerFaults } from './closers';
import {
  type BuiltCourse,
  type BuiltPiece,
  type FaultKind,
  type LayoutFault,
  MOST_TOLD,
  type Outline,
  type ProofRules,
  SAME,
} from './types';

type Tell = (kind: FaultKind, at: number, measured: number, wanted: number) => void;

/** All that is wrong with a course as it would be built, the first few of very many. */
export function proveCourse(course: BuiltCourse, rules: ProofRules): LayoutFault[] {
  const faults: LayoutFault[] = [];
  const tell: Tell = (kind, at, measured, wanted) => {
    if (faults.length < MOST_TOLD)
      faults.push({ kind, course: course.course, at, measured, wanted });
  };
  const { bays, stray, broken } = baysOf(course);
  for (const { from, to } of broken) tell('no-piece', from, to - from, 0);
  for (const { from, to } of stray) tell('outside', from, to - from, 0);
  for (const [i, bay] of bays.entries()) {
    proveBay(bay, rules, tell);
    if (i > 0) apart(bays[i - 1]!, bay, tell);
  }
  return faults;
}

function proveBay(bay: Bay, rules: ProofRules, tell: Tell): void {
  const { outline, pieces } = bay;
  const first = pieces[0];
  const last = pieces.at(-1);
  if (!first || !last) {
    tell('gap', outline.from, outline.to - outline.from, 0);
    return;
  }
  proveEnd(outline.left, outline.from, first.from - outline.from, rules, tell);
  proveEnd(outline.right, outline.to, outline.to - last.to, rules, tell);
  for (let i = 1; i < pieces.length; i++) proveJoint(pieces[i - 1]!, pieces[i]!, rules, tell);
  for (const piece of pieces) proveSize(piece, rules, tell);
  closerFaults(bay, tell);
}

/** `room` is from the line inward to the first piece, mm; negative where the piece runs past it. */
function proveEnd(
  kind: Outline['left'],
  at: number,
  room: number,
  rules: ProofRules,
  tell: Tell,
): void {
  if (kind === 'butted') {
    proveRoom(at, room, rules, tell);
    return;
  }
  const reach = kind === 'toothed' ? rules.tooth + rules.joint.most : 0;
  if (room > reach + SAME) tell('gap', at, room, reach);
  if (room < -reach - SAME) tell('outside', at, -room, reach);
}

function proveJoint(a: BuiltPiece, b: BuiltPiece, rules: ProofRules, tell: Tell): void {
  proveRoom(a.to, b.from - a.to, rules, tell);
}

function proveRoom(at: number, room: number, { joint, leastCut }: ProofRules, tell: Tell): void {
  if (room < -SAME) tell('overlap', at, -room, 0);
  else if (room < joint.least - SAME) tell('joint-out', at, room, joint.least);
  else if (room >= Math.max(leastCut, 2 * joint.most)) tell('gap', at, room, joint.most);
  else if (room > joint.most + SAME) tell('joint-out', at, room, joint.most);
}

function proveSize(
  { piece, from, to }: BuiltPiece,
  { sizes, leastCut }: ProofRules,
  tell: Tell,
): void {
  const length = to - from;
  const size = sizes?.[piece];
  if (size !== undefined && Math.abs(length - size) > SAME) tell('size-off', from, length, size);
  if (piece === 'cut' && length < leastCut - SAME) tell('cut-too-short', from, length, leastCut);
}

/** Two bays side by side; where both are toothed into what stands between, that work is what parts them. */
function apart(a: Bay, b: Bay, tell: Tell): void {
  if (a.outline.right === 'toothed' && b.outline.left === 'toothed') return;
  const [left, right] = [a.pieces.at(-1), b.pieces[0]];
  if (left && right && left.to > right.from + SAME)
    tell('overlap', right.from, left.to - right.from, 0);
}
