/** What is bought, and what it costs. What is printed adds up: every part is shown to the digits it is summed with. */
import { phrase } from '../../../shared/phrase';
import { showTerm } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { numberAndUnit, table } from './table';

/** Everything bought: what the work takes, what is bought of it, and what that costs. */
export function buying(job: Job): string[] {
  const { purchases, materials } = job.price;
  if (!purchases.length) return [];
  const rows = purchases.map((p) => [
    p.title,
    ...quantity(p.needed, job),
    ...quantity(p.bought, job),
    money(p.cost, job),
  ]);
  const head = ['', phrase`needed`, '', phrase`to buy`, '', phrase`cost`];
  const last = [phrase`Materials`, '', '', '', '', money(materials, job)];
  return table([head, ...rows, last], ['left', 'right', 'left', 'right', 'left', 'right']);
}

function quantity(term: Term, job: Job): [string, string] {
  return term.gaps.length && term.value.isZero()
    ? ['?', '']
    : numberAndUnit(showTerm(term, job.env));
}

/** A cost that is not known at all is a question mark, never a nought. */
export function money(term: Term, job: Job): string {
  return term.gaps.length && term.value.isZero() ? '?' : showTerm(term, job.env);
}
