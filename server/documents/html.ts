/** Text put into HTML. Everything that comes from a job goes through {@link escaped}. */
import { escaped } from '../../shared/escaped';

/** An element with its content already HTML. */
export function element(tag: string, content: string, attributes = ''): string {
  return `<${tag}${attributes && ` ${attributes}`}>${content}</${tag}>`;
}

/** An element that holds a text. */
export function textIn(tag: string, text: string, attributes = ''): string {
  return element(tag, escaped(text), attributes);
}

/** Lines of text under each other in one element; nothing for none. */
export function linesIn(tag: string, lines: readonly string[], attributes = ''): string {
  return lines.length ? element(tag, lines.map(escaped).join('<br>\n'), attributes) : '';
}

/** A picture as an address of its own, so that nothing in it can touch the page. */
export function picture(svg: string, words: string): string {
  // Only what an address or an attribute cannot hold is encoded: drawings are most of a page.
  const address = svg.replace(/[^ !$'-;=?-~]/gu, encodeURIComponent);
  const source = `data:image/svg+xml,${address}`;
  return `<img src="${escaped(source)}" alt="${escaped(words)}">`;
}
