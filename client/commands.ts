/** The commands of the manifest. */
import { commands, type ExtensionContext } from 'vscode';
import type { Server } from './server';
import type { WorkingPage } from './working';

export function registerCommands(
  context: ExtensionContext,
  server: Server,
  page: WorkingPage,
): void {
  context.subscriptions.push(
    commands.registerCommand('perpend.restart', () => server.restart()),
    commands.registerCommand('perpend.log', () => server.log.show()),
    commands.registerCommand('perpend.working', () => page.choose()),
  );
}
