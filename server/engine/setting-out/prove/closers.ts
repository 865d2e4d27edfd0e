/** Queen closers: one stands beside the quoin header, never at the end (common practice). */
import { type Bay, baysOf } from './bays';
import { type BuiltCourse, type BuiltPiece, type FaultKind, type Place, SAME } from './types';

/** Closers where none belongs: each stands beside the header of an end, and never at the end itself. */
export function closerFaults(
  { outline, pieces }: Bay,
  tell: (kind: FaultKind, at: number, measured: number, wanted: number) => void,
): void {
  const last = pieces.length - 1;
  for (const [i, { piece, from, to }] of pieces.entries()) {
    if (piece !== 'closer') continue;
    const atEnd =
      (i === 0 && outline.left !== 'toothed') || (i === last && outline.right !== 'toothed');
    const beside =
      (i === 1 && pieces[0]!.piece === 'header') ||
      (i === last - 1 && pieces[last]!.piece === 'header');
    if (atEnd) tell('closer-at-end', from, to - from, 0);
    else if (!beside) tell('closer-misplaced', from, to - from, 0);
  }
}

/** A free end that both courses have, and as far from it as a closer there would have made the lap. */
interface Quoin extends Place {
  readonly line: number;
  /** It begins with a header and no closer. */
  readonly bare: boolean;
}

/** So far from the quoin, in headers with room for their joints, a closer makes the lap: the header and a stretcher. */
const REACH = 3 * 1.2;

/**
 * Whether a lack of lap between two places is for want of a closer: beside a quoin where a header lies on a stretcher or
 * the other way about, and neither course has a closer or a bat. Anywhere else a header may begin a course, as in garden walls, if only its
 * perpends lap.
 */
export function closerFinder(
  lower: BuiltCourse,
  upper: BuiltCourse,
): (from: number, to: number) => boolean {
  const under = new Map(quoinsOf(lower).map((q) => [Math.round(q.line / NEAR), q]));
  const wanting = quoinsOf(upper).flatMap((a) => {
    const b = under.get(Math.round(a.line / NEAR));
    return b && a.bare !== b.bare ? [a.bare ? a : b] : [];
  });
  return (from, to) => wanting.some((q) => from >= q.from - SAME && to <= q.to + SAME);
}

/** Lines nearer than this are one line, mm. */
const NEAR = 0.1;

/** Free ends at which there is neither closer nor bat. */
function quoinsOf(course: BuiltCourse): Quoin[] {
  return baysOf(course).bays.flatMap(({ outline, pieces }) => {
    const { from, to, left, right } = outline;
    const first = left === 'stopped' && quoinOf(pieces[0], pieces[1]);
    const last = right === 'stopped' && quoinOf(pieces.at(-1), pieces.at(-2));
    return [
      ...(first ? [{ ...first, line: from, from, to: from + first.reach }] : []),
      ...(last ? [{ ...last, line: to, from: to - last.reach, to }] : []),
    ];
  });
}

const isPlain = (piece: BuiltPiece | undefined) =>
  piece?.piece === 'header' || piece?.piece === 'stretcher';

function quoinOf(end: BuiltPiece | undefined, next: BuiltPiece | undefined) {
  if (!end || !isPlain(end) || (end.piece === 'header' && !isPlain(next))) return undefined;
  return { bare: end.piece === 'header', reach: REACH * (end.to - end.from) };
}
