/** An edit of a text as the smallest that do the same. */
import type { FormatEdit } from '../../../grammar/print';

/** In the order of the text; none where it changes nothing. */
export function smallest(edit: FormatEdit, lines: readonly string[]): FormatEdit[] {
  const before = textOf(edit, lines);
  if (edit.startLine === edit.endLine && !edit.text.includes('\n')) {
    const spaces = spacing(edit, before);
    if (spaces) return spaces;
  }
  return trimmed(edit, before);
}

function textOf(edit: FormatEdit, lines: readonly string[]): string {
  const { startLine, startColumn, endLine, endColumn } = edit;
  if (startLine === endLine) return (lines[startLine] ?? '').slice(startColumn, endColumn);
  const first = (lines[startLine] ?? '').slice(startColumn);
  const last = (lines[endLine] ?? '').slice(0, endColumn);
  return [first, ...lines.slice(startLine + 1, endLine), last].join('\n');
}

/** Room and words by turns, room first. */
function pieces(text: string): string[] {
  return text.split(/(\S+)/);
}

/** Of a line whose words stay as they are: an edit for each room between them that changes. */
function spacing(edit: FormatEdit, before: string): FormatEdit[] | undefined {
  const [old, now] = [pieces(before), pieces(edit.text)];
  const alike = old.length === now.length && old.every((text, i) => i % 2 === 0 || text === now[i]);
  if (!alike) return undefined;
  let column = edit.startColumn;
  return old.flatMap((text, i) => {
    const startColumn = column;
    column += text.length;
    if (text === now[i]) return [];
    return [{ ...edit, startColumn, endColumn: column, text: now[i]! }];
  });
}

/** Without what is the same at its beginning and at its end. */
function trimmed(edit: FormatEdit, before: string): FormatEdit[] {
  const now = edit.text;
  const most = Math.min(before.length, now.length);
  let start = 0;
  while (start < most && before[start] === now[start]) start += 1;
  let end = 0;
  while (end < most - start && before.at(-1 - end) === now.at(-1 - end)) end += 1;
  if (start === before.length && start === now.length) return [];
  start -= halves(before, start) || halves(now, start) ? 1 : 0;
  end -= halves(before, before.length - end) || halves(now, now.length - end) ? 1 : 0;
  const at = (offset: number) => placeAt(edit, before, offset);
  const [from, to] = [at(start), at(before.length - Math.max(0, end))];
  return [
    {
      startLine: from.line,
      startColumn: from.column,
      endLine: to.line,
      endColumn: to.column,
      text: now.slice(start, now.length - Math.max(0, end)),
    },
  ];
}

/** Whether a place lies within a sign that takes two units. */
function halves(text: string, at: number): boolean {
  return (
    at > 0 &&
    at < text.length &&
    /[\udc00-\udfff]/.test(text[at]!) &&
    /[\ud800-\udbff]/.test(text[at - 1]!)
  );
}

function placeAt(edit: FormatEdit, before: string, offset: number) {
  const head = before.slice(0, offset).split('\n');
  const down = head.length - 1;
  const column = head[down]!.length + (down ? 0 : edit.startColumn);
  return { line: edit.startLine + down, column };
}
