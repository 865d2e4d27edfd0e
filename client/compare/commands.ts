/** Compares a job with the last commit, with another revision, with what was sent, or with another file. */
import { type CancellationToken, l10n, ProgressLocation, window, workspace } from 'vscode';
import { COMPARE, type Compared } from '../../shared/protocol/compare';
import { isRefused, type OldText, type Refused } from '../../shared/protocol/pages';
import { asked } from '../asking';
import { briefly } from '../busy';
import type { Server } from '../server';
import { documentOf, shownName } from '../target';
import { unlinked } from '../unlinked';
import { chooseFile, chooseRevision, type Found, type Revision } from './choose';
import { type Repository, repositoryOf } from './git';
import { allTexts, commitsOf, LAST, labelOf, oldJob } from './past';
import type { Sides } from './sides';

export interface With {
  readonly server: Server;
  readonly sides: Sides;
}

export async function withLastCommit(parts: With, target: unknown): Promise<void> {
  const found = await inRepository(target);
  if (found) await withRevision(parts, found, { ref: LAST, label: l10n.t('last commit') });
}

export async function withAnother(parts: With, target: unknown): Promise<void> {
  const found = await inRepository(target);
  const chosen = found && (await chooseRevision(found));
  if (found && chosen) await withRevision(parts, found, chosen);
}

export async function withFile({ server, sides }: With, target: unknown): Promise<void> {
  const document = await documentOf(target);
  const other = document && (await chooseFile(document));
  if (!document || !other) return;
  await workspace.openTextDocument(other); // the server answers for open files
  await sides.show(document, { file: server.uri(other) }, shownName(other));
}

/** Without a repository there is still what the record keeps. */
export async function withSent({ server, sides }: With, target: unknown): Promise<void> {
  const document = await documentOf(target);
  if (!document) return;
  const repository = await repositoryOf(document.uri);
  const found = { document, repository: typeof repository === 'string' ? undefined : repository };
  const title = l10n.t('Looking for what was sent');
  const options = { location: ProgressLocation.Notification, title, cancellable: true };
  const sent = await window.withProgress(options, (_, token) => sentIn(server, found, token));
  if (typeof sent === 'string') void window.showInformationMessage(unlinked(sent));
  else if (sent && 'page' in sent) await sides.showTold(sent);
  else if (sent) await sides.show(document, sent);
}

async function inRepository(target: unknown): Promise<Found | undefined> {
  const document = await documentOf(target);
  if (!document) return undefined;
  const repository = await briefly(l10n.t('Looking for revisions'), () =>
    repositoryOf(document.uri),
  );
  if (typeof repository !== 'string') return { document, repository };
  void window.showInformationMessage(repository);
  return undefined;
}

async function withRevision(
  { server, sides }: With,
  { document, repository }: Found,
  revision: Revision,
): Promise<void> {
  const old = await briefly(l10n.t('Looking for revisions'), () =>
    oldJob(server, repository, document, revision),
  );
  if (typeof old === 'string') void window.showInformationMessage(unlinked(old));
  else await sides.show(document, old);
}

type Looked = Pick<Found, 'document'> & { readonly repository: Repository | undefined };

/**
 * The revision that holds the line of the record, with what it used then; where none does, what the record itself keeps
 * of it; or the reason why there is nothing.
 */
async function sentIn(
  server: Server,
  { document, repository }: Looked,
  token: CancellationToken,
): Promise<OldText | Compared | string | undefined> {
  const commits = repository ? await commitsOf(repository, document) : [];
  const sent = repository ? await allTexts(repository, document, commits, token) : [];
  if (token.isCancellationRequested) return undefined;
  const params = { uri: server.uri(document.uri), before: { sent } };
  const answer = await asked<Compared | Refused>(server, COMPARE, params, token);
  if (!answer) return undefined;
  if (isRefused(answer)) return answer.refused;
  const commit = commits[answer.took ?? -1];
  if (!commit || !repository) return answer;
  const label = l10n.t('sent, {0}', labelOf(commit));
  return oldJob(server, repository, document, { ref: commit.hash, label });
}
