/** What every change at a place is made of. */
import type { ReadLine } from '../../../../grammar/read/values';
import type { TextEdit } from '../../../../shared/finding';
import type { Job } from '../../workspace/job';
import type { Spot } from '../spot';
import type { Action, ActionKind } from '../types';

/** The line that the cursor is on, as it is read. */
export interface At {
  readonly job: Job;
  readonly spot: Spot;
  readonly line: ReadLine;
  /** Whether places to fill in can be offered. */
  readonly fills: boolean;
}

export function change(kind: ActionKind, title: string, edits: readonly TextEdit[]): Action {
  return { kind, title, preferred: false, edits };
}

/** A text that an editor takes as it is, where others hold places to fill in. */
export function plainly(text: string): string {
  return text.replace(/[\\$}]/g, '\\$&');
}

/** At the end of a line. */
export function atEnd({ spot: { block } }: At, line: number, text: string): TextEdit {
  const end = block.lines[line]?.length ?? 0;
  return { place: block.place({ line, start: end, end }), text };
}
