/** Findings: answered when the client asks, or sent after a pause to one that cannot ask. */
import type { DocumentDiagnosticReport } from 'vscode-languageserver';
import type { AboutFile } from './answers';
import type { Parts } from './features';
import type { OpenFile } from './session';
import * as to from './to-proto';

/** After the last keystroke, before findings are sent unasked. */
const PAUSE_MS = 200;

interface Asked extends AboutFile {
  readonly previousResultId?: string;
}

/** For a file that is not open, or when the work failed: there is no other way to say so. */
const NOTHING: DocumentDiagnosticReport = { kind: 'full', items: [] };

interface Told {
  readonly id: string;
  readonly text: string;
}

export class Diagnostics {
  private readonly told = new Map<string, Told>();
  private readonly waiting = new Map<string, NodeJS.Timeout>();
  private next = 1;

  constructor(private readonly parts: Parts) {
    const { connection, answers } = parts;
    const report = answers.slow((params: Asked, file) =>
      this.report(file, params.previousResultId),
    );
    connection.languages.diagnostics.on(
      async (params, token) => (await report(params, token)) ?? NOTHING,
    );
  }

  private items(file: OpenFile) {
    const session = this.parts.session();
    return session.job(file).findings.map((finding) => to.diagnostic(finding, session.uriOf));
  }

  /** The same id as long as the findings are the same: then nothing is sent twice. */
  private report(file: OpenFile, previous: string | undefined): DocumentDiagnosticReport {
    const items = this.items(file);
    const text = JSON.stringify(items);
    const known = this.told.get(file.uri);
    if (known?.text === text && known.id === previous)
      return { kind: 'unchanged', resultId: known.id };
    const id = known?.text === text ? known.id : String(this.next++);
    this.told.set(file.uri, { id, text });
    return { kind: 'full', resultId: id, items };
  }

  /** A file, or one that it uses, has changed. */
  changed(file: OpenFile): void {
    if (this.parts.client().pullsDiagnostics) return;
    clearTimeout(this.waiting.get(file.uri));
    this.waiting.set(
      file.uri,
      setTimeout(() => this.send(file), PAUSE_MS),
    );
  }

  private send(file: OpenFile): void {
    const { answers, connection, session } = this.parts;
    this.waiting.delete(file.uri);
    if (session().file(file.uri) !== file) return;
    const diagnostics = answers.safely(() => this.items(file));
    if (diagnostics)
      void connection.sendDiagnostics({ uri: file.uri, version: file.version, diagnostics });
  }

  closed(file: OpenFile): void {
    this.told.delete(file.uri);
    clearTimeout(this.waiting.get(file.uri));
    this.waiting.delete(file.uri);
    if (!this.parts.client().pullsDiagnostics)
      void this.parts.connection.sendDiagnostics({ uri: file.uri, diagnostics: [] });
  }
}
