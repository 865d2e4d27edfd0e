/** Drawings of a piece of work by the views that were asked for, each view with the name that a file of it has. */
import type { Work } from '../engine/brickwork/work';
import { A4_LANDSCAPE, LETTER_LANDSCAPE, type Sheet } from '../engine/drawing';
import type { Job } from '../engine/workspace/job';
import { sheetsOf, type View } from './work-sheets';

/** Sheets of one view, and what a file of them is called. */
export interface DrawnView {
  readonly name: string;
  readonly sheets: readonly Sheet[];
}

/** Views without anything to draw are left out. @param course on plan: the lower of the two, from 1 */
export function drawnViews(
  work: Work,
  { env, works }: Job,
  views: readonly View[],
  course?: number,
): DrawnView[] {
  const paper = env.imperial ? LETTER_LANDSCAPE : A4_LANDSCAPE;
  const drawn = views.map((view): DrawnView => {
    const name = `${work.name || work.kind}-${view}`.replace(/[^\p{L}\p{N}_-]/gu, '-');
    return { name, sheets: sheetsOf(work, env, view, { paper, course, works }) };
  });
  return drawn.filter(({ sheets }) => sheets.length);
}
