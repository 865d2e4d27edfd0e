/** Kinds of coloured word, by the number that stands for each in an answer. */
import type { TokenKind } from '../engine/ide/types';

export const TOKEN_TYPES: readonly TokenKind[] = [
  'keyword',
  'property',
  'class',
  'enumMember',
  'number',
  'string',
  'comment',
  'operator',
];

export const TOKEN_MODIFIERS: readonly string[] = ['declaration'];
