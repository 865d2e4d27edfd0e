/** The lines that parts of a drawing come from, each once, by its place in a list. */
import type { From } from '../../../shared/protocol/preview';
import { wordOf } from '../../engine/resolve/book';
import type { SourceBlock } from '../../engine/workspace/source';

/** A line as it was read. */
export type ReadLine = NonNullable<SourceBlock['read']['heading']>;

/** Comes from no line. */
export const NOWHERE = -1;

/** A line by the engine’s name of its file. */
export type Found = Omit<From, 'uri'> & { readonly file: string };

export class Lines {
  readonly list: Found[] = [];
  private readonly known = new Map<ReadLine, number>();

  /** The place of a line of a block in the list; it is added where it is new. */
  of(line: ReadLine | undefined, block: SourceBlock): number {
    if (!line) return NOWHERE;
    const known = this.known.get(line);
    if (known !== undefined) return known;
    this.known.set(line, this.list.length);
    const at = { file: block.file.name, ...linesOf(line, block) };
    this.list.push({ ...at, label: calledOf(line), ...(isMost(line) ? { most: true } : {}) });
    return this.list.length - 1;
  }

  /** All lines of a block as they stand, so that an edit of one leaves the others their places. */
  ofBlock(block: SourceBlock): void {
    const add = (line: ReadLine) => {
      this.of(line, block);
      for (const inner of line.body) add(inner);
    };
    if (block.read.heading) add(block.read.heading);
  }
}

/** The heading of work, and what names its bricks, are behind nearly all that is drawn. */
function isMost({ kind }: ReadLine): boolean {
  return kind.top === true || kind.key === 'brick' || kind.key === 'bond';
}

/** Where a line stands in its file, and the last of the lines that belong to it. */
export function linesOf({ syntax }: ReadLine, { firstLine }: SourceBlock) {
  const { line } = syntax.span;
  const last = syntax.body.reduce((most, inner) => Math.max(most, lastOf(inner)), line);
  return { line: firstLine + line, last: firstLine + last };
}

function lastOf({ span, body }: ReadLine['syntax']): number {
  return body.reduce((most, inner) => Math.max(most, lastOf(inner)), span.line);
}

/** Its word, and its title or name. */
export function calledOf({ kind, values }: ReadLine): string {
  const title = wordOf(values.title) || wordOf(values.name).replaceAll('-', ' ');
  return [kind.key, title].filter(Boolean).join(' ');
}

/** The first line of a kind in a heading; by its name where one is given. */
export function lineIn(
  heading: ReadLine | undefined,
  key: string,
  name?: string,
): ReadLine | undefined {
  return heading?.body.find(
    (line) => line.kind.key === key && (name === undefined || wordOf(line.values.name) === name),
  );
}
