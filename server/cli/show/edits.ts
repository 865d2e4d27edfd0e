/** Edits as a person can do them by hand: what to write, and in place of what. */
import type { TextEdit, WayOut } from '../../../shared/finding';
import type { Job } from '../../engine/workspace/job';
import type { Session } from '../session';

/** One line for each line of text that a way out writes; the line of the file where it is not told by what it replaces. */
export function writeLines(way: WayOut, job: Job, session: Session): string[] {
  return way.edits.flatMap((edit) => linesOf(edit, job, session));
}

function linesOf(edit: TextEdit, job: Job, session: Session): string[] {
  const where = whereOf(edit, job, session);
  const old = replaced(edit, job);
  const texts = edit.text.split('\n').map((text) => text.trim());
  const said = texts.filter(Boolean);
  if (!said.length) return old ? [`take out: ${old}${where}`] : [];
  if (old) return [`write: ${old} -> ${said.join(' / ')}${where}`];
  const added = /^\n|\n$/.test(edit.text) ? ` (new line ${newLine(edit)}${where})` : where;
  return said.map((text, i) => `write: ${text}${i === 0 ? added : ''}`);
}

/** Counted from one: a text that begins with a new line goes in below the line it stands in. */
function newLine({ place, text }: TextEdit): number {
  return place.line + (text.startsWith('\n') ? 2 : 1);
}

/** Another file is named; a line of the job is told by what stands there. */
function whereOf({ place }: TextEdit, job: Job, session: Session): string {
  return place.file === job.file.name ? '' : ` in ${session.shown(place.file)}`;
}

function replaced({ place }: TextEdit, job: Job): string {
  const file = job.scope.files.find(({ name }) => name === place.file);
  return file?.lines[place.line]?.slice(place.start, place.end).replace(/\s+/g, ' ').trim() ?? '';
}
