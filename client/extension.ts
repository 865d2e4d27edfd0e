/** The extension: starts the language server, and shows what it knows of the job in front. */
import type { ExtensionContext } from 'vscode';
import { registerCommands } from './commands';
import { Server } from './server';
import { StatusBar } from './status-bar';
import { WorkingPage } from './working';

let server: Server | undefined;

export async function activate(context: ExtensionContext): Promise<void> {
  server = new Server(context);
  const page = new WorkingPage(server);
  context.subscriptions.push(server.log, page, new StatusBar(server));
  registerCommands(context, server, page);
  await server.start();
}

export function deactivate(): Promise<void> | undefined {
  return server?.stop();
}
