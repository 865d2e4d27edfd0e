/** Which job a paper is of: its title, its reference, where and for whom. */
import type { Job } from '../engine/workspace/job';
import { fromBlock, fromOwn, ownFacts } from './from';
import type { Fact, From } from './paper/model';
import type { Words } from './words';

export interface AboutJob {
  readonly title: string;
  readonly ref: string;
  /** ISO 8601; empty where the job names none. */
  readonly date: string;
  /** Only what the file says. */
  readonly rows: readonly Fact[];
  /** Of its title. */
  readonly from: From;
}

/** Its reference, else its title; empty where it says neither. */
export function calledBy(job: Job): string {
  const of = ownFacts(job);
  return of?.line('ref')?.word('ref') || of?.title || '';
}

export function jobFacts(
  job: Job,
  { date: inWords, quote: { facts, brickwork } }: Words,
): AboutJob {
  const of = ownFacts(job);
  // What is still to be filled in is left out.
  const texts = (key: string) => of?.lines(key).flatMap((line) => line.word(key) || []) ?? [];
  const [ref = ''] = texts('ref');
  const [date = ''] = texts('date');
  const rows: Fact[] = [
    { label: facts.client, lines: texts('client'), from: fromOwn(job, 'client') },
    { label: facts.site, lines: texts('site'), from: fromOwn(job, 'site') },
    { label: facts.ref, lines: [ref].filter(Boolean), from: fromOwn(job, 'ref') },
    { label: facts.date, lines: date ? [inWords(date)] : [], from: fromOwn(job, 'date') },
  ];
  return {
    title: of?.title || brickwork,
    ref,
    date,
    rows: rows.filter((r) => r.lines.length),
    from: fromBlock(of?.block),
  };
}
