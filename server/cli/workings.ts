/**
 * Workings as steps, each made once however many figures rest on it. A working written out as a tree repeats
 * what its parts share, and grows with the square of the job; as steps it grows with the job.
 */

import type { WorkingView } from '../../shared/views';
import type { Env } from '../engine/resolve/env';
import { workingOf } from '../engine/views/working';
import type { Term } from '../engine/working/term';

export interface Step {
  readonly term: Term;
  /** The step alone: its `parts` are always empty, and stand in ours. */
  readonly view: WorkingView;
  /** Sentences that explain a count. */
  readonly detail: readonly string[];
  readonly parts: readonly Step[];
}

/** So deep that the engine's reader of workings stops at the step itself. */
const ALONE = Number.POSITIVE_INFINITY;

export class Workings {
  private readonly known = new Map<Term, Step>();

  constructor(private readonly env: Env) {}

  of(term: Term): Step {
    const known = this.known.get(term);
    if (known) return known;
    const inner = through(term);
    const step: Step = {
      term,
      view: workingOf(term, this.env, ALONE),
      detail: inner.detail?.() ?? [],
      parts: inner.args.map((arg) => this.of(arg)),
    };
    this.known.set(term, step);
    return step;
  }
}

/** A name over a sum is the sum, as the engine's reader of workings has it. */
function through(term: Term): Term {
  let inner = term;
  while (inner.op === 'named' && inner.args[0]) inner = inner.args[0];
  return inner;
}
