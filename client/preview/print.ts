/**
 * Printing. A page in an editor cannot print: what it shows is written as a file that can, and the machine opens that.
 * Where the file would stand on another machine than the reader’s, it is saved instead.
 */
import { commands, type ExtensionContext, env, l10n, UIKind, Uri, window, workspace } from 'vscode';
import { fromBase64 } from '../../shared/base64';
import {
  EXPORT,
  type Exported,
  type ExportParams,
  type Form,
  PAGES,
  type PageItem,
  type Refused,
} from '../../shared/protocol/pages';
import { DRAWINGS } from '../../shared/protocol/preview';
import { asked, unlessRefused } from '../asking';
import type { Server } from '../server';
import type { Print } from './panel';

/** What prints best, first. */
const FORMS: readonly Form[] = ['pdf', 'html', 'svg'];

export function printer(context: ExtensionContext, server: Server): Print {
  return async ({ uri, show, work }) => {
    const of = await wanted(server, uri, show, work);
    if (!of) return void window.showInformationMessage(l10n.t('There is nothing to print.'));
    const { globalStorageUri: home } = context;
    const atHand = home.scheme === 'file' && !env.remoteName && env.uiKind === UIKind.Desktop;
    if (atHand) await openOutside(server, of, Uri.joinPath(home, 'print'));
    else await commands.executeCommand('perpend.save', { ...of, uri });
  };
}

/** What is shown, in the best form that there is of it. */
async function wanted(
  server: Server,
  file: Uri,
  show: string,
  work: string | undefined,
): Promise<ExportParams | undefined> {
  const uri = server.uri(file);
  const items = (await asked<readonly PageItem[]>(server, PAGES, { uri })) ?? [];
  const view = DRAWINGS.find((each) => each === show);
  const item = items.find(({ kind }) => kind === (view ? 'drawing' : show));
  const form = FORMS.find((each) => item?.forms.includes(each));
  if (!item || !form) return undefined;
  // A piece of work is known there by its name alone: "wall north".
  const name = work?.split(' ')[1];
  return { uri, page: item.kind, form, ...(view ? { options: { work: name, view } } : {}) };
}

async function openOutside(server: Server, of: ExportParams, folder: Uri): Promise<void> {
  const made = unlessRefused(await asked<Exported | Refused>(server, EXPORT, of));
  if (!made) return;
  const file = Uri.joinPath(folder, made.name);
  await workspace.fs.writeFile(file, fromBase64(made.base64));
  if (!(await env.openExternal(file))) await commands.executeCommand('vscode.open', file);
}
