/** What stands over the drawing: what is shown, of which work, how large, and whether it follows the cursor. */
import type { Shown } from '../../../shared/protocol/preview';
import type { PageWord, PageWords } from '../../../shared/protocol/preview-words';
import { element, make } from './dom';

export interface BarSays {
  show(id: string): void;
  work(key: string): void;
  enlarge(by: 1 | -1): void;
  fit(): void;
  pin(pinned: boolean): void;
  paperLook(on: boolean): void;
  print(): void;
}

/** Drawn on 16 by 16. */
const ICONS = {
  less: 'M3 8H13',
  more: 'M3 8H13M8 3V13',
  follow: 'M8 1.5V5M8 11V14.5M1.5 8H5M11 8H14.5M8 5A3 3 0 1 0 8 11A3 3 0 1 0 8 5',
  paper: 'M4 1.5H10L12.5 4V14.5H4ZM10 1.5V4H12.5M6 7H10.5M6 9.5H10.5M6 12H9',
  print: 'M4.5 6V2H11.5V6M4.5 12H2.5V6H13.5V12H11.5M4.5 9.5H11.5V14H4.5Z',
};

function icon(d: string): SVGElement {
  const svg = make('svg', { viewBox: '0 0 16 16', class: 'icon', 'aria-hidden': 'true' });
  svg.append(make('path', { d }));
  return svg;
}

export class Bar {
  readonly element: HTMLElement;
  private readonly shows = element('select', { id: 'show' });
  private readonly works = element('select', { id: 'work' });
  private readonly size: HTMLButtonElement;
  private readonly follow: HTMLButtonElement;
  private readonly look: HTMLButtonElement;
  private listed = '';

  constructor(
    private readonly words: PageWords,
    says: BarSays,
  ) {
    this.shows.setAttribute('aria-label', words.show);
    this.works.setAttribute('aria-label', words.work);
    this.shows.addEventListener('change', () => says.show(this.shows.value));
    this.works.addEventListener('change', () => says.work(this.works.value));
    this.size = this.button('fit', '100 %', () => says.fit());
    this.size.classList.add('size');
    this.follow = this.button('unfollow', icon(ICONS.follow), () =>
      says.pin(this.follow.getAttribute('aria-pressed') === 'true'),
    );
    this.look = this.button('paperLook', icon(ICONS.paper), () =>
      says.paperLook(this.look.getAttribute('aria-pressed') !== 'true'),
    );
    const tools = element(
      'div',
      { class: 'bar', role: 'toolbar', 'aria-label': words.bar },
      this.shows,
      this.works,
      element('span', { class: 'gap' }),
      this.button('zoomOut', icon(ICONS.less), () => says.enlarge(-1)),
      this.size,
      this.button('zoomIn', icon(ICONS.more), () => says.enlarge(1)),
      this.look,
      this.follow,
      this.button('print', icon(ICONS.print), () => says.print()),
    );
    this.element = element('header', {}, tools);
  }

  private button(word: PageWord, inside: Node | string, pressed: () => void): HTMLButtonElement {
    const label = this.words[word];
    const made = element('button', { type: 'button', 'aria-label': label, title: label }, inside);
    made.addEventListener('click', pressed);
    return made;
  }

  show({ show, work, choices, works }: Shown): void {
    const list = JSON.stringify([choices, works]);
    if (list !== this.listed) {
      this.listed = list;
      this.fill(choices, works);
    }
    this.shows.value = show;
    this.works.value = work ?? '';
  }

  private fill(choices: Shown['choices'], works: Shown['works']): void {
    const groups = [...new Set(choices.map(({ group }) => group))];
    this.shows.replaceChildren(
      ...groups.map((label) => {
        const own = choices.filter(({ group }) => group === label);
        return element(
          'optgroup',
          { label },
          ...own.map(({ id, label: text }) => option(id, text)),
        );
      }),
    );
    this.works.replaceChildren(...works.map(({ key, label }) => option(key, label)));
    this.works.hidden = works.length < 2;
  }

  sized(percent: number): void {
    const said = `${percent} %`;
    this.size.textContent = said;
    this.size.setAttribute('aria-label', `${said}, ${this.words.fit}`);
  }

  pinned(pinned: boolean): void {
    this.follow.setAttribute('aria-pressed', String(!pinned));
    const label = pinned ? this.words.follow : this.words.unfollow;
    this.follow.title = label;
    this.follow.setAttribute('aria-label', this.words.follow);
  }

  papers(shown: boolean, asPaper: boolean): void {
    this.look.hidden = !shown;
    this.look.setAttribute('aria-pressed', String(asPaper));
  }
}

function option(value: string, text: string): HTMLOptionElement {
  return element('option', { value }, text);
}
