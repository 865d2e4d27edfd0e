/** Which quote a quote takes the place of, by what the record says was sent. */
import { recordOf } from '../../engine/life/record';
import type { Job } from '../../engine/workspace/job';

/**
 * The day of the quote before this one; empty where this is the first. One of the day and at the price of the last that
 * was sent is that quote, printed again.
 * @param date of this quote; empty where the job names none
 */
export function replacedQuote(job: Job, date: string): string {
  const { sent } = recordOf(job);
  const last = sent.at(-1);
  if (!last) return '';
  const again = date <= last.date && last.amount.value.eq(job.price.total.value);
  return (again ? sent.at(-2) : last)?.date ?? '';
}
