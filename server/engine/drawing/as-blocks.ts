import { phrase } from '../../../shared/phrase';
import { cutKey, keyRank } from './keys';
import type { Drawing, Style } from './model';
import { cutLabel } from './top/coping';

const WHOLE: readonly Style[] = ['stretcher', 'header'];
/** Bricks have names for these: of a block they are cuts like any other. */
const CUT: readonly Style[] = ['half', 'three-quarter', 'closer'];

/** A face whose pieces are blocks: hatched and sized where they are not whole. */
export function asBlocks(drawing: Drawing): Drawing {
  const boxes = drawing.boxes.map((box) => {
    if (WHOLE.includes(box.style)) return { ...box, style: 'block' as const };
    return CUT.includes(box.style) ? { ...box, style: 'cut' as const } : box;
  });
  const sizes = drawing.boxes
    .filter(({ style }) => CUT.includes(style))
    .map((box) => cutLabel(box, drawing.units));
  const named = [...WHOLE, ...CUT, 'cut'];
  const others = drawing.keys.filter(({ style }) => !named.includes(style));
  const some = boxes.some(({ style }) => style === 'block');
  const whole = some ? [{ style: 'block' as const, text: phrase`block` }] : [];
  const keys = [...whole, ...cutKey(boxes), ...others].sort((a, b) => keyRank(a) - keyRank(b));
  return { ...drawing, boxes, labels: [...drawing.labels, ...sizes], keys };
}
