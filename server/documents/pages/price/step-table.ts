/** From cost to price as a table. */
import { showTerm } from '../../../engine/views/show';
import type { Term } from '../../../engine/working/term';
import type { Job } from '../../../engine/workspace/job';
import { rowOf, tableOf, termCell } from '../../cells';
import type { Row, Table } from '../../paper/model';
import type { PriceWords } from '../../words';
import { type PriceStep, priceSteps } from './steps';

/** What adds up what stands above it. */
const TOTALS: ReadonlySet<PriceStep['step']> = new Set(['cost', 'net']);

export function stepTable(job: Job, words: PriceWords): Table {
  const rows = priceSteps(job).map((step): Row => {
    const { from } = step;
    const row = { ...rowOf(stepLabel(step, job, words), termCell(step.amount, job)), from };
    if (step.step === 'total') return { ...row, role: 'grand' };
    return TOTALS.has(step.step) ? { ...row, role: 'total' } : row;
  });
  return tableOf('price', [words.what, words.amount], rows);
}

/** The same, each step under a key that two jobs have alike. */
export function stepLines(job: Job, words: PriceWords) {
  const seen = new Map<string, number>();
  return priceSteps(job).map((step) => {
    const name = `${step.step} ${step.title}`;
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    const label = step.amount.label || plainLabel(step, words);
    return { key: `${name} ${count}`, label, term: step.amount };
  });
}

/** Without what it is made of: a rate that is another is no other step. */
function plainLabel({ step, title }: PriceStep, words: PriceWords): string {
  return step === 'tax' ? words.tax(title, '') : words.steps[step]({ title, time: '', rate: '' });
}

function stepLabel({ step, title, ...of }: PriceStep, { env }: Job, words: PriceWords): string {
  const text = (term: Term | undefined) => (term ? showTerm(term, env) : '');
  if (step !== 'tax') return words.steps[step]({ title, time: text(of.time), rate: text(of.rate) });
  if (!of.tax) return words.tax(title, text(of.rate));
  const { owed, rate, base, category } = of.tax;
  if (owed) return words.taxOwed(title, text(owed.rate), text(base), text(owed.tax));
  return category === 'E'
    ? words.noTax(title, text(base))
    : words.taxOn(title, text(rate), text(base));
}
