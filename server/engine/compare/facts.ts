/** What a job says besides its work, block by block: the job itself, its price, its record, bricks of its own. */
import type { Job } from '../workspace/job';
import { WORK } from '../workspace/source';
import { changesIn, headOf, type LineChange } from './lines';
import { pairedBy } from './pair';
import { type SaidLine, saidBlock } from './said';

/** A block that is no piece of work, or one that cannot be read. */
export interface FactChange {
  readonly change: 'new' | 'gone' | 'changed' | 'moved';
  /** Its heading’s word and name: `price`, `brick harwick-red`. */
  readonly head: string;
  readonly before?: SaidLine;
  readonly after?: SaidLine;
  /** Of a block in both. */
  readonly lines: readonly LineChange[];
  /** Of a file that the job uses, not of its own. */
  readonly used: boolean;
}

/** Of the job’s own file. */
export function ownFacts(before: Job, after: Job): FactChange[] {
  const [old, now] = [blocksIn(before), blocksIn(after)];
  const { pairs, gone, added } = pairedBy(old, now, idOf);
  const all = [
    ...pairs.flatMap(([a, b]) => changed(a, b)),
    ...added.map((line): FactChange => factOf('new', { after: line })),
    ...gone.map((line): FactChange => factOf('gone', { before: line })),
  ];
  return all.length ? all : movedUses(old, now);
}

/** Where one word opens several blocks without a name, each is known by all that its heading says. */
function idOf(line: SaidLine): string {
  return line.many && line.name === undefined ? line.means : headOf({ ...line, text: line.key });
}

function changed(before: SaidLine, after: SaidLine): FactChange[] {
  const lines = changesIn(before, after);
  return lines.length ? [{ ...factOf('changed', { before, after }), lines }] : [];
}

function factOf(
  change: FactChange['change'],
  said: Pick<FactChange, 'before' | 'after'>,
): FactChange {
  return { change, head: headOf((said.after ?? said.before)!), ...said, lines: [], used: false };
}

function blocksIn(job: Job): SaidLine[] {
  return job.file.blocks.flatMap((block) => {
    const isWork = block.kind !== undefined && WORK.has(block.kind);
    const line = isWork ? undefined : saidBlock(block);
    return line ? [line] : [];
  });
}

/** Of two files that both say a thing the first is believed, so their order counts. */
function movedUses(old: readonly SaidLine[], now: readonly SaidLine[]): FactChange[] {
  const uses = (of: readonly SaidLine[]) => of.filter((line) => line.key === 'use');
  const after = uses(now);
  const at = uses(old).findIndex((line, i) => line.means !== after[i]?.means);
  if (at < 0) return [];
  return [factOf('moved', { before: uses(old)[at], after: after[at] })];
}
