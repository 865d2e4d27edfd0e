/**
 * Whether pieces close: the same rule as the checker’s (`prove/plan.ts`), asked so often in a search that it is asked only of
 * what is laid there. The proofs ask the checker.
 */
import type { Area, PlacedPiece } from '../../types';

interface Edges {
  readonly left: number;
  readonly right: number;
  readonly front: number;
  readonly back: number;
}

/** Mm²: areas close to this. */
const CLOSES = 1;

/** Joints of `laid` pieces, to one another and to what `stays`, lie between `least` and `most`, and nothing of the outline is bare. */
export function closesUp(
  laid: readonly PlacedPiece[],
  stays: readonly PlacedPiece[],
  outline: Area,
  { least, most }: { readonly least: number; readonly most: number },
): boolean {
  const all = [...laid, ...stays];
  const clear = all.map((p) => edgesOf(p, least / 2 - 1e-6));
  let meet = 0;
  for (let i = 0; i < laid.length; i++)
    for (let k = i + 1; k < all.length; k++) meet += common(clear[i]!, clear[k]!);
  if (!(meet <= CLOSES)) return false;
  const { x, y, width, height } = outline;
  const whole = { left: x, right: x + width, front: y, back: y + height };
  return covers(
    whole,
    all.map((p) => edgesOf(p, most / 2 + 1e-6)),
  );
}

function edgesOf({ x, y, along, across }: PlacedPiece, by: number): Edges {
  return { left: x - by, right: x + along + by, front: y - by, back: y + across + by };
}

/** Mm² that two have in common. */
function common(a: Edges, b: Edges): number {
  const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const deep = Math.min(a.back, b.back) - Math.max(a.front, b.front);
  return wide > 0 && deep > 0 ? wide * deep : 0;
}

/** Whether the pieces cover it: what each leaves bare is parted, until nothing is left. */
function covers(whole: Edges, pieces: readonly Edges[]): boolean {
  let bare = [whole];
  for (const piece of pieces)
    bare = bare.flatMap((b) => (common(b, piece) > 0 ? beside(b, piece) : [b]));
  const left = bare.reduce((sum, b) => sum + (b.right - b.left) * (b.back - b.front), 0);
  return left <= CLOSES;
}

/** What is left of an area beside a piece that covers part of it. */
function beside(area: Edges, { left, right, front, back }: Edges): Edges[] {
  const from = Math.max(area.left, left);
  const to = Math.min(area.right, right);
  const parts = [
    { ...area, right: from },
    { ...area, left: to },
    { left: from, right: to, front: area.front, back: front },
    { left: from, right: to, front: back, back: area.back },
  ];
  return parts.filter((p) => p.right > p.left && p.back > p.front);
}
