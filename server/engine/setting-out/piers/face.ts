/** What a course shows to somebody who stands before one of its sides. */
import type { FacePiece, PlacedPiece } from '../types';
import type { CoursePlan, ShownPiece, Side } from './types';

/** Faces nearer than this lie in one plane, mm. */
const FLUSH = 1;

/** The pieces of one face, left to right as it is looked at: of what stands furthest out on that side. */
export function faceOf(course: CoursePlan, side: Side): ShownPiece[] {
  const spans = course.pieces.map((piece) => spanOf(piece, side));
  const out = Math.max(...spans.map((s) => s.out));
  const face = spans.filter((s) => s.out > out - FLUSH);
  const left = Math.min(...spans.map((s) => s.from));
  return face
    .map(({ piece, from, length }) => ({ piece, from: from - left, length }))
    .sort((a, b) => a.from - b.from);
}

interface Span extends ShownPiece {
  /** How far out it stands on that side, mm. */
  readonly out: number;
}

/** From behind, left and right change places; so they do from the right. */
function spanOf({ piece, x, y, along, across }: PlacedPiece, side: Side): Span {
  const lies = along > across;
  if (side === 'front') return { ...seen(piece, lies, along), from: x, out: -y };
  if (side === 'back') return { ...seen(piece, lies, along), from: -(x + along), out: y + across };
  const shown = seen(piece, !lies, across);
  if (side === 'left') return { ...shown, from: -(y + across), out: -x };
  return { ...shown, from: y, out: x + along };
}

function seen(
  piece: PlacedPiece['piece'],
  lengthwise: boolean,
  length: number,
): { piece: FacePiece; length: number } {
  if (piece === 'whole') return { piece: lengthwise ? 'stretcher' : 'header', length };
  if (piece === 'three-quarter' && !lengthwise) return { piece: 'header', length };
  return { piece, length };
}
