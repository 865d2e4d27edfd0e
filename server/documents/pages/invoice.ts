/** An invoice by what was asked for, as a paper and as an electronic one. */
import { exact } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import type { PageOptions } from '../../../shared/protocol/pages';
import type { Job } from '../../engine/workspace/job';
import { draftOf } from '../invoice/draft';
import { type Made as Invoiced, invoiceOf } from '../invoice/make';
import { invoicePaper } from '../invoice/paper';
import { invoiceUbl, lacking } from '../invoice/ubl';
import { invoiceAsides } from '../quote';
import { hasErrors } from '../used';
import { dayOf } from '../words/dates';
import type { Made, Making } from './kinds';

export function makeInvoice({ job, head, version, options, form }: Making): Made | string {
  const { number, stage, amount, date } = options;
  const wrong = wrongIn(options);
  if (wrong) return wrong;
  const asked = { number, stage, date, amount: amount === undefined ? undefined : exact(amount) };
  const made = invoiceOf(job, asked);
  if (typeof made === 'string') return made;
  const lacks = [...lacking(made.invoice), ...unfinished(made, job)];
  if (form === 'xml' && lacks.length)
    return phrase`An electronic invoice needs ${lacks.join('; ')}.`;
  return {
    paper: invoicePaper(made, head, draftOf(made, job), version),
    asides: invoiceAsides(made.job),
    ...(form === 'xml' ? { xml: invoiceUbl(made.invoice) } : {}),
  };
}

/** More digits than any invoice has are taken for no amount. */
const AMOUNT = /^\d{1,15}(\.\d{1,6})?$/;

function wrongIn({ amount, date }: PageOptions): string | undefined {
  if (amount !== undefined && !AMOUNT.test(amount))
    return phrase`${amount} is no amount. Write it like this: 362.50.`;
  if (date !== undefined && !dayOf(date))
    return phrase`${date} is no date. Write it like this: 2026-03-02.`;
  return undefined;
}

/** A document of UBL has no place that says it is a draft: so none is made of what is no invoice yet. */
function unfinished({ job }: Invoiced, given: Job): string[] {
  if (hasErrors(given)) return [phrase`a job without errors`];
  return job.price.total.gaps.length ? [phrase`a price that is complete`] : [];
}
