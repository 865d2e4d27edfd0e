import type { Units } from '../lengths';
import { type PlacedPier, pierBricks } from '../pier-bricks';
import { clip, type View } from '../sheet/view';
import { pierMarks } from '../things';

/** More courses of piers than this are not drawn brick by brick. */
const MOST_COURSES = 5000;

/** The piers in view, brick by brick where their plans are known and that is not too much to draw, else plain. */
export function piersIn(
  view: View,
  piers: readonly PlacedPier[],
  face: 'front' | 'back',
  units: Units,
) {
  const { spec } = view.out;
  const known = new Map(piers.map((pier) => [pier.name, pier]));
  const seen = spec.piers.filter(
    ({ from, width }) => view.whole || (from < view.right && from + width > view.left),
  );
  const drawn = seen.flatMap(({ name }) => known.get(name) ?? []);
  const courses = drawn.reduce((sum, { high }) => sum + high, 0);
  const some = courses > MOST_COURSES ? [] : drawn;
  const shown = { face, unit: spec.unit, bed: spec.joints.bed, units };
  const range = { from: view.from, to: view.to };
  const bricks = some.map((pier) => pierBricks(pier, { ...shown, courses: range }));
  return {
    boxes: bricks.flatMap((b) => b.boxes).flatMap((box) => clip(view, box) ?? []),
    labels: bricks.flatMap((b) => b.labels).filter(({ x }) => x > view.left && x < view.right),
    plain: pierMarks(view, new Set(some.map(({ name }) => name))),
  };
}
