import type { Severity } from '../../shared/finding';
import type { Span } from '../../shared/span';

/** An edit inside the block. An empty span at column 0 of a line inserts before it. */
export interface BlockEdit {
  readonly span: Span;
  readonly text: string;
}

export interface FaultWay {
  readonly title: string;
  readonly edits: readonly BlockEdit[];
  readonly preferred?: boolean;
}

/** A finding inside one block, with its place counted from the block's first line. */
export interface Fault {
  readonly code: string;
  readonly severity: Severity;
  readonly span: Span;
  readonly message: string;
  readonly ways: readonly FaultWay[];
}

export function fault(
  code: string,
  severity: Severity,
  span: Span,
  message: string,
  ways: readonly FaultWay[] = [],
): Fault {
  return { code, severity, span, message, ways };
}

export function replace(title: string, span: Span, text: string, preferred = false): FaultWay {
  return { title, edits: [{ span, text }], preferred };
}

/** What was written, short enough for a message. */
export function clipped(written: string): string {
  return written.length > 40 ? `${written.slice(0, 38)}…` : written;
}
