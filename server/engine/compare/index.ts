/**
 * Two revisions of a job by what they mean: work, facts, quantities, money, cautions and findings. What does not
 * count (comments, layout, how a length is written) is no difference. Pure, and the same both ways round.
 */
import type { Finding } from '../../../shared/finding';
import type { Job } from '../workspace/job';
import { type FactChange, ownFacts } from './facts';
import { type FigureChange, jobFigureChanges, workFigureChanges } from './figures';
import { type MoneyChange, moneyChange } from './money';
import { type CautionChange, cautionChanges, findingChanges, type NewAndGone } from './told';
import { usedFacts } from './used';
import { reordered, type WorkIn, type WorkPair, workPairs } from './work';

export type { FactChange } from './facts';
export type { FigureChange } from './figures';
export { type LineChange, saidChange } from './lines';
export type { MoneyPart } from './money';
export { type SaidLine, saidBlock } from './said';
export type { CautionChange } from './told';
export { type SinceSent, sinceSent } from './was';
export type { WorkIn, WorkPair } from './work';

/**
 * A piece of work that is new, gone, has another name, says something else or takes something else. That its part of
 * the price is another, since rates or other work are, is no change of it.
 */
export interface WorkChange extends WorkPair {
  readonly change: 'new' | 'gone' | 'renamed' | 'changed';
  readonly figures: readonly FigureChange[];
}

export interface Comparison {
  readonly before: Job;
  readonly after: Job;
  /** Every piece of work of both, changed or not. */
  readonly pairs: readonly WorkPair[];
  readonly work: readonly WorkChange[];
  /** The same pieces of work stand in another order, as papers tell them. */
  readonly reordered: boolean;
  /** The job’s own first, then those of the files it uses that count in it. */
  readonly facts: readonly FactChange[];
  /** Facts of used files that are others and do not count in this job. */
  readonly idle: number;
  /** Of the job as a whole; those of each piece of work stand with it. */
  readonly figures: readonly FigureChange[];
  /** Left out where the two have no price to put beside each other. */
  readonly money?: MoneyChange;
  readonly cautions: NewAndGone<CautionChange>;
  readonly findings: NewAndGone<Finding>;
  /** Nothing that counts has changed. */
  readonly nothing: boolean;
}

export function compared(before: Job, after: Job): Comparison {
  const pairs = workPairs(before, after);
  const used = usedFacts(before, after);
  const found = {
    work: pairs.flatMap((pair) => workChange(pair, before, after)),
    reordered: reordered(pairs),
    facts: [...ownFacts(before, after), ...used.facts],
    figures: jobFigureChanges(before, after),
    cautions: cautionChanges(before, after, pairs),
    findings: findingChanges(before, after, pairs),
  };
  const money = moneyChange(before, after, pairs);
  const { work, facts, figures, cautions, findings } = found;
  const lists = [work, facts, figures, cautions.new, cautions.gone, findings.new, findings.gone];
  const nothing = !found.reordered && lists.every((list) => !list.length);
  return { before, after, pairs, ...found, idle: used.idle, money, nothing };
}

function workChange(pair: WorkPair, before: Job, after: Job): WorkChange[] {
  const figures = workFigureChanges(pair, before, after);
  const change = kindOf(pair);
  const takes = figures.some(({ money }) => !money);
  if (change === 'changed' && !pair.lines.length && !takes) return [];
  return [{ ...pair, change, figures }];
}

function kindOf({ before, after }: { readonly before?: WorkIn; readonly after?: WorkIn }) {
  if (!before) return 'new';
  if (!after) return 'gone';
  return before.name === after.name ? 'changed' : 'renamed';
}
