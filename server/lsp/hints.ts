/** Hints of the lines asked for, of the kinds that the reader has not switched off. */
import type { ConfigurationItem } from 'vscode-languageserver';
import { HINT_LINES, HINT_TOTALS } from '../../shared/protocol';
import { hintsOf } from '../engine/ide/hints';
import type { Parts } from './features';
import * as from from './from-proto';
import * as to from './to-proto';

interface Wanted {
  readonly total: boolean;
  readonly line: boolean;
}

const ALL: Wanted = { total: true, line: true };

/** Settings by file; asked for once each, until they change. */
export class HintSettings {
  private known = new Map<string, Wanted>();

  constructor(private readonly ask: (items: ConfigurationItem[]) => Promise<unknown>) {}

  changed(): void {
    this.known = new Map();
  }

  /** At once when it is known, which is always but the first time. */
  of(uri: string): Wanted | Promise<Wanted> {
    return this.known.get(uri) ?? this.asked(uri);
  }

  private async asked(scopeUri: string): Promise<Wanted> {
    const sections = [HINT_TOTALS, HINT_LINES].map((key) => `perpend.${key}`);
    const found = await this.ask(sections.map((section) => ({ scopeUri, section }))).catch(
      () => [],
    );
    const [total, line] = found as unknown[];
    const wanted = { total: total !== false, line: line !== false };
    this.known.set(scopeUri, wanted);
    return wanted;
  }
}

export function registerHints({ connection, answers, client, session }: Parts): HintSettings {
  const settings = new HintSettings((items) => connection.workspace.getConfiguration(items));
  connection.languages.inlayHint.on(async (params, token) => {
    const { uri } = params.textDocument;
    const asked = client().hasConfiguration ? settings.of(uri) : ALL;
    const wanted = asked instanceof Promise ? await asked : asked;
    const answer = answers.quick((_, file) =>
      hintsOf(session().job(file), from.lineRange(params.range))
        .filter((hint) => wanted[hint.kind])
        .map(to.inlayHint),
    );
    return answer(params, token);
  });
  return settings;
}
