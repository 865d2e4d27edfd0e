/** One preview: its page, the file it is of, and what goes between them. */
import {
  Disposable,
  l10n,
  Range,
  type TextEditor,
  TextEditorRevealType,
  Uri,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode';
import {
  DRAWINGS,
  FRONT,
  type From,
  PREVIEW,
  type PreviewParams,
  type Room,
  type Shown,
} from '../../shared/protocol/preview';
import {
  type FromPage,
  fromPage,
  type Kept,
  type ToPage,
} from '../../shared/protocol/preview-page';
import { LANGUAGE, type Server } from '../server';
import { besides, editorOf, lineOf, opened, renamedTo } from './editors';
import { Follow, Latest } from './follow';
import { pageFolder, pageHtml } from './html';

export interface Wish {
  readonly uri: Uri;
  readonly line?: number;
  readonly show?: string;
}

/** Writes what is shown as a file that prints, and opens it. */
export type Print = (of: { uri: Uri; show: string; work?: string }) => Promise<void>;

/** Until a page has said how much room it has, mm. */
const SMALL: Room = { width: 160, height: 100 };

export class PreviewPanel extends Disposable {
  private uri: Uri;
  private show: string;
  private work: string | undefined;
  private pinned: boolean;
  private line: number;
  private room = SMALL;
  private ready = false;
  /** The drawing that the page has. */
  private have: string | undefined;
  private from: readonly From[] = [];
  private quiet = false;
  private readonly follow = new Follow();
  private readonly latest = new Latest(() => this.tell());
  private readonly listening: Disposable;

  constructor(
    readonly panel: WebviewPanel,
    private readonly server: Server,
    extension: Uri,
    private readonly print: Print,
    start: Omit<Partial<Kept>, 'uri'> & { uri: Uri; line?: number },
  ) {
    super(() => this.end());
    this.uri = start.uri;
    this.show = start.show || FRONT;
    this.work = start.work;
    this.pinned = start.pinned ?? false;
    this.line = start.line ?? lineOf(start.uri) ?? 0;
    panel.webview.options = { enableScripts: true, localResourceRoots: [pageFolder(extension)] };
    this.listening = this.listen();
    panel.webview.html = pageHtml(panel.webview, extension);
  }

  private end(): void {
    this.listening.dispose();
  }

  private listen(): Disposable {
    const { panel } = this;
    return Disposable.from(
      panel.webview.onDidReceiveMessage((message: unknown) => this.hear(message)),
      // A page that is hidden is gone, and is made again when it is shown.
      panel.onDidChangeViewState(() => {
        if (!panel.visible) this.ready = false;
      }),
      workspace.onDidChangeTextDocument(({ document }) => {
        if (document.uri.toString() === this.uri.toString()) this.refresh();
      }),
      workspace.onDidRenameFiles(({ files }) => this.renamed(files)),
      workspace.onDidDeleteFiles(() => this.refresh()),
      window.onDidChangeTextEditorSelection(({ textEditor }) => this.moved(textEditor)),
      window.onDidChangeActiveTextEditor((editor) => editor && this.moved(editor)),
      this.server.onChanged(() => this.refresh()),
    );
  }

  /** What is to be shown from now on, by a command. */
  wish({ uri, line, show }: Wish): void {
    if (uri.toString() !== this.uri.toString()) this.work = undefined;
    this.uri = uri;
    this.line = line ?? lineOf(uri) ?? 0;
    if (show) this.show = show;
    if (line !== undefined) this.pinned = false;
    this.refresh();
  }

  /** Of which file, and what of it. */
  get shows(): { uri: Uri; show: string; work?: string; pinned: boolean; from: readonly From[] } {
    const { uri, show, work, pinned, from } = this;
    return { uri, show, work, pinned, from };
  }

  /** The file has another name, or a folder that it is in. */
  private renamed(files: readonly { readonly oldUri: Uri; readonly newUri: Uri }[]): void {
    const now = renamedTo(this.uri, files);
    if (!now) return;
    this.uri = now;
    this.refresh();
  }

  private refresh(): void {
    if (this.ready) void this.latest.ask();
  }

  /** The cursor: another line, or another file that has come to the front. */
  private moved({ document, selection }: TextEditor): void {
    if (document.languageId !== LANGUAGE) return;
    const [uri, line] = [document.uri, selection.active.line];
    const at = { uri: uri.toString(), line };
    if (at.uri !== this.uri.toString()) {
      const brought = this.follow.brought(at.uri);
      if (brought) this.follow.moved(at);
      if (!brought && !this.pinned) void this.turnTo(uri, line);
      return;
    }
    const quiet = this.follow.moved(at);
    if (line === this.line || this.pinned) return;
    this.line = line;
    // The page knows what belongs to which line: the server is asked only where other work is to be shown.
    this.post({ say: 'cursor', line, quiet });
    if (this.isShown(line)) return;
    this.quiet = quiet;
    this.refresh();
  }

  /** Whether what belongs to a line is shown already: a paper is of the whole job, a drawing of one piece of work. */
  private isShown(line: number): boolean {
    if (!DRAWINGS.some((view) => view === this.show)) return true;
    const [heading] = this.from;
    return heading !== undefined && line >= heading.line && line <= heading.last;
  }

  /** A file with nothing to show is no reason to leave what is shown: prices are looked up in the firm’s file. */
  private async turnTo(uri: Uri, line: number): Promise<void> {
    const { show, room } = this;
    const shown = await this.ask(uri, { line, show, room });
    if (!shown?.works.length || this.pinned) return;
    this.wish({ uri, line });
  }

  private ask(uri: Uri, of: Omit<PreviewParams, 'uri'>): Promise<Shown | null | undefined> {
    return this.server.ask<Shown | null>(PREVIEW, { ...of, uri: this.server.uri(uri) });
  }

  private async tell(): Promise<void> {
    const { uri, line, show, work, pinned, room, have, quiet } = this;
    const document = await opened(uri);
    if (!document) return this.post({ say: 'nothing', why: l10n.t('The file cannot be opened.') });
    const shown = await this.ask(uri, { line, show, work, pinned, room, have });
    if (!shown || !this.ready) return;
    this.quiet = false;
    this.took(shown);
    this.post({ say: 'shown', uri: uri.toString(), shown, line, pinned, quiet });
  }

  private took({ picture, from, work, show, title }: Shown): void {
    if (picture) this.have = picture.is;
    this.from = from;
    this.work = work ?? this.work;
    this.show = show;
    this.panel.title = title;
  }

  private post(message: ToPage): void {
    void this.panel.webview.postMessage(message);
  }

  private hear(message: unknown): void {
    const said = fromPage(message);
    if (said) this.answer(said);
  }

  private answer(said: FromPage): void {
    switch (said.say) {
      case 'ready':
        this.ready = true;
        this.have = said.have;
        this.room = said.room;
        break;
      case 'room':
        this.room = said.room;
        break;
      case 'again':
        this.have = undefined;
        break;
      case 'line':
        return void this.lead(said.from, said.focus);
      case 'show':
        this.show = said.show;
        break;
      case 'work':
        this.turnWork(said.work);
        break;
      case 'pin':
        this.pin(said.pinned);
        break;
      case 'print':
        return void this.print({ uri: this.uri, show: this.show, work: this.work });
    }
    this.refresh();
  }

  /** Work that is chosen stays, wherever the cursor is: it is no other work’s. */
  private turnWork(work: string): void {
    this.work = work;
    this.pinned = true;
  }

  private pin(pinned: boolean): void {
    this.pinned = pinned;
    if (!pinned) this.line = lineOf(this.uri) ?? this.line;
  }

  /** Shows the line that something comes from, and leaves the text where it is if the line is to be seen already. */
  private async lead(from: number, focus: boolean): Promise<void> {
    const found = this.from[from];
    if (!found) return;
    const uri = found.uri ? Uri.parse(found.uri, true) : this.uri;
    const document = await opened(uri);
    if (!document) return;
    const line = Math.min(found.line, document.lineCount - 1);
    this.follow.leads({ uri: uri.toString(), line });
    const text = document.lineAt(line);
    const range = new Range(line, text.firstNonWhitespaceCharacterIndex, line, text.text.length);
    const visible = editorOf(uri);
    const editor = await window.showTextDocument(document, {
      viewColumn: visible?.viewColumn ?? besides(this.panel),
      preserveFocus: !focus,
      selection: range,
    });
    editor.revealRange(range, TextEditorRevealType.InCenterIfOutsideViewport);
  }
}
