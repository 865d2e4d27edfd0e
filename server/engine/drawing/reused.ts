/** Brickwork built again, in which bricks that came down are laid beside new ones. */
import { phrase } from '../../../shared/phrase';
import type { Box, Drawing, Style } from './model';

/** Bricks that are laid whole: what is cut is counted by its length, and marked like any cut. */
const WHOLE: readonly Style[] = ['stretcher', 'header'];

/** Every so many of them marked, evenly, so that `share` of all are. */
function marked(boxes: readonly Box[], share: number): Box[] {
  let due = 0;
  return boxes.flatMap((box) => {
    if (!WHOLE.includes(box.style)) return [];
    due += share;
    if (due < 1 - 1e-9) return [];
    due -= 1;
    return [{ ...box, style: 'reused' as const }];
  });
}

function noteOn(share: number): string[] {
  if (share >= 1) return [phrase`All bricks are those that came down.`];
  if (share <= 0) return [phrase`All bricks are new.`];
  const part = phrase`${Math.round(share * 100)} of 100`;
  return [
    phrase`Dotted: reused, ${part}; without dots: new. They are drawn evenly mixed; which goes where is settled at the wall.`,
  ];
}

/**
 * The face of what is built again, mixed as evenly as may be. `reused` is the share of its bricks that came down, 0 to
 * 1; `what` says what it is a face of.
 */
export function withReused(drawing: Drawing, reused: number, what: string): Drawing {
  const marks = marked(drawing.boxes, reused);
  const notes = noteOn(reused);
  return {
    ...drawing,
    description: phrase`Elevation of ${what}. ${notes.join(' ')}`,
    // It may begin anywhere up what stands.
    strokes: drawing.strokes.filter(({ style }) => style !== 'ground'),
    boxes: [...drawing.boxes, ...marks],
    keys: [
      ...drawing.keys,
      ...(marks.length ? [{ style: 'reused' as const, text: phrase`reused brick` }] : []),
    ],
    notes: [...drawing.notes, ...notes],
  };
}
