/** What can be written here. */
import type { CompletionItem, CompletionParams } from 'vscode-languageserver';
import { namesFile } from '../../engine/ide/complete-files';
import { completion, explained } from '../../engine/ide/completion';
import * as from from '../from-proto';
import type { Parts } from '../parts';
import * as to from '../to-proto';
import { wayFrom } from '../uri-names';

export function registerCompletion(parts: Parts): void {
  const { connection, answers, client, session } = parts;
  const words = answers.quick(({ context, position }: CompletionParams, file) => {
    const at = from.position(position);
    // A space at the beginning of a line indents it: nothing has been asked for yet.
    const before = session().source(file).lines[at.line]?.slice(0, at.column) ?? '';
    if (context?.triggerCharacter && !before.trim()) return null;
    const found = completion(session().job(file), at);
    // Nor where the line could end: Enter would put in what nobody has asked for. A letter asks.
    if (context?.triggerCharacter && found?.whole) return null;
    return to.completionList(found, file.uri, client());
  });
  const files = answers.longOf(async ({ position }: CompletionParams, file, stretch) => {
    const uris = (await session().folder.list(stretch)).map(session().uriOf);
    const ways = uris.flatMap((uri) => (uri === file.uri ? [] : (wayFrom(file.uri, uri) ?? [])));
    const found = completion(session().job(file), from.position(position), () =>
      ways.sort(nearest),
    );
    return to.completionList(found, file.uri, client());
  });
  connection.onCompletion((params, token) =>
    asksForFile(params, parts) ? files(params, token) : words(params, token),
  );
  connection.onCompletionResolve((item) => resolved(item, parts));
}

/** Those beside it first, then those of the nearest folders. */
function nearest(a: string, b: string): number {
  return a.split('/').length - b.split('/').length || (a < b ? -1 : 1);
}

function asksForFile(params: CompletionParams, { answers, session }: Parts): boolean {
  const file = session().file(params.textDocument.uri);
  if (!file) return false;
  const { position } = answers.columns.in(params, file.uri);
  return answers.safely(() => namesFile(session().source(file), from.position(position))) ?? false;
}

/** With what is told of it, for who looks at it. */
function resolved(item: CompletionItem, { answers, session }: Parts): CompletionItem {
  const chosen = from.chosen(item);
  const file = chosen && session().file(chosen.uri);
  if (!file) return item;
  const text = answers.safely(() => explained(session().job(file), chosen));
  return text ? { ...item, documentation: to.markdown(text) } : item;
}
