/** The working of a figure, chosen from a list and read as a page that cannot be edited. */
import {
  Disposable,
  EventEmitter,
  l10n,
  type QuickPickItem,
  QuickPickItemKind,
  type TextDocumentContentProvider,
  Uri,
  window,
  workspace,
} from 'vscode';
import type { FigureItem } from '../shared/protocol';
import { iconless } from './iconless';
import { showMarkdown } from './markdown-pages';
import type { Server } from './server';
import { documentOf } from './target';

const SCHEME = 'perpend-working';

interface Choice extends QuickPickItem {
  readonly id?: string;
}

/** A page is named by its figure and the file it is of, so that it can be asked for again. */
export class WorkingPage extends Disposable implements TextDocumentContentProvider {
  private readonly changed = new EventEmitter<Uri>();
  readonly onDidChange = this.changed.event;
  private readonly provider: Disposable;

  constructor(private readonly server: Server) {
    super(() => this.end());
    this.provider = workspace.registerTextDocumentContentProvider(SCHEME, this);
  }

  private end(): void {
    this.provider.dispose();
    this.changed.dispose();
  }

  async provideTextDocumentContent(page: Uri): Promise<string> {
    const working = await this.server.working(Uri.parse(page.query, true), page.fragment);
    return working?.markdown ?? l10n.t('The job has no such figure any more.');
  }

  /** Asks which figure, unless it is said, then shows how it came about. `target`: a file, or `{ uri, id }`. */
  async choose(target?: unknown): Promise<void> {
    const file = await documentOf(target);
    if (!file) return;
    const id = (target as { id?: unknown } | undefined)?.id;
    if (typeof id === 'string') return this.show(file.uri, id);
    const figures = await this.server.figures(file.uri);
    if (!figures.length) {
      void window.showInformationMessage(l10n.t('This file is no job, so it has no figures.'));
      return;
    }
    const chosen = await window.showQuickPick(grouped(figures), {
      title: l10n.t('Show the Working of a Figure'),
      placeHolder: l10n.t('A figure of the job'),
      matchOnDescription: true,
    });
    if (chosen?.id) await this.show(file.uri, chosen.id);
  }

  async show(file: Uri, id: string): Promise<void> {
    const page = Uri.from({
      scheme: SCHEME,
      path: `/${id}.md`,
      query: file.toString(),
      fragment: id,
    });
    this.changed.fire(page);
    await showMarkdown(page, true);
  }
}

/** Under a line for each piece of work. */
function grouped(figures: readonly FigureItem[]): Choice[] {
  const items: Choice[] = [];
  let group = '';
  for (const figure of figures) {
    if (figure.group !== group)
      items.push({ label: iconless(figure.group), kind: QuickPickItemKind.Separator });
    group = figure.group;
    items.push({ label: iconless(figure.label), description: figure.text, id: figure.id });
  }
  return items;
}
