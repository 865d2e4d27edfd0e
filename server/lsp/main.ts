/** The language server’s entry. `--stdio` or `--node-ipc` on the command line says how it talks. */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { start } from './server';

start(createConnection(ProposedFeatures.all)).listen();
