/** What hangs on a range: told where the pointer is on it. */
import type { Value } from '../../../grammar/read/values';
import type { Job } from '../workspace/job';
import { plain } from './markdown';
import type { Spot } from './spot';
import { rangeOf } from './totals';

export function rangeSaid(spot: Spot, value: Value, job: Job): string[] {
  const ranged = (value.kind === 'quantity' || value.kind === 'money') && value.high;
  if (!ranged) return [];
  const { ranges = [] } = job.spread ?? {};
  const at = ranges.findIndex((r) => r.origin.block === spot.block && r.value === value);
  // A price that lacks something may come to hang on it yet.
  if (at < 0) return job.price.total.gaps.length ? [] : ['The price does not hang on this range.'];
  const share = Math.round(ranges[at]!.share * 100);
  const first =
    at === 0 && ranges.length > 1 ? ' Nothing else counts as much: measure it first.' : '';
  const between = plain(rangeOf(job)!);
  return [
    `${share}% of what the price may move by hangs on this range alone.${first} In eight of ten jobs alike the price is ${between}.`,
  ];
}
