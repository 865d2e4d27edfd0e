import { lengthOn, type Units } from './lengths';
import type { Chain, Drawing } from './model';
import type { Mark, Place } from './sheet/paper';
import { ROOM, textWidth } from './sheet/paper';

const SIZE = 2.5;
/** Half the length of a tick, mm on paper. */
const TICK = 1.1;
/** First row below the work, mm on paper. */
const FIRST = 9;

const line = (x1: number, y1: number, x2: number, y2: number): Mark => {
  return { kind: 'line', ink: 'dimension', x1, y1, x2, y2 };
};

/** A dimension line along x with a sloping tick at each stop. */
function ruled(stops: readonly number[], y: number, place: Place): Mark[] {
  const xs = stops.map(place.x);
  const ticks = xs.map((x) => line(x - TICK, y + TICK, x + TICK, y - TICK));
  return [line(xs[0]!, y, xs.at(-1)!, y), ...ticks];
}

/** Each distance over the middle of its own part; turned where it is too narrow, left to the running row where that will not do. */
function between({ stops }: Chain, y: number, place: Place, units: Units): Mark[] {
  const words = stops.slice(1).flatMap((stop, i): Mark[] => {
    const text = lengthOn(units, stop - stops[i]!);
    const x = place.x((stop + stops[i]!) / 2);
    const room = (stop - stops[i]!) / place.scale;
    const at = { kind: 'text' as const, size: SIZE, text };
    if (room >= textWidth(text, SIZE) + 1) return [{ ...at, x, y: y - 1, align: 'middle' }];
    if (room >= SIZE + 0.6)
      return [{ ...at, x: x + SIZE * 0.36, y: y - 1.2, align: 'start', turned: true }];
    return [];
  });
  return [...ruled(stops, y, place), ...words];
}

/** Distances from the wall's left end, written up the paper at each, moved along where they would touch. */
function running({ stops, origin = 0 }: Chain, y: number, place: Place, units: Units): Mark[] {
  let last = Number.NEGATIVE_INFINITY;
  const words = stops.map((stop): Mark => {
    last = Math.max(place.x(stop), last + SIZE + 0.4);
    const text = lengthOn(units, stop - origin);
    const at = { kind: 'text' as const, size: SIZE, text, align: 'end' as const };
    return { ...at, x: last + SIZE * 0.36, y: y + 2, turned: true };
  });
  return [...ruled(stops, y, place), ...words];
}

/** Beside the work: what is written at each height, from the lowest up, moved up where it would touch the last. */
function beside(said: readonly [at: number, text: string][], x: number, place: Place): Mark[] {
  let last = Number.POSITIVE_INFINITY;
  return said.map(([at, text]): Mark => {
    last = Math.min(place.y(at), last - SIZE - 0.3);
    return { kind: 'text', x: x + 2, y: last + SIZE * 0.36, size: SIZE, align: 'start', text };
  });
}

/** Heights from the ground at each level; or each distance at its middle. */
function heights(
  { stops, form, origin = 0 }: Chain,
  x: number,
  place: Place,
  units: Units,
): Mark[] {
  const ys = stops.map(place.y);
  const ticks = ys.map((y) => line(x - TICK, y + TICK, x + TICK, y - TICK));
  const said = stops.flatMap((stop, i): [number, string][] => {
    if (form === 'running') return [[stop, lengthOn(units, stop - origin)]];
    const last = stops[i - 1];
    return last === undefined ? [] : [[(stop + last) / 2, lengthOn(units, stop - last)]];
  });
  return [line(x, ys[0]!, x, ys.at(-1)!), ...ticks, ...beside(said, x, place)];
}

/** Mm on paper from one row of dimensions below the work to the next. */
export function roomFor({ form, stops, origin = 0 }: Chain, units: Units): number {
  if (form === 'between') return ROOM.chain;
  const longest = Math.max(...stops.map((stop) => textWidth(lengthOn(units, stop - origin), SIZE)));
  return longest + 6;
}

/** Every chain of a drawing, the rows below it one under another. */
export function layChains({ chains, extent, units }: Drawing, place: Place): Mark[] {
  let y = place.y(extent.bottom) + FIRST;
  return chains.flatMap((chain) => {
    if (chain.side === 'right') return heights(chain, place.x(extent.right) + 5, place, units);
    const lay = chain.form === 'running' ? running : between;
    const marks = lay(chain, y, place, units);
    y += roomFor(chain, units);
    return marks;
  });
}
