/** The extension where there is Node: on a desk, on a server, in a container. The language server is a process. */
import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { begin, type Seen } from './extension';
import { LANGUAGE } from './language';
import { registerTasks } from './tasks/tasks';

/** The one thing of Node that is asked for here: which program this runs in. */
declare const process: { readonly execPath: string };

export function activate(context: ExtensionContext): Seen {
  registerTasks(context, process.execPath);
  const module = Uri.joinPath(context.extensionUri, 'dist/server.cjs').fsPath;
  const server = { module, transport: TransportKind.ipc };
  return begin(context, (options) => new LanguageClient(LANGUAGE, 'Perpend', server, options));
}

export { deactivate } from './extension';
