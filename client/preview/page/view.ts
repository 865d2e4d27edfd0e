/** How large a drawing is shown, and which part of it: plain sums. */

export const MM = 96 / 25.4;

const STEPS = [0.25, 0.33, 0.5, 0.67, 0.8, 1, 1.25, 1.5, 2, 3, 4, 6, 8, 12, 16];
const MOST = STEPS.at(-1)!;
const LEAST = STEPS[0]!;

/** The next larger or smaller of the usual sizes. */
export function zoomed(now: number, by: 1 | -1): number {
  if (by > 0) return STEPS.find((step) => step > now * 1.01) ?? MOST;
  return STEPS.findLast((step) => step < now * 0.99) ?? LEAST;
}

/** With the wheel, a notch of which is 100 or so. */
export function wheeled(now: number, delta: number): number {
  return clamp(now * Math.exp(-clamp(delta, -200, 200) / 400), LEAST, MOST);
}

/** As large as its room is wide: tall sets of drawings are scrolled. A little more or less than its own size. */
export function fitting(
  width: number,
  height: number,
  room: { width: number; height: number },
  tall: boolean,
) {
  const wide = room.width / (width * MM);
  const high = room.height / (height * MM);
  return clamp(tall ? wide : Math.min(wide, high), 0.1, 1.4);
}

export function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

/** So that what is at a point stays there: where to scroll to when the size changes from one to the other. */
export function scrolled(scroll: number, point: number, from: number, to: number): number {
  return ((scroll + point) * to) / from - point;
}

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Where to scroll so that a span is seen; nothing where enough of it is already. */
export function intoView(span: Span, seen: Span): number | undefined {
  const size = seen.to - seen.from;
  const shown = Math.min(span.to, seen.to) - Math.max(span.from, seen.from);
  if (shown >= Math.min(span.to - span.from, size * 0.6) - 0.5) return undefined;
  return Math.max(0, (span.from + span.to) / 2 - size / 2);
}
