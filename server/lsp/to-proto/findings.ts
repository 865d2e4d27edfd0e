/** Findings as diagnostics. */
import { type Diagnostic, DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver';
import type { Finding, Severity } from '../../../shared/finding';
import { type Tag, tagsOf } from '../../engine/findings/tags';
import { location, range, type UriOf } from './places';

const SEVERITIES: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
};

const TAGS: Readonly<Record<Tag, DiagnosticTag>> = {
  unnecessary: DiagnosticTag.Unnecessary,
  deprecated: DiagnosticTag.Deprecated,
};

export const SOURCE = 'perpend';

/** What an action needs to find a finding again, whatever place its diagnostic has moved to meanwhile. */
export interface FindingData {
  readonly code: string;
  /** Which it is of those of its code in the file. */
  readonly nth: number;
}

/** What the client takes, beside what every client does. */
export interface Takes {
  readonly tagsFindings: boolean;
  readonly relatesFindings: boolean;
  readonly helpScheme?: string;
}

/** A finding as it is shown: its severity may be the reader’s own choice. */
export interface Shown {
  readonly finding: Finding;
  readonly severity: Severity;
  readonly nth: number;
}

/** Ways out are worked out when they are asked for, by the finding’s code and place. */
export function diagnostic(
  { finding, severity, nth }: Shown,
  uriOf: UriOf,
  takes: Takes,
): Diagnostic {
  const { code, message, place } = finding;
  const tags = takes.tagsFindings ? tagsOf(finding).map((tag) => TAGS[tag]) : [];
  return {
    range: range(place),
    severity: SEVERITIES[severity],
    code,
    source: SOURCE,
    message,
    ...(takes.helpScheme && { codeDescription: { href: `${takes.helpScheme}:/${code}.md` } }),
    ...(tags.length && { tags }),
    ...(takes.relatesFindings && { relatedInformation: related(finding, uriOf) }),
    data: { code, nth } satisfies FindingData,
  };
}

function related(finding: Finding, uriOf: UriOf) {
  return finding.related.map((r) => ({ location: location(r.place, uriOf), message: r.message }));
}
