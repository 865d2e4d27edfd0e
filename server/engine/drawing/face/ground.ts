import { groundOf } from '../../setting-out';
import type { Stroke, Style } from '../model';
import type { View } from '../sheet/view';

/** A level line, drawn at course `at`. */
function level({ out }: View, style: Style, at: number, from: number, to: number): Stroke[] {
  const y = at * out.gauge;
  return to > from ? [{ style, from: { x: from, y }, to: { x: to, y } }] : [];
}

function upright({ out }: View, x: number, from: number, to: number): Stroke[] {
  if (from === to) return [];
  return [{ style: 'ground', from: { x, y: from * out.gauge }, to: { x, y: to * out.gauge } }];
}

/** The ground under the wall, and a damp-proof course through it, but not across its openings; both step where it steps. */
export function groundAndDpc(view: View, dpc: number | undefined): Stroke[] {
  const { out, left, right } = view;
  const over = (right - left) / 60;
  const inView = groundOf(out.spec).filter(({ from, to }) => to > left && from < right);
  return inView.flatMap(({ from, to, level: base }, i) => {
    const first = i === 0;
    const last = i === inView.length - 1;
    const ground = level(
      view,
      'ground',
      base,
      first ? left - over : from,
      last ? right + over : to,
    );
    const step = first ? [] : upright(view, from, inView[i - 1]!.level, base);
    const ends = { from: first ? left - over / 2 : from, to: last ? right + over / 2 : to };
    const damp = dpc === undefined ? [] : dpcAt(view, base + dpc, ends.from, ends.to);
    return [...(base >= view.from && base <= view.to ? [...ground, ...step] : []), ...damp];
  });
}

function dpcAt(view: View, at: number, start: number, end: number): Stroke[] {
  if (at < view.from || at > view.to) return [];
  const gaps = view.out.spec.openings
    .filter((o) => o.sill <= at && (o.top ?? Number.POSITIVE_INFINITY) > at)
    .sort((a, b) => a.from - b.from);
  const strokes: Stroke[] = [];
  let from = start;
  for (const gap of [...gaps, { from: end, width: 0 }]) {
    strokes.push(...level(view, 'dpc', at, from, Math.min(gap.from, end)));
    from = Math.max(from, gap.from + gap.width);
  }
  return strokes;
}
