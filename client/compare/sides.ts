/** A job beside what it was, by meaning: two texts that the diff editor puts side by side, and the page that tells why. */
import {
  commands,
  Disposable,
  EventEmitter,
  l10n,
  type TextDocument,
  type TextDocumentContentProvider,
  Uri,
  workspace,
} from 'vscode';
import { COMPARE, type Compared } from '../../shared/protocol/compare';
import type { Before } from '../../shared/protocol/pages';
import { deed, patiently } from '../asking';
import { LANGUAGE } from '../language';
import { Latest } from '../latest';
import type { MarkdownPages } from '../markdown-pages';
import type { Server } from '../server';
import { shownName } from '../target';

const COMPARE_SCHEME = 'perpend-compare';
const PAUSE_MS = 500;

interface Pair {
  readonly document: TextDocument;
  readonly before: Before;
  compared: Compared;
}

export class Sides extends Disposable implements TextDocumentContentProvider {
  private readonly changed = new EventEmitter<Uri>();
  readonly onDidChange = this.changed.event;
  private readonly pairs = new Map<string, Pair>();
  private readonly listening: Disposable;
  private readonly latest = new Latest(() => this.again());
  private waiting: ReturnType<typeof setTimeout> | undefined;
  private count = 0;

  constructor(
    private readonly server: Server,
    private readonly pages: MarkdownPages,
  ) {
    super(() => this.end());
    this.listening = Disposable.from(
      workspace.registerTextDocumentContentProvider(COMPARE_SCHEME, this),
      workspace.onDidChangeTextDocument(({ document }) => this.edited(document)),
      workspace.onDidCloseTextDocument(({ uri }) => this.closed(uri)),
    );
  }

  private end(): void {
    clearTimeout(this.waiting);
    this.listening.dispose();
    this.changed.dispose();
  }

  provideTextDocumentContent(uri: Uri): string {
    const compared = this.pairs.get(uri.query)?.compared;
    const text = (uri.fragment === 'left' ? compared?.left : compared?.right) ?? '';
    // An editor marks spaces that do not break as signs that may mislead.
    return text.replace(/[\u00a0\u202f]/g, ' ');
  }

  /**
   * @param named what was before, where its label would be that of the job too
   * @returns whether it could be compared
   */
  async show(document: TextDocument, before: Before, named?: string): Promise<boolean> {
    const compared = await this.comparedOf(document, before);
    if (!compared) return false;
    this.count += 1;
    const key = String(this.count);
    this.pairs.set(key, { document, before, compared });
    const { left, right } = compared.labels;
    const title = l10n.t('{0} ↔ {1}', named ?? left, named ? shownName(document.uri) : right);
    const [one, other] = [addressOf(key, 'left', left), addressOf(key, 'right', right)];
    await commands.executeCommand('vscode.diff', one, other, title);
    return true;
  }

  /** What moved the price, of the comparison in front. */
  async showPage(side: unknown): Promise<void> {
    const pair = side instanceof Uri ? this.pairs.get(side.query) : [...this.pairs.values()].at(-1);
    if (pair) await this.pages.show(pair.compared.page.title, pair.compared.page.markdown);
  }

  /** What is told of one that has no text to put beside: only what the record keeps. */
  async showTold({ page }: Compared): Promise<void> {
    await this.pages.show(page.title, page.markdown);
  }

  private comparedOf(document: TextDocument, before: Before): Promise<Compared | undefined> {
    return deed(this.server, COMPARE, { uri: this.server.uri(document.uri), before });
  }

  /** What is typed counts at once, saved or not: in the job, in what it is put beside, in a firm’s file. */
  private edited({ languageId }: TextDocument): void {
    if (!this.pairs.size || languageId !== LANGUAGE) return;
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => void this.latest.ask(), PAUSE_MS);
  }

  private async again(): Promise<void> {
    for (const [key, pair] of this.pairs) {
      const compared = await this.anew(pair);
      if (!compared || !('right' in compared)) continue;
      const { labels } = pair.compared;
      pair.compared = compared;
      for (const side of SIDES) this.changed.fire(addressOf(key, side, labels[side]));
    }
  }

  /** Nothing where it cannot be compared for now: what is shown stays. */
  private async anew({ document, before }: Pair): Promise<Compared | undefined> {
    const params = { uri: this.server.uri(document.uri), before };
    try {
      return await patiently<Compared>(this.server, COMPARE, params);
    } catch (error) {
      this.server.log.debug(`${COMPARE}: ${String(error)}`);
      return undefined;
    }
  }

  /** Both sides of a comparison close with their editor. */
  private closed({ scheme, query }: Uri): void {
    if (scheme === COMPARE_SCHEME) this.pairs.delete(query);
  }
}

const SIDES = ['left', 'right'] as const;

function addressOf(key: string, side: (typeof SIDES)[number], label: string): Uri {
  // It tells of a job and is none: another ending, or it would be read and checked as one.
  const path = `/${label.replace(/[/\\]/g, '-')}.txt`;
  return Uri.from({ scheme: COMPARE_SCHEME, path, query: key, fragment: side });
}
