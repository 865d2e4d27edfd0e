/** A paper on the page: read as it stands, and gone through by what comes from a line. */
import type { From, PaperShown } from '../../../shared/protocol/preview';
import type { PageWords } from '../../../shared/protocol/preview-words';
import type { BoardSays } from './board';
import { cleaned } from './clean';
import { element, movesLittle } from './dom';
import { lineSaid, markedFor } from './spoken';
import { Store } from './store';
import { Drawing } from './svg';
import { clamp, intoView, zoomed } from './view';

const MOST = 4;

export class PaperView {
  readonly element: HTMLElement;
  private readonly sheet = element('article', { class: 'sheet' });
  /** Beside the paper, for the firm alone. */
  private readonly asides = element('div', { class: 'asides' });
  private lines: readonly From[] = [];
  private html = '';
  private pictures = '';
  private cursor = -1;
  /** 0 is its own size. */
  zoom = 0;

  constructor(
    private readonly words: PageWords,
    private readonly says: BoardSays,
  ) {
    this.element = element('div', {
      class: 'papers',
      role: 'region',
      tabindex: '0',
      'aria-label': words.paper,
      'aria-describedby': 'help-paper',
    });
    this.element.append(this.asides, this.sheet);
    this.sheet.addEventListener('click', (event) => this.choose(event.target, false));
    this.sheet.addEventListener('dblclick', (event) => this.choose(event.target, true));
    this.sheet.addEventListener('focusin', (event) => this.focused(event.target));
    this.sheet.addEventListener('pointerover', (event) => this.pointed(event.target));
    this.element.addEventListener('keydown', (event) => this.key(event));
    this.element.addEventListener('wheel', (event) => this.wheel(event), { passive: false });
    this.element.addEventListener('scroll', () => this.says.moved(), { passive: true });
  }

  /** What is the same stays as it is: nobody loses their place by an edit elsewhere. */
  show({ lang, html, pictures, asides }: PaperShown, lines: readonly From[]): void {
    this.lines = lines;
    this.asides.replaceChildren(...asides.map((text) => element('p', {}, String(text))));
    const drawn = JSON.stringify(pictures);
    if (html !== this.html || drawn !== this.pictures) {
      [this.html, this.pictures] = [html, drawn];
      this.sheet.lang = lang;
      const at = this.focusedAt();
      this.sheet.replaceChildren(cleaned(html));
      this.draw(pictures);
      this.marks().forEach((mark, i) => {
        mark.tabIndex = i === Math.max(0, at ?? 0) ? 0 : -1;
      });
      if (at !== undefined) this.marks()[at]?.focus({ preventScroll: true });
    }
    this.size();
    this.follow(this.cursor, false);
  }

  private draw(pictures: PaperShown['pictures']): void {
    for (const figure of this.sheet.querySelectorAll<HTMLElement>('[data-picture]')) {
      const store = pictures[Number(figure.dataset.picture)];
      const drawn = store && Store.of(store);
      if (!drawn) continue;
      const drawing = new Drawing(drawn);
      drawing.update();
      figure.append(drawing.svg);
    }
  }

  private marks(): HTMLElement[] {
    return [...this.sheet.querySelectorAll<HTMLElement>('[data-from]')];
  }

  private focusedAt(): number | undefined {
    const at = this.marks().indexOf(document.activeElement as HTMLElement);
    return at < 0 ? undefined : at;
  }

  follow(line: number, scroll: boolean): void {
    this.cursor = line;
    const lines = this.lines;
    // On a paper a heading is one place among many, and may be marked.
    const marked = markedFor(
      lines.map((each) => ({ ...each, most: false })),
      line,
    );
    let first: HTMLElement | undefined;
    for (const mark of this.marks()) {
      const is = marked.has(Number(mark.dataset.from));
      mark.classList.toggle('marked', is);
      // What hangs on the line as well, and leads elsewhere.
      mark.classList.toggle('touched', !is && alsoOf(mark).some((each) => marked.has(each)));
      // All of a wall: a rule beside it will do.
      mark.classList.toggle('broad', is && lines[Number(mark.dataset.from)]?.most === true);
      if (is) first ??= mark;
    }
    if (scroll && first) this.reveal(first);
  }

  private reveal(mark: HTMLElement): void {
    const { element: room } = this;
    const [own, round] = [mark.getBoundingClientRect(), room.getBoundingClientRect()];
    const from = own.top - round.top + room.scrollTop;
    const seen = { from: room.scrollTop, to: room.scrollTop + room.clientHeight };
    const top = intoView({ from, to: from + own.height }, seen);
    if (top !== undefined) room.scrollTo({ top, behavior: movesLittle() ? 'instant' : 'smooth' });
  }

  private markOf(target: EventTarget | null): HTMLElement | undefined {
    const found = target instanceof Element ? target.closest<HTMLElement>('[data-from]') : null;
    return found ?? undefined;
  }

  private choose(target: EventTarget | null, focus: boolean): void {
    const mark = this.markOf(target);
    const from = Number(mark?.dataset.from);
    if (this.lines[from]) this.says.line(from, focus);
  }

  private focused(target: EventTarget | null): void {
    const mark = this.markOf(target);
    if (!mark) return;
    for (const each of this.marks()) each.tabIndex = each === mark ? 0 : -1;
    this.says.told(lineSaid(this.lines[Number(mark.dataset.from)], this.words), true);
  }

  /** A pointer is told what a click would lead to. */
  private pointed(target: EventTarget | null): void {
    const line = this.lines[Number(this.markOf(target)?.dataset.from)];
    if (line) this.says.told(lineSaid(line, this.words), false);
  }

  private key(event: KeyboardEvent): void {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    if (event.key === 'ArrowDown') this.step(1);
    else if (event.key === 'ArrowUp') this.step(-1);
    else if (event.key === 'Enter') this.choose(event.target, true);
    else if (event.key === '+' || event.key === '=') this.enlarge(1);
    else if (event.key === '-') this.enlarge(-1);
    else if (event.key === '0') this.fit();
    else return;
    event.preventDefault();
  }

  /** To the next of what comes from a line. */
  private step(by: 1 | -1): void {
    const marks = this.marks();
    const now = this.focusedAt();
    const to = now === undefined ? 0 : clamp(now + by, 0, marks.length - 1);
    marks[to]?.focus();
  }

  private wheel(event: WheelEvent): void {
    if (!event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    this.enlarge(event.deltaY < 0 ? 1 : -1);
  }

  enlarge(by: 1 | -1): void {
    this.zoom = clamp(zoomed(this.zoom || 1, by), 0.5, MOST);
    this.size();
    this.says.moved();
  }

  fit(): void {
    this.zoom = 0;
    this.size();
    this.says.moved();
  }

  size(): void {
    this.sheet.style.setProperty('--zoom', String(this.zoom || 1));
  }

  get percent(): number {
    return Math.round((this.zoom || 1) * 100);
  }
}

/** Other lines that something hangs on. */
function alsoOf({ dataset: { also } }: HTMLElement): readonly number[] {
  return also ? also.split(' ').map(Number) : [];
}
