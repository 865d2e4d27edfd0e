/** What one meets first: examples, the firm's own prices, the first steps. */
import { commands, type Disposable, type ExtensionContext } from 'vscode';
import { openExample } from './examples';
import { firmFile } from './firm';

export function registerFirst(context: ExtensionContext): Disposable[] {
  const steps = `${context.extension.id}#first`;
  return [
    commands.registerCommand('perpend.examples', (given?: unknown) => openExample(context, given)),
    commands.registerCommand('perpend.firm', (given?: unknown) => firmFile(context, given)),
    commands.registerCommand('perpend.start', () =>
      commands.executeCommand('workbench.action.openWalkthrough', steps, false),
    ),
  ];
}
