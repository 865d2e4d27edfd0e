/**
 * What a line and a block are, without meaning. Spans count lines from the first line of the block.
 * Nothing here depends on anything but the block's text.
 */
import type { Span } from '../shared/span';

export interface WordItem {
  readonly kind: 'word';
  readonly span: Span;
  readonly text: string;
}

/** A number as written: digits with marks, a fraction, or both (`7 5/8`). */
export interface NumberText {
  readonly span: Span;
  readonly digits?: string;
  readonly fraction?: string;
}

/** A number with the word that follows it, which may be its unit; a range has `high`. */
export interface MeasureItem {
  readonly kind: 'measure';
  readonly span: Span;
  readonly low: NumberText;
  readonly high?: NumberText;
  readonly unit?: WordItem;
}

export interface MoneyItem {
  readonly kind: 'money';
  readonly span: Span;
  readonly sigil: WordItem;
  readonly amount: NumberText;
  /** Of a range, which may say its sigil again. */
  readonly high?: NumberText;
}

export interface TextItem {
  readonly kind: 'text';
  readonly span: Span;
  readonly text: string;
  /** False when the closing mark is missing. */
  readonly closed: boolean;
  /** What would close it, when it is open. */
  readonly closing?: string;
}

export interface DateItem {
  readonly kind: 'date';
  readonly span: Span;
  readonly text: string;
}

/** A time of day: `08:00`. */
export interface ClockItem {
  readonly kind: 'clock';
  readonly span: Span;
  readonly text: string;
}

/** Digits parted by hyphens: a reference such as `26-041`. */
export interface CodeItem {
  readonly kind: 'code';
  readonly span: Span;
  readonly text: string;
}

/** `x` (or ×), `,`, `+`, `:`, `/`, `?`. */
export interface SignItem {
  readonly kind: 'sign';
  readonly span: Span;
  readonly text: 'x' | ',' | '+' | ':' | '/' | '?';
}

/** Something that has no place in any line. */
export interface JunkItem {
  readonly kind: 'junk';
  readonly span: Span;
  readonly text: string;
}

export type Item =
  | WordItem
  | MeasureItem
  | MoneyItem
  | TextItem
  | DateItem
  | ClockItem
  | CodeItem
  | SignItem
  | JunkItem;

export interface CommentSyntax {
  readonly span: Span;
  readonly text: string;
}

export interface LineSyntax {
  /** From the first character that is no space to the last of the line's words (comment left out). */
  readonly span: Span;
  readonly indent: number;
  readonly key?: WordItem;
  readonly items: readonly Item[];
  readonly comment?: CommentSyntax;
  /** Lines that belong to this one, when it is a heading. */
  readonly body: readonly LineSyntax[];
  /** True when the line's indentation says one thing and its word another. */
  readonly strayed?: boolean;
  /** True when it could as well be a line of the block: one of those stands between it and its heading. */
  readonly parted?: boolean;
}

export interface BlockSyntax {
  /** As in the text, without a line's end at the end. */
  readonly text: string;
  readonly lineCount: number;
  /** Absent for a block of comments and empty lines before the first heading. */
  readonly heading?: LineSyntax;
  /** Comment lines, wherever they stand; `line` in their span tells where. */
  readonly comments: readonly CommentSyntax[];
  /** Lines the block holds that may not stand in it, or stand unreadable. Also part of the tree where they can be. */
  readonly lines: readonly LineSyntax[];
}
