/** Columns that stand under each other. The first takes what room is left, and wraps when that is too little. */
import { plain } from '../io';
import { padded, widthOf, wrapped } from './width';

export type Row = readonly string[];
export type Side = 'left' | 'right';

const WIDTH = 80;
const GAP = 2;
/** The first column is never squeezed further, whatever the others take. */
const LEAST = 20;

/** Lines of a table; `sides` says for each column which side its texts keep to. */
export function table(rows: readonly Row[], sides: readonly Side[], indent = 2): string[] {
  const clean = rows.map((row) => row.map(plain));
  const widths = sides.map((_, i) => Math.max(0, ...clean.map((row) => widthOf(row[i] ?? ''))));
  const others = widths.slice(1).reduce((sum, width) => sum + (width ? width + GAP : 0), 0);
  widths[0] = Math.min(widths[0]!, Math.max(LEAST, WIDTH - indent - others));
  return clean.flatMap((row) => lines(row, widths, sides, ' '.repeat(indent)));
}

function lines(
  row: Row,
  widths: readonly number[],
  sides: readonly Side[],
  indent: string,
): string[] {
  const first = wrapped(row[0] ?? '', widths[0]!);
  const last = first.pop()!;
  const cells = [last, ...row.slice(1)].flatMap((text, i) =>
    widths[i] ? padded(text, widths[i], sides[i]!) : [],
  );
  return [...first, cells.join(' '.repeat(GAP))].map((line) => (indent + line).trimEnd());
}

/** A figure's text as two cells: the number, which stands to the right, and its unit beside it. */
export function numberAndUnit(text: string): [string, string] {
  const found = /^(−?[\d.,\s'’]*\d)\u00a0([^\d]+)$/.exec(text);
  return found ? [found[1]!, found[2]!] : [text, ''];
}
