/** The same face of two revisions: what stands in the one and not in the other is marked, by outline and hatch. */
import { later, phrase, spoken } from '../../../shared/phrase';
import type { Box, Drawing, Shape, Style } from './model';

/** Pieces of a face: how many are new where they lie, how many gone from there, how many as before. */
export interface Placed {
  readonly new: number;
  readonly gone: number;
  readonly same: number;
}

/** What is drawn over pieces, or is none. */
const NO_PIECE: ReadonlySet<Style> = new Set(['opening', 'band', 'projecting', 'reused', 'ground']);

/** Nearer than this, mm, a piece lies where it lay. */
const NEAR = 0.1;

export interface Changes {
  /** With what is gone marked; nothing where there was no such face. */
  readonly before?: Drawing;
  /** With what is new marked. */
  readonly after?: Drawing;
  readonly placed: Placed;
}

/**
 * Both at the extent of both, so that they come out alike in size on paper. `shift`: how far along the later drawing
 * what stands at 0 in the earlier one stands, mm: seen from behind, a wall begins at its other end.
 */
export function withChanges(
  before: Drawing | undefined,
  after: Drawing | undefined,
  shift = 0,
): Changes {
  const [old, now] = [piecesOf(before, shift), piecesOf(after, 0)];
  const gone = without(old, now).map(({ piece }) => piece);
  const fresh = without(now, old).map(({ piece }) => piece);
  const both = before && after && over(along(before.extent, shift), after.extent);
  return {
    before: before && marked(before, gone, GONE, both && along(both, -shift)),
    after: after && marked(after, fresh, NEW, both),
    placed: { new: fresh.length, gone: gone.length, same: now.length - fresh.length },
  };
}

type Piece = Box | Shape;

interface Lies {
  readonly piece: Piece;
  /** What it is and where, the same for one that lies where another lay. */
  readonly key: string;
}

function piecesOf(drawing: Drawing | undefined, shift: number): Lies[] {
  if (!drawing) return [];
  return [...drawing.boxes, ...drawing.shapes]
    .filter(({ style }) => !NO_PIECE.has(style))
    .map((piece) => ({ piece, key: keyOf(piece, shift) }));
}

function keyOf(piece: Piece, shift: number): string {
  const at = (length: number) => Math.round(length / NEAR) + 0;
  const places =
    'points' in piece
      ? piece.points.flatMap(({ x, y }) => [at(x + shift), at(y)])
      : [at(piece.x + shift), at(piece.y), at(piece.width), at(piece.height)];
  return `${piece.style} ${places.join(' ')}`;
}

/** Those of one list that the other has not; of two in one place, as many as there are more. */
function without(of: readonly Lies[], others: readonly Lies[]): Lies[] {
  const left = new Map<string, number>();
  for (const { key } of others) left.set(key, (left.get(key) ?? 0) + 1);
  return of.filter(({ key }) => {
    const some = left.get(key) ?? 0;
    left.set(key, some - 1);
    return some <= 0;
  });
}

interface Mark {
  readonly style: Style;
  readonly key: string;
  readonly title: string;
  readonly said: string;
}

const NEW: Mark = {
  style: 'new-piece',
  key: later`new here`,
  title: later`as it is now`,
  said: later`new where they lie`,
};
const GONE: Mark = {
  style: 'gone-piece',
  key: later`gone from here`,
  title: later`as it was`,
  said: later`gone from where they lay`,
};

function marked(
  drawing: Drawing,
  pieces: readonly Piece[],
  { style, key, title, said }: Mark,
  extent: Drawing['extent'] = drawing.extent,
): Drawing {
  const count = `${pieces.length} ${pieces.length === 1 ? phrase`piece` : phrase`pieces`} ${spoken(said)}`;
  const over = pieces.map((piece) => ({ ...piece, style }));
  return {
    ...drawing,
    title: `${drawing.title}: ${spoken(title)}`,
    description: `${drawing.description} ${count}.`,
    extent,
    boxes: [...drawing.boxes, ...over.filter((piece): piece is Box => !('points' in piece))],
    shapes: [...drawing.shapes, ...over.filter((piece): piece is Shape => 'points' in piece)],
    keys: pieces.length ? [...drawing.keys, { style, text: spoken(key) }] : drawing.keys,
    notes: [...drawing.notes, `${count}.`],
  };
}

function over(a: Drawing['extent'], b: Drawing['extent']): Drawing['extent'] {
  return {
    left: Math.min(a.left, b.left),
    right: Math.max(a.right, b.right),
    bottom: Math.min(a.bottom, b.bottom),
    top: Math.max(a.top, b.top),
  };
}

function along(extent: Drawing['extent'], shift: number): Drawing['extent'] {
  return { ...extent, left: extent.left + shift, right: extent.right + shift };
}
