/** Text put into HTML. Everything that comes from a job goes through {@link escaped}. */

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/**
 * Safe between tags and in quoted attributes. Characters that no page may hold become the replacement
 * character; so do the marks that turn the direction of writing, with which a price can be made to read backwards.
 */
export function escaped(text: string): string {
  return text
    .replace(/[&<>"']/g, (sign) => ENTITIES[sign]!)
    .replace(/[^\t\n\r\x20-\x7e\xa0-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '\ufffd')
    .replace(/[\u202a-\u202e\u2066-\u2069]/g, '\ufffd');
}

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
