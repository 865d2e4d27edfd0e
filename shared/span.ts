/**
 * Places in a text. Nothing in the notation crosses a line, so a span is a piece of one line.
 * Columns are UTF-16 units, as JavaScript strings and most editors count them.
 */
export interface Span {
  /** Line, counted from 0. In syntax: from the first line of its block. In a {@link Place}: from the first line of its file. */
  readonly line: number;
  readonly start: number;
  /** The column after the last one. */
  readonly end: number;
}

/** A span of a file. `file` is the name the host gave it (a path or an address). */
export interface Place extends Span {
  readonly file: string;
}

export function span(line: number, start: number, end: number): Span {
  return { line, start, end };
}

/** The smallest span over two spans of one line. */
export function cover(a: Span, b: Span): Span {
  return { line: a.line, start: Math.min(a.start, b.start), end: Math.max(a.end, b.end) };
}

/** A block's span moved to its place in the file. */
export function placeOf(file: string, firstLine: number, s: Span): Place {
  return { file, line: firstLine + s.line, start: s.start, end: s.end };
}

export function contains(s: Span, line: number, column: number): boolean {
  return s.line === line && s.start <= column && column <= s.end;
}
