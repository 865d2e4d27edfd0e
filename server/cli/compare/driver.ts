/**
 * The diff of git for files in the notation. Git starts it with seven words: the path; then a file with the old text,
 * the name of its object and its mode; then the same of the new. A file that was renamed has its new path and a
 * sentence after them. Where there is no old or no new file, /dev/null stands for it (git(1),
 * GIT_EXTERNAL_DIFF). A diff of which the command fails ends all of git’s, so what cannot be read is said, and is no failure.
 */

import path from 'node:path';
import { phrase } from '../../../shared/phrase';
import { faceChanges } from '../../documents/compared';
import { compared } from '../../engine/compare';
import type { Job } from '../../engine/workspace/job';
import { Workspace } from '../../engine/workspace/workspace';
import type { Given } from '../args';
import { CLEAN, FileTrouble, WrongUse } from '../exits';
import { readText } from '../files/read';
import type { Io } from '../io';
import { LIBRARIES } from '../libraries';
import { hostOf, Session } from '../session';
import { compareReport } from '../show/compare';

interface Side {
  /** Where its text is; nothing where there is no such file. */
  readonly text?: string;
  readonly mode: string;
  /** From the top of the work tree. */
  readonly path: string;
}

export function driven(given: Given, io: Io): number {
  const { words } = given;
  if (words.length === 1) {
    io.out(phrase`${words[0]}: not merged yet\n`);
    return CLEAN;
  }
  if (words.length !== 7 && words.length !== 9)
    throw new WrongUse(phrase`perpend compare --driver is given its words by git.`);
  const [name, oldFile, , oldMode, newFile, , newMode, newName] = words as string[];
  const before: Side = { text: fileOf(oldFile!), mode: oldMode!, path: name! };
  const after: Side = { text: fileOf(newFile!), mode: newMode!, path: newName ?? name! };
  io.out(`${headOf(before, after)}\n`);
  try {
    show(before, after, io);
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    io.out(`${error.message}\n\n`);
  }
  return CLEAN;
}

function fileOf(name: string): string | undefined {
  return /^(\/dev\/null|nul)$/i.test(name) ? undefined : name;
}

function headOf(before: Side, after: Side): string {
  if (before.text === undefined) return phrase`diff ${after.path}: new file, mode ${after.mode}`;
  if (after.text === undefined) return phrase`diff ${before.path}: file is gone`;
  const name = before.path === after.path ? after.path : `${before.path} → ${after.path}`;
  const mode = before.mode === after.mode ? '' : phrase`: mode ${before.mode} → ${after.mode}`;
  return phrase`diff ${name}${mode}`;
}

function show(before: Side, after: Side, io: Io): void {
  const session = new Session(io.cwd, undefined);
  const [old, now] = [jobOf(before, session, io), jobOf(after, session, io)];
  const found = compared(old, now);
  const sides = { before: after.path, after: after.path };
  const report = compareReport(found, faceChanges(found), sides, session, io);
  // The name stands above already.
  io.out(`${report.slice(report.indexOf('\n') + 1).replace(/^\n/, '')}\n`);
}

/** Each side in a workspace of its own, by the path it has in the work tree: so it finds the files that it uses. */
function jobOf(side: Side, session: Session, io: Io): Job {
  const name = path.resolve(io.cwd, side.path);
  const text = side.text === undefined ? '' : readText(path.resolve(io.cwd, side.text), side.path);
  const workspace = new Workspace(hostOf(session.rootOf(name)), LIBRARIES);
  workspace.opened(name, text);
  return workspace.job(name)!;
}
