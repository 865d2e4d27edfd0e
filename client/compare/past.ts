/** A job and the files it uses, as they stood in a revision. */
import { type CancellationToken, l10n, type TextDocument, Uri } from 'vscode';
import { USED } from '../../shared/protocol/deeds';
import type { OldText } from '../../shared/protocol/pages';
import { deed } from '../asking';
import type { Server } from '../server';
import type { Commit, Repository } from './git';

/** So many revisions of a file are offered, and looked through for what was sent. */
export const MOST_COMMITS = 60;

export async function commitsOf(repository: Repository, { uri }: TextDocument): Promise<Commit[]> {
  try {
    return await repository.log({ maxEntries: MOST_COMMITS, path: uri.fsPath });
  } catch {
    return []; // no commit has been made yet
  }
}

/** `4f2c1aa, 2026-03-02` */
export function labelOf({ hash, authorDate }: Commit): string {
  const day = authorDate?.toISOString().slice(0, 10);
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

/** With what it uses; or the reason why not. */
export async function oldJob(
  server: Server,
  repository: Repository,
  document: TextDocument,
  { ref, label }: { readonly ref: string; readonly label: string },
): Promise<OldText | string> {
  const text = await textAt(repository, ref, document.uri);
  if (text === undefined) return l10n.t('This job is not in the revision {0}.', label);
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
