/** Hints of the lines asked for, of the kinds that the reader has not switched off. */
import type { InlayHint } from 'vscode-languageserver';
import { HINT_SETTINGS } from '../../shared/protocol/settings';
import { USUAL_HINTS } from '../engine/ide/hints';
import { closerAt } from '../engine/ide/hints/closer';
import { SteadyHints } from '../engine/ide/hints/steady';
import type { Hint, HintKind } from '../engine/ide/types';
import * as from from './from-proto';
import { linker } from './links';
import type { Parts } from './parts';
import { Wishes } from './settings';
import * as to from './to-proto';

export interface Hints {
  /** Other kinds may be wanted now. */
  readonly changed: () => void;
  readonly forget: (uri: string) => void;
}

export function registerHints(parts: Parts): Hints {
  const { connection, answers, client, session } = parts;
  const steady = new Map<string, SteadyHints>();
  const wishes = new Wishes<HintKind>(HINT_SETTINGS, USUAL_HINTS, (items) =>
    connection.workspace.getConfiguration(items),
  );
  const steadyOf = (uri: string) => {
    const known = steady.get(uri) ?? new SteadyHints();
    steady.set(uri, known);
    return known;
  };
  connection.languages.inlayHint.on(async (params, token) => {
    const { uri } = params.textDocument;
    const asked = client().hasConfiguration ? wishes.of(uri) : USUAL_HINTS;
    const wanted = asked instanceof Promise ? await asked : asked;
    const answer = answers.quick((asking: typeof params, file) => {
      const range = from.lineRange(asking.range);
      const hints = steadyOf(uri).of(session().job(file), range, wanted);
      return hints.map((hint) => to.inlayHint(hint, uri, client().resolvesHints));
    });
    return answer(params, token);
  });
  const forget = (uri: string) => {
    steady.delete(uri);
    wishes.forget(uri);
  };
  connection.languages.inlayHint.resolve((hint) => closer(hint, parts));
  return { changed: () => wishes.changed(), forget };
}

/** With what is told of it, and where its figures came from. As it was where the text has gone on. */
function closer(hint: InlayHint, { answers, session }: Parts): InlayHint {
  const { uri, ...own } = (hint.data ?? {}) as Hint & { uri?: unknown };
  const file = typeof uri === 'string' ? session().file(uri) : undefined;
  if (!file || typeof own.line !== 'number') return hint;
  const { uriOf } = session();
  const found = answers.safely(() => closerAt(session().job(file), own, linker(uriOf)));
  // Its own position is the client’s already; places of its parts are each in a file of their own.
  return found ? { ...hint, ...answers.columns.out(to.closer(hint, found, uriOf)) } : hint;
}
