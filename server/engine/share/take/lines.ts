/** Lines of a text replaced and put in; every other line, and every line’s end, stays as it is. */

export interface LineEdits {
  /** By the number of a line: what it says now. */
  readonly over: ReadonlyMap<number, string>;
  /** By the number of a line: what comes after it. */
  readonly after: ReadonlyMap<number, readonly string[]>;
  /** At the end. */
  readonly last: readonly string[];
}

export function withLines(text: string, { over, after, last }: LineEdits): string {
  const parts = text.split(/(\r\n|\n|\r)/);
  const eol = endOf(parts);
  const mark = text.startsWith('\ufeff') ? '\ufeff' : '';
  const made: string[] = [];
  for (let i = 0; i < parts.length; i += 2) {
    const line = i / 2;
    const said = over.get(line);
    const more = after.get(line) ?? [];
    made.push(said === undefined ? parts[i]! : (line === 0 ? mark : '') + said);
    for (const each of more) made.push(eol, each);
    made.push(parts[i + 1] ?? '');
  }
  const whole = made.join('');
  if (!last.length) return whole;
  const open = /[\r\n]$/.test(whole) || !whole ? '' : eol;
  return whole + open + last.map((line) => line + eol).join('');
}

/** The end that most lines have. */
function endOf(parts: readonly string[]): string {
  const ends = parts.filter((_, i) => i % 2 === 1);
  return ends.filter((end) => end === '\r\n').length * 2 > ends.length ? '\r\n' : '\n';
}
