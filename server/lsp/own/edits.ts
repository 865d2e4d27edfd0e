/** What of a text is another than before, as an edit of the file: the lines between those that are alike at both ends. */

import type { Edits } from '../../../shared/protocol/edits';
import type { LineEdits } from '../../engine/share/take/lines';
import type { OpenFile } from '../session';
import { textEdit } from '../to-proto';

/** Lines replaced and put in, each an edit of its own, so that what stands between keeps its marks. */
export function editsIn(
  { over, after, last }: LineEdits,
  before: readonly string[],
  file: OpenFile,
): Edits {
  const at = [...new Set([...over.keys(), ...after.keys()])].sort((a, b) => a - b);
  const edits = at.map((line) => {
    const column = before[line]!.length;
    const lines = [...(over.has(line) ? [over.get(line)!] : []), ...(after.get(line) ?? [])];
    const startColumn = over.has(line) ? 0 : column;
    const text = over.has(line) ? lines.join('\n') : lines.map((each) => `\n${each}`).join('');
    return { startLine: line, startColumn, endLine: line, endColumn: column, text };
  });
  const end = before.length - 1;
  const column = before[end]!.length;
  if (last.length)
    edits.push({
      startLine: end,
      startColumn: column,
      endLine: end,
      endColumn: column,
      text: `${column ? '\n' : ''}${last.map((line) => `${line}\n`).join('')}`,
    });
  return changed(file, edits);
}

type LineEdit = Parameters<typeof textEdit>[0];

function changed({ uri, version, eol }: OpenFile, all: readonly LineEdit[]): Edits {
  const edits = all.map((edit) => textEdit(edit, eol));
  return { documentChanges: edits.length ? [{ textDocument: { uri, version }, edits }] : [] };
}

/** No edit where both say the same. */
export function editsTo(after: string, before: readonly string[], file: OpenFile): Edits {
  const lines = after.split(/\r\n|\n|\r/);
  const first = alike(before, lines, 0);
  const end = alike([...before].reverse(), [...lines].reverse(), first);
  const [old, now] = [
    before.slice(first, before.length - end),
    lines.slice(first, lines.length - end),
  ];
  return changed(file, old.length || now.length ? [edit(first, old, now, before)] : []);
}

/** How many stand alike from the beginning; `taken` are counted from the other end already. */
function alike(a: readonly string[], b: readonly string[], taken: number): number {
  const most = Math.min(a.length, b.length) - taken;
  let count = 0;
  while (count < most && a[count] === b[count]) count += 1;
  return count;
}

/** Whole lines in place of whole lines. After the last line, which has no end, the end comes first. */
function edit(
  first: number,
  old: readonly string[],
  now: readonly string[],
  before: readonly string[],
) {
  const last = first + old.length;
  const startLine = first;
  if (last < before.length) {
    const text = now.map((line) => `${line}\n`).join('');
    return { startLine, startColumn: 0, endLine: last, endColumn: 0, text };
  }
  const endColumn = before.at(-1)!.length;
  const endLine = before.length - 1;
  if (!first) return { startLine: 0, startColumn: 0, endLine, endColumn, text: now.join('\n') };
  const text = now.map((line) => `\n${line}`).join('');
  return { startLine: first - 1, startColumn: before[first - 1]!.length, endLine, endColumn, text };
}
