/** What a record of a job can hold: for who chooses among it. */
import { RECORD } from '../../../grammar/lines/record';
import { spoken } from '../../../shared/phrase';
import type { RecordKind } from '../../../shared/protocol/record';
import type { Job } from '../workspace/job';
import { acceptedOptions } from './agreed';

/** Their price is what the job comes to. */
const ALONE: ReadonlySet<string> = new Set(['sent', 'accepted']);

export function recordKinds(job: Job): RecordKind[] {
  const done = acceptedOptions(job);
  const options = job.options.all
    .filter(({ name }) => !done.includes(name))
    .map(({ name, title }) => ({ name, title }));
  return (RECORD.body ?? []).map(({ key, means, example }) => ({
    what: key,
    about: spoken(means),
    // Behind the word and the date.
    example: example.split(/\s+/).slice(2).join(' '),
    alone: ALONE.has(key),
    options: key === 'accepted' ? options : [],
  }));
}
