/** What stands under the pointer. */
import { type Hover, MarkupKind } from 'vscode-languageserver';
import type * as ide from '../../engine/ide/types';
import { range } from './places';

export function hover({ span, markdown }: ide.Hover): Hover {
  return { range: range(span), contents: { kind: MarkupKind.Markdown, value: markdown } };
}
