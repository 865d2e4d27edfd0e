/**
 * What the files say and nobody could take in: lines with an error, files that are not there, openings that lie
 * outside their wall. All other totals stand, but no price is complete that they would have fed.
 */

import { clipped, type Fault } from '../../../grammar/read/fault';
import { language, phrase } from '../../../shared/phrase';
import type { Work } from '../brickwork/work';
import type { Remark } from '../findings/remark';
import { type Gap, withGaps } from '../working/term';
import { Groups } from '../workspace/groups';
import type { SourceBlock, SourceFile } from '../workspace/source';

/** The first of two lines holds, so that nothing is lost with the second. */
const NOTHING_LOST: ReadonlySet<string> = new Set(['line-twice']);

/** As many as are kept: one is enough to leave a price incomplete, and nobody reads more. */
const MOST_LOST = 100;

/** What is lost in a job, kept from one state of it to the next. */
export class Losses {
  private readonly lines = new Groups<SourceBlock, readonly (readonly Gap[])[]>(lostLines);
  private readonly errors = new Groups<HasRemarks, readonly Remark[]>((works) =>
    errorsIn(works.flatMap((work) => work.remarks)),
  );

  /** Of every file of the job, its own first, of which `own` are the blocks that count; libraries that ship have none. Remarks in the order of the work. */
  in(
    files: readonly SourceFile[],
    remarks: readonly Remark[],
    works: readonly HasRemarks[],
    own: readonly SourceBlock[],
  ): Gap[] {
    const lost: Gap[] = [];
    for (const gaps of this.ofLines(files, own)) {
      lost.push(...gaps);
      if (lost.length >= MOST_LOST) return lost;
    }
    const errors = [errorsIn(remarks), ...this.errors.of(works)].flat().slice(0, MOST_LOST);
    return [...lost, ...errors.map(leftOut)];
  }

  private ofLines(
    [job, ...others]: readonly SourceFile[],
    own: readonly SourceBlock[],
  ): (readonly Gap[])[] {
    const used = others.filter((file) => !file.shipped);
    const lost = used.flatMap((file) => lostLines(file.blocks));
    return [...(job?.shipped ? [] : this.lines.of(own).flat()), ...lost];
  }
}

function lostLines(blocks: readonly SourceBlock[]): (readonly Gap[])[] {
  return blocks.map(linesLost).filter((gaps) => gaps.length > 0);
}

/** The same of blocks of partners’ files. */
export function lostIn(blocks: readonly SourceBlock[]): Gap[] {
  return lostLines(blocks).flat();
}

interface HasRemarks {
  readonly remarks: readonly Remark[];
}

function errorsIn(remarks: readonly Remark[]): Remark[] {
  return remarks.filter((remark) => remark.severity === 'error').slice(0, MOST_LOST);
}

/** What they say is in no price: an option that is not taken, what has happened, who the firm and the payer are. */
const NOT_PRICED: ReadonlySet<string> = new Set(['option', 'record', 'firm', 'bill-to']);

/** Lines of a block that are read to say nothing. */
function linesLost(block: SourceBlock): Gap[] {
  if (NOT_PRICED.has(block.kind ?? '') || !block.read.faults.length) return [];
  const lost = block.read.faults.filter((f) => f.severity === 'error' && !NOTHING_LOST.has(f.code));
  return lost.slice(0, MOST_LOST).map((fault) => lineLost(block, fault));
}

function lineLost(block: SourceBlock, { span }: Fault): Gap {
  const text = clipped(block.lines[span.line]!.trim());
  return {
    what: phrase`the line “${text}”${inFile(block)} is left out`,
    origin: { block, span },
    told: true,
  };
}

function leftOut({ origin, message }: Remark): Gap {
  const [what = ''] = message.split(/\.(?: |$)/);
  // Other languages begin nouns with a capital wherever they stand.
  const within = language() ? what : what.charAt(0).toLowerCase() + what.slice(1);
  return { what: within, origin, told: true };
}

function inFile(block: SourceBlock): string {
  return phrase` of ${block.file.name.split(/[\\/]/).at(-1)}`;
}

/** A piece of work whose own lines are not all read: each of its figures says so. */
export function withLost(work: Work): Work {
  const gaps = linesLost(work.block);
  if (!gaps.length) return work;
  const figures = work.figures.map(({ key, term }) => ({ key, term: withGaps(term, gaps) }));
  return { ...work, figures };
}
