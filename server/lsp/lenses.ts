/** Lines over headings: at once where they stand; what they say when they come into sight. */
import type { CodeLens } from 'vscode-languageserver';
import { LENS_SETTINGS } from '../../shared/protocol/settings';
import { LENS_KINDS, type Lens, type LensKind, lensesOf, lensText } from '../engine/ide/lenses';
import { modified } from './answers';
import type { Parts } from './parts';
import { Wishes } from './settings';
import * as to from './to-proto';

/** The command of the client that each leads to. */
const COMMANDS: Readonly<Record<LensKind, string>> = {
  figures: 'perpend.working',
  drawing: 'perpend.preview',
  working: 'perpend.working',
};

const USUAL: ReadonlySet<LensKind> = new Set(LENS_KINDS);

export interface Lenses {
  /** Other kinds may be wanted now. */
  readonly changed: () => void;
  readonly forget: (uri: string) => void;
}

export function registerLenses(parts: Parts): Lenses {
  const { connection, answers, client, session } = parts;
  const wishes = new Wishes<LensKind>(LENS_SETTINGS, USUAL, (items) =>
    connection.workspace.getConfiguration(items),
  );
  connection.onCodeLens(async (params, token) => {
    const { uri } = params.textDocument;
    const asked = client().hasConfiguration ? wishes.of(uri) : USUAL;
    const wanted = asked instanceof Promise ? await asked : asked;
    const answer = answers.quick((_: typeof params, file) => {
      const able = [...wanted].filter((kind) => kind === 'figures' || leads(parts, kind));
      const lenses = lensesOf(session().source(file), new Set(able));
      return lenses.map((lens) => to.codeLens(lens, uri, file.version));
    });
    return answer(params, token);
  });
  connection.onCodeLensResolve((lens) => {
    const { uri, version } = (lens.data ?? {}) as { uri?: unknown; version?: unknown };
    const file = typeof uri === 'string' ? session().file(uri) : undefined;
    // Another heading may stand in its line by now: the client asks for all of them again.
    if (file && file.version !== version) return modified();
    return { ...lens, command: commandOf(lens, parts) };
  });
  return { changed: () => wishes.changed(), forget: (uri) => wishes.forget(uri) };
}

/** Whether the client has the command: else there is nothing to click. */
function leads({ client }: Parts, kind: LensKind): boolean {
  return client().commands.has(COMMANDS[kind]);
}

function commandOf({ data }: CodeLens, parts: Parts): CodeLens['command'] {
  const { uri, line, kind } = (data ?? {}) as Partial<Lens> & { uri?: unknown };
  const file = typeof uri === 'string' ? parts.session().file(uri) : undefined;
  const known = typeof line === 'number' && kind !== undefined && LENS_KINDS.includes(kind);
  if (!file || !known) return to.told('…');
  const found = parts.answers.safely(() => lensText(parts.session().job(file), { line, kind }));
  if (!found) return to.told('…');
  const about = kind === 'drawing' ? { uri, line } : { uri, id: found.figure };
  const able = leads(parts, kind) && (kind === 'drawing' || found.figure !== undefined);
  return able
    ? { title: found.title, command: COMMANDS[kind], arguments: [about] }
    : to.told(found.title);
}
