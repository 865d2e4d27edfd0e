/**
 * Findings of all files of the open folders that no editor holds. The client asks again as soon as it is answered, so an
 * answer waits until there is something to tell. Files are looked at in stretches, so that no key waits, and only those that
 * an edit may concern are looked at again.
 */

import {
  type CancellationToken,
  type DiagnosticServerCancellationData,
  LSPErrorCodes,
  ResponseError,
  type WorkspaceDiagnosticParams,
  type WorkspaceDiagnosticReport,
  type WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver';
import type { Finding } from '../../shared/finding';
import { phrase } from '../../shared/phrase';
import { isCaution, type SettingsByFolder } from './finding-settings';
import { Looked } from './folder-looked';
import type { Parts } from './parts';
import { itemsOf, reportOf } from './reports';
import { Stopped, Stretch } from './stretch';

/** An answer with nothing to tell is held back so long, so that a client that waits for one is not left for good. */
const HOLD_MS = 30_000;
/** So many files are looked through, and no more: each takes some hundredths of a second. */
const MOST_FILES = 3000;
/** Nobody edits for so long, before files that are not even open are looked at again. */
const QUIET_MS = 250;

type Items = WorkspaceDocumentDiagnosticReport[];
type Send = ((part: WorkspaceDiagnosticReport) => void) | undefined;

export class FolderDiagnostics {
  private readonly looked = new Looked();
  private listening = false;

  constructor(
    private readonly parts: Parts,
    private readonly settings: SettingsByFolder,
  ) {
    parts.connection.languages.diagnostics.onWorkspace(async (params, token, _, progress) => {
      const send: Send = progress && ((part) => progress.report(this.out(part)));
      try {
        return this.out(await this.answer(params, token, send));
      } catch (error) {
        return this.refused(error);
      }
    });
  }

  /** Settings have changed: everything may be told otherwise. */
  anew(): void {
    this.looked.changed();
  }

  /** Something is told of a file that is open. */
  opened(uri: string): void {
    this.looked.open(uri);
  }

  private out(part: WorkspaceDiagnosticReport): WorkspaceDiagnosticReport {
    return this.parts.answers.columns.out(part);
  }

  private refused(error: unknown): ResponseError<DiagnosticServerCancellationData> {
    if (error instanceof Stopped)
      return new ResponseError(LSPErrorCodes.RequestCancelled, 'cancelled');
    this.parts.answers.safely(() => {
      throw error;
    });
    const data = { retriggerRequest: false };
    return new ResponseError(
      LSPErrorCodes.ServerCancelled,
      phrase`findings could not be worked out`,
      data,
    );
  }

  private listen(): void {
    if (this.listening) return;
    this.listening = true;
    this.parts.session().heard.add((names) => this.looked.changed(names));
  }

  private async answer(params: WorkspaceDiagnosticParams, token: CancellationToken, send: Send) {
    this.listen();
    const previous = new Map(params.previousResultIds.map(({ uri, value }) => [uri, value]));
    const end = performance.now() + HOLD_MS;
    for (;;) {
      const { changes } = this.looked;
      const items = await this.pass(previous, token, send);
      const first = !params.previousResultIds.length;
      if (items === undefined || first || items.length || performance.now() > end)
        return { items: items ?? [] };
      if (changes === this.looked.changes) await this.looked.next(token, end - performance.now());
      await this.quiet(token);
    }
  }

  private async quiet(token: CancellationToken): Promise<void> {
    let before: number;
    do {
      before = this.looked.changes;
      await new Promise((resolve) => setTimeout(resolve, QUIET_MS));
      if (token.isCancellationRequested) throw new Stopped('cancelled');
    } while (before !== this.looked.changes);
  }

  /**
   * Looks at whatever has to be looked at.
   * @returns what is to be told; nothing when all of it was sent in parts
   */
  private async pass(
    previous: ReadonlyMap<string, string>,
    token: CancellationToken,
    send: Send,
  ): Promise<Items | undefined> {
    const stretch = new Stretch(token);
    const files = await this.wanted(stretch);
    const told = new Map<string, WorkspaceDocumentDiagnosticReport>();
    let sent = false;
    // What has changed since it was looked at is not told: it is looked at again.
    const fresh = () => {
      const items = [...told].flatMap(([name, each]) => (this.looked.at(name) ? [each] : []));
      told.clear();
      return items;
    };
    const flush = () => {
      const items = send ? toTell(fresh()) : [];
      if (items.length) send?.({ items });
      sent ||= items.length > 0;
    };
    for (const [name, uri] of files) {
      const report = await this.look(name, uri, previous, stretch);
      if (report) told.set(name, report);
      // What was found is told before anything can change.
      if (!stretch.due) continue;
      flush();
      await stretch.rest();
    }
    flush();
    const gone = this.gone(previous, new Set(files.values()));
    if (send && gone.length) send({ items: gone });
    if (send) return sent || gone.length ? undefined : [];
    return toTell([...fresh(), ...gone]);
  }

  /**
   * Files that the client was told of and that nobody looks through any more, nor has open. It forgets what it was told
   * of a file while that was open, and goes on showing it: a file that was renamed or moved would never be right again.
   */
  private gone(previous: ReadonlyMap<string, string>, there: ReadonlySet<string>): Items {
    const { session } = this.parts;
    return [...new Set([...previous.keys(), ...this.looked.opened])]
      .filter((uri) => !there.has(uri) && !session().file(uri))
      .filter((uri) => this.looked.goneOnce(uri))
      .map((uri) => ({ uri, version: null, kind: 'full', items: [] }));
  }

  /** Their names, with their addresses. */
  private async wanted(stretch: Stretch): Promise<ReadonlyMap<string, string>> {
    const { session } = this.parts;
    const wanted = new Map<string, string>();
    for (const name of await session().folder.list(stretch)) {
      if (wanted.size >= MOST_FILES) break;
      if (stretch.due) await stretch.rest();
      const uri = session().uriOf(name);
      if (session().file(uri) || !session().folder.isInside(name)) continue;
      const settings = this.settings.of(uri);
      if ((settings instanceof Promise ? await settings : settings).folder) wanted.set(name, uri);
    }
    return wanted;
  }

  private async look(
    name: string,
    uri: string,
    previous: ReadonlyMap<string, string>,
    stretch: Stretch,
  ): Promise<WorkspaceDocumentDiagnosticReport | undefined> {
    const { session } = this.parts;
    const before = previous.get(uri);
    const known = this.looked.at(name);
    if (known !== undefined && known === before) return undefined;
    const wanted = await this.settings.of(uri);
    let job = session().jobOnDisk(name);
    const { coming } = session().lent.files;
    if (job && coming) {
      void job.findings;
      await coming;
      stretch.check();
      job = session().jobOnDisk(name);
    }
    if (!job || session().file(uri)) return undefined;
    const report = reportOf(itemsOf(weighty(job.findings), wanted, this.parts), before);
    this.looked.put(name, job, report.resultId!);
    return { ...report, uri, version: null };
  }
}

/** Every job of a firm has a dozen cautions: told of all at once they would hide what is wrong. They are told where a job is open. */
function weighty(findings: readonly Finding[]): readonly Finding[] {
  return findings.filter(({ code }) => !isCaution(code));
}

/** That files are as they were is told beside those that are not, and by itself is nothing to tell. */
function toTell(items: Items): Items {
  return items.some(({ kind }) => kind === 'full') ? items : [];
}
