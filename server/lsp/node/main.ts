/** The language server’s entry. `--stdio` or `--node-ipc` on the command line says how it talks. */
import { Console } from 'node:console';
import { type Connection, createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { inOrder } from '../order';
import { start } from '../server';
import { OneWrite } from './stdout';
import { inNode } from './surroundings';

function connection(): Connection {
  const messageStrategy = inOrder();
  if (!process.argv.includes('--stdio'))
    return createConnection(ProposedFeatures.all, { messageStrategy });
  // Nothing but messages may come out there.
  globalThis.console = new Console(process.stderr);
  // The library takes a stream or a writer, though it says so only of both or neither.
  const writer = new OneWrite(process.stdout) as unknown as NodeJS.WritableStream;
  return createConnection(ProposedFeatures.all, process.stdin, writer, { messageStrategy });
}

start(connection(), inNode).listen();
