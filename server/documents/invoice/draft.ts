/** Why an invoice may not go out yet. */
import type { Job } from '../../engine/workspace/job';
import { languageOf } from '../letterhead';
import { hasErrors } from '../used';
import { wordsFor } from '../words';
import type { Made } from './make';

/** In words of the paper; nothing where it may. @param given the job before options were taken of it */
export function draftOf({ invoice, job }: Made, given: Job): string | undefined {
  const words = wordsFor(languageOf(job)).invoice.why;
  if (hasErrors(given)) return words.errors;
  if (job.price.total.gaps.length) return words.gaps;
  if (!invoice.number) return words.noNumber;
  return invoice.issued ? undefined : words.noDate;
}
