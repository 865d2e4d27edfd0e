/** Things of all files by a few letters. */
import type { WorkspaceSymbol } from 'vscode-languageserver';
import type { Glimpse } from '../../engine/ide/glance';
import { type Match, matchOf } from '../../engine/ide/search';
import type { Parts } from '../parts';
import type { Stretch } from '../stretch';
import * as to from '../to-proto';

/** More than anyone looks through; the best of them. */
const MOST = 500;

interface Found extends Match {
  readonly file: string;
}

export function registerSearch(parts: Parts): void {
  const { connection, answers, client, session } = parts;
  connection.onWorkspaceSymbol(
    answers.long(async ({ query }, stretch) => {
      const found = await foundIn(parts, query, stretch);
      const later = client().resolvesSymbols;
      return found.map(({ file, thing }) => {
        const place = { file, thing, uri: session().uriOf(file) };
        return to.workspaceSymbol(place, later ? undefined : textAt(parts, file, thing));
      });
    }),
  );
  connection.onWorkspaceSymbolResolve((symbol) => {
    const found = answers.safely(() => resolved(parts, symbol));
    return found ? answers.columns.out(found) : symbol;
  });
}

async function foundIn(parts: Parts, query: string, stretch: Stretch): Promise<Found[]> {
  const { folder } = parts.session();
  const found: Found[] = [];
  for (const file of await folder.list(stretch)) {
    for (const thing of folder.glance(file)?.things ?? []) {
      const match = matchOf(query, thing);
      if (match) found.push({ ...match, file });
    }
    if (stretch.due) await stretch.rest();
  }
  return found.sort((a, b) => b.fit - a.fit).slice(0, MOST);
}

function textAt({ session }: Parts, file: string, { line }: Glimpse): string {
  return session().folder.source(file)?.lines[line] ?? '';
}

/** With the columns of its line, as the file stands now: of those that are called so the nearest to where it was. */
function resolved({ session }: Parts, symbol: WorkspaceSymbol): WorkspaceSymbol | undefined {
  const before: unknown = symbol.data?.line;
  if (typeof before !== 'number') return undefined;
  const { folder, lent } = session();
  const file = lent.names.nameOf(symbol.location.uri);
  const far = ({ line }: Glimpse) => Math.abs(line - before);
  const things = folder.glance(file)?.things ?? [];
  const [thing] = things
    .filter((each) => to.symbolName(each) === symbol.name)
    .sort((a, b) => far(a) - far(b));
  const text = thing && folder.source(file)?.lines[thing.line];
  return text === undefined ? undefined : to.atLine(symbol, thing!.line, text);
}
