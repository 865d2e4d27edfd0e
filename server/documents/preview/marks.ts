/**
 * Which lines what stands on a paper comes from, told in its HTML: only for a preview beside the job. A paper says it
 * itself; what says nothing and stands under a heading that does is of the same.
 */
import type { Place } from '../../../shared/span';
import type { Job } from '../../engine/workspace/job';
import type { Marked } from '../paper/html/parts';
import { LinesAt } from './line-at';
import { type Lines, NOWHERE } from './lines';

/** A paper of any size tells of so many lines; what hangs on more of them is not marked. */
const MOST_LINES = 5000;

/** Marks for the parts of a paper, in the order they are read: `data-from` leads, `data-also` are others it hangs on. */
export function markedBy(job: Job, lines: Lines): Marked {
  const found = new LinesAt(job);
  /** Of the headings that a part stands under, by their levels. The first is of the whole paper. */
  const under: string[] = [];
  return (from, what, level = 0) => {
    const own = markOf(from?.() ?? [], found, lines);
    if (what === 'heading') under.splice(level);
    if (what === 'heading' && level > 1) under[level] = own;
    return own || (what === 'cell' ? '' : (under.findLast(Boolean) ?? ''));
  };
}

function markOf(places: readonly Place[], found: LinesAt, lines: Lines): string {
  const all = places.flatMap((place) => {
    const at = lines.list.length < MOST_LINES ? found.at(place) : undefined;
    return at ? lines.of(at.line, at.block) : [];
  });
  const [from, ...also] = [...new Set(all)].filter((each) => each !== NOWHERE);
  if (from === undefined) return '';
  return `data-from="${from}"${also.length ? ` data-also="${also.join(' ')}"` : ''}`;
}
