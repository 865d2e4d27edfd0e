/** Text put into HTML. */

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
