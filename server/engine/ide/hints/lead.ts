/** The line that a figure came from: outside its own block where there is one, since that block is in front of the reader. */
import type { Place } from '../../../../shared/span';
import type { Origin, Term } from '../../working/term';
import type { SourceBlock } from '../../workspace/source';

/** A price hangs on thousands of figures; what decides it is near the top. */
const MOST = 400;

/** The nearest fact below the figure, looked for level by level. */
export function leadOf(term: Term, own: SourceBlock): Place | undefined {
  let near: Origin | undefined;
  for (const origin of originsBelow(term)) {
    if (origin.block !== own) return origin.block.place(origin.span);
    near ??= origin;
  }
  return near?.block.place(near.span);
}

function* originsBelow(term: Term): Generator<Origin> {
  const waiting: Term[] = [term];
  const seen = new Set<Term>(waiting);
  for (let at = 0; at < waiting.length && at < MOST; at++) {
    const each = waiting[at]!;
    if (each.op === 'fact' && each.origin) yield each.origin;
    for (const arg of each.args) if (!seen.has(arg)) seen.add(arg) && waiting.push(arg);
  }
}
