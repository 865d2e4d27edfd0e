/** A text with ways out in it, and the edits that make one text of another. */
import type { FormatEdit } from '../../../../grammar/print';
import type { TextEdit } from '../../../../shared/finding';

/** Edits lie within lines, and must not overlap. */
export function edited(lines: readonly string[], edits: readonly TextEdit[]): string {
  const made = [...lines];
  const lastFirst = [...edits].sort(
    (a, b) => b.place.line - a.place.line || b.place.start - a.place.start,
  );
  for (const { place, text } of lastFirst) {
    const line = made[place.line] ?? '';
    made[place.line] = line.slice(0, place.start) + text + line.slice(place.end);
  }
  return made.join('\n');
}

/** Line by line where there are as many as before; else all from the first line that is another to the last. */
export function editsBetween(before: readonly string[], after: readonly string[]): FormatEdit[] {
  if (before.length === after.length)
    return before.flatMap((line, i) =>
      line === after[i] ? [] : [wholeLines(before, i, i, [after[i]!])],
    );
  let [first, tail] = [0, 0];
  const most = Math.min(before.length, after.length);
  while (first < most && before[first] === after[first]) first += 1;
  while (tail < most - first && before.at(-1 - tail) === after.at(-1 - tail)) tail += 1;
  return [between(before, after, first, tail)];
}

function between(
  before: readonly string[],
  after: readonly string[],
  first: number,
  tail: number,
): FormatEdit {
  const [last, end] = [before.length - tail - 1, after.length - tail];
  if (last >= first && end > first) return wholeLines(before, first, last, after.slice(first, end));
  // Only lines that come, or only lines that go: told from the end of the line above, or the start of the one below.
  if (first > 0) {
    const from = before[first - 1]!.length;
    const text = after
      .slice(first, end)
      .map((line) => `\n${line}`)
      .join('');
    const to =
      last >= first
        ? { line: last, column: before[last]!.length }
        : { line: first - 1, column: from };
    return {
      startLine: first - 1,
      startColumn: from,
      endLine: to.line,
      endColumn: to.column,
      text,
    };
  }
  const text = after
    .slice(0, end)
    .map((line) => `${line}\n`)
    .join('');
  return { startLine: 0, startColumn: 0, endLine: last + 1, endColumn: 0, text };
}

function wholeLines(
  before: readonly string[],
  first: number,
  last: number,
  lines: readonly string[],
): FormatEdit {
  const text = lines.join('\n');
  return { startLine: first, startColumn: 0, endLine: last, endColumn: before[last]!.length, text };
}
