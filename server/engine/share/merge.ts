/** Blocks of several files as they stand in one: of two that say one thing the nearer is believed, line by line. */
import type { ReadLine } from '../../../grammar/read/values';
import { ONCE } from '../resolve/book';
import type { SourceBlock } from '../workspace/source';

/** A heading, and the lines under it that hold: each with the block it stands in. */
export interface Whole {
  readonly block: SourceBlock;
  readonly heading: ReadLine;
  readonly body: readonly { readonly block: SourceBlock; readonly line: ReadLine }[];
}

/** Those that may stand several times, and in which a line of a nearer file hides those of one farther off. */
const NEAREST: ReadonlySet<string> = new Set(['defaults', 'labour', 'output', 'serving']);

/** `blocks` in scope order. */
export function merged(blocks: readonly SourceBlock[]): Whole[] {
  const made = new Map<
    string,
    { whole: Whole; known: Map<string, SourceBlock['file']>; body: Whole['body'][number][] }
  >();
  blocks.forEach((block, i) => {
    const { heading } = block.read;
    if (!heading || !block.kind) return;
    const id = idOf(block, i);
    const known = made.get(id);
    if (!known) {
      const body = heading.body.map((line) => ({ block, line }));
      const whole = { block, heading, body };
      made.set(id, { whole, body, known: new Map(body.map((l) => [wordOf(l.line), block.file])) });
    } else add(known, block, heading);
  });
  return [...made.values()].map(({ whole }) => whole);
}

/** In one file a second of a kind or a name is a finding, and no other fact. */
function add(
  to: {
    readonly known: Map<string, SourceBlock['file']>;
    readonly body: Whole['body'][number][];
    readonly whole: Whole;
  },
  block: SourceBlock,
  { body }: ReadLine,
): void {
  const again = NEAREST.has(block.kind!);
  if (!again && to.whole.block.file === block.file) return;
  for (const line of body) {
    const word = wordOf(line);
    const file = to.known.get(word);
    if (file && file !== block.file) continue;
    if (file && !line.kind.many) continue;
    to.known.set(word, block.file);
    to.body.push({ block, line });
  }
}

/** A trade or a currency is known by its own word. */
function wordOf({ kind, syntax }: ReadLine): string {
  return kind.open ? (syntax.key?.text ?? kind.key) : kind.key;
}

function idOf({ kind, name }: SourceBlock, place: number): string {
  if (name !== undefined) return `${kind} ${name}`;
  return ONCE.has(kind!) || NEAREST.has(kind!) ? kind! : `${kind} ${place}`;
}
