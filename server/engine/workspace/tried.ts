/**
 * Ways out, each tried before it is offered: one that does not clear its finding, or leaves an error, is none. Once so much has
 * been worked out again that nobody would wait for more, what was not tried is not offered, but for ways that are sure.
 */

import type { Work } from '../brickwork/work';
import type { Remark, RemarkWay } from '../findings/remark';
import { SourceBlock } from './source';

/**
 * Worked out again for one piece of work, all its ways together, in lines: half a second or two, as its lines take. Whoever
 * asks for one finding at a time hardly comes to it; of a list of them all the first are tried.
 */
const MOST_AGAIN = 4000;
/** The same for all the work of a job: some seconds. */
const MOST_OF_JOB = 15_000;

/** As many lines as one more thing to tell of a piece of work is worth. */
const TO_TELL = 2;

/** What trials in a job have taken, in lines, since it last changed or somebody asked. */
export class Effort {
  private all = 0;
  private readonly by = new Map<SourceBlock, number>();

  has(block: SourceBlock, lines: number): boolean {
    return this.all + lines <= MOST_OF_JOB && (this.by.get(block) ?? 0) + lines <= MOST_AGAIN;
  }

  add(block: SourceBlock, lines: number): void {
    this.all += lines;
    this.by.set(block, (this.by.get(block) ?? 0) + lines);
  }
}

/** How a piece of work is worked out again, and what that takes. */
export interface Trial {
  readonly again: Again;
  /** Told apart by this, findings may want to know different things of the same text. */
  readonly alike: (code: string) => unknown;
  /** In lines: those of the piece of work, and as many again as what it is bonded to takes. */
  readonly takes: () => number;
  /** Of the job as it stands when somebody asks. */
  readonly effort: () => Effort;
}

/** All that is looked at of a piece of work in which a way out is tried. */
interface Told {
  readonly remarks: readonly Pick<Remark, 'code' | 'about' | 'severity'>[];
}
/** What there is to tell of a block, as far as it matters to a finding of such a code. */
type Again = (block: SourceBlock, code: string) => Told | undefined;

interface Trials {
  readonly again: Again;
  /** Nothing more is worked out. */
  readonly spent: () => boolean;
}

/**
 * The same work, its remarks offering only ways that do what they say. They are tried when somebody asks for them:
 * the block is read with the edits in it, and worked out again.
 */
export function tried(work: Work, trial: Trial): Work {
  if (!work.remarks.some((r) => r.ways)) return work;
  const trials = onceEach(trial, work);
  const remarks = work.remarks.map((remark) =>
    remark.ways ? { ...remark, ways: onceTried(remark, work, trials) } : remark,
  );
  return { ...work, remarks };
}

/** Several findings may offer the same edit: each text is worked out once. */
function onceEach(
  { again, alike: kind, takes: own, effort }: Trial,
  { block, remarks }: Work,
): Trials {
  const known = new Map<string, Told | undefined>();
  // One line may stand for very much: then there is much to tell of it.
  const takes = () => own() + TO_TELL * remarks.length;
  const spent = () => !effort().has(block, takes());
  const once: Again = (other, code) => {
    const text = [kind(code), ...other.lines].join('\n');
    if (!known.has(text)) {
      effort().add(block, takes());
      known.set(text, kept(again(other, code)));
    }
    return known.get(text);
  };
  return { again: once, spent };
}

/** The rest of what was worked out is let go. */
function kept(told: Told | undefined): Told | undefined {
  return (
    told && {
      remarks: told.remarks.map(({ code, about, severity }) => ({ code, about, severity })),
    }
  );
}

/** What was found when all of them could be tried stands as long as the work does. */
function onceTried(remark: Remark, work: Work, trials: Trials): () => readonly RemarkWay[] {
  let found: readonly RemarkWay[] | undefined;
  return () => {
    if (found) return found;
    const ways = thatClear(remark, work, trials);
    if (!trials.spent()) found = ways;
    return ways;
  };
}

function thatClear(remark: Remark, work: Work, trials: Trials): readonly RemarkWay[] {
  const ways = offeredBy(remark, trials.spent());
  const good = ways.flatMap((way) => {
    const left = leftBy(way, remark, work, trials);
    return left === undefined ? [] : [{ way, worse: left > told(work) }];
  });
  // Those that bring up something new elsewhere come after those that do not.
  const place = (g: { way: RemarkWay; worse: boolean }) => (g.way.last ? 2 : g.worse ? 1 : 0);
  const ranked = [0, 1, 2].flatMap((at) => good.filter((g) => place(g) === at).map((g) => g.way));
  const first = ways[0]?.preferred ? ranked[0] : undefined;
  return ranked.map((way) =>
    way.preferred || way === first ? { ...way, preferred: way === first } : way,
  );
}

function offeredBy({ ways = [] }: Remark, onlySure: boolean): readonly RemarkWay[] {
  return typeof ways === 'function' ? ways(onlySure) : ways;
}

/** How much a way leaves to be told of the work; nothing when it does not do what it says, or nobody knows. */
function leftBy(
  way: RemarkWay,
  remark: Remark,
  work: Work,
  { again, spent }: Trials,
): number | undefined {
  if (way.edits.some((e) => e.block !== work.block)) return told(work);
  if (spent()) return way.sure ? told(work) : undefined;
  const block = withEdits(work.block, way);
  const after = again(block, remark.code);
  const stands = after && alike(after, remark) >= alike(work, remark);
  if (!after || stands || errors(after, block) > errors(work, work.block)) return undefined;
  return told(after) + 1;
}

function alike({ remarks }: Told, { code, about }: Remark): number {
  return remarks.filter((r) => r.code === code && r.about === about).length;
}

function told({ remarks }: Told): number {
  return remarks.filter((r) => r.severity === 'warning' || r.severity === 'error').length;
}

function errors(work: Told, block: SourceBlock): number {
  const faults = block.read.faults.filter((f) => f.severity === 'error').length;
  return faults + work.remarks.filter((r) => r.severity === 'error').length;
}

/** The block with the edits of a way in it, standing where it stood; the file does not know of it. */
function withEdits(block: SourceBlock, { edits }: RemarkWay): SourceBlock {
  const lines = [...block.lines];
  const lastFirst = [...edits].sort(
    (a, b) => b.span.line - a.span.line || b.span.start - a.span.start,
  );
  for (const { span, text } of lastFirst) {
    const line = lines[span.line] ?? '';
    const changed = line.slice(0, span.start) + text + line.slice(span.end);
    lines.splice(span.line, 1, ...changed.split('\n'));
  }
  return new SourceBlock(block.file, block.firstLine, lines);
}
