/** Options as --json prints them. */
import { acceptedOptions } from '../../engine/life/agreed';
import type { Job } from '../../engine/workspace/job';
import { amountJson } from './measure';

/** Left out for a job without any, and where some are taken. */
export function optionsJson(job: Job) {
  const { priced } = job.options;
  if (job.taken.size || !priced.length) return undefined;
  const accepted = new Set(acceptedOptions(job));
  return priced.map(({ name, title, excludes, more, price, notes }) => ({
    name,
    title,
    notes,
    notWith: excludes,
    accepted: accepted.has(name),
    complete: price.total.gaps.length === 0,
    more: { net: amountJson(more.net, job), total: amountJson(more.total, job) },
    price: { net: amountJson(price.net, job), total: amountJson(price.total, job) },
  }));
}
