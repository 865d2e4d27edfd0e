/** What stands behind lines. */
import { type InlayHint, type InlayHintLabelPart, MarkupKind } from 'vscode-languageserver';
import { BETWEEN } from '../../engine/ide/hints';
import type { Closer } from '../../engine/ide/hints/closer';
import type * as ide from '../../engine/ide/types';
import { location, type UriOf } from './places';

/** In parts for a client that asks where each of them leads. */
export function inlayHint(hint: ide.Hint, uri: string, resolves: boolean): InlayHint {
  const { line, column, text, parts } = hint;
  const plain: InlayHint = {
    position: { line, character: column },
    label: text,
    paddingLeft: true,
  };
  if (!resolves) return plain;
  return { ...plain, label: parts.flatMap(labelParts), data: { ...hint, uri } };
}

function labelParts(value: string, i: number): InlayHintLabelPart[] {
  return i ? [{ value: BETWEEN }, { value }] : [{ value }];
}

/** What is added to a hint when a reader looks closer. */
export function closer(hint: InlayHint, { text, parts }: Closer, uriOf: UriOf): Partial<InlayHint> {
  const tooltip = text ? { kind: MarkupKind.Markdown, value: text } : undefined;
  if (typeof hint.label === 'string') return { tooltip };
  const label = hint.label.map((part, i) => {
    // Every second one is only the sign between.
    const place = i % 2 === 0 ? parts[i / 2]?.place : undefined;
    return place ? { ...part, location: location(place, uriOf) } : part;
  });
  return { tooltip, label };
}
