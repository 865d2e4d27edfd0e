/** What a reader asks the language server for by a command: asked again after an edit, and never without an answer. */
import { type CancellationToken, l10n, window } from 'vscode';
import type { Deeds } from '../shared/protocol/deeds';
import { isRefused, type Refused } from '../shared/protocol/pages';
import type { Server } from './server';
import { unlinked } from './unlinked';

/** The file was edited before the server could answer: LSP 3.17, `ContentModified`. */
const MODIFIED = -32801;
/** On a machine that is slow and busy, news of files on the disk may come for seconds; about half a minute in all. */
const TRIES = 25;
const PAUSE_MS = 100;

/** Undefined when it was cancelled, or could not be answered; the reader is told then. */
export async function asked<R>(
  server: Server,
  method: string,
  params: unknown,
  token?: CancellationToken,
): Promise<R | undefined> {
  try {
    return (await patiently<R | null>(server, method, params, token)) ?? undefined;
  } catch (error) {
    if (!token?.isCancellationRequested) await sayFailed(server, method, error);
    return undefined;
  }
}

/** Asks again where something changed before there was an answer. @throws whatever else the server says */
export async function patiently<R>(
  server: Server,
  method: string,
  params: unknown,
  token?: CancellationToken,
): Promise<R> {
  for (let i = 1; ; i++)
    try {
      return await server.request<R>(method, params, token);
    } catch (error) {
      const over = i >= TRIES || token?.isCancellationRequested;
      if (over || (error as { code?: number }).code !== MODIFIED) throw error;
      await new Promise((resolve) => setTimeout(resolve, PAUSE_MS * i));
    }
}

async function sayFailed(server: Server, method: string, error: unknown): Promise<void> {
  server.log.error(`${method}: ${String(error)}`);
  const show = l10n.t('Show the Log');
  const said = l10n.t('The language server gave no answer.');
  if ((await window.showErrorMessage(said, show)) === show) server.log.show();
}

type Given<K extends keyof Deeds> = Exclude<Deeds[K][1], Refused | null>;

/** What the server refuses is told in its own words. */
export async function deed<K extends keyof Deeds>(
  server: Server,
  method: K,
  params: Deeds[K][0],
  token?: CancellationToken,
): Promise<Given<K> | undefined> {
  const answer = await asked<Deeds[K][1]>(server, method, params, token);
  return unlessRefused(answer) as Given<K> | undefined;
}

export function unlessRefused<R extends object>(
  answer: R | Refused | null | undefined,
): R | undefined {
  if (!answer || !isRefused(answer)) return answer ?? undefined;
  void window.showWarningMessage(unlinked(answer.refused));
  return undefined;
}

/** What the firm should know beside what was done. */
export function sayAsides(asides: readonly string[]): void {
  if (asides.length) void window.showInformationMessage(unlinked(asides.join(' ')));
}
