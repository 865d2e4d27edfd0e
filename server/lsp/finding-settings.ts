/** What a reader wants to be told, by folder; asked for once each, until it changes. */
import type { ConfigurationItem } from 'vscode-languageserver';
import type { Finding } from '../../shared/finding';
import type { Parts } from './parts';
import type { Shown } from './to-proto';

export interface FindingSettings {
  /** Whether hints are told: what could be otherwise, and need not be. */
  readonly hints: boolean;
  /** Cautions as notes, or as faint as hints. They can not be switched off: they keep people from harm. */
  readonly cautions: 'information' | 'hint';
  /** Whether files that are not open are looked through too. */
  readonly folder: boolean;
}

const ALL: FindingSettings = { hints: true, cautions: 'information', folder: true };

const SECTION = 'perpend.findings';

export class SettingsByFolder {
  private known = new Map<string, FindingSettings>();
  private times = 0;

  constructor(private readonly parts: Parts) {}

  changed(): void {
    this.known = new Map();
    this.times += 1;
  }

  /** Of a file by its address. At once when they are known, which is always but the first time. */
  of(uri: string): FindingSettings | Promise<FindingSettings> {
    if (!this.parts.client().hasConfiguration) return ALL;
    const scope = this.parts.session().rootOf(uri) ?? uri;
    return this.known.get(scope) ?? this.asked(scope);
  }

  /** What comes after they changed once more is not kept. */
  private async asked(scopeUri: string): Promise<FindingSettings> {
    const { times } = this;
    const item: ConfigurationItem = { scopeUri, section: SECTION };
    const found = await this.parts.connection.workspace.getConfiguration(item).catch(() => null);
    const settings = read(found);
    if (times === this.times) this.known.set(scopeUri, settings);
    return settings;
  }

  forget(uri: string): void {
    this.known.delete(uri);
  }
}

/** Whatever a client sends; what it does not say stands as it ships. */
export function read(found: unknown): FindingSettings {
  const said: Readonly<Record<string, unknown>> =
    typeof found === 'object' && found !== null ? { ...found } : {};
  return {
    hints: said.hints !== false,
    cautions: said.cautions === 'hint' ? 'hint' : 'information',
    folder: said.folder !== false,
  };
}

export function isCaution(code: string): boolean {
  return code.startsWith('caution-');
}

/** Findings as they are wanted, each with its place among those of its code. */
export function shown(findings: readonly Finding[], wanted: FindingSettings): Shown[] {
  const seen = new Map<string, number>();
  return findings.flatMap((finding): Shown[] => {
    const nth = seen.get(finding.code) ?? 0;
    seen.set(finding.code, nth + 1);
    const caution = finding.severity === 'information' && isCaution(finding.code);
    const severity = caution ? wanted.cautions : finding.severity;
    return finding.severity === 'hint' && !wanted.hints ? [] : [{ finding, severity, nth }];
  });
}
