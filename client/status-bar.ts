/** One item at the right of the status bar: the price of the job in front, and what it earns an hour. */
import {
  Disposable,
  l10n,
  MarkdownString,
  StatusBarAlignment,
  type StatusBarItem,
  type TextDocument,
  window,
  workspace,
} from 'vscode';
import type { Totals } from '../shared/protocol';
import { LANGUAGE } from './language';
import type { Server } from './server';

/** After the last keystroke: the hints show totals at once, this one may follow. */
const PAUSE_MS = 150;

export class StatusBar extends Disposable {
  private readonly item: StatusBarItem;
  private readonly listening: Disposable;
  private waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly server: Server) {
    super(() => this.end());
    this.item = window.createStatusBarItem('perpend.price', StatusBarAlignment.Right, 100);
    this.item.name = l10n.t('Price of the job');
    this.item.command = 'perpend.price';
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
    // The price of a text that has gone on without the server is no price.
    if (this.server.gone) return this.item.hide();
    const totals = document ? await this.server.totals(document.uri) : null;
    if (document !== inFront() || totals === undefined) return;
    if (totals) this.fill(totals);
    else this.item.hide();
  }

  /** What is shown now. */
  get text(): string {
    return this.item.text;
  }

  private fill(totals: Totals): void {
    this.item.text = barText(totals);
    this.item.tooltip = tooltip(totals);
    this.item.accessibilityInformation = { label: barHeard(totals) };
    this.item.show();
  }
}

/** `£4,050.00 · £59.12/h`, with three dots after a price that is not complete. */
export function barText({ price, earns, missing }: Totals): string {
  const shown = missing.length ? `${price} …` : price;
  return earns ? l10n.t('{0} · {1}/h', shown, earns) : shown;
}

export function barHeard({ price, earns, missing }: Totals): string {
  const parts = [
    l10n.t('Price of the job {0}', price),
    ...(missing.length ? [l10n.t('not complete')] : []),
    ...(earns ? [l10n.t('it earns {0} an hour', earns)] : []),
  ];
  return parts.join(', ');
}

/** The file that is edited; while a page or a panel has the focus, one that is still to be seen. */
export function inFront(): TextDocument | undefined {
  const active = window.activeTextEditor;
  const editors = active ? [active] : window.visibleTextEditors;
  return editors.find(({ document }) => document.languageId === LANGUAGE)?.document;
}

export function tooltip(totals: Totals): MarkdownString {
  const text = new MarkdownString();
  const price = `| **${l10n.t('Price')}** | **${totals.price}** |`;
  const rows = totals.steps.map(
    ({ label, text: amount }) => `| ${cell(label)} | ${cell(amount)} |`,
  );
  text.appendMarkdown(['| | |', '|:--|--:|', ...rows, price].join('\n'));
  for (const line of [rangeLine(totals), hoursLine(totals), earnsLine(totals)])
    if (line) text.appendMarkdown('\n\n').appendText(line);
  if (totals.missing.length) text.appendMarkdown('\n\n').appendText(l10n.t('Not complete:'));
  for (const what of totals.missing.slice(0, MOST_MISSING))
    text.appendMarkdown('\n- ').appendText(what);
  return text;
}

/** As it stands: the names of partners are words of a job, and would be links and pictures. */
function cell(text: string): string {
  return new MarkdownString().appendText(text).value.replace(/(?<!\\)\|/g, '\\|');
}

/** More than anyone reads in a hover. */
const MOST_MISSING = 12;

function rangeLine({ alike, range }: Totals): string {
  return range ? `${alike}: ${range}` : '';
}

function hoursLine({ hours }: Totals): string {
  return l10n.t('{0} of the gang', hours);
}

/** Says what the second number is, and what it is made of. */
function earnsLine({ earns, leaves, paid }: Totals): string {
  if (!earns || !leaves || !paid) return '';
  return l10n.t(
    'It earns {0} an hour: wages and the profit it leaves ({1}), shared out over the hours that are paid ({2}).',
    earns,
    leaves,
    paid,
  );
}
