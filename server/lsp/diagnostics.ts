/** Findings: answered when the client asks, or sent after a pause to one that cannot ask. */
import type { DocumentDiagnosticReport } from 'vscode-languageserver';
import type { Finding } from '../../shared/finding';
import type { Place } from '../../shared/span';
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
  readonly findings: readonly Finding[];
}

function alike(a: readonly Finding[], b: readonly Finding[]): boolean {
  return a.length === b.length && a.every((finding, i) => same(finding, b[i]!));
}

/** Ways out are not compared: they are not sent. */
function same(a: Finding, b: Finding): boolean {
  if (a.code !== b.code || a.message !== b.message || !samePlace(a.place, b.place)) return false;
  const related = a.related.every((r, i) => samePlace(r.place, b.related[i]?.place));
  return a.severity === b.severity && a.related.length === b.related.length && related;
}

function samePlace(a: Place, b: Place | undefined): boolean {
  return a.line === b?.line && a.start === b.start && a.end === b.end && a.file === b.file;
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

  private findings(file: OpenFile): readonly Finding[] {
    return this.parts.session().job(file).findings;
  }

  private items(findings: readonly Finding[]) {
    const { uriOf } = this.parts.session();
    return findings.map((finding) => to.diagnostic(finding, uriOf));
  }

  /** The same id as long as the findings are the same: then nothing is sent twice. */
  private report(file: OpenFile, previous: string | undefined): DocumentDiagnosticReport {
    const findings = this.findings(file);
    const known = this.told.get(file.uri);
    const stands = known !== undefined && alike(known.findings, findings);
    if (stands && known.id === previous) return { kind: 'unchanged', resultId: known.id };
    const resultId = stands ? known.id : String(this.next++);
    this.told.set(file.uri, { id: resultId, findings });
    return { kind: 'full', resultId, items: this.items(findings) };
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
    const diagnostics = answers.safely(() => this.items(this.findings(file)));
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
