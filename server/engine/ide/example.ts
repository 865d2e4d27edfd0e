/** The values of a line’s example, as the table gives it. */
import { readLine } from '../../../grammar/blocks';
import type { LineKind } from '../../../grammar/lines';
import { match } from '../../../grammar/read/match';
import type { Item } from '../../../grammar/syntax';
import { type Said, saidOf } from './said';

export interface Example {
  /** Where what follows the line’s word begins. */
  readonly from: number;
  /** In the order of the text. */
  readonly said: readonly Said[];
}

const read = new WeakMap<LineKind, Example>();

/** Read once for each kind of line. */
export function exampleOf(kind: LineKind): Example {
  const known = read.get(kind) ?? readExample(kind);
  read.set(kind, known);
  return known;
}

function readExample(kind: LineKind): Example {
  const syntax = readLine(kind.example, 0);
  const items = (syntax?.items ?? []) as Item[];
  const values = syntax && match(kind.takes, items).values;
  if (!values || !items.length) return { from: 0, said: [] };
  const said = saidOf({ kind, syntax, values, body: [] });
  said.sort((a, b) => a.value.span.start - b.value.span.start);
  return { from: items[0]!.span.start, said };
}
