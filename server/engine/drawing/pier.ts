import type { PierPlan } from '../setting-out';
import type { Topping } from './coping';
import { toppingBoxes, toppingKeys, toppingLabels } from './coping';
import type { Drawing, Stroke } from './model';
import { inMillimetres } from './model';

/** The face of a free-standing pier, ruled in courses of `gauge` mm, with what stands on it. Courses are at most a few thousand. */
export function pierElevation(
  pier: PierPlan,
  gauge: number,
  title: string,
  toppings: readonly Topping[] = [],
): Drawing {
  const { name, width, depth } = pier;
  const courses = Math.min(pier.courses, 2000);
  const height = courses * gauge;
  const above = toppings.flatMap(toppingBoxes);
  const right = Math.max(width, ...above.map((box) => box.x + box.width));
  const left = Math.min(0, ...above.map((box) => box.x));
  const top = Math.max(height, ...above.map((box) => box.y + box.height));
  const ruled = Array.from({ length: Math.max(0, courses - 1) }, (_, i): Stroke => {
    const y = (i + 1) * gauge;
    return { style: 'course', from: { x: 0, y }, to: { x: width, y } };
  });
  const over = (right - left) / 8;
  const from = { x: left - over, y: 0 };
  const size = `${inMillimetres(width)} by ${inMillimetres(depth)} mm, ${courses} courses high`;
  return {
    title,
    description: `Elevation of a pier, ${name}, ${size}.`,
    extent: { left, right, bottom: 0, top },
    boxes: [{ style: 'pier', x: 0, y: 0, width, height }, ...above],
    strokes: [...ruled, { style: 'ground', from, to: { x: right + over, y: 0 } }],
    labels: toppings.flatMap(toppingLabels),
    chains: [
      { side: 'below', form: 'between', stops: [0, width] },
      { side: 'right', form: 'running', stops: [0, height, ...(top > height ? [top] : [])] },
    ],
    rod: { gauge, courses, every: 4 },
    keys: [{ style: 'pier', text: 'pier' }, ...toppingKeys(toppings)],
    notes: [],
  };
}
