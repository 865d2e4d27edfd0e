/** What the client has agreed to: the job with the options that were accepted, and the price that was given for it. */
import { phrase } from '../../../shared/phrase';
import { difference, sum, type Term } from '../working/term';
import type { Job } from '../workspace/job';
import { type Accepted, recordOf, type Sent } from './record';

/** Options that were accepted, of those the file has. */
export function acceptedOptions(job: Job): readonly string[] {
  const names = recordOf(job).accepted.flatMap((each) => each.options);
  return [...new Set(names)].filter((name) => job.options.named(name));
}

/** The job with the options that were accepted; the job itself where none was. */
export function agreedJob(job: Job): Job {
  if (job.taken.size) return job;
  return job.options.with(acceptedOptions(job)) ?? job;
}

/** The price that the client holds. */
export interface Fixed {
  readonly entry: (Sent | Accepted) & { readonly amount: NonNullable<Accepted['amount']> };
  readonly how: 'sent' | 'accepted';
  /** What was priced: an acceptance is of the job with its options, and so is what is sent after one. */
  readonly job: Job;
}

/** The last that was sent, or accepted at a price; nothing before one. */
export function fixedPrice(job: Job): Fixed | undefined {
  const { sent, accepted } = recordOf(job);
  const last = sent.at(-1);
  const yes = accepted.findLast((each) => each.amount);
  if (yes?.amount && (!last || !comesBefore(yes, last)))
    return { entry: { ...yes, amount: yes.amount }, how: 'accepted', job: agreedJob(job) };
  if (!last) return undefined;
  const agreed = accepted.some((each) => comesBefore(each, last));
  return { entry: last, how: 'sent', job: agreed ? agreedJob(job) : job };
}

/**
 * What the client pays, tax in it: the price that was given, and for options that were accepted since what they add;
 * what the job comes to, where none was given.
 */
export function heldPrice(job: Job): Term {
  const fixed = fixedPrice(job);
  const agreed = agreedJob(job);
  const now = agreed.price.total;
  if (!fixed) return now;
  const { amount } = fixed.entry;
  if (fixed.job === agreed) return amount;
  const more = difference(phrase`options accepted since`, now.unit, now, fixed.job.price.total);
  return more.value.isZero() ? amount : sum(phrase`Price`, now.unit, [amount, more]);
}

/** By day, and on one day by line. */
function comesBefore(a: Sent | Accepted, b: Sent | Accepted): boolean {
  if (a.date !== b.date) return a.date < b.date;
  return a.line.origin.span.line < b.line.origin.span.line;
}
