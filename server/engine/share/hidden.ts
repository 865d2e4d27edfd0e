/** What a copy must not say of a job: amounts of money that it holds or comes to, and who it is for. */
import type { ReadLine, Value } from '../../../grammar/read/values';
import { agreedJob } from '../life/agreed';
import { wordOf } from '../resolve/book';
import { allFigures } from '../views/job-view';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { digitsOf, type Hidden, moneyWord, namesIn } from './texts';

export function hiddenIn(job: Job, blocks: readonly SourceBlock[], withClient: boolean): Hidden {
  const amounts = new Set([...blocks.flatMap(written), ...workedOut(job)]);
  const names = withClient ? [] : [...new Set(clientNames(job))];
  // The longest first, so that none of its words is left behind.
  return {
    codes: codesOf(job),
    moneyWord: moneyWord(moneyWords(job)),
    amounts,
    names: names.sort((a, b) => b.length - a.length),
  };
}

/** In the lines of the job and of the files it uses. */
function written({ read }: SourceBlock): string[] {
  return read.heading ? ofLine(read.heading) : [];
}

function ofLine({ values, body }: ReadLine): string[] {
  return [...Object.values(values).flatMap(ofValue), ...body.flatMap(ofLine)];
}

function ofValue(value: Value | undefined): string[] {
  if (value?.kind === 'list') return value.of.flatMap((of) => Object.values(of).flatMap(ofValue));
  if (value?.kind !== 'money') return [];
  return [value.amount, value.high].flatMap((each) => (each ? digitsOf(each) : []));
}

/** Of the job as it is and as it was agreed. */
function workedOut(job: Job): string[] {
  const jobs = new Set([job, agreedJob(job)]);
  return [...jobs].flatMap((each) =>
    allFigures(each)
      .filter(({ term }) => term.unit === each.env.money.code)
      .flatMap(({ term }) => digitsOf(term.value)),
  );
}

function codesOf(job: Job): ReadonlySet<string> {
  const lines = job.book.blocksOf('currencies').flatMap((b) => b.read.heading?.body ?? []);
  const known = lines.map((line) => line.syntax.key?.text.toUpperCase() ?? '');
  return new Set([...known, job.env.money.code]);
}

/** In every language that a file of the job knows: who writes a text says nowhere in which. */
function moneyWords(job: Job): string[] {
  return job.book
    .all('defaults', 'money-words')
    .flatMap(({ line: { values } }) => (values.words?.kind === 'list' ? values.words.of : []))
    .map(({ word }) => wordOf(word));
}

/** The client, the site, and who is billed, with all that is said of them. */
function clientNames({ file }: Job): string[] {
  const texts = file.blocks.flatMap(({ kind, read: { heading } }) => {
    if (kind === 'job')
      return (heading?.body ?? [])
        .filter((l) => ['client', 'site'].includes(l.kind.key))
        .map((l) => wordOf(l.values.client ?? l.values.site));
    if (kind !== 'bill-to' || !heading) return [];
    return [heading, ...heading.body].map((l) => wordOf(l.values.name ?? l.values.text));
  });
  return texts.flatMap(namesIn);
}
