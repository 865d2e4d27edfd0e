/** The page of the preview: it shows what it is told, and says what its reader does. */
import { DRAWINGS, type Shown } from '../../../shared/protocol/preview';
import { type FromPage, type Kept, keptOf, toPage } from '../../../shared/protocol/preview-page';
import { pageWordsOf } from '../../../shared/protocol/preview-words';
import { Bar } from './bar';
import { Board } from './board';
import { element } from './dom';
import { Lists } from './lists';
import { PaperView } from './paper';
import { MM } from './view';

interface Editor {
  postMessage(message: FromPage): void;
  getState(): unknown;
  setState(state: Kept): void;
}

declare function acquireVsCodeApi(): Editor;

/** After the last movement, before it is kept. */
const PAUSE_MS = 150;
/** A room that has changed less than this keeps the drawing that is in it. */
const ALIKE = 0.08;
const TALL: ReadonlySet<string> = new Set(['plan', 'top', 'rod']);

class Page {
  private readonly editor = acquireVsCodeApi();
  private readonly words = pageWordsOf(JSON.parse(document.body.dataset.words ?? '{}'));
  private readonly title = element('h1', { id: 'title' });
  private readonly described = element('p', { id: 'described' });
  private readonly nothing = element('p', { class: 'nothing', hidden: '' });
  private readonly readout = element('div', { class: 'readout', role: 'status' });
  private readonly aloud = element('div', { class: 'unseen', 'aria-live': 'polite' });
  private readonly board: Board;
  private readonly paper: PaperView;
  private readonly lists: Lists;
  private readonly bar: Bar;
  private kept: Kept = {
    uri: '',
    show: '',
    pinned: false,
    zoom: 0,
    left: 0,
    top: 0,
    paperLook: false,
  };
  private asPaper = false;
  private room = { width: 0, height: 0 };
  private waiting: ReturnType<typeof setTimeout> | undefined;
  private fresh = true;
  /** The whole has been asked for, and has not come. */
  private again = false;

  constructor() {
    const line = (from: number, focus: boolean) => this.say({ say: 'line', from, focus });
    const says = {
      line,
      told: (text: string, aloud: boolean) => this.told(text, aloud),
      moved: () => this.moved(),
    };
    this.board = new Board(this.words, says);
    this.paper = new PaperView(this.words, says);
    this.lists = new Lists(this.words, line);
    this.bar = new Bar(this.words, {
      show: (show) => this.say({ say: 'show', show }),
      work: (work) => this.say({ say: 'work', work }),
      enlarge: (by) => this.view.enlarge(by),
      fit: () => this.view.fit(),
      pin: (pinned) => this.say({ say: 'pin', pinned }),
      paperLook: (on) => this.look(on),
      print: () => this.say({ say: 'print' }),
    });
    this.kept = keptOf(this.editor.getState()) ?? this.kept;
    this.lay();
    this.begin();
  }

  private get view(): Board | PaperView {
    return this.asPaper ? this.paper : this.board;
  }

  private lay(): void {
    const help = (id: string, text: string) => element('p', { id, class: 'unseen' }, text);
    const caption = element('div', { class: 'caption' }, this.title, this.described);
    const { words, board, paper, lists, nothing, readout, aloud } = this;
    document.body.append(
      this.bar.element,
      element(
        'main',
        {},
        nothing,
        board.element,
        paper.element,
        caption,
        lists.element,
        help('help-board', words.helpBoard),
        help('help-paper', words.helpPaper),
      ),
      readout,
      aloud,
    );
    readout.textContent = words.waiting;
    this.arrange('none');
  }

  private begin(): void {
    // A size is of what was shown: eight times is right for a drawing, and none for a paper.
    const { zoom, show } = this.kept;
    if (DRAWINGS.some((view) => view === show)) this.board.zoom = zoom;
    else this.paper.zoom = zoom;
    this.look(this.kept.paperLook);
    window.addEventListener('message', ({ data }) => this.hear(data));
    new ResizeObserver(() => this.resized()).observe(this.board.element.parentElement!);
    this.room = this.measured();
    this.say({ say: 'ready', room: this.room });
  }

  private say(message: FromPage): void {
    this.editor.postMessage(message);
  }

  private hear(data: unknown): void {
    const message = toPage(data);
    if (message?.say === 'shown') this.show(message.shown, message);
    else if (message?.say === 'cursor') this.view.follow(message.line, !message.quiet);
    else if (message?.say === 'nothing') this.showNothing(message.why);
  }

  private show(
    shown: Shown,
    { uri, line, pinned, quiet }: { uri: string; line: number; pinned: boolean; quiet: boolean },
  ): void {
    const { picture, paper, from, show, work } = shown;
    if (picture && !this.board.show(picture, from, TALL.has(show))) {
      // Once: a whole that makes no sense either would be asked for without end.
      if (!this.again) this.say({ say: 'again' });
      this.again = true;
      return;
    }
    this.again = false;
    const other = this.kept.show !== show || this.kept.uri !== uri || this.kept.work !== work;
    this.bar.show(shown);
    this.bar.pinned(pinned);
    this.title.textContent = shown.title;
    this.described.textContent = shown.described;
    this.arrange(paper ? 'paper' : picture ? 'board' : 'none', shown.nothing);
    if (paper) this.paper.show(paper, from);
    if (picture) this.lists.show(picture, from);
    this.view.size();
    this.place(other);
    this.kept = { ...this.kept, uri, show, pinned, work };
    this.view.follow(line, !quiet && !this.fresh);
    this.fresh = false;
    this.moved();
  }

  /** Where it was before it was hidden or loaded again; at the beginning of something else. */
  private place(other: boolean): void {
    const { element: room } = this.view;
    if (this.fresh)
      room.scrollTo({ left: this.kept.left, top: this.kept.top, behavior: 'instant' });
    else if (other) room.scrollTo({ left: 0, top: 0, behavior: 'instant' });
  }

  private arrange(what: 'board' | 'paper' | 'none', nothing = ''): void {
    this.asPaper = what === 'paper';
    document.body.dataset.shows = what;
    this.board.element.hidden = what !== 'board';
    this.lists.element.hidden = what !== 'board';
    this.paper.element.hidden = what !== 'paper';
    this.nothing.hidden = !nothing;
    this.nothing.textContent = nothing;
    this.bar.papers(what === 'paper', this.kept.paperLook);
    if (this.readout.textContent === this.words.waiting) this.readout.textContent = '';
  }

  private showNothing(why: string): void {
    this.title.textContent = '';
    this.described.textContent = '';
    this.arrange('none', why);
  }

  private look(paperLook: boolean): void {
    this.kept = { ...this.kept, paperLook };
    document.body.classList.toggle('as-paper', paperLook);
    this.bar.papers(this.asPaper, paperLook);
    this.moved();
  }

  private told(text: string, aloud: boolean): void {
    this.readout.textContent = text;
    if (aloud) this.aloud.textContent = text;
  }

  /** Kept a moment after the last movement. */
  private moved(): void {
    this.bar.sized(this.view.percent);
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => this.keep(), PAUSE_MS);
  }

  private keep(): void {
    if (!this.kept.uri || this.fresh) return;
    const { scrollLeft: left, scrollTop: top } = this.view.element;
    this.kept = { ...this.kept, zoom: this.view.zoom, left, top };
    this.editor.setState(this.kept);
  }

  /** Room for a drawing, mm. */
  private measured(): { width: number; height: number } {
    const { clientWidth, clientHeight } = document.documentElement;
    const high = this.board.element.clientHeight || clientHeight * 0.62;
    const wide = this.board.element.clientWidth || clientWidth;
    return { width: Math.max(60, (wide - 2) / MM), height: Math.max(60, (high - 2) / MM) };
  }

  private resized(): void {
    this.view.size();
    const now = this.measured();
    const alike = (a: number, b: number) => Math.abs(a - b) <= ALIKE * b;
    if (alike(now.width, this.room.width) && alike(now.height, this.room.height)) return;
    this.room = now;
    this.say({ say: 'room', room: now });
  }
}

new Page();
