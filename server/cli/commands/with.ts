/** --with: the job with options taken. */
import { later, phrase } from '../../../shared/phrase';
import type { Given, Option } from '../args';
import { WrongUse } from '../exits';
import type { Opened } from '../session';
import type { Batch } from './command';

export const WITH: Option = {
  name: '--with',
  value: 'OPTIONS',
  about: later`with these options of the job taken, commas between them`,
};

/** @throws WrongUse for an option that a file does not have */
export function withOptions(batch: Batch, given: Given): Batch {
  const said = given.value(WITH.name);
  if (said === undefined) return batch;
  const names = said
    .split(',')
    .map((name) => name.trim())
    .filter(Boolean);
  return { ...batch, opened: batch.opened.map((opened) => withNames(opened, names)) };
}

function withNames({ job, shown }: Opened, names: readonly string[]): Opened {
  const missing = names.find((name) => !job.options.named(name));
  if (missing !== undefined) {
    const known = job.options.all.map((option) => option.name).join(', ');
    const there = known ? phrase`It has ${known}.` : phrase`It has none.`;
    throw new WrongUse(phrase`${shown} has no option ${missing}. ${there}`);
  }
  return { job: job.options.with(names)!, shown };
}
