/**
 * Tests as small texts with marks in them:
 *
 *     wall north
 *       length 1,450 m
 *              ^^^^^ number-two-ways: can be read two ways
 *
 * `$0` is where the cursor stands. A line of carets stands under the line it speaks of, under the very
 * columns of the finding; then its code, and after a colon some words of its message. One caret alone
 * also stands for an empty place.
 */
import { expect } from 'vitest';
import type { Span } from '../../shared/span';

export interface Expectation extends Span {
  readonly code: string;
  /** Must be part of the message. Empty when the test does not care. */
  readonly words: string;
}

export interface Marked {
  /** Without the marks. */
  readonly text: string;
  readonly cursor?: { readonly line: number; readonly column: number };
  readonly expected: readonly Expectation[];
}

/** What is found in a text, whatever finds it; `place` counts lines from the text's first. */
export interface Found {
  readonly code: string;
  readonly message: string;
  readonly place: Span;
}

const MARK = /^(\s*)(\^+)\s+([a-z][a-z-]*)(?::\s*(.*))?$/;
const CURSOR = '$0';

/**
 * Reads a marked text. The indent that all its lines share is taken away, and an empty first line, so that
 * it can stand in code. @throws when a mark has no line above it or there are two cursors
 */
export function parseMarks(marked: string): Marked {
  const text: string[] = [];
  const expected: Expectation[] = [];
  let cursor: Marked['cursor'];
  for (const line of dedented(marked)) {
    const mark = MARK.exec(line);
    if (mark) {
      if (!text.length) throw new Error(`A mark with no line above it: ${line}`);
      expected.push(expectation(mark, text.length - 1, cursor));
      continue;
    }
    const column = line.indexOf(CURSOR);
    if (column >= 0 && cursor) throw new Error('Two cursors in one text.');
    if (column >= 0) cursor = { line: text.length, column };
    text.push(line.replace(CURSOR, ''));
  }
  return { text: text.join('\n'), cursor, expected };
}

function expectation(mark: RegExpExecArray, line: number, cursor: Marked['cursor']): Expectation {
  const [, room = '', carets = '', code = '', words = ''] = mark;
  const shift = (column: number): number =>
    cursor?.line === line && column > cursor.column ? column - CURSOR.length : column;
  return {
    line,
    start: shift(room.length),
    end: shift(room.length + carets.length),
    code,
    words: words.trim(),
  };
}

function dedented(marked: string): string[] {
  const lines = marked
    .replace(/^\n/, '')
    .replace(/\n[ \t]*$/, '\n')
    .split('\n');
  const rooms = lines.filter((line) => line.trim()).map((line) => /^ */.exec(line)![0].length);
  const shared = Math.min(...rooms);
  return lines.map((line) => line.slice(Number.isFinite(shared) ? shared : 0));
}

function fits(wanted: Expectation, found: Found): boolean {
  const { line, start, end } = found.place;
  const empty = start === end && wanted.end === wanted.start + 1;
  const there = line === wanted.line && start === wanted.start && (end === wanted.end || empty);
  return there && found.code === wanted.code && found.message.includes(wanted.words);
}

function said(at: Span, code: string, words: string): string {
  return `${at.line + 1}:${at.start}-${at.end} ${code}: ${words}`;
}

/**
 * Asserts that every finding is expected and every expectation found.
 * @returns what was found, in the order of the finder, and the text without its marks
 */
export function expectFindings<F extends Found>(
  marked: string,
  find: (text: string) => readonly F[],
): { text: string; found: readonly F[] } {
  const { text, expected } = parseMarks(marked);
  const found = find(text);
  const left = [...found];
  const missing = expected.filter((wanted) => {
    const at = left.findIndex((each) => fits(wanted, each));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
  expect({
    'found and not expected': left.map((each) => said(each.place, each.code, each.message)),
    'expected and not found': missing.map((each) => said(each, each.code, each.words)),
  }).toEqual({ 'found and not expected': [], 'expected and not found': [] });
  return { text, found };
}
