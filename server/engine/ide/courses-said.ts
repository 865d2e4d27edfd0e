/** A number of courses as a height, by the gauge of its own wall. */
import type { Value } from '../../../grammar/read/values';
import { phrase } from '../../../shared/phrase';
import { lengthShown } from '../brickwork/lengths';
import { showTerm } from '../views/show';
import type { Job } from '../workspace/job';
import { plain } from './markdown';
import type { Spot } from './spot';

export function coursesSaid({ block }: Spot, value: Value, job: Job): string[] {
  if (value.kind !== 'quantity' || value.unit?.dimension !== 'courses') return [];
  const home = job.homeOf(block);
  const gauge = home.workAt(block)?.facts.settingOut?.gauge;
  if (!gauge) return [];
  const ends = value.high ? [value.low, value.high] : [value.low];
  const text = ends.map((end) =>
    showTerm(lengthShown(home.env, '', end.toNumber() * gauge), home.env),
  );
  return [phrase`At the gauge of this wall: ${plain(text.join(phrase` to `))}.`];
}
