/** What keeps the price from being complete: each thing missing, once, where it would be said. */
import { phrase } from '../../../../shared/phrase';
import type { Gap, Term } from '../../working/term';
import type { SourceBlock } from '../../workspace/source';
import { headOrigin, type Remark } from '../remark';

/** Gaps that stand in another file are told at the job’s own heading. */
export function incomplete(price: Term, home: SourceBlock): Remark[] {
  const told = new Map<string, Gap>();
  for (const gap of price.gaps)
    if (!told.has(gap.what) && !saidAlready(gap, home)) told.set(gap.what, gap);
  return [...told.values()].map((gap) => {
    const here = gap.origin?.block.file === home.file;
    const message = phrase`The price is not complete: ${gap.what}. The other totals stand.`;
    return {
      code: 'incomplete',
      severity: 'warning',
      origin: here ? gap.origin! : headOrigin(home),
      message,
    };
  });
}

/** By the finding of the line itself, where the reader has that line before him. */
function saidAlready(gap: Gap, home: SourceBlock): boolean {
  return gap.told === true && gap.origin?.block.file === home.file;
}
