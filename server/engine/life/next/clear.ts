/** What of a past job belongs to that one client and that one time. */
import type { ReadLine } from '../../../../grammar/read/values';
import type { LineSyntax } from '../../../../grammar/syntax';
import type { SourceBlock, SourceFile } from '../../workspace/source';
import { type Rewrite, SAME } from './rewrite';
import type { Told } from './told';

/** A line that the next job does not have, as it was written. */
export interface Cleared {
  readonly block: string;
  readonly text: string;
}

/** Whole blocks, and the lines of others. */
const BLOCKS: ReadonlySet<string> = new Set(['record', 'bill-to']);
const LINES: Readonly<Record<string, ReadonlySet<string>>> = {
  job: new Set(['ref', 'client', 'site', 'date']),
  // A price agreed, or something taken off for the one client’s sake.
  price: new Set(['agreed', 'discount']),
};

/** Asked for again, in the order they stand in a job. */
const ASKED = ['ref', 'client', 'site', 'date'];

export function clearing(file: SourceFile, told: Told) {
  const to = new Map<number, string | undefined>();
  const cleared: Cleared[] = [];
  // As written, and not as read: a line that cannot be read may well name the client.
  const drop = (block: SourceBlock, line: LineSyntax) => {
    const at = line.span.line;
    cleared.push({ block: block.kind!, text: block.lines[at]!.trim() });
    to.set(block.firstLine + at, undefined);
    for (const under of line.body) drop(block, under);
  };
  for (const block of file.blocks) {
    const heading = block.read.heading;
    if (!heading || !block.kind) continue;
    if (BLOCKS.has(block.kind)) drop(block, heading.syntax);
    else
      for (const line of heading.syntax.body)
        if (LINES[block.kind]?.has(line.key?.text ?? '')) drop(block, line);
    if (block.kind === 'job') to.set(...headed(block, heading, told));
  }
  const rewrite: Rewrite = (line) => (to.has(line) ? to.get(line) : SAME);
  return { rewrite, cleared };
}

/** The heading of the job with its new lines under it: what is told, and in a comment what is still to be said. */
function headed(block: SourceBlock, heading: ReadLine, told: Told): [number, string] {
  const at = heading.syntax.span.line;
  const old = block.lines[at]!;
  const title = told.get('title');
  const head = title === undefined ? old : `job ${title}`;
  const said = ASKED.filter((key) => told.has(key)).map((key) => `  ${key} ${told.get(key)}`);
  const open = ASKED.filter((key) => !told.has(key));
  const ask = open.length ? [`  # still to be said: ${open.join(', ')}`] : [];
  return [block.firstLine + at, [head, ...said, ...ask].join('\n')];
}
