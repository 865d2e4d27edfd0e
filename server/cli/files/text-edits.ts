/** Edits of one file put into its text; its line ends stay as they are. */
import type { TextEdit } from '../../../shared/finding';

/** Edits that do not meet. */
export function applied(text: string, edits: readonly TextEdit[]): string {
  const mark = text.startsWith('\ufeff') ? 1 : 0;
  const starts = [0, ...[...text.matchAll(/\r\n|\n|\r/g)].map((m) => m.index + m[0].length)];
  const eol = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
  const at = (line: number, column: number) => starts[line]! + column + (line === 0 ? mark : 0);
  const lastFirst = edits
    .map(({ place, text: put }) => ({
      from: at(place.line, place.start),
      to: at(place.line, place.end),
      put: put.replaceAll('\n', eol),
    }))
    .map((edit, i) => ({ ...edit, i }))
    .sort((a, b) => b.from - a.from || b.i - a.i);
  return lastFirst.reduce((now, e) => now.slice(0, e.from) + e.put + now.slice(e.to), text);
}
