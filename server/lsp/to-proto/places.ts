/** Places, as the protocol writes them. */
import type { Location, Position, Range } from 'vscode-languageserver';
import type { Place, Span } from '../../../shared/span';
import type * as ide from '../../engine/ide/types';

/** The address of a file by the engine’s name for it. */
export type UriOf = (name: string) => string;

export function position({ line, column }: ide.Position): Position {
  return { line, character: column };
}

export function range(span: Span): Range {
  const { line, start, end } = span;
  return { start: { line, character: start }, end: { line, character: end } };
}

export function location(place: Place, uriOf: UriOf): Location {
  return { uri: uriOf(place.file), range: range(place) };
}
