/** The board a drawing is pinned to: it is moved and enlarged there, pointed at, and gone through with the keys. */
import type { From, PictureChange } from '../../../shared/protocol/preview';
import type { PageWords } from '../../../shared/protocol/preview-words';
import { element, make, movesLittle } from './dom';
import { pathOf, roundAll, svgPlace } from './outline';
import { n } from './paths';
import { type Spot, type Step, spotOf, stepped } from './rove';
import { markedFor, stopSaid, type Units } from './spoken';
import { type Stop, Stops } from './stops';
import { Store } from './store';
import { Drawing } from './svg';
import { fitting, intoView, MM, scrolled, wheeled, zoomed } from './view';

export interface BoardSays {
  /** A line was asked for; `focus` to go there. */
  line(from: number, focus: boolean): void;
  /** What is pointed at, in words. `aloud` when keys led there. */
  told(text: string, aloud: boolean): void;
  /** Moved or enlarged. */
  moved(): void;
}

/** A press that moves no further is a click, pixels. */
const STILL = 4;

const KEYS: Readonly<Record<string, Step>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
  Home: 'first',
  End: 'last',
  PageUp: 'pageUp',
  PageDown: 'pageDown',
};

export class Board {
  readonly element: HTMLElement;
  private readonly store = new Store();
  private readonly drawing = new Drawing(this.store);
  private known: Stops | undefined;
  private lines: readonly From[] = [];
  private units: Units = 'millimetres';
  private cursor = -1;
  private spot: Spot | undefined;
  private hover: Stop | undefined;
  /** 0 fits. */
  zoom = 0;
  private tall = false;

  constructor(
    private readonly words: PageWords,
    private readonly says: BoardSays,
  ) {
    this.element = element('div', {
      class: 'board',
      tabindex: '0',
      role: 'application',
      'aria-label': words.board,
      'aria-describedby': 'described help-board',
    });
    this.element.append(this.drawing.svg);
    this.listen();
  }

  get is(): string | undefined {
    return this.store.is;
  }

  /** @returns false when the whole drawing is to be asked for */
  show(change: PictureChange, lines: readonly From[], tall: boolean): boolean {
    const changed = this.store.take(change);
    if (!changed) return false;
    this.lines = lines;
    this.units = change.units === 'feet' ? 'feet' : 'millimetres';
    this.tall = tall;
    this.known = undefined;
    this.hover = undefined;
    if (change.since === undefined) this.spot = undefined;
    this.drawing.update(change.since === undefined ? undefined : changed);
    this.size();
    this.paintOver();
    return true;
  }

  private get stops(): Stops {
    this.known ??= new Stops(this.store);
    return this.known;
  }

  /** The line that the text’s cursor is in. @param scroll whether what belongs to it may be brought into view */
  follow(line: number, scroll: boolean): void {
    this.cursor = line;
    this.paintOver();
    const marked = this.marked();
    if (scroll && marked.length) this.reveal(roundAll(marked));
  }

  private marked(): Stop[] {
    const lines = markedFor(this.lines, this.cursor);
    return lines.size ? this.stops.from(lines) : [];
  }

  /** Size of the drawing on the screen for its own. */
  private get ratio(): number {
    if (this.zoom) return this.zoom;
    const { clientWidth, clientHeight } = this.element;
    const { width, height } = this.store;
    if (!width) return 1;
    return fitting(width, height, { width: clientWidth, height: clientHeight }, this.tall);
  }

  get percent(): number {
    return Math.round(this.ratio * 100);
  }

  size(): void {
    const { svg } = this.drawing;
    const ratio = this.ratio * MM;
    svg.setAttribute('width', n(this.store.width * ratio));
    svg.setAttribute('height', n(this.store.height * ratio));
  }

  enlarge(by: 1 | -1): void {
    const { clientWidth, clientHeight } = this.element;
    this.zoomAt(zoomed(this.ratio, by), clientWidth / 2, clientHeight / 2);
  }

  fit(): void {
    this.zoom = 0;
    this.size();
    this.says.moved();
  }

  private zoomAt(to: number, x: number, y: number): void {
    const { element: board } = this;
    const before = this.ratio;
    const [left, top] = [board.scrollLeft, board.scrollTop];
    this.zoom = to;
    this.size();
    board.scrollTo(scrolled(left, x, before, to), scrolled(top, y, before, to));
    this.says.moved();
  }

  private listen(): void {
    const { element: board } = this;
    board.addEventListener('wheel', (event) => this.wheel(event), { passive: false });
    board.addEventListener('keydown', (event) => this.key(event));
    board.addEventListener('pointerdown', (event) => this.press(event));
    board.addEventListener('pointermove', (event) => this.point(event));
    board.addEventListener('pointerleave', () => this.pointAt(undefined));
    board.addEventListener('dblclick', (event) => this.choose(this.stopAt(event), true));
    board.addEventListener('scroll', () => this.says.moved(), { passive: true });
  }

  private wheel(event: WheelEvent): void {
    if (!event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    const { left, top } = this.element.getBoundingClientRect();
    this.zoomAt(wheeled(this.ratio, event.deltaY), event.clientX - left, event.clientY - top);
  }

  private key(event: KeyboardEvent): void {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const step = KEYS[event.key];
    if (step && event.shiftKey) this.pan(step);
    else if (step) this.go(stepped(this.stops.groups, this.spot, step));
    else if (event.key === 'Enter' || event.key === ' ')
      this.choose(this.current, event.key === 'Enter');
    else if (event.key === '+' || event.key === '=') this.enlarge(1);
    else if (event.key === '-') this.enlarge(-1);
    else if (event.key === '0') this.fit();
    else if (event.key === 'Escape') this.go(undefined);
    else return;
    event.preventDefault();
  }

  private pan(step: Step): void {
    const [by, page] = [60, this.element.clientHeight * 0.9];
    const moves: Readonly<Record<Step, [number, number]>> = {
      left: [-by, 0],
      right: [by, 0],
      up: [0, -by],
      down: [0, by],
      first: [-1e6, 0],
      last: [1e6, 0],
      pageUp: [0, -page],
      pageDown: [0, page],
    };
    this.element.scrollBy(...moves[step]);
  }

  private get current(): Stop | undefined {
    return this.spot && this.stops.groups[this.spot.group]?.stops[this.spot.stop];
  }

  private go(spot: Spot | undefined): void {
    this.spot = spot;
    const stop = this.current;
    this.paintOver();
    if (stop) this.reveal(stop);
    this.says.told(spot ? this.said(spot) : '', true);
  }

  private said(spot: Spot): string {
    return stopSaid(this.stops.groups, spot, this.lines, this.units, this.words);
  }

  /** A click shows the line that something comes from; a press that moves drags the drawing. */
  private press(event: PointerEvent): void {
    if (event.button !== 0) return;
    const { element: board } = this;
    const [left, top] = [board.scrollLeft, board.scrollTop];
    let moved = false;
    const move = ({ clientX, clientY }: PointerEvent) => {
      const [x, y] = [clientX - event.clientX, clientY - event.clientY];
      moved ||= Math.hypot(x, y) > STILL;
      if (moved) board.scrollTo(left - x, top - y);
      board.classList.toggle('dragged', moved);
    };
    const end = (last: PointerEvent) => {
      board.removeEventListener('pointermove', move);
      board.classList.remove('dragged');
      if (!moved && last.type === 'pointerup') this.choose(this.stopAt(event), false);
    };
    board.addEventListener('pointermove', move);
    for (const kind of ['pointerup', 'pointercancel'] as const)
      board.addEventListener(kind, end, { once: true });
    board.setPointerCapture(event.pointerId);
  }

  private stopAt({ clientX, clientY }: MouseEvent): Stop | undefined {
    const { left, top } = this.drawing.svg.getBoundingClientRect();
    const ratio = this.ratio * MM;
    return this.stops.at((clientX - left) / ratio, (clientY - top) / ratio);
  }

  private choose(stop: Stop | undefined, focus: boolean): void {
    if (!stop) return;
    this.spot = spotOf(this.stops.groups, stop);
    const line = this.lines[stop.from];
    if (line && !line.uri) this.cursor = line.line;
    this.paintOver();
    if (this.spot) this.says.told(this.said(this.spot), false);
    if (stop.from >= 0) this.says.line(stop.from, focus);
  }

  private point(event: PointerEvent): void {
    if (event.buttons === 0) this.pointAt(this.stopAt(event));
  }

  private pointAt(stop: Stop | undefined): void {
    if (stop === this.hover) return;
    this.hover = stop;
    this.element.classList.toggle('leads', (stop?.from ?? -1) >= 0);
    this.paintOver();
    const spot = stop && spotOf(this.stops.groups, stop);
    this.says.told(spot ? this.said(spot) : '', false);
  }

  /** What belongs to the cursor’s line, what is pointed at, and where the keys are. */
  private paintOver(): void {
    const outline = (stops: readonly Stop[], kind: string) => {
      const d = stops.map(pathOf).join('');
      return d ? [make('path', { d, class: kind })] : [];
    };
    this.drawing.over.replaceChildren(
      ...outline(this.marked(), 'marked'),
      ...outline(this.hover ? [this.hover] : [], 'hovered'),
      ...outline(this.current ? [this.current] : [], 'current'),
    );
  }

  private reveal({ x, y, width, height }: { x: number; y: number; width: number; height: number }) {
    const { element: board } = this;
    const ratio = this.ratio * MM;
    const { offsetLeft, offsetTop } = svgPlace(this.drawing.svg, board);
    const span = (from: number, size: number, off: number) => ({
      from: from * ratio + off,
      to: (from + size) * ratio + off,
    });
    const seen = (from: number, size: number) => ({ from, to: from + size });
    const left = intoView(span(x, width, offsetLeft), seen(board.scrollLeft, board.clientWidth));
    const top = intoView(span(y, height, offsetTop), seen(board.scrollTop, board.clientHeight));
    if (left === undefined && top === undefined) return;
    board.scrollTo({ left, top, behavior: movesLittle() ? 'instant' : 'smooth' });
  }
}
