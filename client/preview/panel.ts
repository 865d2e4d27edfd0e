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
import { LANGUAGE } from '../language';
import { Latest } from '../latest';
import type { Server } from '../server';
import { Choice, type Chosen, chosenBy } from './choice';
import { besides, editorOf, lineOf, nameOf, opened, renamedTo } from './editors';
import { Follow } from './follow';
import { pageFolder, pageHtml } from './html';
import { comesAndGoes, isThere } from './presence';

export interface Wish {
  readonly uri: Uri;
  readonly line?: number;
  readonly show?: string;
}

/** Writes what is shown as a file that prints, and opens it. */
export type Print = (of: { uri: Uri; show: string; work?: string }) => Promise<void>;

/** Until a page has said how much room it has, mm. */
const SMALL: Room = { width: 160, height: 100 };

/** Whether a file that is not there has come. */
const LOOK_AGAIN_MS = 2000;

export class PreviewPanel extends Disposable {
  private readonly choice: Choice;
  private line: number;
  private room = SMALL;
  private ready = false;
  private from: readonly From[] = [];
  private quiet = false;
  /** What the reader has been told is not there. */
  private missing: Chosen | undefined;
  private looking: ReturnType<typeof setTimeout> | undefined;
  /** The file that has come to the front last, while it is asked whether there is anything to show of it. */
  private turning: object | undefined;
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
    const { uri, show, work, pinned = false } = start;
    this.choice = new Choice({ uri, show: show || FRONT, work, pinned, have: undefined });
    this.line = start.line ?? lineOf(start.uri) ?? 0;
    panel.webview.options = { enableScripts: true, localResourceRoots: [pageFolder(extension)] };
    this.listening = this.listen();
    panel.webview.html = pageHtml(panel.webview, extension);
  }

  private end(): void {
    this.ready = false;
    // So an answer that is on its way is to nothing that is wanted.
    this.choice.choose({ have: undefined });
    clearTimeout(this.looking);
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
        if (this.isOf(document.uri)) this.refresh();
      }),
      workspace.onDidRenameFiles(({ files }) => this.renamed(files)),
      comesAndGoes(
        () => this.uri,
        () => this.refresh(),
      ),
      window.onDidChangeTextEditorSelection(({ textEditor }) => this.moved(textEditor)),
      window.onDidChangeActiveTextEditor((editor) => editor && this.moved(editor)),
      this.server.onChanged(() => this.refresh()),
    );
  }

  /** What is to be shown from now on, by a command. */
  wish({ uri, line, show }: Wish): void {
    this.turning = undefined;
    this.line = line ?? lineOf(uri) ?? 0;
    this.choose({
      uri,
      ...(this.isOf(uri) ? {} : { work: undefined }),
      ...(show ? { show } : {}),
      ...(line === undefined ? {} : { pinned: false }),
    });
  }

  private choose(other: Partial<Chosen>): void {
    this.choice.choose(other);
    this.refresh();
  }

  private get uri(): Uri {
    return this.choice.now.uri;
  }

  private isOf(uri: Uri): boolean {
    return uri.toString() === this.uri.toString();
  }

  /** Of which file, and what of it. */
  get shows(): { uri: Uri; show: string; work?: string; pinned: boolean; from: readonly From[] } {
    const { uri, show, work, pinned } = this.choice.now;
    return { uri, show, work, pinned, from: this.from };
  }

  /** The file has another name, or a folder that it is in. */
  private renamed(files: readonly { readonly oldUri: Uri; readonly newUri: Uri }[]): void {
    const now = renamedTo(this.uri, files);
    if (now) this.choose({ uri: now });
  }

  private refresh(): void {
    if (this.ready) void this.latest.ask();
  }

  /** The cursor: another line, or another file that has come to the front. */
  private moved({ document, selection }: TextEditor): void {
    if (document.languageId !== LANGUAGE) return;
    const [uri, line] = [document.uri, selection.active.line];
    const at = { uri: uri.toString(), line };
    const { pinned } = this.choice.now;
    if (!this.isOf(uri)) {
      const brought = this.follow.brought(at.uri);
      if (brought) this.follow.moved(at);
      if (!brought && !pinned) void this.turnTo(uri, line);
      return;
    }
    this.turning = undefined;
    const quiet = this.follow.moved(at);
    if (line === this.line || pinned) return;
    this.line = line;
    // The page knows what belongs to which line: the server is asked only where other work is to be shown.
    this.post({ say: 'cursor', line, quiet });
    if (this.isShown(line)) return;
    this.quiet = quiet;
    this.refresh();
  }

  /** Whether what belongs to a line is shown already: a paper is of the whole job, a drawing of one piece of work. */
  private isShown(line: number): boolean {
    if (!DRAWINGS.some((view) => view === this.choice.now.show)) return true;
    const [heading] = this.from;
    return heading !== undefined && line >= heading.line && line <= heading.last;
  }

  /** A file with nothing to show is no reason to leave what is shown: prices are looked up in the firm’s file. */
  private async turnTo(uri: Uri, line: number): Promise<void> {
    const mine = { uri };
    this.turning = mine;
    const { show } = this.choice.now;
    const shown = await this.ask(uri, { line, show, room: this.room });
    if (!shown?.works.length || this.turning !== mine || this.choice.now.pinned) return;
    this.wish({ uri, line });
  }

  private ask(uri: Uri, of: Omit<PreviewParams, 'uri'>): Promise<Shown | null | undefined> {
    return this.server.ask<Shown | null>(PREVIEW, { ...of, uri: this.server.uri(uri) });
  }

  private async tell(): Promise<void> {
    const { line, room, quiet, choice } = this;
    const asked = choice.now;
    const { uri, show, work, pinned, have } = asked;
    const there = await isThere(uri);
    if (!there || !(await opened(uri))) return this.tellNothing(asked, there);
    const shown = await this.ask(uri, { line, show, work, pinned, room, have });
    if (!shown && this.missing) this.lookAgain();
    if (!shown || !choice.took(shown, asked)) return;
    this.missing = undefined;
    this.quiet = false;
    this.from = shown.from;
    this.panel.title = shown.title;
    this.post({ say: 'shown', uri: uri.toString(), shown, line, pinned, quiet });
    // Gone on to where it seemed to be shown already, by what was here before this.
    if (this.line !== line && !pinned && !this.isShown(this.line)) this.refresh();
  }

  private tellNothing(asked: Chosen, there: boolean): void {
    if (this.choice.now !== asked) return;
    this.lookAgain();
    if (this.missing === asked) return;
    this.missing = asked;
    const name = nameOf(asked.uri);
    const why = there
      ? l10n.t('{0} cannot be opened.', name)
      : l10n.t(
          '{0} is not there any more: it was deleted or moved. It is shown again once it is back.',
          name,
        );
    this.post({ say: 'nothing', why });
  }

  /** Not every folder tells what comes into it, and an editor that has only just heard of a file may not have it yet. */
  private lookAgain(): void {
    clearTimeout(this.looking);
    this.looking = setTimeout(() => this.refresh(), LOOK_AGAIN_MS);
  }

  private post(message: ToPage): void {
    // To a page that has gone nothing can be said.
    if (this.ready) void this.panel.webview.postMessage(message);
  }

  private hear(message: unknown): void {
    const said = fromPage(message);
    if (said) this.answer(said);
  }

  private answer(said: FromPage): void {
    if (said.say === 'line') return void this.lead(said.from, said.focus);
    if (said.say === 'print') return void this.print(this.shows);
    if (said.say === 'ready') this.ready = true;
    if (said.say === 'ready' || said.say === 'room') this.room = said.room;
    if (said.say === 'pin' && !said.pinned) this.line = lineOf(this.uri) ?? this.line;
    this.choose(chosenBy(said));
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
