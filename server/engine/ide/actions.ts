/** Ways out of what is told about some lines, each an edit of the text. */
import type { Job } from '../workspace/job';
import type { Action } from './types';

export interface ActionRange {
  readonly startLine: number;
  readonly startColumn: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** Those whose finding touches the range; the preferred ones first. */
export function actionsFor(job: Job, range: ActionRange): Action[] {
  job.anewTried();
  const actions = job.findings
    .filter((finding) => touches(finding.place, range))
    .flatMap((finding) =>
      finding.ways.map((way) => ({
        finding,
        title: way.title,
        preferred: way.preferred ?? false,
        edits: way.edits,
      })),
    );
  return [...actions.filter((a) => a.preferred), ...actions.filter((a) => !a.preferred)];
}

function touches(place: { line: number; start: number; end: number }, range: ActionRange): boolean {
  const before =
    place.line < range.startLine ||
    (place.line === range.startLine && place.end < range.startColumn);
  const after =
    place.line > range.endLine || (place.line === range.endLine && place.start > range.endColumn);
  return !before && !after;
}
