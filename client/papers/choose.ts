/** Which paper or page, in which form, of which piece of work. */
import { l10n, type QuickPickItem, QuickPickItemKind, window } from 'vscode';
import type { Form, PageItem, Reader } from '../../shared/protocol/pages';
import { iconless } from '../iconless';
import { formWords } from './forms';

export type PageChoice = QuickPickItem & { readonly page?: PageItem };

const READERS: readonly Reader[] = ['client', 'site', 'firm'];

function readerWords(reader: Reader): string {
  if (reader === 'client') return l10n.t('For the client: no costs');
  return reader === 'site' ? l10n.t('For the site: no costs') : l10n.t('For the firm itself');
}

/** By who reads it; what there is none of is left out. */
export function pageChoices(items: readonly PageItem[]): PageChoice[] {
  return READERS.flatMap((reader) => {
    const mine = items.filter((item) => item.reader === reader && !item.why);
    if (!mine.length) return [];
    const head = { label: readerWords(reader), kind: QuickPickItemKind.Separator };
    return [head, ...mine.map((page) => ({ label: page.title, detail: page.about, page }))];
  });
}

export async function choosePage(items: readonly PageItem[]): Promise<PageItem | undefined> {
  const choices = pageChoices(items);
  if (!choices.length) {
    void window.showInformationMessage(
      l10n.t('This file is no job: there is nothing to save of it.'),
    );
    return undefined;
  }
  const chosen = await window.showQuickPick(choices, {
    title: l10n.t('Save a Paper, Page or Drawing'),
    placeHolder: l10n.t('What to save'),
    matchOnDetail: true,
  });
  return chosen?.page;
}

export async function chooseForm({ title, forms }: PageItem): Promise<Form | undefined> {
  if (forms.length < 2) return forms[0];
  const choices = forms.map((form) => {
    const { label, about } = formWords(form);
    return { label, description: about, form };
  });
  const placeHolder = l10n.t('In which form');
  return (await window.showQuickPick(choices, { title, placeHolder }))?.form;
}

/** Empty for all of them; nothing when the reader turns back. Only a drawing has to be of one. */
export async function chooseWork({ kind, title, works }: PageItem): Promise<string | undefined> {
  if (kind !== 'drawing' || works.length < 2)
    return kind === 'drawing' ? (works[0]?.name ?? '') : '';
  const choices = works.map((work) => ({
    label: iconless(work.title || work.name),
    description: work.name,
    name: work.name,
  }));
  const placeHolder = l10n.t('Which piece of work');
  return (await window.showQuickPick(choices, { title, placeHolder }))?.name;
}
