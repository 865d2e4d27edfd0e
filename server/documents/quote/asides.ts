/** What a firm should know before a quote goes out, and its client is not told. */
import { phrase } from '../../../shared/phrase';
import { inJobsAlike } from '../../engine/views/alike';
import { showTerm } from '../../engine/views/show';
import type { Job } from '../../engine/workspace/job';
import { leftBlank } from '../blanks';
import { chargesUnregistered } from '../letterhead';

/** @param draft why it is no quote yet */
export function quoteAsides(job: Job, draft: string | undefined): string[] {
  const { spread, env } = job;
  const [low, high] = spread ? [spread.low, spread.high].map((end) => showTerm(end, env)) : [];
  return [
    spread && !draft
      ? phrase`The job has ranges; ${inJobsAlike(env)} the price is ${low} to ${high}.`
      : '',
    chargesUnregistered(job) ? noTaxNumber() : '',
    job.book.blocksOf('firm').length ? '' : phrase`No firm block says whose quote this is.`,
    ...leftBlank(job),
  ].filter(Boolean);
}

/** The same before an invoice. */
export function invoiceAsides(job: Job): string[] {
  return [...(chargesUnregistered(job) ? [noTaxNumber()] : []), ...leftBlank(job)];
}

/** Beside a paper that charges tax. */
function noTaxNumber(): string {
  return phrase`The firm’s block gives no tax-number, and tax is charged. Who is not registered writes in the job: tax none "why".`;
}
