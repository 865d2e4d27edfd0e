/** Marks of a sheet as they are drawn: neighbours of one kind and ink together, whatever they are drawn with. */
import type { Ink, Mark } from '../engine/drawing';

export type TextMark = Extract<Mark, { kind: 'text' }>;
export type Drawn = Exclude<Mark, TextMark>;

/** A row of marks in the same ink, all boxes, all shapes or all lines; or one text. */
export type MarkRun =
  | { readonly text: TextMark }
  | { readonly text?: undefined; readonly ink: Ink; readonly marks: readonly Drawn[] };

export function runsOf(marks: readonly Mark[]): MarkRun[] {
  const runs: MarkRun[] = [];
  const all = gathered(marks);
  for (let i = 0; i < all.length; ) {
    const mark = all[i]!;
    if (mark.kind === 'text') {
      runs.push({ text: mark });
      i++;
      continue;
    }
    const { kind, ink } = mark;
    const row: Drawn[] = [];
    for (let next = all[i]; next?.kind === kind && next.ink === ink; next = all[++i])
      row.push(next);
    runs.push({ ink, marks: row });
  }
  return runs;
}

/** Boxes first, then shapes, those of one ink together: bricks never overlap, so they look the same in any order. */
function gathered(marks: readonly Mark[]): Mark[] {
  const filled = new Map<string, Mark[]>();
  const rest: Mark[] = [];
  for (const mark of marks) {
    if (mark.kind === 'line' || mark.kind === 'text') {
      rest.push(mark);
      continue;
    }
    const alike = `${mark.kind} ${mark.ink}`;
    const known = filled.get(alike);
    if (known) known.push(mark);
    else filled.set(alike, [mark]);
  }
  return [...[...filled.values()].flat(), ...rest];
}
