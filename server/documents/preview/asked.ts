/** What a drawing is asked for its parts: the lines they come from. A face, a back, a plan and a rod know it differently. */
import type { Box, Chain, Label, Shape, Stroke } from '../../engine/drawing';
import {
  fromOfChain,
  fromOfDistance,
  fromOfHeight,
  fromOfLabel,
  fromOfShape,
  fromOfStop,
  fromOfStroke,
} from './figures';
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

/** From above, or a part of a rod: only how far along the work something lies is known, or how far up. */
export function partAsked(origins: Origins, view: 'plan' | 'top' | 'rod'): Asked {
  const any = Number.NaN;
  const thing = (x: number) => origins.things.find(({ from, to }) => x >= from && x <= to);
  const along = (x: number) => {
    if (view === 'top') return coverAt(origins, x);
    const found = thing(x);
    return found ? origins.of(found.line) : origins.bricks();
  };
  const label = ({ x, y, text }: Label) => (view === 'rod' ? levelOf(origins, y, text) : along(x));
  return {
    pieces: () => (box) => (view === 'rod' ? origins.own('height') : along(box.x + box.width / 2)),
    course: () => undefined,
    stroke: ({ from, to }) =>
      view === 'rod' ? fromOfHeight(origins, from.y) : along((from.x + to.x) / 2),
    shape: ({ points }) => along(points[0]?.x ?? any),
    label,
    chain({ side, form, stops }, i, at) {
      if (side === 'right') return origins.own('thick', 'size', 'coping', 'cap');
      if (form === 'running') return fromOfStop(origins, stops[i] ?? 0);
      const next = stops.findIndex((stop) => stop > at);
      return fromOfDistance(origins, stops[next - 1] ?? 0, stops[next] ?? 0);
    },
    rod: () => origins.own('height'),
  };
}

function coverAt(origins: Origins, x: number): number {
  const top = origins.tops.find(({ from, to }) => x >= from && x <= to);
  return top ? origins.of(top.line) : origins.own('coping', 'cap');
}

/** Names beside a rod say what they are of; else it is a course. */
function levelOf(origins: Origins, y: number, text: string): number {
  if (text.startsWith('damp-proof')) return origins.own('dpc');
  if (text.startsWith('coping')) return origins.own('coping', 'cap');
  return fromOfHeight(origins, y);
}
