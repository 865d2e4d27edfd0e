/** After a file was written: one message, with what can be done with it where this editor runs. */
import { commands, env, l10n, UIKind, type Uri, window, workspace } from 'vscode';
import { unlinked } from '../unlinked';

/** What the machine opens by itself: pages and papers that this editor would show as their source, or not at all. */
const OF_THE_MACHINE = /\.(pdf|html|xlsx|dxf|svg)$/i;

export async function sayWritten(file: Uri, asides: readonly string[] = []): Promise<void> {
  const [open, reveal] = [l10n.t('Open'), l10n.t('Reveal')];
  const name = workspace.asRelativePath(file, false);
  const said = unlinked([l10n.t('{0} is written.', name), ...asides].join(' '));
  const actions = (await canReveal(file)) ? [open, reveal] : [open];
  const chosen = await window.showInformationMessage(said, ...actions);
  if (chosen === open) await openFile(file);
  if (chosen === reveal) await revealFile(file);
}

/** The file stands on the machine that this window is on. */
function isAtHand(file: Uri): boolean {
  return file.scheme === 'file' && !env.remoteName && env.uiKind === UIKind.Desktop;
}

export async function openFile(file: Uri): Promise<void> {
  const outside = isAtHand(file) && OF_THE_MACHINE.test(file.path);
  if (outside && (await env.openExternal(file))) return;
  await commands.executeCommand('vscode.open', file);
}

/** In the file manager of the machine; where there is none, in the list of files of the folder that is open. */
export async function revealFile(file: Uri): Promise<void> {
  const own = isAtHand(file) && (await has('revealFileInOS'));
  await commands.executeCommand(own ? 'revealFileInOS' : 'revealInExplorer', file);
}

async function canReveal(file: Uri): Promise<boolean> {
  if (isAtHand(file) && (await has('revealFileInOS'))) return true;
  return workspace.getWorkspaceFolder(file) !== undefined;
}

async function has(command: string): Promise<boolean> {
  return (await commands.getCommands(true)).includes(command);
}
