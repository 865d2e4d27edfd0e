/** Coloured words as the protocol packs them: five numbers a word, each place counted from the one before. */
import type { Token } from '../engine/ide/types';
import { TOKEN_TYPES } from './token-types';

export function packed(
  tokens: readonly Token[],
  /** As the client counts columns. */
  columnOf: (line: number, column: number) => number = (_, column) => column,
): number[] {
  const data: number[] = [];
  let line = 0;
  let start = 0;
  for (const token of tokens) {
    const down = token.line - line;
    const [from, to] = [columnOf(token.line, token.start), columnOf(token.line, token.end)];
    data.push(down, down ? from : from - start, to - from);
    data.push(TOKEN_TYPES.indexOf(token.kind), token.declares ? 1 : 0);
    line = token.line;
    start = from;
  }
  return data;
}

/** The one stretch in which two lists differ, as an edit of the first; none when they are alike. */
export function difference(
  before: readonly number[],
  after: readonly number[],
): { start: number; deleteCount: number; data: number[] }[] {
  const most = Math.min(before.length, after.length);
  let start = 0;
  while (start < most && before[start] === after[start]) start += 1;
  let end = 0;
  while (end < most - start && before.at(-1 - end) === after.at(-1 - end)) end += 1;
  if (start === before.length && start === after.length) return [];
  return [
    {
      start,
      deleteCount: before.length - end - start,
      data: after.slice(start, after.length - end),
    },
  ];
}

interface Sent {
  readonly id: string;
  readonly data: readonly number[];
}

/** What each open file was last answered, so that the next answer can be the difference. */
export class SentTokens {
  private readonly sent = new Map<string, Sent>();
  private next = 1;

  full(uri: string, data: number[]): { resultId: string; data: number[] } {
    const resultId = String(this.next++);
    this.sent.set(uri, { id: resultId, data });
    return { resultId, data };
  }

  delta(uri: string, previous: string, data: number[]) {
    const before = this.sent.get(uri);
    const full = this.full(uri, data);
    if (before?.id !== previous) return full;
    return { resultId: full.resultId, edits: difference(before.data, data) };
  }

  forget(uri: string): void {
    this.sent.delete(uri);
  }
}
