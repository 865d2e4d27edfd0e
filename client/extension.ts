/** The extension: starts the language server, and shows what it knows of the job in front. */
import { commands, type Disposable, type ExtensionContext } from 'vscode';
import type { Part } from '../shared/protocol/parts';
import { registerCommands } from './commands';
import { Sides } from './compare/sides';
import { registerFirst } from './first';
import { HelpPages } from './help';
import { JobView } from './job-view/view';
import { MarkdownPages } from './markdown-pages';
import { Previews } from './preview';
import { printer } from './preview/print';
import { type MakeClient, Server } from './server';
import { StatusBar } from './status-bar';
import { rememberFront } from './target';
import { registerTools } from './tools/tools';
import { isWanted, whenWanted } from './wanted';
import { WorkingPage } from './working';

let server: Server | undefined;

/** What can be seen in the window and asked for in no other way: for tests in an editor. */
export interface Seen {
  readonly parts: () => readonly Part[];
  readonly bar: () => string;
}

/** Called by the entry of each place where an extension can run: `node` and `browser`. */
export function begin(context: ExtensionContext, make: MakeClient): Seen {
  server = new Server(context, make);
  const [bar, view] = [new StatusBar(server), new JobView(server)];
  const help = new HelpPages(context.extensionUri);
  context.subscriptions.push(server.log, bar, view, help, ...workbench(server));
  context.subscriptions.push(new Previews(context, server, printer(context, server)));
  context.subscriptions.push(rememberFront(), ...registerFirst(context));
  void commands.executeCommand('setContext', 'perpend.active', true);
  const begun = server;
  context.subscriptions.push(whenWanted(() => begun.start()));
  // Not waited for: a search may wait for whoever lends the folder, and that may wait for us.
  void startIfWanted(server);
  return { parts: () => view.parts, bar: () => bar.text };
}

async function startIfWanted(server: Server): Promise<void> {
  if (await isWanted()) await server.start();
}

/** What is seen of a job in the window, and what can be done with it. */
function workbench(server: Server): Disposable[] {
  const [working, pages] = [new WorkingPage(server), new MarkdownPages()];
  const sides = new Sides(server, pages);
  const commands = registerCommands({ server, working, pages, sides });
  return [working, pages, sides, ...commands, ...registerTools(server)];
}

export function deactivate(): Promise<void> | undefined {
  return server?.stop();
}
