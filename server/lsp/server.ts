/** Puts the parts together on one connection. */
import type { Connection } from 'vscode-languageserver';
import { Answers } from './answers';
import { capabilities } from './capabilities';
import { registerColours } from './colours';
import { Diagnostics } from './diagnostics';
import { type Parts, registerFeatures } from './features';
import * as from from './from-proto';
import { registerHints } from './hints';
import { registerOwn } from './own';
import { Session } from './session';
import { registerSync, watch } from './sync';

export function start(connection: Connection): Connection {
  let client = from.client({});
  let folders: readonly string[] = [];
  let known: Session | undefined;
  const session = () => {
    if (!known) {
      known = new Session();
      known.openFolders(folders);
    }
    return known;
  };
  const answers = new Answers(session, connection.console);
  const parts: Parts = { connection, answers, session, client: () => client };

  connection.onInitialize((params) => {
    client = from.client(params.capabilities);
    folders = from.folders(params);
    return { capabilities: capabilities(), serverInfo: { name: 'perpend' } };
  });
  connection.onInitialized(() => {
    watch(parts);
    if (client.changesFolders)
      followFolders(
        parts,
        (uris) => (folders = uris),
        () => folders,
      );
  });
  registerFeatures(parts);
  registerOwn(parts);
  const settings = registerHints(parts);
  const forget = registerColours(parts);
  const diagnostics = new Diagnostics(parts);
  registerSync(parts, { diagnostics, forget, settingsChanged: () => settings.changed() });
  return connection;
}

/** Folders come and go while the editor is open. */
function followFolders(
  { connection, session }: Parts,
  set: (uris: readonly string[]) => void,
  get: () => readonly string[],
): void {
  connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
    const gone = new Set(removed.map((folder) => folder.uri));
    const left = get().filter((uri) => !gone.has(uri));
    set([...left, ...added.map((folder) => folder.uri)]);
    session().openFolders(get());
  });
}
