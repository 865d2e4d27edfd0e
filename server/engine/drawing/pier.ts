import type { PierPlan } from '../setting-out';
import type { Topping } from './coping';
import { toppingBoxes, toppingKeys, toppingLabels, toppingNotes, toppingTops } from './coping';
import { lengthOn, type Units, withUnit } from './lengths';
import type { Drawing, Key, Stroke } from './model';

export interface PierOptions {
  /** The course a damp-proof course lies under, or that the bricks that make one reach up to. */
  dpc?: number;
  /** What lengths are written in: millimetres when left out. */
  units?: Units;
}

/** Courses, the ground, and a damp-proof course: lines across. */
function strokesOf(courses: number, gauge: number, width: number, dpc: number | undefined) {
  const level = (style: Stroke['style'], y: number, over: number): Stroke => ({
    style,
    from: { x: -over, y },
    to: { x: width + over, y },
  });
  const ruled = Array.from({ length: Math.max(0, courses - 1) }, (_, i) =>
    level('course', (i + 1) * gauge, 0),
  );
  const damp = dpc ? [level('dpc', Math.min(dpc, courses) * gauge, width / 16)] : [];
  return [...ruled, ...damp, level('ground', 0, width / 8)];
}

/** The face of a free-standing pier, ruled in courses of `gauge` mm, with what stands on it. Courses are at most a few thousand. */
export function pierElevation(
  pier: PierPlan,
  gauge: number,
  title: string,
  toppings: readonly Topping[] = [],
  { dpc, units = 'millimetres' }: PierOptions = {},
): Drawing {
  const { name, width, depth } = pier;
  const courses = Math.min(pier.courses, 2000);
  const height = courses * gauge;
  const above = toppings.flatMap(toppingBoxes);
  const right = Math.max(width, ...above.map((box) => box.x + box.width));
  const left = Math.min(0, ...above.map((box) => box.x));
  const top = Math.max(height, ...above.map((box) => box.y + box.height));
  const heights = [...new Set([0, height, ...toppingTops(toppings)])].sort((a, b) => a - b);
  const plan = `${lengthOn(units, width)} by ${lengthOn(units, depth)}`;
  const said = [name, withUnit(plan, units), `${courses} courses high`].filter(Boolean).join(', ');
  const damp: Key[] = dpc ? [{ style: 'dpc', text: 'damp-proof course' }] : [];
  return {
    title,
    units,
    description: `Elevation of a pier, ${said}.`,
    extent: { left, right, bottom: 0, top },
    boxes: [{ style: 'pier', x: 0, y: 0, width, height }, ...above],
    strokes: strokesOf(courses, gauge, width, dpc),
    labels: toppings.flatMap((topping) => toppingLabels(topping, units)),
    chains: [
      { side: 'below', form: 'between', stops: [0, width] },
      { side: 'right', form: 'running', stops: heights },
    ],
    rod: { gauge, courses, every: 4 },
    keys: [{ style: 'pier', text: 'pier' }, ...damp, ...toppingKeys(toppings)],
    notes: toppingNotes(toppings),
  };
}
