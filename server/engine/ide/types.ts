/** Answers to an editor's questions, as plain data. No protocol of any editor is known here. */
import type { Finding } from '../../../shared/finding';
import type { Place, Span } from '../../../shared/span';

/** A place between two characters. Lines and columns count from 0; columns are UTF-16 units. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** Lines `first` to `last`, both included. */
export interface LineRange {
  readonly first: number;
  readonly last: number;
}

/** Writes a place so that a reader can go there: a link where that can be, else words. */
export type Linker = (text: string, place: Place) => string;

export const PLAIN: Linker = (text) => text;

export interface Hover {
  readonly span: Span;
  readonly markdown: string;
}

export interface Hint extends Position {
  readonly text: string;
  /** A total at the end of a heading, or what a line works out to. */
  readonly kind: 'total' | 'line';
}

export type CompletionKind = 'heading' | 'block' | 'key' | 'name' | 'unit' | 'choice' | 'word';

export interface Completion {
  readonly label: string;
  readonly kind: CompletionKind;
  /** What stands beside the label: a title, a unit's other name. */
  readonly detail?: string;
  /** Markdown. */
  readonly explains?: string;
  readonly insert: string;
  /** `insert` holds places to fill in, written `${1:text}`. */
  readonly isSnippet?: boolean;
}

export interface Completions {
  /** What is replaced, up to the cursor. */
  readonly span: Span;
  readonly items: readonly Completion[];
}

export interface OutlineItem {
  readonly name: string;
  readonly detail: string;
  /** The word that opens it: `wall`, `opening`. */
  readonly kind: string;
  readonly lines: LineRange;
  /** Where the last line ends. */
  readonly end: number;
  readonly select: Span;
  readonly children: readonly OutlineItem[];
}

export interface Fold extends LineRange {
  readonly kind: 'block' | 'comment';
}

/** Where something stands: its whole extent, and the piece of it to show. */
export interface Target {
  readonly place: Place;
  readonly lines: LineRange;
}

export interface Definition {
  readonly span: Span;
  readonly targets: readonly Target[];
}

export type TokenKind =
  | 'keyword'
  | 'property'
  | 'class'
  | 'enumMember'
  | 'number'
  | 'string'
  | 'comment'
  | 'operator';

export interface Token extends Span {
  readonly kind: TokenKind;
  /** It gives a name, and does not only use it. */
  readonly declares?: boolean;
}

export interface Action {
  readonly finding: Finding;
  readonly title: string;
  readonly preferred: boolean;
  readonly edits: Finding['ways'][number]['edits'];
}

export interface Highlight extends Span {
  readonly declares: boolean;
}
