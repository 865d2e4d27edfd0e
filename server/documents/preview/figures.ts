/** The line that a dimension, a word or an outline on a drawing comes from. */
import type { Chain, Label, Point, Shape, Stroke } from '../../engine/drawing';
import { type Origins, SAME, type Thing } from './origins';
import { fromOfBox } from './pieces';

const alike = (a: number, b: number) => Math.abs(a - b) < SAME;

/** Along a wall: from one stop to the next. */
export function fromOfDistance(origins: Origins, from: number, to: number): number {
  const thing = origins.things.find((each) => alike(each.from, from) && alike(each.to, to));
  if (thing) return origins.within(thing, thing.kind === 'opening' ? 'width' : 'size');
  const length = origins.out?.spec.length ?? Number.NaN;
  if (alike(from, 0) && alike(to, length)) return origins.own('length', 'size');
  const movement = origins.out?.spec.movement?.some(
    (joint) => alike(joint.from, from) && alike(joint.from + joint.width, to),
  );
  if (movement) return origins.own('movement-joint');
  const step = origins.stepAt(to) ?? origins.stepAt(from);
  // A run of wall is as long as what stands at one of its ends leaves it.
  const after = origins.things.find((each) => alike(each.from, to));
  const before = origins.things.find((each) => alike(each.to, from));
  const bounds = [after, before].filter((each) => each !== undefined);
  const put = after?.put === 'from' ? after : before?.put === 'to' ? before : undefined;
  const placed = put ?? bounds[0];
  if (placed) return placeOf(origins, placed);
  return step ? origins.of(step) : origins.own('length', 'size');
}

function placeOf(origins: Origins, thing: Thing): number {
  return origins.within(thing, thing.kind === 'opening' ? 'from' : 'at');
}

/** Along a wall: how far one stop is from its end. */
export function fromOfStop(origins: Origins, at: number): number {
  const put = origins.things.find((thing) => alike(thing[thing.put], at));
  if (put) return placeOf(origins, put);
  const other = origins.things.find(({ from, to }) => alike(from, at) || alike(to, at));
  if (other) return origins.within(other, other.kind === 'opening' ? 'width' : 'size');
  const step = origins.stepAt(at);
  return step ? origins.of(step) : origins.own('length', 'size');
}

/** Whether something begins or ends so far along the work. */
export function isStop(origins: Origins, at: number): boolean {
  const { spec } = origins.out ?? {};
  const ends = [0, spec?.length ?? origins.work.facts.pier?.plan.width ?? Number.NaN];
  const things = [...origins.things, ...(spec?.steps ?? [])].flatMap(({ from, to }) => [from, to]);
  return [...ends, ...things].some((stop) => alike(stop, at));
}

/** A height that has a name on a gauge rod. */
export function fromOfLevel(origins: Origins, at: number): number {
  if (origins.damp > 0 && alike(origins.damp, at)) return origins.own('dpc');
  const band = origins.bandAt(at - SAME) ?? origins.bandAt(at + SAME);
  const courses = origins.out?.spec.courses ?? Number.NaN;
  const isTop = alike(courses * origins.gauge, at);
  return band && !isTop ? origins.of(band) : fromOfHeight(origins, at);
}

/** Up a wall. */
export function fromOfHeight(origins: Origins, at: number): number {
  const courses = origins.out?.spec.courses;
  if (courses !== undefined && alike(courses * origins.gauge, at)) return origins.own('height');
  const top = origins.tops.find((each) => alike(each.at + each.height, at));
  if (top) return origins.of(top.line);
  const head = origins.things.find((each) => alike(each.top, at));
  if (head) return origins.within(head, 'height');
  const sill = origins.things.find(
    (each) => each.kind === 'opening' && each.bottom > SAME && alike(each.bottom, at),
  );
  if (sill) return origins.within(sill, 'sill', 'height');
  return at > SAME ? origins.own('top', 'height') : origins.own('ground', 'height');
}

/** What the i-th word of a chain says; `at` is where it stands along the work, for those that leave some out. */
export function fromOfChain(origins: Origins, chain: Chain, i: number, at: number): number {
  const { side, form, stops } = chain;
  if (side === 'right') return fromOfHeight(origins, stops[form === 'running' ? i : i + 1] ?? 0);
  if (form === 'running') return fromOfStop(origins, stops[i] ?? 0);
  const next = stops.findIndex((stop) => stop > at);
  return fromOfDistance(origins, stops[next - 1] ?? 0, stops[next] ?? 0);
}

export function fromOfLabel(origins: Origins, { x, y, cut, room }: Label): number {
  if (cut !== undefined && room) {
    const { width, height } = room;
    const corner = { x: x - width / 2, y: y - height / 2 };
    return fromOfBox(origins, { style: 'cut', ...corner, width, height });
  }
  const thing = origins.thingAt(x, y);
  if (thing) return origins.of(thing.line);
  const top = origins.topAt(x, y);
  return top ? origins.of(top.line) : origins.own();
}

export function fromOfStroke(origins: Origins, { style, from, to }: Stroke): number {
  if (style === 'dpc') return origins.own('dpc');
  if (style === 'ground') return origins.own('ground', 'height');
  if (style === 'movement') return origins.own('movement-joint');
  if (style === 'rod' || style === 'course') return origins.own('height');
  const thing = origins.thingAt((from.x + to.x) / 2, (from.y + to.y) / 2);
  return thing ? origins.of(thing.line) : origins.own();
}

/** What spans an opening or lies at its foot. */
export function fromOfShape(origins: Origins, { style, points }: Shape): number {
  const { x, y } = middleOf(points);
  const openings = origins.things.filter(({ kind }) => kind === 'opening');
  const away = ({ from, to, bottom, top }: Thing) =>
    Math.max(0, from - x, x - to) + Math.max(0, bottom - y, y - top);
  const near = openings.sort((a, b) => away(a) - away(b))[0];
  if (!near) return origins.own();
  if (y < near.bottom) return origins.within(near, 'subsill', 'sill');
  if (style === 'lintel') return origins.within(near, 'lintel', 'head');
  return y > near.top - origins.gauge
    ? origins.within(near, 'head', 'lintel')
    : origins.of(near.line);
}

function middleOf(points: readonly Point[]): Point {
  const sum = points.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}
