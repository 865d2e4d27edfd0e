/** Puts the parts together on one connection. */
import type { Connection } from 'vscode-languageserver';
import { speak } from '../../shared/phrase';
import type { StartOptions } from '../../shared/protocol/files';
import { VERSION } from '../../shared/version';
import { Answers } from './answers';
import { capabilities } from './capabilities';
import { registerColours } from './colours';
import { Diagnostics } from './diagnostics';
import { Columns } from './encoding';
import { registerFeatures } from './features';
import * as from from './from-proto';
import { registerHints } from './hints';
import { registerLenses } from './lenses';
import { answerRefused } from './order';
import { registerPapers } from './own/papers';
import { registerParts } from './own/parts';
import { registerPreview } from './own/preview';
import { registerTotals } from './own/totals';
import type { Parts } from './parts';
import { Session } from './session';
import type { Surroundings } from './surroundings';
import { registerSync, watch } from './sync';

export type Lend = (to: { connection: Connection; options: StartOptions }) => Surroundings;

/** @param lend what the server is lent where it runs; asked when the first file opens */
export function start(connection: Connection, lend: Lend): Connection {
  let client = from.client({});
  let folders: readonly string[] = [];
  let known: Session | undefined;
  let options: StartOptions = {};
  const session = () => {
    if (!known) {
      known = new Session(lend({ connection, options }), from.scratch(options));
      known.folder.watched = client.watchesFiles;
      known.openFolders(folders);
    }
    return known;
  };
  const columns = new Columns((uri, line) => session().lineAt(uri, line));
  const answers = new Answers(session, connection.console, columns);
  const parts: Parts = { connection, answers, session, client: () => client };

  connection.onInitialize((params) => {
    client = from.client(params.capabilities, from.startOptions(params));
    folders = from.folders(params);
    options = from.startOptions(params);
    speak(from.words(params));
    columns.encoding = from.encoding(params);
    return {
      capabilities: capabilities(columns.encoding, client),
      serverInfo: { name: 'perpend', version: VERSION },
    };
  });
  connection.onInitialized(() => {
    watch(parts);
    if (client.changesFolders)
      followFolders(
        parts,
        (uris) => {
          folders = uris;
          session().openFolders(uris);
          sync.foldersChanged();
        },
        () => folders,
      );
  });
  answerRefused(connection);
  registerFeatures(parts);
  registerTotals(parts);
  registerPapers(parts);
  registerParts(parts);
  registerPreview(parts);
  const hints = registerHints(parts);
  const lenses = registerLenses(parts);
  const forgetColours = registerColours(parts);
  const diagnostics = new Diagnostics(parts);
  const sync = registerSync(parts, {
    diagnostics,
    settingsChanged: () => {
      hints.changed();
      lenses.changed();
    },
    forget: (uri) => {
      hints.forget(uri);
      lenses.forget(uri);
      forgetColours(uri);
    },
  });
  return connection;
}

/** Folders come and go while the editor is open. */
function followFolders(
  { connection }: Parts,
  set: (uris: readonly string[]) => void,
  get: () => readonly string[],
): void {
  connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
    const gone = new Set(removed.map((folder) => folder.uri));
    const left = get().filter((uri) => !gone.has(uri));
    set([...left, ...added.map((folder) => folder.uri)]);
  });
}
