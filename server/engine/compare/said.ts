/** A line as it counts: what it says, whatever its spaces, its units and its comment. */
import { printItems } from '../../../grammar/print/items';
import type { ReadLine, Value, Values } from '../../../grammar/read/values';
import type { Item, LineSyntax } from '../../../grammar/syntax';
import type { Exact } from '../../../shared/exact';
import type { Place } from '../../../shared/span';
import { toBase, type Unit } from '../../../shared/units';
import { wordOf } from '../resolve/book';
import type { SourceBlock } from '../workspace/source';

export interface SaidLine {
  /** Its first word; empty for a line that begins with none. */
  readonly key: string;
  /** The name it gives, as `gate` of an opening. */
  readonly name?: string;
  /** Whether its kind may stand more than once. */
  readonly many: boolean;
  /** In its one spacing, without what stands under it. */
  readonly text: string;
  readonly items: readonly Item[];
  /** The line that its items were read from. */
  readonly source: string;
  /** Alike for lines that say the same. */
  readonly means: string;
  /** The same with all that stands under it. */
  readonly meansAll: string;
  readonly body: readonly SaidLine[];
  readonly place: () => Place;
}

/** A block’s heading with its lines; nothing for a block of comments alone. */
export function saidBlock(block: SourceBlock): SaidLine | undefined {
  const { syntax, heading } = block.read;
  return syntax.heading && said(block, syntax.heading, heading);
}

function said(block: SourceBlock, syntax: LineSyntax, read: ReadLine | undefined): SaidLine {
  const source = block.lines[syntax.span.line] ?? '';
  const readOf = new Map(read?.body.map((line) => [line.syntax, line]));
  const body = syntax.body.map((line) => said(block, line, readOf.get(line)));
  const key = syntax.key?.text ?? '';
  const text = read ? printed(key, syntax.items, source) : asWritten(source, syntax);
  // A heading of which nothing could be read but its word is known by how it is written.
  const meaning = read && meaningOf(read.values, source);
  const means = meaning || (read && !syntax.items.length) ? `${key} ${meaning}` : `unread ${text}`;
  return {
    key,
    name: read && newNameOf(read),
    many: read?.kind.many === true,
    text,
    items: syntax.items,
    source,
    means,
    meansAll: body.length ? `${means} {${body.map((line) => line.meansAll).join('\n')}}` : means,
    body,
    place: () => block.place(syntax.span),
  };
}

function newNameOf(read: ReadLine): string | undefined {
  return read.kind.takes[0]?.slot === 'new-name' ? wordOf(read.values.name) : undefined;
}

function printed(key: string, items: readonly Item[], source: string): string {
  return items.length ? `${key} ${printItems(items, source)}` : key;
}

function asWritten(source: string, { span }: LineSyntax): string {
  return source.slice(span.start, span.end).replace(/\s+/g, ' ').trim();
}

/** `source`: the line that they were read from. */
function meaningOf(values: Values, source: string): string {
  const keys = Object.keys(values).filter((key) => values[key]);
  return keys.map((key) => `${key}=${meaning(values[key]!, source)}`).join(' ');
}

function meaning(value: Value, source: string): string {
  switch (value.kind) {
    case 'quantity':
      return upTo(amount(value.low, value.unit), value.high && amount(value.high, value.unit));
    case 'money':
      return upTo(`${value.currency}${plain(value.amount)}`, value.high && plain(value.high));
    case 'size':
      return value.sides
        .map(({ value: side, high, unit }) => upTo(amount(side, unit), high && amount(high, unit)))
        .join(' x ');
    case 'clock':
      return String(value.minutes);
    case 'list':
      return `[${value.of.map((each) => meaningOf(each, source)).join('; ')}]`;
    case 'unknown':
      return '?';
    case 'rest':
      return printItems(value.items, source);
    default:
      return JSON.stringify(value.text);
  }
}

function upTo(low: string, high: string | undefined): string {
  return high === undefined ? low : `${low}..${high}`;
}

/** `7.4 m` and `7400 mm` say the same. */
function amount(value: Exact, unit: Unit | undefined): string {
  return unit ? `${plain(toBase(value, unit))} ${unit.dimension}` : plain(value);
}

/** Thirty digits: a third of an hour as minutes is a third of an hour. */
function plain(value: Exact): string {
  return value.toSignificantDigits(30).toString();
}
