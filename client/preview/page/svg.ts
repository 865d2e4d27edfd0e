/** A drawing on the page: an element for each part, made again only when its part has changed. */
import type { MarksPart, RowPart, TextMark } from '../../../shared/protocol/preview';
import { make } from './dom';
import { HATCHED, hatches } from './hatches';
import { markPaths, n, Paths } from './paths';
import type { Store } from './store';

let count = 0;

export class Drawing {
  readonly svg: SVGElement;
  private readonly work: SVGElement;
  /** Over the work: what is pointed at, what the cursor is in. */
  readonly over: SVGElement;
  private readonly groups = new Map<string, SVGElement>();
  private readonly paths: Paths;
  /** Two drawings on one page have hatches of their own. */
  private readonly id = `d${count++}`;

  constructor(private readonly store: Store) {
    this.paths = new Paths(store);
    this.svg = make('svg', { class: 'drawing', 'aria-hidden': 'true', focusable: 'false' });
    this.work = make('g', {});
    this.over = make('g', { class: 'over' });
    this.svg.append(hatches(this.id), this.work, this.over);
  }

  /** @param changed keys of parts that are new or other; all of them when left out */
  update(changed?: ReadonlySet<string>): void {
    const { width, height, order } = this.store;
    this.svg.setAttribute('viewBox', `0 0 ${n(width)} ${n(height)}`);
    this.paths.forget();
    this.drop();
    let after: Element | null = null;
    for (const key of order) {
      const group = this.groupOf(key, changed);
      if (!group) continue;
      const next: Element | null = after ? after.nextElementSibling : this.work.firstElementChild;
      if (next !== group) this.work.insertBefore(group, next);
      after = group;
    }
  }

  private drop(): void {
    const live = new Set(this.store.order);
    for (const [key, group] of this.groups) {
      if (live.has(key)) continue;
      group.remove();
      this.groups.delete(key);
    }
  }

  /** A row is another when it, its pattern or its frame is. */
  private groupOf(key: string, changed: ReadonlySet<string> | undefined): SVGElement | undefined {
    const part = this.store.parts.get(key);
    if (!part || part.kind === 'frame' || part.kind === 'pattern') return undefined;
    const known = this.groups.get(key);
    const asked = part.kind === 'row' ? [key, part.frame] : [key];
    if (known && changed && !asked.some((each) => changed.has(each))) return known;
    const group = known ?? make('g', {});
    this.groups.set(key, group);
    if (part.kind === 'row') this.fillRow(group, part);
    else this.fillMarks(group, part);
    return group;
  }

  private fillRow(group: SVGElement, part: RowPart): void {
    const row = this.paths.row(part);
    if (!row) return;
    group.setAttribute('transform', `translate(${n(row.x)} ${n(row.y)})`);
    let path = group.firstElementChild;
    for (const { ink, d } of row.paths) {
      const own = path ?? group.appendChild(make('path', {}));
      path = own.nextElementSibling;
      if (own.getAttribute('class') !== `i-${ink}`) {
        own.setAttribute('class', `i-${ink}`);
        this.hatch(own, ink);
      }
      if (own.getAttribute('d') !== d) own.setAttribute('d', d);
    }
    while (path) {
      const rest: Element = path;
      path = rest.nextElementSibling;
      rest.remove();
    }
  }

  private hatch(path: Element, ink: string): void {
    if (HATCHED.has(ink)) path.setAttribute('fill', `url(#${this.id}-${ink})`);
    else path.removeAttribute('fill');
  }

  private fillMarks(group: SVGElement, part: MarksPart): void {
    const paths = markPaths(part).map(({ ink, d, open }) => {
      const path = make('path', { d, class: open ? `l-${ink}` : `i-${ink}` });
      if (!open) this.hatch(path, ink);
      return path;
    });
    group.replaceChildren(...paths, ...part.texts.map(text));
  }
}

function text({ x, y, size, align, turned, backed, bold, text: words }: TextMark): SVGElement {
  const [left, base] = [n(x / 100), n(y / 100)];
  const element = make('text', {
    x: left,
    y: base,
    'font-size': n(size / 100),
    'text-anchor': align,
    ...(turned ? { transform: `rotate(-90 ${left} ${base})` } : {}),
    class: [backed ? 'backed' : '', bold ? 'bold' : ''].filter(Boolean).join(' '),
  });
  element.textContent = words;
  return element;
}
