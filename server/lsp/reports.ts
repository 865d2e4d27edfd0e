/** Findings of a file as an answer: in full, or that they are what was told before. */
import type {
  Diagnostic,
  FullDocumentDiagnosticReport,
  UnchangedDocumentDiagnosticReport,
} from 'vscode-languageserver';
import type { Finding } from '../../shared/finding';
import { type FindingSettings, shown } from './finding-settings';
import type { Parts } from './parts';
import * as to from './to-proto';

export type Report = FullDocumentDiagnosticReport | UnchangedDocumentDiagnosticReport;

export function itemsOf(
  findings: readonly Finding[],
  wanted: FindingSettings,
  { client, session }: Pick<Parts, 'client' | 'session'>,
): Diagnostic[] {
  const { uriOf } = session();
  return shown(findings, wanted).map((each) => to.diagnostic(each, uriOf, client()));
}

/** @param previous what was answered last, as the client remembers it */
export function reportOf(items: Diagnostic[], previous: string | undefined): Report {
  const resultId = digest(JSON.stringify(items));
  if (resultId === previous) return { kind: 'unchanged', resultId };
  return { kind: 'full', resultId, items };
}

/**
 * The same for the same text, so that nobody has to remember what was sent: FNV-1a of 32 bits over the text and over it
 * backwards, with its length.
 */
function digest(text: string): string {
  let [there, back] = [0x811c9dc5, 0x811c9dc5];
  for (let i = 0; i < text.length; i += 1) {
    there = Math.imul(there ^ text.charCodeAt(i), 0x01000193);
    back = Math.imul(back ^ text.charCodeAt(text.length - 1 - i), 0x01000193);
  }
  return [there >>> 0, back >>> 0, text.length].map((n) => n.toString(36)).join('-');
}
