/** What spans openings and lies at their feet, in an elevation: outlines over the bricks. */
import { later, spoken } from '../../../../shared/phrase';
import type { FaceShape } from '../../brickwork/faces';
import { lengthOn, type Units } from '../lengths';
import type { Box, Key, Label, Shape, Style } from '../model';
import type { View } from '../sheet/view';
import { cutLabel } from '../top/coping';

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

function boxOf({ style, points }: Shape): Box {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { style, x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** The sizes of what is cut: its length; where it is cut lower than a brick, its height too. */
export function shapeSizes(shapes: readonly Shape[], { out }: View, units: Units): Label[] {
  const cuts = shapes.filter(({ style }) => style === 'cut').map(boxOf);
  return cuts.map((box) => {
    const label = cutLabel(box, units);
    const low = box.height < out.spec.unit.height - 0.5;
    return low ? { ...label, text: `${label.text} x ${lengthOn(units, box.height)}` } : label;
  });
}

const WORDS: readonly [Style, string][] = [
  ['lintel', later`lintel`],
  ['soldier', later`soldier`],
  ['voussoir', later`brick of an arch`],
  ['on-edge', later`brick on edge`],
];

/** Keys of the shapes, and then the others: what both have is told once. */
export function shapeKeys(shapes: readonly Shape[], others: readonly Key[]): Key[] {
  const told = new Set(others.map(({ text }) => text));
  const used = new Set(shapes.map(({ style }) => style));
  const known = WORDS.map(([style, text]) => ({ style, text: spoken(text) }));
  return [...known.filter(({ style, text }) => used.has(style) && !told.has(text)), ...others];
}
