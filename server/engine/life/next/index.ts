/**
 * The next job from a past one, as text: the work stays as it is written, comments too; what belongs to the one client is
 * cleared; rates that the job held for itself are brought up to what the firm’s files say now.
 */
import { format } from '../../../../grammar/print';
import type { Value } from '../../../../grammar/read/values';
import type { SourceBlock, SourceFile } from '../../workspace/source';
import { type Cleared, clearing } from './clear';
import { type RateNow, ratesNow } from './rates';
import { type Rewrite, rewritten, SAME } from './rewrite';
import { type Told, toldOver } from './told';

/** What the new job says of itself; what is left out is asked for by a comment. */
export interface Wishes {
  readonly title?: string;
  readonly client?: string;
  readonly site?: string;
  readonly ref?: string;
  /** ISO 8601. */
  readonly date?: string;
  /** A file that the past job uses, as the new one reaches it. */
  readonly reach?: (file: string) => string;
}

export interface NextJob {
  readonly text: string;
  readonly cleared: readonly Cleared[];
  readonly rates: readonly RateNow[];
}

/**
 * @param file the past job
 * @param others the files it uses, nearest first, as they stand now
 */
export function nextJob(file: SourceFile, others: readonly SourceFile[], wishes: Wishes): NextJob {
  const told: Told = toldOver(wishes);
  const clear = clearing(file, told);
  const rates = ratesNow(file, others);
  const uses = usesMoved(file, wishes.reach);
  const rewrite: Rewrite = (line) => {
    const said = [clear.rewrite, rates.rewrite, uses].map((of) => of(line));
    const other = said.findIndex((to) => to !== SAME);
    return other < 0 ? SAME : said[other];
  };
  const text = format(rewritten(file.lines, rewrite));
  return { text, cleared: clear.cleared, rates: rates.rates };
}

/** By a `use` line, or as a partner’s. */
function fileNamed({ kind, read: { heading } }: SourceBlock): Value | undefined {
  if (kind === 'use') return heading?.values.file;
  if (kind !== 'partner') return undefined;
  return heading?.body.find((line) => line.kind.key === 'file')?.values.file;
}

/** The new file may lie in another folder. */
function usesMoved(file: SourceFile, reach: Wishes['reach']): Rewrite {
  const to = new Map<number, string>();
  for (const block of file.blocks) {
    const used = fileNamed(block);
    if (used?.kind !== 'text' || !reach) continue;
    const { line, start, end } = used.span;
    const text = block.lines[line]!;
    to.set(
      block.firstLine + line,
      `${text.slice(0, start)}"${reach(used.text)}"${text.slice(end)}`,
    );
  }
  return (line) => to.get(line) ?? SAME;
}
