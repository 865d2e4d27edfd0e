/** Which job a paper is of: its title, its reference, where and for whom. */
import { factsOf } from '../engine/resolve/env';
import type { Job } from '../engine/workspace/job';
import type { Fact } from './paper/model';
import type { Words } from './words';

export interface AboutJob {
  readonly title: string;
  readonly ref: string;
  /** ISO 8601; empty where the job names none. */
  readonly date: string;
  /** Only what the file says. */
  readonly rows: readonly Fact[];
}

export function jobFacts(
  job: Job,
  { date: inWords, quote: { facts, brickwork } }: Words,
): AboutJob {
  const block = job.file.blocks.find((b) => b.kind === 'job');
  const of = block && factsOf(block, job.env);
  const texts = (key: string) => of?.lines(key).map((line) => line.word(key)) ?? [];
  const [ref = ''] = texts('ref');
  const [date = ''] = texts('date');
  const rows: Fact[] = [
    { label: facts.client, lines: texts('client') },
    { label: facts.site, lines: texts('site') },
    { label: facts.ref, lines: [ref].filter(Boolean) },
    { label: facts.date, lines: date ? [inWords(date)] : [] },
  ];
  return { title: of?.title || brickwork, ref, date, rows: rows.filter((r) => r.lines.length) };
}
