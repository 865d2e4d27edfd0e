import type { Place } from './span';

export type Severity = 'error' | 'warning' | 'information' | 'hint';

/**
 * One change of text. Replaces `place` by `text`. To insert whole lines, give an empty place at column 0
 * of the line to come after, and a text that ends in a newline.
 */
export interface TextEdit {
  readonly place: Place;
  readonly text: string;
}

/** One way out of a finding: a title to read and the edits that do it. */
export interface WayOut {
  readonly title: string;
  readonly edits: readonly TextEdit[];
  /** The one to take if the reader does not want to choose. */
  readonly preferred?: boolean;
}

export interface Related {
  readonly place: Place;
  readonly message: string;
}

/** Something to tell the reader: what is wrong, where, why, and what to do. */
export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  readonly place: Place;
  readonly message: string;
  readonly related: readonly Related[];
  readonly ways: readonly WayOut[];
  /** Ways out with something to fill in, which only their reader knows: their texts hold places written `${1:text}`. */
  readonly fills?: readonly WayOut[];
}
