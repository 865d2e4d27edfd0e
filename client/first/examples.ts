/** Examples to learn from, copied into a folder of the editor’s own: whatever is tried in them breaks nothing. */
import {
  commands,
  type ExtensionContext,
  l10n,
  type QuickPickItem,
  QuickPickItemKind,
  Uri,
  window,
  workspace,
} from 'vscode';

/** What is built into `dist/examples.json`, from the folder of examples. */
export interface Shelf {
  /** Jobs in the order in which they are learnt from. */
  readonly jobs: readonly {
    readonly file: string;
    readonly title: string;
    readonly lesson: string;
  }[];
  /** Texts by their way within the folder. */
  readonly files: Readonly<Record<string, string>>;
}

interface Choice extends QuickPickItem {
  readonly file?: string;
}

/** Where examples are copied to. The server may read what stands there, though no folder of it is open. */
export function scratchOf({ globalStorageUri }: ExtensionContext): Uri {
  return Uri.joinPath(globalStorageUri, 'examples');
}

/** @param given the way of an example within the folder: nothing is asked then */
export async function openExample(context: ExtensionContext, given?: unknown): Promise<void> {
  const shelf = await shelfOf(context);
  const known = typeof given === 'string' && Object.hasOwn(shelf.files, given);
  const chosen = known ? { file: given } : await choose(shelf);
  if (!chosen) return;
  const scratch = scratchOf(context);
  await putDown(shelf, scratch, chosen.file === undefined);
  const file = Uri.joinPath(scratch, chosen.file ?? shelf.jobs[0]!.file);
  await window.showTextDocument(await workspace.openTextDocument(file));
  await commands.executeCommand('perpend.preview');
}

async function shelfOf({ extensionUri }: ExtensionContext): Promise<Shelf> {
  const bytes = await workspace.fs.readFile(Uri.joinPath(extensionUri, 'dist/examples.json'));
  return JSON.parse(new TextDecoder().decode(bytes));
}

function choose({ jobs }: Shelf): Thenable<Choice | undefined> {
  const items: Choice[] = jobs.map(({ file, title, lesson }) => ({
    label: title,
    detail: lesson,
    file,
  }));
  const afresh: Choice[] = [
    { label: '', kind: QuickPickItemKind.Separator },
    { label: l10n.t('Put all examples back as they were') },
  ];
  return window.showQuickPick([...items, ...afresh], {
    title: l10n.t('Open an Example'),
    placeHolder: l10n.t('It is a copy: change in it whatever you like'),
    matchOnDetail: true,
  });
}

/** What is there and was changed stays, unless everything is to be put back. */
async function putDown(shelf: Shelf, scratch: Uri, afresh: boolean): Promise<void> {
  for (const [way, text] of Object.entries(shelf.files)) {
    const file = Uri.joinPath(scratch, way);
    if (afresh || !(await isThere(file)))
      await workspace.fs.writeFile(file, new TextEncoder().encode(text));
  }
}

async function isThere(file: Uri): Promise<boolean> {
  try {
    await workspace.fs.stat(file);
    return true;
  } catch {
    return false;
  }
}
