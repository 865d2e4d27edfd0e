/** What hangs on a range: told where the pointer is on it. */

import type { Value } from '../../../grammar/read/values';
import { phrase } from '../../../shared/phrase';
import { rangeKey } from '../resolve/env';
import { ofJobsAlike } from '../views/alike';
import type { Job } from '../workspace/job';
import { plain } from './markdown';
import type { Spot } from './spot';
import { rangeOf } from './totals';

export function rangeSaid(spot: Spot, value: Value, job: Job): string[] {
  if (value.kind === 'size')
    return value.sides.flatMap((side) => (side.high ? saidOf(side, spot, job) : []));
  const ranged = (value.kind === 'quantity' || value.kind === 'money') && value.high;
  return ranged ? saidOf(value, spot, job) : [];
}

/** `value`: what the range is known by. */
function saidOf(value: object, spot: Spot, job: Job): string[] {
  const { ranges = [] } = job.spread ?? {};
  const key = rangeKey(spot.block, value);
  const at = ranges.findIndex((r) => r.key === key);
  // A price that lacks something may come to hang on it yet.
  if (at < 0)
    return job.price.total.gaps.length ? [] : [phrase`The price does not hang on this range.`];
  const share = Math.round(ranges[at]!.share * 100);
  const first =
    at === 0 && ranges.length > 1 ? phrase` Nothing else counts as much: measure it first.` : '';
  const between = plain(rangeOf(job)!);
  return [
    phrase`${share}% of what the price may move by hangs on this range alone.${first} ${ofJobsAlike(job.env)} the price is ${between}.`,
  ];
}
