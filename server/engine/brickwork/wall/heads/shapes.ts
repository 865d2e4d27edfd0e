/** Heads, lintels, arches and sills as they show in an elevation: outlines, mm of the wall. */
import type { Ring } from '../../../setting-out';
import type { FacePoint, FaceShape } from '../../faces';
import type { HeadArch } from './arch';
import type { Laying } from './counts';
import type { Head } from './head';
import { lowPieces, type Splitable } from './low-row';
import { piecesOf, type UprightRow } from './row';
import type { Site } from './site';

/** More pieces than this are not drawn one by one. */
const MOST_DRAWN = 2000;
/** Points that an arc is drawn through. */
const ARC = 48;

export function shapesOf(heads: readonly Head[], site: Laying): FaceShape[] {
  let left = MOST_DRAWN;
  return heads.flatMap((head) => {
    const shapes = shapesIn(head, site);
    left -= shapes.length;
    return left < 0 ? [] : shapes;
  });
}

function shapesIn({ opening, lintel, row, arch, subsill }: Head, site: Laying): FaceShape[] {
  const { bed } = site.spec.joints;
  const foot = opening.spec.sill * site.gauge + bed;
  return [
    ...(lintel && lintel.high > 0 ? lintelShapes(lintel, lintel.high, site) : []),
    ...(row ? rowShapes(row, row.zone.low * site.gauge + bed, site) : []),
    ...(row ? splitShapes(row, row.high, site) : []),
    ...(arch ? archShapes(arch, site) : []),
    ...(subsill ? rowShapes(subsill, foot, site) : []),
  ];
}

function box(
  style: FaceShape['style'],
  x: number,
  y: number,
  wide: number,
  high: number,
): FaceShape {
  const [right, top] = [x + wide, y + high];
  return {
    style,
    points: [
      { x, y },
      { x: right, y },
      { x: right, y: top },
      { x, y: top },
    ],
  };
}

function lintelShapes(
  lintel: NonNullable<Head['lintel']>,
  high: number,
  site: Laying,
): FaceShape[] {
  const { from, to, zone } = lintel;
  const y = zone.low * site.gauge + site.spec.joints.bed;
  return [box('lintel', from, y, to - from, high), ...splitShapes(lintel, high, site)];
}

function rowShapes(row: UprightRow, y: number, { spec }: Site): FaceShape[] {
  const joint = row.way?.joint ?? spec.joints.perpend;
  let x = row.from + (row.endJoints ? joint : 0);
  const pieces = (row.way?.wholes ?? 0) > MOST_DRAWN ? [] : piecesOf(row, spec.unit.height);
  return pieces.map(({ length, cut }) => {
    const shape = box(cut ? 'cut' : row.kind, x, y, length, row.high);
    x += length + joint;
    return shape;
  });
}

/** What lies on a thing that is not whole courses high: a thick wall shows other pieces of it in its back. */
function splitShapes(thing: Splitable, high: number, site: Laying): FaceShape[] {
  const { gauge, spec, deep } = site;
  const { bed } = spec.joints;
  const y = thing.zone.low * gauge + bed + high + bed;
  const pieces = lowPieces(thing, site);
  if (pieces.length > MOST_DRAWN) return [];
  return pieces.flatMap((piece) => {
    const front = piece.y < bed / 2;
    const back = piece.y + piece.across > deep - bed / 2;
    if (!front && !back) return [];
    const shape = box('cut', piece.x, y, piece.along, thing.coursing.split);
    return front && back ? [shape] : [{ ...shape, face: front ? ('front' as const) : 'back' }];
  });
}

function archShapes(head: HeadArch, site: Site): FaceShape[] {
  const { arch, at, rings } = head;
  const centre = { x: at.middle, y: at.course * site.gauge - arch.drop };
  const springing = [1, -1].map((side) => ({
    x: at.middle + (side * arch.span) / 2,
    y: at.course * site.gauge,
  }));
  const bricks = rings.reduce((sum, { count }) => sum + count, 0);
  if (bricks > MOST_DRAWN) return [];
  return [
    {
      style: 'mortar',
      points: [...arc(centre, arch.back, arch.lean), springing[1]!, springing[0]!],
    },
    { style: 'opening', points: arc(centre, arch.radius, arch.lean) },
    ...rings.flatMap((ring) => voussoirs(ring, head, centre, site.spec.unit.height)),
  ];
}

/** From the right round to the left. */
function arc(centre: FacePoint, radius: number, lean: number): FacePoint[] {
  return Array.from({ length: ARC + 1 }, (_, i) => on(centre, radius, lean - (2 * lean * i) / ARC));
}

/** A point at an angle from the upright, to the right. */
function on({ x, y }: FacePoint, radius: number, angle: number, aside = 0): FacePoint {
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  return { x: x + radius * sin + aside * cos, y: y + radius * cos - aside * sin };
}

/** Bricks of a ring from the left: rectangles in a rough arch, wedges in an axed one. */
function voussoirs(
  ring: Ring,
  { arch, how }: HeadArch,
  centre: FacePoint,
  each: number,
): FaceShape[] {
  const { inner, outer, count, back } = ring;
  const wedge = (radius: number) => (2 * arch.lean * radius - (count + 1) * back) / count;
  const half = (radius: number) => (how === 'rough' ? each : wedge(radius)) / 2;
  const joint = (radius: number) =>
    (2 * arch.lean * radius - count * 2 * half(radius)) / (count + 1);
  return Array.from({ length: count }, (_, i) => {
    const middle = (inner + outer) / 2;
    const along = joint(middle) + half(middle) + i * (2 * half(middle) + joint(middle));
    const angle = count === 1 ? 0 : along / middle - arch.lean;
    const points = [
      on(centre, inner, angle, -half(inner)),
      on(centre, inner, angle, half(inner)),
      on(centre, outer, angle, half(outer)),
      on(centre, outer, angle, -half(outer)),
    ];
    return { style: 'voussoir', points };
  });
}
