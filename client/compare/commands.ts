/** Compares a job with the last commit, with another revision, with what was sent, or with another file. */
import {
  type CancellationToken,
  l10n,
  ProgressLocation,
  type Uri,
  window,
  workspace,
} from 'vscode';
import { COMPARE, type Compared } from '../../shared/protocol/deeds';
import { isRefused, type OldText, type Refused } from '../../shared/protocol/pages';
import { asked } from '../asking';
import { showPage } from '../papers/show';
import type { Server } from '../server';
import { documentOf, shownName } from '../target';
import { unlinked } from '../unlinked';
import { chooseFile, chooseRevision, type Found, type Revision } from './choose';
import { repositoryOf } from './git';
import { allTexts, commitsOf, labelOf, oldJob } from './past';
import type { Sides } from './sides';

export interface With {
  readonly server: Server;
  readonly sides: Sides;
}

export async function withLastCommit(parts: With, target: unknown): Promise<void> {
  const found = await inRepository(target);
  if (found) await withRevision(parts, found, { ref: 'HEAD', label: l10n.t('last commit') });
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

export async function withSent({ server, sides }: With, target: unknown): Promise<void> {
  const found = await inRepository(target, true);
  if (!found) return;
  const title = l10n.t('Looking for what was sent');
  const options = { location: ProgressLocation.Notification, title, cancellable: true };
  const sent = await window.withProgress(options, (_, token) => sentIn(server, found, token));
  if (typeof sent === 'string') await sayNoRevision(sent, found.document.uri);
  else if (sent && 'page' in sent) await sides.showTold(sent);
  else if (sent) await sides.show(found.document, sent);
}

/** @param sent what the record keeps can be shown without any revision: it is offered then */
async function inRepository(target: unknown, sent = false): Promise<Found | undefined> {
  const document = await documentOf(target);
  if (!document) return undefined;
  const repository = await repositoryOf(document.uri);
  if (typeof repository !== 'string') return { document, repository };
  if (sent) await sayNoRevision(repository, document.uri);
  else void window.showInformationMessage(repository);
  return undefined;
}

async function sayNoRevision(why: string, uri: Uri): Promise<void> {
  const show = l10n.t('Show the Note of Changes');
  if ((await window.showInformationMessage(unlinked(why), show)) === show)
    await showPage('changes', { uri });
}

async function withRevision(
  { server, sides }: With,
  { document, repository }: Found,
  revision: Revision,
): Promise<void> {
  const old = await oldJob(server, repository, document, revision);
  if (typeof old === 'string') void window.showInformationMessage(old);
  else await sides.show(document, old);
}

/**
 * The revision that holds the line of the record, with what it used then; where none does, what the record itself keeps
 * of it; or the reason why there is nothing.
 */
async function sentIn(
  server: Server,
  { document, repository }: Found,
  token: CancellationToken,
): Promise<OldText | Compared | string | undefined> {
  const commits = await commitsOf(repository, document);
  const sent = await allTexts(repository, document, commits, token);
  if (token.isCancellationRequested) return undefined;
  const params = { uri: server.uri(document.uri), before: { sent } };
  const answer = await asked<Compared | Refused>(server, COMPARE, params, token);
  if (!answer) return undefined;
  if (isRefused(answer)) return answer.refused;
  const commit = commits[answer.took ?? -1];
  if (!commit) return answer;
  const label = l10n.t('sent, {0}', labelOf(commit));
  return oldJob(server, repository, document, { ref: commit.hash, label });
}
