/** One item at the right of the status bar: the price of the job in front. */
import {
  Disposable,
  MarkdownString,
  StatusBarAlignment,
  type StatusBarItem,
  type TextDocument,
  window,
  workspace,
} from 'vscode';
import type { Totals } from '../shared/protocol';
import { LANGUAGE, type Server } from './server';

/** After the last keystroke: the hints show totals at once, this one may follow. */
const PAUSE_MS = 150;

export class StatusBar extends Disposable {
  private readonly item: StatusBarItem;
  private readonly listening: Disposable;
  private waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly server: Server) {
    super(() => this.end());
    this.item = window.createStatusBarItem('perpend.price', StatusBarAlignment.Right, 100);
    this.item.name = 'Price of the job';
    this.item.command = 'perpend.working';
    this.listening = Disposable.from(
      this.item,
      window.onDidChangeActiveTextEditor(() => this.soon(0)),
      workspace.onDidChangeTextDocument(({ document }) => {
        if (document.languageId === LANGUAGE) this.soon(PAUSE_MS);
      }),
      server.onChanged(() => this.soon(0)),
    );
  }

  private end(): void {
    clearTimeout(this.waiting);
    this.listening.dispose();
  }

  private soon(pause: number): void {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => void this.show(), pause);
  }

  /** An answer is shown only if its file is still in front; without an answer, what is there stays. */
  private async show(): Promise<void> {
    const document = inFront();
    const totals = document ? await this.server.totals(document.uri) : null;
    if (document !== inFront() || totals === undefined) return;
    if (totals) this.fill(totals);
    else this.item.hide();
  }

  private fill(totals: Totals): void {
    const incomplete = totals.missing.length > 0;
    this.item.text = incomplete ? `${totals.price} …` : totals.price;
    this.item.tooltip = tooltip(totals);
    this.item.show();
  }
}

/** The file that is edited; while a page or a panel has the focus, one that is still to be seen. */
export function inFront(): TextDocument | undefined {
  const active = window.activeTextEditor;
  const editors = active ? [active] : window.visibleTextEditors;
  return editors.find(({ document }) => document.languageId === LANGUAGE)?.document;
}

function tooltip(totals: Totals): MarkdownString {
  const text = new MarkdownString();
  const rows = totals.steps.map(({ label, text: amount }) => `| ${label} | ${amount} |`);
  text.appendMarkdown(
    ['| | |', '|:--|--:|', ...rows, `| **Price** | **${totals.price}** |`].join('\n'),
  );
  if (totals.range) text.appendMarkdown(`\n\n${totals.alike}: ${totals.range}`);
  text.appendMarkdown(`\n\n${totals.hours} of the gang`);
  if (totals.missing.length) text.appendMarkdown('\n\nNot complete:\n');
  for (const what of totals.missing) text.appendMarkdown('\n- ').appendText(what);
  return text;
}
