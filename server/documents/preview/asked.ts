/** What a drawing is asked for its parts: the lines they come from. A face, a back, a plan and a rod know it differently. */
import type { Box, Chain, Drawing, Group, Label, Shape, Stroke } from '../../engine/drawing';
import { fromOfChain, fromOfLabel, fromOfShape, fromOfStroke } from './figures';
import type { Origins } from './origins';
import { fromOfBox, PiecesAt } from './pieces';

export interface Asked {
  /** For pieces that lie at one height. */
  pieces(first: Box): (box: Box) => number;
  /** Counted from 1; nothing where it is none of the work. */
  course(box: Box): number | undefined;
  stroke(stroke: Stroke): number;
  shape(shape: Shape): number;
  label(label: Label): number;
  /** The i-th word of a chain, which stands at a place along the work. */
  chain(chain: Chain, i: number, at: number): number;
  rod(): number;
}

/** What several drawings that belong together are asked. */
export interface SetAsked {
  /** The words over a group, and over one of its drawings. */
  title(group: Group): number;
  caption(drawing: Drawing): number;
  /** What is asked of its parts. */
  of(drawing: Drawing): Asked;
}

/** A face, seen from before. */
export function faceAsked(origins: Origins): Asked {
  const { gauge } = origins;
  const courses = origins.out?.spec.courses ?? Number.POSITIVE_INFINITY;
  return {
    pieces: ({ y, height }) => {
      const here = new PiecesAt(origins, y, height);
      return (box) =>
        box.style === 'opening' ? fromOfBox(origins, box) : here.of(box.style, box.x, box.width);
    },
    course({ y, height, style }) {
      const middle = y + height / 2;
      const course = Math.floor(middle / gauge) + 1;
      const laid = gauge > 0 && height < 1.5 * gauge && !isCover(style);
      return laid && (course <= courses || origins.thingAt(0, middle) !== undefined)
        ? course
        : undefined;
    },
    stroke: (stroke) => fromOfStroke(origins, stroke),
    shape: (shape) => fromOfShape(origins, shape),
    label: (label) => fromOfLabel(origins, label),
    chain: (chain, i, at) => fromOfChain(origins, chain, i, at),
    rod: () => origins.own('height'),
  };
}

const COVERS: ReadonlySet<string> = new Set(['cap', 'precast', 'tile', 'on-edge']);

function isCover(style: string): boolean {
  return COVERS.has(style);
}

/** A face, seen from behind: its left is the work’s right. */
export function backAsked(origins: Origins, length: number): Asked {
  const face = faceAsked(origins);
  const turn = (x: number, width = 0) => length - x - width;
  const box = (of: Box): Box => ({ ...of, x: turn(of.x, of.width) });
  return {
    ...face,
    pieces: (first) => {
      const of = face.pieces(box(first));
      return (each) => of(box(each));
    },
    stroke: ({ style, from, to }) =>
      face.stroke({
        style,
        from: { x: turn(from.x), y: from.y },
        to: { x: turn(to.x), y: to.y },
      }),
    shape: ({ style, points }) =>
      face.shape({ style, points: points.map(({ x, y }) => ({ x: turn(x), y })) }),
    label: (label) => face.label({ ...label, x: turn(label.x) }),
    chain(chain, i, at) {
      if (chain.side === 'right') return face.chain(chain, i, at);
      const stops = chain.stops.map((stop) => turn(stop)).reverse();
      return face.chain({ ...chain, stops }, stops.length - 1 - i, turn(at));
    },
  };
}
