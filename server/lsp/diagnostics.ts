/** Findings of open files: answered when the client asks, or sent after a pause to one that cannot ask. */
import {
  type CancellationToken,
  type DiagnosticServerCancellationData,
  type DocumentDiagnosticReport,
  LSPErrorCodes,
  ResponseError,
} from 'vscode-languageserver';
import type { AboutFile } from './answers';
import { type FindingSettings, SettingsByFolder } from './finding-settings';
import { FolderDiagnostics } from './folder-diagnostics';
import type { Parts } from './parts';
import { itemsOf, reportOf } from './reports';
import type { OpenFile } from './session';

/** After the last keystroke, before findings are sent unasked. */
const PAUSE_MS = 200;

interface Asked extends AboutFile {
  readonly previousResultId?: string;
  readonly wanted: FindingSettings;
}

/** For a file that is not open, or when the work failed: there is no other way to say so. */
const NOTHING: DocumentDiagnosticReport = { kind: 'full', items: [] };

export class Diagnostics {
  readonly settings: SettingsByFolder;
  private readonly waiting = new Map<string, ReturnType<typeof setTimeout>>();
  private readonly report;
  private readonly folder: FolderDiagnostics;

  constructor(private readonly parts: Parts) {
    const { answers, connection } = parts;
    this.settings = new SettingsByFolder(parts);
    this.folder = new FolderDiagnostics(parts, this.settings);
    this.report = answers.slow(({ previousResultId, wanted }: Asked, file) => {
      this.folder.opened(file.uri);
      return reportOf(this.items(file, wanted), previousResultId);
    });
    connection.languages.diagnostics.on((params, token) => this.answer(params, token));
  }

  private items(file: OpenFile, wanted: FindingSettings) {
    return itemsOf(this.parts.session().job(file).findings, wanted, this.parts);
  }

  private async answer(
    params: Omit<Asked, 'wanted'>,
    token: CancellationToken,
  ): Promise<DocumentDiagnosticReport | ResponseError<DiagnosticServerCancellationData>> {
    const wanted = await this.settings.of(params.textDocument.uri);
    const answer = (await this.report({ ...params, wanted }, token)) ?? NOTHING;
    if (!(answer instanceof ResponseError) || answer.code !== LSPErrorCodes.ContentModified)
      return answer;
    // An edit overtook the question: whoever shows findings is to ask once more, and not to show none.
    const data = { retriggerRequest: true };
    return new ResponseError(LSPErrorCodes.ServerCancelled, answer.message, data);
  }

  /** A file, or one that it uses, has changed. */
  changed(file: OpenFile): void {
    if (this.parts.client().pullsDiagnostics) return;
    clearTimeout(this.waiting.get(file.uri));
    this.waiting.set(
      file.uri,
      setTimeout(() => void this.send(file), PAUSE_MS),
    );
  }

  /** Everything is to be told anew, as the reader wants it now. */
  settingsChanged(): void {
    const { client, connection, session } = this.parts;
    this.forgetSettings();
    if (client().refreshesDiagnostics) connection.languages.diagnostics.refresh();
    for (const file of session().files) this.changed(file);
  }

  /** They are asked for anew; nobody is told. */
  forgetSettings(): void {
    this.settings.changed();
    this.folder.anew();
  }

  private async send(file: OpenFile): Promise<void> {
    const { answers, connection, session } = this.parts;
    this.waiting.delete(file.uri);
    const wanted = await this.settings.of(file.uri);
    if (session().file(file.uri) !== file) return;
    const diagnostics = await answers.unasked(file, () => this.items(file, wanted));
    if (diagnostics)
      void connection.sendDiagnostics({ uri: file.uri, version: file.version, diagnostics });
  }

  closed(file: OpenFile): void {
    clearTimeout(this.waiting.get(file.uri));
    this.waiting.delete(file.uri);
    this.settings.forget(file.uri);
    if (!this.parts.client().pullsDiagnostics)
      void this.parts.connection.sendDiagnostics({ uri: file.uri, diagnostics: [] });
  }
}
