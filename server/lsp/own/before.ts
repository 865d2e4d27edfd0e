/** What a job is put beside: another file, the same as it stood, or what was sent of it. */
import { phrase } from '../../../shared/phrase';
import type { Before, OldText } from '../../../shared/protocol/pages';
import { lastSent, sentIn } from '../../engine/compare/sent';
import type { Job } from '../../engine/workspace/job';
import { SourceFile } from '../../engine/workspace/source';
import { jobAt, jobOfText, lastOf } from '../beside';
import type { OpenFile, Session } from '../session';

export interface FoundBefore {
  readonly job: Job;
  readonly label: string;
  /** Which of the texts that were offered. */
  readonly took?: number;
}

/** Nobody holds what was sent: what the record keeps of it is all there is. */
export interface KeptOnly {
  readonly kept: true;
}

export function beforeOf(
  session: Session,
  file: OpenFile,
  before: Before,
): FoundBefore | KeptOnly | string {
  if ('file' in before) return ofFile(session, before.file);
  if ('text' in before) return ofText(session, file, before);
  return ofSent(session, file, before.sent);
}

function ofFile(session: Session, uri: string): FoundBefore | string {
  const job = jobAt(session, uri);
  const label = lastOf(uri) ?? uri;
  return job ? { job, label } : phrase`${label} cannot be read.`;
}

function ofText(session: Session, { name, uri }: OpenFile, old: OldText): FoundBefore {
  const { nameOf } = session.lent.names;
  const files = new Map(Object.entries(old.files ?? {}).map(([at, text]) => [nameOf(at), text]));
  const shown = lastOf(uri) ?? uri;
  const label = old.label ? `${shown}, ${old.label}` : phrase`${shown}, before`;
  return { job: jobOfText(session, name, old.text, files), label };
}

/**
 * Of revisions, the newest first, the first that had the line of what was sent last: the one before that did not have it
 * any more, going back.
 */
function ofSent(
  session: Session,
  file: OpenFile,
  olds: readonly OldText[],
): FoundBefore | KeptOnly | string {
  const sent = lastSent(session.source(file));
  if (!sent) return phrase`The record says of nothing that it was sent.`;
  const stands = olds.map(({ text }) => sentIn(sent, new SourceFile(file.name, text)));
  const newest = stands.indexOf(true);
  if (newest < 0) return { kept: true };
  const gone = stands.indexOf(false, newest);
  const took = (gone < 0 ? stands.length : gone) - 1;
  return { ...ofText(session, file, olds[took]!), took };
}
