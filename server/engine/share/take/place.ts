/** Where a line of theirs goes in a block of ours. */

import type { SaidLine } from '../../compare';
import { headOf } from '../../compare/lines';
import type { SourceBlock } from '../../workspace/source';

export interface Place {
  /** The line of the file that it comes after. */
  readonly at: number;
  readonly indent: number;
  /** Where what follows its word begins. */
  readonly column: number;
}

/** After the last line of the heading that it stands under. */
export function placed(said: SaidLine, under: readonly string[], block: SourceBlock): Place {
  const home = under.reduce(
    (at, head) => at.body.find((line) => headOf(line) === head) ?? at,
    said,
  );
  const { lines } = block.file;
  const indentOf = (line: SaidLine) => /^\s*/.exec(lines[line.place().line]!)![0].length;
  const plain = home.body.filter((line) => !line.body.length);
  const sibling = plain.at(-1);
  const indent = home.body[0] ? indentOf(home.body[0]) : indentOf(home) + 2;
  const column = sibling?.items[0]?.span.start ?? indent + 10;
  return { at: (sibling ?? home).place().line, indent, column };
}
