/** The formatter for a text from disk, with its line ends and its mark of UTF-8 kept. */
import { formatting } from '../engine/ide/format';
import { MOST_CHARACTERS, SourceFile } from '../engine/workspace/source';

const BOM = '\ufeff';

/**
 * The text in one layout. Lines end as most of its lines do; CR alone becomes LF.
 * @returns nothing for a text that is too large to be read
 */
export function formatText(text: string): string | undefined {
  if (text.length > MOST_CHARACTERS) return undefined;
  const lead = text.startsWith(BOM) ? BOM : '';
  const file = new SourceFile('', text);
  const formatted = applied(file.lines, formatting(file));
  return lead + formatted.join(endOf(text));
}

function endOf(text: string): string {
  const crlf = text.split('\r\n').length - 1;
  const all = text.split(/\r\n|\n|\r/).length - 1;
  return crlf * 2 > all ? '\r\n' : '\n';
}

/** From the last edit to the first, so that places before an edit stay where they are. */
function applied(lines: readonly string[], edits: ReturnType<typeof formatting>): string[] {
  const result = [...lines];
  for (const e of [...edits].reverse()) {
    const head = (result[e.startLine] ?? '').slice(0, e.startColumn);
    const tail = (result[e.endLine] ?? '').slice(e.endColumn);
    result.splice(e.startLine, e.endLine - e.startLine + 1, ...(head + e.text + tail).split('\n'));
  }
  return result;
}
