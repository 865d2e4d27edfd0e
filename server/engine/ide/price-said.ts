/** Where a price under the pointer comes from, and what its line comes to in this job. */
import type { Value } from '../../../grammar/read/values';
import { phrase } from '../../../shared/phrase';
import { wordOf } from '../resolve/book';
import type { Job } from '../workspace/job';
import { sourceOf } from './defaults';
import { moneyHints } from './hints/money';
import { plain } from './markdown';
import type { Spot } from './spot';

export function priceSaid(spot: Spot, value: Value, job: Job): string[] {
  const { read, block } = spot;
  if (value.kind !== 'money' || !read) return [];
  const source = sourceOf({ line: read, block });
  const merchant = block.read.heading?.body.find((line) => line.kind.key === 'merchant');
  const of = wordOf(merchant?.values.merchant);
  return [
    ...(of ? [phrase`Bought from ${plain(of)}.`] : []),
    ...(source ? [phrase`Where it comes from: ${plain(source)}.`] : []),
    ...comesTo(spot, job),
  ];
}

function comesTo({ block, line }: Spot, job: Job): string[] {
  const hint = moneyHints(block, job.homeOf(block)).find((each) => each.line === line);
  const text = hint?.parts.map((part) => part.text).join(' · ');
  return text ? [phrase`In this job: ${plain(text)}.`] : [];
}
