/**
 * Hints of a file from one key to the next. While a line is being typed it often cannot be read, and what hangs on it cannot
 * be worked out: then each hint of another line stays as it last was, until the line can be read or another one is edited.
 */
import type { Job } from '../../workspace/job';
import type { SourceBlock, SourceFile } from '../../workspace/source';
import type { Hint, LineRange } from '../types';
import { isBroken } from './broken';
import { hintsOf, type Wanted } from './index';

/** How the file stood when its hints were last all known. */
interface Good {
  readonly version: number;
  readonly wanted: Wanted;
  /** Its blocks, and the line that each began at then. */
  readonly blocks: readonly SourceBlock[];
  readonly firsts: readonly number[];
  /** Of the lines that were asked for. */
  readonly hints: Map<number, readonly Hint[]>;
}

/** The one stretch in which a text differs from an earlier one: so many lines from a line on, and how many there were. */
interface Changed {
  readonly at: number;
  readonly now: number;
  readonly before: number;
}

export class SteadyHints {
  private good: Good | undefined;

  of(job: Job, range: LineRange, wanted: Wanted): readonly Hint[] {
    const fresh = hintsOf(job, range, wanted);
    const { good } = this;
    const typed = good && good.wanted === wanted ? typedIn(job, good) : undefined;
    if (good && typed) return held(fresh, good, typed, job, range);
    this.keep(job, range, wanted, fresh);
    return fresh;
  }

  private keep({ file }: Job, range: LineRange, wanted: Wanted, fresh: readonly Hint[]): void {
    const known = this.good;
    if (known?.version !== file.version || known.wanted !== wanted)
      this.good = { ...standOf(file), wanted, hints: new Map() };
    const { hints } = this.good!;
    const last = Math.min(range.last, file.lines.length - 1);
    for (let line = range.first; line <= last; line++) hints.delete(line);
    for (const hint of fresh) hints.set(hint.line, [...(hints.get(hint.line) ?? []), hint]);
  }
}

function standOf({ version, blocks }: SourceFile): Pick<Good, 'version' | 'blocks' | 'firsts'> {
  return { version, blocks: [...blocks], firsts: blocks.map((block) => block.firstLine) };
}

/** The line that is being typed, where no other has changed and it cannot be read yet. */
function typedIn(job: Job, good: Good): Changed | undefined {
  if (good.version === job.file.version) return undefined;
  const changed = changedFrom(good, job.file);
  const one = changed.now === 1 && changed.before <= 1;
  return one && isBroken(job, changed.at) ? changed : undefined;
}

/** A block that says what it said is the same object: only lines of the others are compared. */
function changedFrom({ blocks, firsts }: Good, file: SourceFile): Changed {
  const { start, end } = ends(blocks, file.blocks);
  const before = linesOf(blocks, start, end);
  const now = linesOf(file.blocks, start, end);
  const within = ends(before, now);
  return {
    at: (firsts[start] ?? file.blocks[start]?.firstLine ?? 0) + within.start,
    now: now.length - within.start - within.end,
    before: before.length - within.start - within.end,
  };
}

function linesOf(blocks: readonly SourceBlock[], start: number, end: number): string[] {
  return blocks.slice(start, blocks.length - end).flatMap((block) => block.lines);
}

/** How many two lists have in common at the beginning and at the end. */
function ends<T>(a: readonly T[], b: readonly T[]): { start: number; end: number } {
  const most = Math.min(a.length, b.length);
  let start = 0;
  while (start < most && a[start] === b[start]) start += 1;
  let end = 0;
  while (end < most - start && a[a.length - 1 - end] === b[b.length - 1 - end]) end += 1;
  return { start, end };
}

/** As they last were, at the same lines; of the line itself only what stands at the end of a heading. */
function held(
  fresh: readonly Hint[],
  good: Good,
  typed: Changed,
  { file }: Job,
  range: LineRange,
): Hint[] {
  const found: Hint[] = [];
  const last = Math.min(range.last, file.lines.length - 1);
  for (let line = range.first; line <= last; line++) {
    const shift = line > typed.at ? typed.before - typed.now : 0;
    const known = good.hints.get(line + shift) ?? [];
    if (line === typed.at) found.push(...ofHeading(known, typed, file.lines[line]!));
    else if (known.length) found.push(...known.map((hint) => ({ ...hint, line, held: true })));
    else found.push(...fresh.filter((hint) => hint.line === line));
  }
  return found;
}

function ofHeading(known: readonly Hint[], typed: Changed, text: string): Hint[] {
  if (typed.before === 0) return [];
  const column = text.trimEnd().length;
  const totals = known.filter((hint) => hint.kind === 'total');
  return totals.map((hint) => ({ ...hint, line: typed.at, column, held: true }));
}
