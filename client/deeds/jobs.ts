/** Over all jobs of the folders that are open: how they stand, and what is wrong in them. */
import { l10n, Uri } from 'vscode';
import { JOBS } from '../../shared/protocol/jobs';
import { CHECK } from '../../shared/protocol/tools';
import { deed } from '../asking';
import { atLength } from '../busy';
import type { MarkdownPages } from '../markdown-pages';
import type { Server } from '../server';
import { today } from './said';

/** @param folder only jobs in it */
export async function showJobs(
  server: Server,
  pages: MarkdownPages,
  folder?: unknown,
): Promise<void> {
  const within = folder instanceof Uri ? server.uri(folder) : undefined;
  const title = l10n.t('Looking over the jobs');
  const made = await atLength(server, title, (workDoneToken, token) =>
    deed(server, JOBS, { day: today(), folder: within, workDoneToken }, token),
  );
  if (made) await pages.show(made.page.title, made.page.markdown);
}

export async function checkAll(server: Server, pages: MarkdownPages): Promise<void> {
  const title = l10n.t('Checking all jobs');
  const told = await atLength(server, title, (workDoneToken, token) =>
    deed(server, CHECK, { workDoneToken }, token),
  );
  if (told) await pages.show(l10n.t('Findings in all jobs'), told.markdown);
}
