/** Text put into Markdown so that it reads as it stands: no mark of it, no HTML, no address made of it. */

/**
 * Signs that CommonMark gives a meaning anywhere (section 2.4 allows a stroke before every sign of ASCII), and those
 * of GFM. An underscore inside a word has none, but `~` and `|` do.
 */
const SIGNS = /[\\`*_{}[\]<>#|~&$^]/g;
/** What begins a list, a heading, a quotation or a rule at the start of a line. */
const BEGINS = /^(\s*)([-+=>:]|\d{1,9}(?=[.)](\s|$)))/;
/** Bare addresses become links: of GFM those with `www.` or `http:`, of some readers all that end like a place. */
const ADDRESS = /\b(www)\.|\b(https?|ftp|mailto|xmpp):|@|(?<=[\p{L}\p{N}])\.(?=\p{L}{2})/giu;

/** One line of text: line ends in it become spaces. */
export function line(text: string): string {
  const one = clean(text).replace(/\s+/g, ' ').trim();
  const escaped = one.replace(SIGNS, '\\$&').replace(ADDRESS, addressed);
  return escaped.replace(BEGINS, begun);
}

function addressed(found: string): string {
  if (found === '@') return '&#64;';
  if (found === '.') return '\\.';
  return found.endsWith('.') ? `${found.slice(0, -1)}&#46;` : `${found.slice(0, -1)}&#58;`;
}

/** A number that would begin a list keeps its figures: the point after it is what is escaped. */
function begun(_: string, space: string, sign: string): string {
  return /^\d/.test(sign) ? `${space}${sign}\\` : `${space}\\${sign}`;
}

/** In a cell of a table, where a line break is the one piece of HTML. */
export function cell(text: string): string {
  return text.split('\n').map(line).join('<br>');
}

/** Control characters, and marks that turn the direction of writing, are shown as what no text has. */
function clean(text: string): string {
  return text
    .replace(/[^\t\n\r\x20-\x7e\xa0-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '\ufffd')
    .replace(/[\u202a-\u202e\u2066-\u2069]/g, '\ufffd');
}
