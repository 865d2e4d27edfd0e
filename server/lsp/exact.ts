/**
 * A CR that no LF follows ends a line, and stops doing so when an LF comes to stand behind it: then the lines of a text
 * cannot be told from the lines that it had. Such a text is kept whole as long as it holds one.
 */
import type { TextChange } from '../engine/workspace/source';

const LONE_CR = /\r(?!\n)/;

/** The text, where its lines alone would not do. */
export function exactly(text: string): string | undefined {
  return LONE_CR.test(text) ? text : undefined;
}

/** `change`: its places are in lines as the protocol counts them. */
export function changed(text: string, change: TextChange): string {
  const from = offsetOf(text, change.startLine) + change.startColumn;
  const to = offsetOf(text, change.endLine) + change.endColumn;
  return text.slice(0, from) + change.text + text.slice(to);
}

function offsetOf(text: string, line: number): number {
  const ends = /\r\n|\n|\r/g;
  for (let passed = 0; passed < line; passed += 1) if (!ends.exec(text)) return text.length;
  return ends.lastIndex;
}

const MARK = '\ufeff';

/** With one mark more, since reading takes one away: a client that sends a mark counts it as a column. */
export function marked(text: string): string {
  return text.startsWith(MARK) ? MARK + text : text;
}
