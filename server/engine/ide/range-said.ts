/** What hangs on a range: told where the pointer is on it. */

import type { Value } from '../../../grammar/read/values';
import { phrase } from '../../../shared/phrase';
import type { Place } from '../../../shared/span';
import { rangeKey } from '../resolve/env';
import { ofJobsAlike } from '../views/alike';
import { rangePlace, rangeText } from '../views/measure';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { code, plain, whereOf } from './markdown';
import type { Spot } from './spot';
import { rangeOf } from './totals';
import type { Linker } from './types';

export function rangeSaid(spot: Spot, value: Value, job: Job): string[] {
  if (value.kind === 'size')
    return value.sides.flatMap((side) => (side.high ? rangeTold(side, spot.block, job) : []));
  const ranged = (value.kind === 'quantity' || value.kind === 'money') && value.high;
  return ranged ? rangeTold(value, spot.block, job) : [];
}

/** `value`: what the range is known by. */
export function rangeTold(value: object, block: SourceBlock, job: Job): string[] {
  const { ranges = [] } = job.spread ?? {};
  const key = rangeKey(block, value);
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

/** More than so many no one measures before the others. */
const MOST = 5;

/** The ranges that the price most hangs on, each with a way to its line; and where the first of them stands. */
export function rangesTold({ spread }: Job, link: Linker): { text: string; place?: Place } {
  const ranges = spread?.ranges ?? [];
  const lines = ranges.slice(0, MOST).map((range) => {
    const place = rangePlace(range);
    const share = `${Math.round(range.share * 100)}%`;
    return `- **${share}** — ${code(rangeText(range))} ${link(whereOf(place), place)}`;
  });
  const more = ranges.length > MOST ? ['- …'] : [];
  const text = [phrase`What the price may move by hangs on:`, '', ...lines, ...more].join('\n');
  return ranges.length ? { text, place: rangePlace(ranges[0]!) } : { text: '' };
}
