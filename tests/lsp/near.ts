/** The server in this process: quick to start, for what does not hang on the bundle. */
import { PassThrough } from 'node:stream';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { inNode } from '../../server/lsp/node/surroundings';
import { inOrder } from '../../server/lsp/order';
import { start } from '../../server/lsp/server';
import type { Ends } from './peer';

/** @param patience how long an answer waits for files on their way, in ms */
export function near(patience = 60_000): Ends {
  const [said, heard] = [new PassThrough(), new PassThrough()];
  const connection = createConnection(ProposedFeatures.all, heard, said, {
    messageStrategy: inOrder(),
  });
  start(connection, (to) => ({ ...inNode(to), patience })).listen();
  return { said, heard };
}
