/**
 * HTML of a paper, made again from what a paper may hold. The server escapes every word of a job; this is the second
 * lock: whatever is not named here does not come onto the page.
 */
import { element } from './dom';

/** What becomes of an element of a paper. Parts of a page stand on a page that has its own. */
const TAGS: Readonly<Record<string, keyof HTMLElementTagNameMap>> = {
  HEADER: 'div',
  MAIN: 'div',
  FOOTER: 'div',
  SECTION: 'div',
  DIV: 'div',
  H1: 'h1',
  H2: 'h2',
  H3: 'h3',
  P: 'p',
  SPAN: 'span',
  STRONG: 'strong',
  BR: 'br',
  HR: 'hr',
  UL: 'ul',
  OL: 'ol',
  LI: 'li',
  DL: 'dl',
  DT: 'dt',
  DD: 'dd',
  TABLE: 'table',
  CAPTION: 'caption',
  THEAD: 'thead',
  TBODY: 'tbody',
  TR: 'tr',
  TH: 'th',
  TD: 'td',
  FIGURE: 'figure',
  IMG: 'img',
};

/** The firm’s logo: a picture that is here already, of a kind that holds nothing but itself. */
const PICTURE = /^data:image\/(?:png|jpeg);base64,[A-Za-z\d+/]+=*$/;

const CLASSES: ReadonlySet<string> = new Set([
  'firm',
  'warning',
  'small',
  'number',
  'total',
  'grand',
  'together',
  'new-page',
]);

/** Places in a list, as many as a figure hangs on at most. */
const ALSO = /^\d{1,7}(?: \d{1,7}){0,63}$/;

/** Deeper than any paper: nothing real is dropped. */
const DEEPEST = 30;

export function cleaned(html: string): DocumentFragment {
  const made = new DOMParser().parseFromString(html, 'text/html');
  const clean = document.createDocumentFragment();
  for (const node of made.body.childNodes) clean.append(...copied(node, 0));
  return clean;
}

function copied(node: Node, depth: number): Node[] {
  if (node.nodeType === Node.TEXT_NODE) return [document.createTextNode(node.nodeValue ?? '')];
  if (!(node instanceof Element) || depth > DEEPEST || !Object.hasOwn(TAGS, node.tagName))
    return [];
  if (node.tagName === 'IMG') return pictureOf(node);
  const copy = element(TAGS[node.tagName]!, attributesOf(node));
  for (const inner of node.childNodes) copy.append(...copied(inner, depth + 1));
  return [copy];
}

function pictureOf(node: Element): Node[] {
  const src = node.getAttribute('src') ?? '';
  return PICTURE.test(src) ? [element('img', { src, alt: node.getAttribute('alt') ?? '' })] : [];
}

function attributesOf(node: Element): Record<string, string> {
  const kept: Record<string, string> = {};
  const classes = [...node.classList].filter((name) => CLASSES.has(name));
  const own =
    node.tagName === 'HEADER' || node.tagName === 'FOOTER' ? node.tagName.toLowerCase() : '';
  const all = [own, ...classes].filter(Boolean).join(' ');
  if (all) kept.class = all;
  for (const name of ['data-from', 'data-picture']) {
    const value = node.getAttribute(name);
    if (value && /^\d{1,7}$/.test(value)) kept[name] = value;
  }
  const also = node.getAttribute('data-also');
  if (also && ALSO.test(also)) kept['data-also'] = also;
  const scope = node.getAttribute('scope');
  if (scope === 'row' || scope === 'col') kept.scope = scope;
  const label = node.getAttribute('aria-label');
  if (label) Object.assign(kept, { 'aria-label': label, role: 'img' });
  return kept;
}
