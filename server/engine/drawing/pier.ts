import { phrase } from '../../../shared/phrase';
import type { CoursePlan, PierPlan, UnitSize } from '../setting-out';
import { keysOf } from './keys';
import { lengthOn, type Units, withUnit } from './lengths';
import type { Box, Drawing, Stroke } from './model';
import { pierBricks } from './pier-bricks';
import {
  type Topping,
  toppingBoxes,
  toppingKeys,
  toppingLabels,
  toppingNotes,
  toppingTops,
} from './top/coping';

export interface PierOptions {
  /** The course a damp-proof course lies under, or that the bricks that make one reach up to. */
  dpc?: number;
  /** What lengths are written in: millimetres when left out. */
  units?: Units;
  /** Where its bricks lie, for them to be drawn: it is ruled in courses when left out. */
  placed?: { readonly unit: UnitSize; readonly courses: readonly CoursePlan[] };
}

/** Every brick of the face, or the whole of it plain. */
function faceBricks(pier: PierPlan, courses: number, gauge: number, options: PierOptions) {
  const { placed, units = 'millimetres' } = options;
  if (!placed?.courses.length) {
    const { width } = pier;
    const plain: Box = { style: 'pier', x: 0, y: 0, width, height: courses * gauge };
    return { boxes: [plain], labels: [], plain: true };
  }
  const { unit, courses: plans } = placed;
  const whole = { name: pier.name, x: 0, y: 0, base: 0, high: courses, courses: plans };
  const bed = gauge - unit.height;
  const view = { face: 'front', unit, bed, units, courses: { from: 0, to: courses } } as const;
  return { ...pierBricks(whole, view), plain: false };
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
  options: PierOptions = {},
): Drawing {
  const { dpc, units = 'millimetres' } = options;
  const { name, width, depth } = pier;
  const courses = Math.min(pier.courses, 2000);
  const height = courses * gauge;
  const above = toppings.flatMap(toppingBoxes);
  const right = Math.max(width, ...above.map((box) => box.x + box.width));
  const left = Math.min(0, ...above.map((box) => box.x));
  const top = Math.max(height, ...above.map((box) => box.y + box.height));
  const heights = [...new Set([0, height, ...toppingTops(toppings)])].sort((a, b) => a - b);
  const plan = phrase`${lengthOn(units, width)} by ${lengthOn(units, depth)}`;
  const said = [name, withUnit(plan, units), phrase`${courses} courses high`]
    .filter(Boolean)
    .join(', ');
  const face = faceBricks(pier, courses, gauge, options);
  const boxes = [...face.boxes, ...above];
  const ruled = strokesOf(courses, gauge, width, dpc);
  const strokes = ruled.filter(({ style }) => face.plain || style !== 'course');
  return {
    title,
    units,
    description: phrase`Elevation of a pier, ${said}.`,
    extent: { left, right, bottom: 0, top },
    boxes,
    shapes: [],
    strokes,
    labels: [...face.labels, ...toppings.flatMap((topping) => toppingLabels(topping, units))],
    chains: [
      { side: 'below', form: 'between', stops: [0, width] },
      { side: 'right', form: 'running', stops: heights },
    ],
    rod: { gauge, courses, every: 4 },
    keys: [...keysOf(boxes, dpc !== undefined && dpc > 0), ...toppingKeys(toppings)],
    notes: toppingNotes(toppings),
  };
}
