/** The revision in which what was sent last was first written down. */
import path from 'node:path';
import type { SaidLine } from '../../engine/compare';
import { sentIn } from '../../engine/compare/sent';
import { SourceFile } from '../../engine/workspace/source';
import { FileTrouble } from '../exits';
import { type Revision, textAt, topOf } from './revision';
import { git } from './run';

/** A revision, and the file’s name in it: it may have been moved since. */
export interface SentAt {
  readonly revision: Revision;
  readonly name: string;
}

/** Nothing where no revision has that line. @throws FileTrouble where there is no git or no repository */
export function sentAt(sent: SaidLine, name: string): SentAt | undefined {
  const top = topOf(path.dirname(name));
  let found: SentAt | undefined;
  for (const at of touching(top, name)) {
    if (stands(sent, at)) found = at;
    else if (found) return found;
  }
  return found;
}

/** Revisions in which a `sent` line came, went or was changed, the latest first. */
function touching(top: string, name: string): SentAt[] {
  const way = path.relative(top, name).replaceAll(path.sep, '/');
  const log = git(top, [
    'log',
    '--no-color',
    '--no-show-signature',
    '--no-ext-diff',
    '--no-textconv',
    '--follow',
    '-G^[ \t]*sent[ \t]',
    '--format=%x01%H',
    '--name-only',
    '-z',
    'HEAD',
    '--',
    way,
  ]);
  const entries = log?.toString('utf8').split('\u0001').slice(1) ?? [];
  return entries.flatMap((entry) => {
    const [commit = '', ...names] = entry.split(/[\0\n]+/).filter(Boolean);
    const then = names.at(-1);
    return then ? [{ revision: { top, commit }, name: path.join(top, then) }] : [];
  });
}

function stands(sent: SaidLine, { revision, name }: SentAt): boolean {
  try {
    const file = new SourceFile(name, textAt(revision, name, name));
    return sentIn(sent, file);
  } catch (error) {
    if (error instanceof FileTrouble) return false;
    throw error;
  }
}
