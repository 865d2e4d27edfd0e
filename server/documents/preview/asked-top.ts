/** What a coping or a cap from above is asked for its parts: each drawing is of one, and of the line that lays it. */
import type { Chain, Drawing } from '../../engine/drawing';
import type { Asked, SetAsked } from './asked';
import { fromOfStop, isStop } from './figures';
import { NOWHERE } from './lines';
import { type Origins, SAME } from './origins';

export function topsAsked(origins: Origins): SetAsked {
  const own = (drawing: Drawing | undefined) => coverOf(origins, drawing);
  return {
    title: ({ drawings: [first] }) => own(first),
    caption: own,
    of: (drawing) => coverAsked(origins, drawing),
  };
}

/** The line of what a drawing shows. */
function coverOf(origins: Origins, drawing: Drawing | undefined): number {
  const seen = drawing?.part?.top;
  const alike = origins.tops.filter(
    ({ from, to }) => seen && Math.abs(from - seen.from) < SAME && Math.abs(to - seen.to) < SAME,
  );
  const away = ({ at }: { at: number }) => Math.abs(at - (seen?.at ?? 0));
  const top = [...alike].sort((a, b) => away(a) - away(b))[0];
  return top ? origins.of(top.line) : origins.own('coping', 'cap');
}

function coverAsked(origins: Origins, drawing: Drawing): Asked {
  const own = coverOf(origins, drawing);
  const { left, right } = drawing.extent;
  const { from, to } = drawing.part?.top ?? { from: left, to: right };
  const under = origins.things.find(
    ({ kind, ...pier }) =>
      kind === 'pier' && pier.from < (from + to) / 2 && pier.to > (from + to) / 2,
  );
  const deep = under ? origins.within(under, 'size') : origins.own('thick', 'size');
  const along = ({ stops, origin }: Chain, i: number) => {
    const at = stops[i] ?? 0;
    // A cap is measured by itself.
    return origin === 0 && isStop(origins, at) ? fromOfStop(origins, at) : own;
  };
  return {
    pieces: () => () => own,
    course: () => undefined,
    stroke: ({ style }) => (style === 'hidden' ? deep : NOWHERE),
    shape: () => own,
    label: () => own,
    chain(chain, i) {
      if (chain.side !== 'right') return along(chain, i);
      const [front, back] = [chain.stops[i] ?? 0, chain.stops[i + 1] ?? 0];
      return isThrough(drawing, front, back) ? deep : own;
    },
    rod: () => own,
  };
}

/** From face to face of what lies below: the dashed lines. */
function isThrough({ strokes }: Drawing, front: number, back: number): boolean {
  const faces = strokes.filter(({ style }) => style === 'hidden').map(({ from }) => from.y);
  return [front, back].every((y) => faces.some((face) => Math.abs(face - y) < SAME));
}
