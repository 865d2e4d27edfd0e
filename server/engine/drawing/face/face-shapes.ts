/** What spans openings and lies at their feet, in an elevation: outlines over the bricks. */
import type { FaceShape } from '../../brickwork/needs';
import type { Key, Shape, Style } from '../model';
import type { View } from '../sheet/view';

const STYLES: Readonly<Record<FaceShape['style'], Style>> = {
  lintel: 'lintel',
  soldier: 'soldier',
  'brick-on-edge': 'on-edge',
  voussoir: 'voussoir',
  mortar: 'mortar',
  opening: 'opening',
  cut: 'cut',
};

/** Of part of a wall, only what lies wholly in it. */
export function shapesIn(
  { whole, left, right, from, to, out }: View,
  shapes: readonly FaceShape[],
): Shape[] {
  const [bottom, top] = [from * out.gauge, to * out.gauge];
  const seen = ({ points }: FaceShape) =>
    whole || points.every(({ x, y }) => x >= left && x <= right && y >= bottom && y <= top);
  return shapes.filter(seen).map(({ style, points }) => ({ style: STYLES[style], points }));
}

const WORDS: readonly [Style, string][] = [
  ['lintel', 'lintel'],
  ['soldier', 'soldier'],
  ['voussoir', 'brick of an arch'],
  ['on-edge', 'brick on edge'],
];

/** Keys of the shapes, and then the others: what both have is told once. */
export function shapeKeys(shapes: readonly Shape[], others: readonly Key[]): Key[] {
  const told = new Set(others.map(({ text }) => text));
  const used = new Set(shapes.map(({ style }) => style));
  const own = WORDS.filter(([style, text]) => used.has(style) && !told.has(text));
  return [...own.map(([style, text]) => ({ style, text })), ...others];
}
