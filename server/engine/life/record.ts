/** What has happened to a job, as its record says it. */

import type { ReadLine } from '../../../grammar/read/values';
import { phrase } from '../../../shared/phrase';
import { inUnit } from '../brickwork/lengths';
import { wordOf } from '../resolve/book';
import { type Env, LineFacts } from '../resolve/env';
import { product, type Term } from '../working/term';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { namesIn } from './option';

/** A line of the record. Dates are as written, `2026-03-02`, and so in order as texts. */
export interface Entry {
  readonly line: LineFacts;
  readonly date: string;
}

export interface Paying extends Entry {
  readonly amount: Term;
}

/** The quote went out; the price has the tax in it. `was` by id. */
export interface Sent extends Paying {
  readonly was: readonly Was[];
}

export interface Accepted extends Entry {
  readonly options: readonly string[];
  /** Where it was said: tax in it. */
  readonly amount?: Term;
  readonly was: readonly Was[];
}

/** What a figure was. */
export interface Was {
  readonly id: string;
  readonly value: Term;
}

/** What turned up. */
export interface Found extends Entry {
  readonly what: string;
}

export interface Lost extends Entry {
  readonly why: string;
}

export interface Worked extends Entry {
  readonly people: Term;
  /** Of all of them together. */
  readonly hours: Term;
  /** A word of the output block; empty where none is said. */
  readonly task: string;
  readonly amount?: Term;
}

export const PARTS = ['materials', 'labour', 'travel', 'others'] as const;
export type Part = (typeof PARTS)[number];

/** Before tax. */
export interface Spent extends Paying {
  readonly what: string;
  readonly part: Part;
}

export interface Invoiced extends Paying {
  readonly number: string;
  readonly what: string;
}

export interface Paid extends Paying {
  /** Kept back by the client as the firm’s tax: settled all the same. */
  readonly deducted?: Term;
  readonly what: string;
}

export interface Retained extends Paying {
  readonly until?: string;
}

/** In each list the earliest first; of one day as written. */
export interface JobRecord {
  readonly block?: SourceBlock;
  readonly sent: readonly Sent[];
  readonly accepted: readonly Accepted[];
  readonly lost?: Lost;
  readonly found: readonly Found[];
  readonly worked: readonly Worked[];
  readonly spent: readonly Spent[];
  readonly invoiced: readonly Invoiced[];
  readonly paid: readonly Paid[];
  readonly retained: readonly Retained[];
  readonly released: readonly Paying[];
}

const EMPTY: JobRecord = {
  sent: [],
  accepted: [],
  found: [],
  worked: [],
  spent: [],
  invoiced: [],
  paid: [],
  retained: [],
  released: [],
};

const kept = new WeakMap<SourceBlock, { readonly env: Env; readonly record: JobRecord }>();

/** Of the job’s own file. */
export function recordOf(job: Job): JobRecord {
  const [block] = job.book.blocksOf('record');
  if (!block || block.file.name !== job.file.name) return EMPTY;
  const known = kept.get(block);
  if (known?.env === job.env) return known.record;
  const record = read(block, job.env);
  kept.set(block, { env: job.env, record });
  return record;
}

function read(block: SourceBlock, env: Env): JobRecord {
  const lines = (block.read.heading?.body ?? []).filter((l) => l.values.date);
  const of = <T>(key: string, make: (line: LineFacts, of: ReadLine) => T): (T & Entry)[] =>
    lines
      .filter((l) => l.kind.key === key)
      .map((l) => new LineFacts(block, l, env))
      .map((line) => ({ ...make(line, line.line), line, date: line.word('date') }))
      .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  const was = (l: ReadLine) => wasIn(l, block, env);
  return {
    block,
    sent: of('sent', (line, l) => ({ amount: line.term('money', phrase`Sent`), was: was(l) })),
    accepted: of('accepted', (line, l) => ({
      options: namesIn(line.values.options),
      amount: line.values.money && line.term('money', phrase`Accepted`),
      was: was(l),
    })),
    lost: of('lost', (line) => ({ why: line.word('why') })).at(-1),
    found: of('found', (line) => ({ what: line.word('what') })),
    worked: of('worked', worked),
    spent: of('spent', spent),
    invoiced: of('invoiced', (line) => ({
      amount: line.term('money', phrase`Invoiced`),
      number: line.word('number'),
      what: line.word('what'),
    })),
    paid: of('paid', (line) => ({
      amount: line.term('money', phrase`Paid`),
      deducted: line.values.deducted && line.term('deducted', phrase`Deducted`),
      what: line.word('what'),
    })),
    retained: of('retained', (line) => ({
      amount: line.term('money', phrase`Held back`),
      until: line.word('until') || undefined,
    })),
    released: of('released', (line) => ({ amount: line.term('money', phrase`Released`) })),
  };
}

function worked(line: LineFacts): Omit<Worked, keyof Entry> {
  const people = line.term('people', phrase`people`, '');
  const each = inUnit(line.term('hours', phrase`hours of each`), 'h');
  const hours = product(phrase`Worked on ${line.word('date')}`, 'h', [people, each]);
  const amount = line.values.amount && line.term('amount', phrase`Done on ${line.word('date')}`);
  return { people, hours, task: line.word('task'), amount };
}

function spent(line: LineFacts): Omit<Spent, keyof Entry> {
  const said = line.word('for');
  const part = PARTS.find((each) => each === said) ?? 'materials';
  const what = line.word('what');
  return { amount: line.term('money', what || phrase`Spent`), what, part };
}

function wasIn({ body }: ReadLine, block: SourceBlock, env: Env): Was[] {
  return body
    .filter((l) => l.values.figure)
    .map((l) => {
      const id = wordOf(l.values.figure);
      const line = new LineFacts(block, l, env);
      const key = l.values.money ? 'money' : 'value';
      return { id, value: line.term(key, phrase`${id}, then`) };
    });
}
