/** What is left of the price, what an hour earns, and what a price that is agreed would have been. */
import { showTerm } from '../../../engine/views/show';
import type { Job } from '../../../engine/workspace/job';
import { rowOf, tableOf, tableUnder, termCell } from '../../cells';
import { fromLines, fromTerms } from '../../from';
import type { Part } from '../../paper/model';
import type { PriceWords } from '../../words';

/** Nothing while the price is not complete. */
export function leavesPart(job: Job, words: PriceWords): Part[] {
  const { leaves, margin, earns, asked, deductions } = job.price;
  if (leaves.gaps.length) return [];
  const show = (term: typeof leaves) => showTerm(term, job.env);
  const rows = [
    rowOf(words.profit, termCell(leaves, job), {
      text: words.ofPrice(show(margin)),
      from: fromTerms(margin),
    }),
    ...(earns ? [rowOf(words.earns, termCell(earns, job), words.earnsIs)] : []),
    ...(asked ? [rowOf(words.asked, termCell(asked.price, job), words.askedIs)] : []),
    ...deductions.map(({ title, amount, rate, base, line }) => ({
      ...rowOf(title, termCell(amount, job), words.keptBack(show(rate), show(base))),
      from: fromLines(line),
    })),
  ];
  return tableUnder(words.leaves, tableOf('leaves', [words.what, words.amount, ''], rows, [1]));
}
