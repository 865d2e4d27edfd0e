/** Beside the drawing, in words: what its hatches stand for, its notes, and the lines that it comes from. */
import type { From, PictureChange } from '../../../shared/protocol/preview';
import type { PageWords } from '../../../shared/protocol/preview-words';
import { element, make } from './dom';
import { HATCHED, hatches } from './hatches';
import { lineSaid } from './spoken';

const LINES: ReadonlySet<string> = new Set(['dpc', 'movement', 'ground', 'hidden']);

export class Lists {
  readonly element: HTMLElement;
  private readonly keys = element('ul', { class: 'keys' });
  private readonly notes = element('div', { class: 'notes' });
  private readonly lines = element('ul', { class: 'lines' });
  private was = '';

  constructor(
    private readonly words: PageWords,
    chosen: (from: number, focus: boolean) => void,
  ) {
    const all = element(
      'details',
      { class: 'from' },
      element('summary', {}, words.lines),
      this.lines,
    );
    this.element = element('section', { class: 'lists', 'aria-label': words.key });
    this.element.append(this.keys, this.notes, all);
    this.lines.addEventListener('click', (event) => {
      const button = event.target instanceof Element ? event.target.closest('button') : null;
      if (button) chosen(Number(button.dataset.from), event.detail === 0);
    });
  }

  show({ keys, notes }: PictureChange, from: readonly From[]): void {
    const now = JSON.stringify([keys, notes, from]);
    if (now === this.was) return;
    this.was = now;
    this.keys.replaceChildren(
      ...keys.map(({ ink, text }) => element('li', {}, swatch(ink), String(text))),
    );
    this.notes.replaceChildren(...notes.map((note) => element('p', {}, String(note))));
    this.lines.replaceChildren(...from.map((line, i) => this.line(line, i)));
  }

  private line(line: From, i: number): HTMLElement {
    const attributes = { type: 'button', 'data-from': String(i) };
    return element('li', {}, element('button', attributes, lineSaid(line, this.words)));
  }
}

function swatch(ink: string): SVGElement {
  const svg = make('svg', { viewBox: '0 0 8 4', class: 'swatch drawing', 'aria-hidden': 'true' });
  if (!/^[a-z-]{1,20}$/.test(ink)) return svg;
  if (LINES.has(ink)) svg.append(make('path', { d: 'M0 2H8', class: `l-${ink}` }));
  else {
    const id = `k-${ink}`;
    const d = 'M0.2 0.2H7.8V3.8H0.2Z';
    const hatched = HATCHED.has(ink);
    if (hatched) svg.append(hatches(id));
    const fill: Record<string, string> = hatched ? { fill: `url(#${id}-${ink})` } : {};
    svg.append(make('path', { d, class: `i-${ink}`, ...fill }));
  }
  return svg;
}
