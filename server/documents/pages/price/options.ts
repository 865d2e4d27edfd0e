/** Options side by side: what each adds, and what the job comes to with it. */
import { acceptedOptions, agreedJob, heldPrice } from '../../../engine/life/agreed';
import type { PricedOption } from '../../../engine/life/priced';
import { showTerm } from '../../../engine/views/show';
import type { Job } from '../../../engine/workspace/job';
import { rowOf, tableOf, termCell, under } from '../../cells';
import { fromBlock, fromTerms } from '../../from';
import type { Part } from '../../paper/model';
import type { PriceWords } from '../../words';

/** Of the job without options; with some taken they are told at its head. */
export function optionsPart(job: Job, words: PriceWords): Part[] {
  const { priced } = job.options;
  if (job.taken.size || !priced.length) return [];
  const accepted = acceptedOptions(job);
  const heads = [words.option, words.beforeTax, words.withTax, words.priceWith, ''];
  const rows = priced.map((option) => {
    const { title, more, price } = option;
    const cells = [more.net, more.total, price.total].map((term) => termCell(term, job));
    const row = rowOf(title, ...cells, notesOf(option, accepted, words));
    return { ...row, from: fromBlock(option.block) };
  });
  const table = tableOf('options', heads, rows, [1, 2, 3]);
  return under(words.options, table, ...agreed(job, accepted, words));
}

function notesOf(
  { name, excludes, price }: PricedOption,
  accepted: readonly string[],
  words: PriceWords,
): string {
  const notes = [
    accepted.includes(name) ? words.accepted : '',
    excludes.length ? words.notWith(excludes) : '',
    price.total.gaps.length ? words.incomplete : '',
  ];
  return notes.filter(Boolean).join('; ');
}

function agreed(job: Job, accepted: readonly string[], words: PriceWords): Part[] {
  if (!accepted.length) return [];
  const total = showTerm(agreedJob(job).price.total, job.env);
  const held = showTerm(heldPrice(job), job.env);
  const text = words.asAccepted(accepted, total, held === total ? '' : held);
  return [{ part: 'words', text, from: fromTerms(agreedJob(job).price.total) }];
}
