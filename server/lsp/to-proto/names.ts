/** Where names lead, and where they are meant. */
import {
  type DocumentHighlight,
  DocumentHighlightKind,
  type LinkedEditingRanges,
  type Location,
  type LocationLink,
  type Range,
} from 'vscode-languageserver';
import type { Place, Span } from '../../../shared/span';
import type { Renamable } from '../../engine/ide/rename';
import type * as ide from '../../engine/ide/types';
import { location, range, type UriOf } from './places';

/** Links where the client takes them: they say which word leads there. */
export function definition(
  found: ide.Definition | undefined,
  uriOf: UriOf,
  links: boolean,
): LocationLink[] | Location[] | null {
  if (!found) return null;
  if (!links) return found.targets.map((t) => location(t.place, uriOf));
  return found.targets.map(({ place, lines }) => ({
    originSelectionRange: range(found.span),
    targetUri: uriOf(place.file),
    targetRange: wholeLines(lines, place),
    targetSelectionRange: range(place),
  }));
}

/** From the first line’s beginning to the place’s end, or to the beginning of the line after the last. */
function wholeLines(lines: ide.LineRange, place: Place): Range {
  const end =
    lines.last > place.line
      ? { line: lines.last + 1, character: 0 }
      : { line: place.line, character: place.end };
  return { start: { line: lines.first, character: 0 }, end };
}

/** The name that is renamed, and what it is called now. */
export function renamable({ span, placeholder }: Renamable): { range: Range; placeholder: string } {
  return { range: range(span), placeholder };
}

/** A name goes on as far as nothing parts it from the next word. */
const NAME = '[^\\s"“”„#,+:?]+';

export function linked(spans: readonly Span[]): LinkedEditingRanges | null {
  return spans.length ? { ranges: spans.map(range), wordPattern: NAME } : null;
}

export function highlight(found: ide.Highlight): DocumentHighlight {
  const kind = found.declares ? DocumentHighlightKind.Write : DocumentHighlightKind.Read;
  return { range: range(found), kind };
}
