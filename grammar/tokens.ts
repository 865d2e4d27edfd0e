/**
 * The tokens of one line. Plain regular expressions, a catch-all last: lexing cannot fail.
 * Units are words; the number before them is a token of its own.
 */
import './node20';
import { createToken, Lexer, type TokenType } from 'chevrotain';

const token = (name: string, pattern: RegExp, more: object = {}): TokenType =>
  createToken({ name, pattern, ...more });

/** Letters, for a character class, of the alphabets a name may be written in; the signs × and ÷ are not among them. */
export const LETTER =
  'A-Za-z_\\u00b0\\u00b5\\u00c0-\\u00d6\\u00d8-\\u00f6\\u00f8-\\u024f\\u0370-\\u1fff\\u2c00-\\ud7ff';

export const Space = token('Space', /[ \t\u00a0\u202f\ufeff]+/, { group: Lexer.SKIPPED });
export const Comment = token('Comment', /#[^\n\r]*/, { group: 'comments' });
/** Straight quotes, or the curved ones that a word processor or a telephone writes. */
export const Text = token('Text', /"(?:[^"\\\n\r]|\\[^\n\r])*"|“[^”\n\r]*”|„[^“”\n\r]*[“”]/);
export const OpenText = token('OpenText', /["“„][^\n\r]*/);
export const DateToken = token('Date', /\d{4}-\d{2}-\d{2}(?![\d-])/);
export const Clock = token('Clock', /\d{1,2}:\d{2}(?![\d:])/);
export const Code = token('Code', /\d+(?:-\d+)+/);
export const Fraction = token('Fraction', /\d+\/\d+|[½¼¾⅓⅔⅛⅜⅝⅞]/);
export const NumberToken = token('Number', /\d+(?:[.,'’]\d+)*/);
export const Dots = token('Dots', /\.\.\.?|…/);
export const Percent = token('Percent', /%/);
export const Sigil = token('Sigil', /[$£¥€¢₠-₿]/);
export const By = token('By', new RegExp(`×|\\*|x(?![${LETTER}-])`));
export const Word = token(
  'Word',
  new RegExp(
    `[${LETTER}](?:[${LETTER}0-9²³'’-]|\\.(?=[${LETTER}0-9]))*(?:/[${LETTER}][${LETTER}0-9²³]*)?`,
  ),
);
export const Plus = token('Plus', /\+/);
export const Comma = token('Comma', /,/);
export const Colon = token('Colon', /:/);
export const Slash = token('Slash', /\//);
export const Unknown = token('Unknown', /\?/);
/** A sign that takes two units stays one. */
export const Junk = token('Junk', /[\ud800-\udbff][\udc00-\udfff]|[\u0000-\uffff]/);

export const TOKENS = [
  Space,
  Comment,
  Text,
  OpenText,
  DateToken,
  Clock,
  Code,
  Fraction,
  NumberToken,
  Dots,
  Percent,
  Sigil,
  By,
  Word,
  Plus,
  Comma,
  Colon,
  Slash,
  Unknown,
  Junk,
];

let lexer: Lexer | undefined;

/**
 * Checking the tokens takes longer than most jobs take to read, and they never change at run time: a test checks
 * them (`checked`), and what ships does not.
 */
export function makeLexer(checked: boolean): Lexer {
  return new Lexer(TOKENS, {
    positionTracking: 'onlyOffset',
    ensureOptimizations: true,
    skipValidations: !checked,
  });
}

/** Made at first use: the notation may never be needed in a session. */
export function lexLine(text: string) {
  lexer ??= makeLexer(false);
  return lexer.tokenize(text);
}

/** Without what {@link Space} takes at its end; an open text and a comment stop at the last thing written. */
export function withoutSpaceAfter(text: string): string {
  let end = text.length;
  while (end > 1 && ' \t\u00a0\u202f\ufeff'.includes(text[end - 1]!)) end -= 1;
  return text.slice(0, end);
}
