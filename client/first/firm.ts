/** A firm’s own file: what its bricks, materials and people cost. Its prices are places to fill in, one after another. */
import {
  type ExtensionContext,
  l10n,
  SnippetString,
  Uri,
  ViewColumn,
  window,
  workspace,
} from 'vscode';
import { askFolder, FIRM } from '../place';
import { blanks } from './blanks';

const COUNTRIES = [
  { start: 'uk', label: l10n.t('Metric, pounds'), description: l10n.t('library {0}', 'uk') },
  { start: 'us', label: l10n.t('Inches, dollars'), description: l10n.t('library {0}', 'us') },
  { start: 'de', label: l10n.t('Octametric, euros'), description: l10n.t('library {0}', 'de') },
];

/** @param given `uk`, `us` or `de`: nothing is asked then */
export async function firmFile(context: ExtensionContext, given?: unknown): Promise<void> {
  const there = await placeOf();
  if (there && (await open(there))) return;
  const start = await startOf(given);
  if (!start) return;
  const text = await textOf(context, start);
  const document = there
    ? await workspace.openTextDocument(there.with({ scheme: 'untitled' }))
    : await workspace.openTextDocument({ language: 'perpend' });
  const editor = await window.showTextDocument(document, { viewColumn: ViewColumn.Active });
  await editor.insertSnippet(new SnippetString(blanks(text)));
}

async function startOf(given: unknown): Promise<string | undefined> {
  const known = COUNTRIES.find(({ start }) => start === given);
  const chosen =
    known ??
    (await window.showQuickPick(COUNTRIES, {
      title: l10n.t('Your Firm’s Prices'),
      placeHolder: l10n.t('Which bricks and which money?'),
    }));
  return chosen?.start;
}

/** In the folder that is open, or the one the reader says; nothing where there is none. */
async function placeOf(): Promise<Uri | undefined> {
  const [folder] = workspace.workspaceFolders ?? [];
  if (folder) return Uri.joinPath(folder.uri, FIRM);
  const title = l10n.t('Where Are Your Jobs Kept? The File of Your Prices Stands There');
  const chosen = await askFolder(title);
  return chosen && Uri.joinPath(chosen, FIRM);
}

/** A firm’s file that is there already is shown, and nothing is put in. */
async function open(file: Uri): Promise<boolean> {
  try {
    await workspace.fs.stat(file);
  } catch {
    return false;
  }
  await window.showTextDocument(await workspace.openTextDocument(file));
  return true;
}

async function textOf({ extensionUri }: ExtensionContext, start: string): Promise<string> {
  const file = Uri.joinPath(extensionUri, `dist/library/starts/${start}.perp`);
  return new TextDecoder().decode(await workspace.fs.readFile(file));
}
