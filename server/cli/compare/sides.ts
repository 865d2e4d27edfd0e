/** The two jobs to compare: two files, or one and what it was in git. */

import path from 'node:path';
import { phrase } from '../../../shared/phrase';
import { lastSent } from '../../engine/compare/sent';
import type { Job } from '../../engine/workspace/job';
import type { Given } from '../args';
import { FileTrouble, WrongUse } from '../exits';
import { jobAt, type Revision, revisionNamed } from '../git/revision';
import { sentAt } from '../git/sent';
import type { SideJson } from '../json/compare';
import { type Opened, type Session, STDIN } from '../session';
import type { Sides } from '../show/compare';

export interface Two {
  readonly before: Job;
  readonly after: Job;
  readonly sides: { readonly before: SideJson; readonly after: SideJson };
  readonly shown: Sides;
}

/** No revision holds what was sent: what the record keeps of it is all there is. */
export interface Kept {
  readonly kept: Opened;
  /** Why there is no revision. */
  readonly why: string;
}

/**
 * @param alone what a file by itself is put beside
 * @throws WrongUse, FileTrouble
 */
export function sidesOf(given: Given, session: Session, alone?: 'sent'): Two | Kept {
  const since = given.value('--since');
  const [file, other, ...more] = given.words;
  const sent = given.has('--sent') || (alone === 'sent' && since === undefined && !other);
  if (since !== undefined && sent) throw new WrongUse(phrase`Give --since or --sent, not both.`);
  if (!file) throw new WrongUse(phrase`perpend compare needs a file.`);
  if (since === undefined && !sent) {
    if (!other || more.length)
      throw new WrongUse(phrase`perpend compare needs two files, or one and --since or --sent.`);
    return ofFiles(file, other, session);
  }
  if (other) throw new WrongUse(phrase`With --since or --sent give one file.`);
  if (file === STDIN) throw new WrongUse(phrase`What is piped in has no revisions: give a file.`);
  const now = session.open(file);
  return sent ? sinceSent(now, session) : sinceRevision(now, since!, session);
}

function ofFiles(file: string, other: string, session: Session): Two {
  if (file === STDIN && other === STDIN)
    throw new WrongUse(phrase`What is piped in can be read only once: give - once.`);
  const [before, after] = [session.open(file), session.open(other)];
  return {
    before: before.job,
    after: after.job,
    sides: { before: { file: before.shown }, after: { file: after.shown } },
    shown: { before: before.shown, after: after.shown },
  };
}

function sinceRevision(now: Opened, name: string, session: Session): Two {
  const revision = revisionNamed(name, path.dirname(now.job.file.name));
  return ofRevision(now, revision, now.job.file.name, session);
}

function ofRevision(now: Opened, revision: Revision, name: string, session: Session): Two {
  const shown = session.shown(name);
  const before = jobAt(revision, name, session.rootOf(name), shown);
  const { commit } = revision;
  return {
    before,
    after: now.job,
    sides: { before: { file: shown, revision: commit }, after: { file: now.shown } },
    shown: { before: phrase`${shown} at ${commit.slice(0, 10)}`, after: now.shown },
  };
}

/** @throws FileTrouble when nothing was sent */
function sinceSent(now: Opened, session: Session): Two | Kept {
  const sent = lastSent(now.job.file);
  if (!sent) throw new FileTrouble(phrase`${now.shown} has no record of a price that was sent.`);
  try {
    const at = sentAt(sent, now.job.file.name);
    if (at) return ofRevision(now, at.revision, at.name, session);
  } catch (error) {
    if (error instanceof FileTrouble) return { kept: now, why: error.message };
    throw error;
  }
  return { kept: now, why: phrase`No revision of git holds the line “${sent.text}” yet.` };
}
