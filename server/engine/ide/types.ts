/** Answers to an editor's questions, as plain data. No protocol of any editor is known here. */

import type { FormatEdit } from '../../../grammar/print';
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
export interface Linker {
  (text: string, place: Place): string;
  /** A way to the whole working of a figure, where the editor has one. */
  readonly working?: (text: string, figure: string) => string;
}

export const PLAIN: Linker = (text) => text;

export interface Hover {
  readonly span: Span;
  readonly markdown: string;
}

/** In the order that hints of one line stand in. */
export const HINT_KINDS = ['total', 'line', 'money', 'hours', 'range', 'name', 'taken'] as const;

/**
 * A total at the end of a heading; what a line works out to; what a line of money comes to; hours of a line of work; low to
 * high; what a name stands for; what is taken without being said.
 */
export type HintKind = (typeof HINT_KINDS)[number];

export interface Hint extends Position {
  readonly text: string;
  readonly kind: HintKind;
  /** The figures in it, in the order of the text. */
  readonly parts: readonly string[];
  /** It is as it was before a line that cannot be read for the moment. */
  readonly held?: boolean;
}

export type CompletionKind =
  | 'heading'
  | 'block'
  | 'key'
  | 'name'
  | 'unit'
  | 'choice'
  | 'word'
  | 'file';

export interface Completion {
  readonly label: string;
  readonly kind: CompletionKind;
  /** What stands beside the label: a title, an example, a unit's other name. */
  readonly detail?: string;
  /** The file that it comes from, where that is another one. */
  readonly from?: string;
  /** Markdown; made only for the one that a reader looks at. */
  readonly explains?: () => string;
  readonly insert: string;
  /** `insert` holds places to fill in, written `${1:text}` or `${1|one,two|}`. */
  readonly isSnippet?: boolean;
  /** Signs that take it and then stand behind it, such as the comma of a list. */
  readonly commits?: readonly string[];
  /** Something has to follow it: what may can be offered at once. */
  readonly more?: boolean;
}

export interface Completions {
  /** What is replaced, up to the cursor. */
  readonly span: Span;
  /** Where the word ends that the cursor is in. */
  readonly wordEnd: number;
  /** The line could end here: what is offered may follow, and need not. */
  readonly whole?: boolean;
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
  readonly kind: 'block' | 'comment' | 'imports';
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

/** As editors sort them: ways out, ways out all at once, and changes that mend nothing. */
export type ActionKind =
  | 'quickfix'
  | 'source.fixAll.perpend'
  | 'refactor.rewrite'
  | 'refactor.extract';

export interface Action {
  readonly kind: ActionKind;
  /** What it is a way out of. */
  readonly finding?: Finding;
  readonly title: string;
  readonly preferred: boolean;
  readonly edits: Finding['ways'][number]['edits'];
  /** Its edits hold places to fill in, written `${1:text}`. */
  readonly fills?: boolean;
  /** In place of `edits`: what takes long to find, asked for when the action is taken. None when there is nothing to do. */
  readonly later?: () => readonly FormatEdit[];
}

export interface Highlight extends Span {
  readonly declares: boolean;
}
