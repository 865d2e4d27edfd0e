/** Coloured words: the whole of a file, what changed since the last answer, or some lines. */
import { tokensOf } from '../engine/ide/tokens';
import type { Token } from '../engine/ide/types';
import * as from from './from-proto';
import type { Parts } from './parts';
import type { OpenFile } from './session';
import { packed, SentTokens } from './tokens';

/** @returns what to do when a file is closed */
export function registerColours({ connection, answers, session }: Parts): (uri: string) => void {
  const sent = new SentTokens();
  const pack = (file: OpenFile, tokens: readonly Token[]) =>
    packed(tokens, (line, column) => answers.columns.column(file.uri, line, column));
  const all = (file: OpenFile) => pack(file, tokensOf(session().source(file)));
  const { semanticTokens } = connection.languages;
  semanticTokens.on(answers.slow((_, file) => sent.full(file.uri, all(file))));
  semanticTokens.onDelta(
    answers.slow((params, file) => sent.delta(file.uri, params.previousResultId, all(file))),
  );
  semanticTokens.onRange(
    answers.quick((params, file) => ({
      data: pack(file, tokensOf(session().source(file), from.lineRange(params.range))),
    })),
  );
  return (uri) => sent.forget(uri);
}
