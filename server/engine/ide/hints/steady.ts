/**
 * Hints of a file from one key to the next. While a line is being typed it often cannot be read, and what hangs on it cannot
 * be worked out: then each hint of another line stays as it last was, until the line can be read or another one is edited.
 */
import type { Job } from '../../workspace/job';
import type { SourceBlock, SourceFile } from '../../workspace/source';
import type { Hint, LineRange } from '../types';
import { isBroken, mayGoOn } from './broken';
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

/** A change of one line that is being written; `broken`: it cannot be read yet. */
interface Typed extends Changed {
  readonly broken: boolean;
}

export class SteadyHints {
  private good: Good | undefined;

  of(job: Job, range: LineRange, wanted: Wanted): readonly Hint[] {
    const fresh = hintsOf(job, range, wanted);
    const { good } = this;
    const typed = good && good.wanted === wanted ? typedIn(job, good) : undefined;
    if (good && typed && (typed.broken || losesAny(fresh, good, typed, range)))
      return held(fresh, good, typed, job, range);
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

/** The line that is being typed, where no other has changed and it is not whole yet, or may not be. */
function typedIn(job: Job, good: Good): Typed | undefined {
  if (good.version === job.file.version) return undefined;
  const changed = changedFrom(good, job.file);
  if (changed.now !== 1 || changed.before > 1) return undefined;
  const broken = isBroken(job, changed.at);
  return broken || mayGoOn(job, changed.at) ? { ...changed, broken } : undefined;
}

/** Whether another line would lose its hints: by joints of `10 m` nothing can be laid, and `10 mm` is a key away. */
function losesAny(fresh: readonly Hint[], good: Good, typed: Typed, range: LineRange): boolean {
  const { at, now, before } = typed;
  const own = (line: number) => before === 1 && line === at;
  const stand = new Set(fresh.map(({ line }) => line));
  return [...good.hints].some(([line, hints]) => {
    const place = line < at ? line : line + now - before;
    const seen = range.first <= place && place <= range.last;
    return seen && hints.length > 0 && !own(line) && !stand.has(place);
  });
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
