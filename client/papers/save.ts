/** Saves a paper, a page or a drawing: which, in which form, and where; the reader can turn back at each. */
import { l10n, type TextDocument, Uri, window, workspace } from 'vscode';
import { fromBase64 } from '../../shared/base64';
import {
  EXPORT,
  type Exported,
  type ExportParams,
  type Form,
  PAGES,
  type PageItem,
  type PageOptions,
  type Refused,
} from '../../shared/protocol/pages';
import { asked, unlessRefused } from '../asking';
import { briefly } from '../busy';
import type { Server } from '../server';
import { documentOf, shownName, uriIn } from '../target';
import { unlinked } from '../unlinked';
import { chooseForm, choosePage, chooseWork } from './choose';
import { sayWritten } from './written';

/** What `perpend.save` may be given: what is said is not asked for. */
export interface SaveRequest {
  readonly uri?: Uri | string;
  readonly page?: ExportParams['page'];
  readonly form?: Form;
  readonly options?: PageOptions;
  /** Where to; what stands there is written over. */
  readonly to?: Uri | string;
}

/** @returns the file that was written */
export async function save(server: Server, given?: SaveRequest | Uri): Promise<Uri | undefined> {
  const request: SaveRequest = given instanceof Uri ? { uri: given } : (given ?? {});
  const document = await documentOf(request);
  const params = document && (await paramsFor(server, document, request));
  if (!document || !params) return undefined;
  const made = await briefly(l10n.t('Making the file'), async () =>
    unlessRefused(await asked<Exported | Refused>(server, EXPORT, params)),
  );
  if (!made) return undefined;
  const { form } = params;
  const file = await written(made, form, await placeFor(document, made, form, request.to));
  if (!file) return undefined;
  // Whoever waits for the file need not wait until the message is answered.
  void sayWritten(file, made.asides);
  return file;
}

/** A place that takes no file is told, and another can be chosen. */
async function written(
  made: Exported,
  form: Form,
  file: Uri | undefined,
): Promise<Uri | undefined> {
  if (!file) return undefined;
  try {
    await workspace.fs.writeFile(file, fromBase64(made.base64));
    return file;
  } catch (error) {
    const again = l10n.t('Save Elsewhere…');
    if ((await window.showErrorMessage(notWritten(file, error), again)) !== again) return undefined;
    return written(made, form, await dialog(Uri.joinPath(file, '..', made.name), made.name, form));
  }
}

function notWritten(file: Uri, error: unknown): string {
  const code = (error as { code?: unknown } | undefined)?.code;
  const name = shownName(file);
  if (code === 'NoPermissions') return unlinked(l10n.t('{0} may not be written there.', name));
  if (code === 'FileIsADirectory')
    return unlinked(l10n.t('{0} is a folder: nothing is written over it.', name));
  return unlinked(l10n.t('{0} could not be written: {1}', name, String(error)));
}

async function paramsFor(
  server: Server,
  document: TextDocument,
  { page, form, options }: SaveRequest,
): Promise<ExportParams | undefined> {
  const uri = server.uri(document.uri);
  if (page && form) return { uri, page, form, options };
  const items = await asked<readonly PageItem[]>(server, PAGES, { uri });
  const item = items && (page ? items.find(({ kind }) => kind === page) : await choosePage(items));
  if (!item) return undefined;
  if (item.why) {
    void window.showInformationMessage(unlinked(item.why));
    return undefined;
  }
  const work = options?.work ?? (await chooseWork(item));
  if (work === undefined) return undefined;
  const chosen = form ?? (await chooseForm(item));
  const all = work ? { ...options, work } : options;
  return chosen && { uri, page: item.kind, form: chosen, options: all };
}

async function placeFor(
  document: TextDocument,
  { name }: Exported,
  form: Form,
  to: Uri | string | undefined,
): Promise<Uri | undefined> {
  const said = uriIn({ uri: to });
  if (said) return said;
  return dialog(Uri.joinPath(folderOf(document), name), name, form);
}

function dialog(defaultUri: Uri, name: string, form: Form): Thenable<Uri | undefined> {
  const filters = { [form.toUpperCase()]: [form] };
  return window.showSaveDialog({ defaultUri, filters, title: l10n.t('Save {0}', name) });
}

/** Beside the job; of one that is not saved, in the folder that is open. */
export function folderOf({ uri, isUntitled }: TextDocument): Uri {
  if (!isUntitled) return Uri.joinPath(uri, '..');
  return workspace.workspaceFolders?.[0]?.uri ?? Uri.joinPath(uri, '..');
}
