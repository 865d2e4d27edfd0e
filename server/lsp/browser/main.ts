/** The language server’s entry in a worker of a browser. */
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
  ProposedFeatures,
} from 'vscode-languageserver/browser';
import { inOrder } from '../order';
import { start } from '../server';
import { inBrowser } from './surroundings';

declare const self: DedicatedWorkerGlobalScope;

const [reader, writer] = [new BrowserMessageReader(self), new BrowserMessageWriter(self)];
const connection = createConnection(ProposedFeatures.all, reader, writer, {
  messageStrategy: inOrder(),
});
connection.onExit(() => self.close());
start(connection, inBrowser).listen();
