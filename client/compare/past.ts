/** A job and the files it uses, as they stood in a revision. */
import { type CancellationToken, l10n, type TextDocument, Uri } from 'vscode';
import { USED } from '../../shared/protocol/compare';
import type { OldText } from '../../shared/protocol/pages';
import { deed } from '../asking';
import { today } from '../deeds/said';
import type { Server } from '../server';
import type { Commit, Repository } from './git';

/** The last commit, as git calls it. */
export const LAST = 'HEAD';

/** So many revisions of a file are offered, and looked through for what was sent. */
const MOST_COMMITS = 60;

export async function commitsOf(repository: Repository, { uri }: TextDocument): Promise<Commit[]> {
  try {
    return await repository.log({ maxEntries: MOST_COMMITS, path: uri.fsPath });
  } catch {
    return []; // no commit has been made yet
  }
}

/** `4f2c1aa, 2026-03-02`, the day as it was here. */
export function labelOf({ hash, authorDate }: Commit): string {
  const day = authorDate && today(authorDate);
  return day ? `${hash.slice(0, 7)}, ${day}` : hash.slice(0, 7);
}

/** Nothing where it did not stand there yet. */
async function textAt(repository: Repository, ref: string, file: Uri): Promise<string | undefined> {
  try {
    return await repository.show(ref, file.fsPath);
  } catch {
    return undefined;
  }
}

/** Looked for is the name it has now, and the one it had before it was moved since the last commit. */
function notThere(ref: string, label: string): string {
  return ref === LAST
    ? l10n.t('The last commit does not hold this job: it is new, or had another name then.')
    : l10n.t('The revision {0} does not hold this job, or holds it under another name.', label);
}

function nameBefore({ state }: Repository, file: Uri): Uri {
  const moved = state.indexChanges.find(({ renameUri }) => renameUri?.fsPath === file.fsPath);
  return moved?.originalUri ?? file;
}

/** With what it uses; or the reason why not. */
export async function oldJob(
  server: Server,
  repository: Repository,
  document: TextDocument,
  { ref, label }: { readonly ref: string; readonly label: string },
): Promise<OldText | string> {
  const text =
    (await textAt(repository, ref, document.uri)) ??
    (await textAt(repository, ref, nameBefore(repository, document.uri)));
  if (text === undefined) return notThere(ref, label);
  const used = (await deed(server, USED, { uri: server.uri(document.uri) })) ?? [];
  const files: Record<string, string> = {};
  for (const address of used) {
    const then = await textAt(repository, ref, Uri.parse(address, true));
    if (then !== undefined) files[address] = then;
  }
  return { text, label, files };
}

/** All revisions of the job alone, the newest first: one of them is what was sent. */
export async function allTexts(
  repository: Repository,
  document: TextDocument,
  commits: readonly Commit[],
  token: CancellationToken,
): Promise<OldText[]> {
  const found: OldText[] = [];
  for (const commit of commits) {
    if (token.isCancellationRequested) return [];
    const text = await textAt(repository, commit.hash, document.uri);
    found.push({ text: text ?? '', label: labelOf(commit) });
  }
  return found;
}
