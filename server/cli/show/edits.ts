/** Edits as a person can do them by hand: what to write, and in place of what. */

import type { TextEdit, WayOut } from '../../../shared/finding';
import { phrase } from '../../../shared/phrase';
import type { Place } from '../../../shared/span';
import type { Job } from '../../engine/workspace/job';
import type { Session } from '../session';

/** One line for each line of text that a way out writes; the line of the file where it is not told by what it replaces. */
export function writeLines(way: WayOut, at: Place, job: Job, session: Session): string[] {
  return way.edits.flatMap((edit) => linesOf(edit, at, job, session));
}

function linesOf(edit: TextEdit, at: Place, job: Job, session: Session): string[] {
  const isNew = /^\n|\n$/.test(edit.text);
  const where = isNew
    ? phrase` (new line ${newLine(edit, at, session)})`
    : whereOf(edit, at, session);
  const old = replaced(edit, job);
  const texts = edit.text.split('\n').map((text) => text.trim());
  const said = texts.filter(Boolean);
  if (!said.length) return old ? [phrase`take out: ${old}${where}`] : [];
  if (old) return [phrase`write: ${old} -> ${said.join(' / ')}${where}`];
  return said.map((text, i) => phrase`write: ${text}${i === 0 ? where : ''}`);
}

/** Counted from one: a text that begins with a new line goes in below the line it stands in. */
function newLine({ place, text }: TextEdit, at: Place, session: Session): string {
  const line = place.line + (text.startsWith('\n') ? 2 : 1);
  return place.file === at.file ? `${line}` : phrase`${line} of ${session.shown(place.file)}`;
}

/** Said where it is not the line of the finding itself. */
function whereOf({ place }: TextEdit, at: Place, session: Session): string {
  if (place.file !== at.file) return ` (${session.shown(place.file)}:${place.line + 1})`;
  return place.line === at.line ? '' : phrase` (line ${place.line + 1})`;
}

function replaced({ place }: TextEdit, job: Job): string {
  const file = job.scope.files.find(({ name }) => name === place.file);
  return file?.lines[place.line]?.slice(place.start, place.end).replace(/\s+/g, ' ').trim() ?? '';
}
