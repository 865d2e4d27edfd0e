import { lengthOn, type Units } from './lengths';
import type { Chain, Drawing } from './model';
import { type Mark, type Place, ROOM, textWidth } from './sheet/paper';
import { spread } from './spread';

const SIZE = 2.5;
/** Half the length of a tick, mm on paper. */
const TICK = 1.1;
/** From a dimension line to the words beside it, mm on paper. */
const BESIDE = 2.2;
/** Words further than this from their tick are led to it, mm on paper. */
const NEAR = 0.4;
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

/** Each distance over the middle of its own part; turned where it is too narrow, left to the running row where that will not do or reaches into the work. */
function between({ stops }: Chain, y: number, place: Place, units: Units): Mark[] {
  const words = stops.slice(1).flatMap((stop, i): Mark[] => {
    const text = lengthOn(units, stop - stops[i]!);
    const x = place.x((stop + stops[i]!) / 2);
    const room = (stop - stops[i]!) / place.scale;
    const at = { kind: 'text' as const, size: SIZE, text };
    if (room >= textWidth(text, SIZE) + 1) return [{ ...at, x, y: y - 1, align: 'middle' }];
    if (room >= SIZE + 0.6 && textWidth(text, SIZE) + 1.2 <= FIRST)
      return [{ ...at, x: x + SIZE * 0.36, y: y - 1.2, align: 'start', turned: true }];
    return [];
  });
  return [...ruled(stops, y, place), ...words];
}

/** Distances from the wall's left end, written up the paper at each, moved apart and led there where they would touch. */
function running({ stops, origin = 0 }: Chain, y: number, place: Place, units: Units): Mark[] {
  const ticks = stops.map(place.x);
  const words = spread(ticks, SIZE + 0.4).flatMap((x, i): Mark[] => {
    const text = lengthOn(units, stops[i]! - origin);
    const at = { kind: 'text' as const, size: SIZE, text, align: 'end' as const };
    const from = ticks[i]!;
    const leader = Math.abs(x - from) > NEAR ? [line(from, y, x, y + BESIDE - 0.2)] : [];
    return [...leader, { ...at, x: x + SIZE * 0.36, y: y + BESIDE, turned: true }];
  });
  return [...ruled(stops, y, place), ...words];
}

/** Beside the work: what is written at each height, from the lowest up, moved apart and led there where it would touch. */
function beside(said: readonly [at: number, text: string][], x: number, place: Place): Mark[] {
  const ticks = said.map(([at]) => -place.y(at));
  return spread(ticks, SIZE + 0.3).flatMap((up, i): Mark[] => {
    const [from, text] = [ticks[i]!, said[i]![1]];
    const leader = Math.abs(up - from) > NEAR ? [line(x, -from, x + BESIDE - 0.2, -up)] : [];
    const at = { kind: 'text' as const, x: x + BESIDE, y: SIZE * 0.36 - up, size: SIZE };
    return [...leader, { ...at, align: 'start', text }];
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
export function layChains(drawing: Drawing, place: Place): Mark[] {
  return eachChain(drawing, place).flatMap(({ marks }) => marks);
}

/** The same, told apart: for who asks what each is a dimension of. */
export function eachChain({ chains, extent, units }: Drawing, place: Place) {
  let y = place.y(extent.bottom) + FIRST;
  return chains.map((chain): { chain: Chain; marks: Mark[] } => {
    if (chain.side === 'right')
      return { chain, marks: heights(chain, place.x(extent.right) + 5, place, units) };
    const lay = chain.form === 'running' ? running : between;
    const marks = lay(chain, y, place, units);
    y += roomFor(chain, units);
    return { chain, marks };
  });
}
