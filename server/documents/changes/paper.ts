/**
 * The note of what has changed since a quote went out, for the client: why, the work in plain words, and the price. It is
 * made of what quotes are made of, so no cost and no rate can be in it.
 */
import { type Exact, ZERO } from '../../../shared/exact';
import { type Comparison, type MoneyPart, sinceSent } from '../../engine/compare';
import { recordOf } from '../../engine/life/record';
import { showValue } from '../../engine/views/show';
import type { Job } from '../../engine/workspace/job';
import { framed } from '../framed';
import { fromLines, fromTerms } from '../from';
import type { Cell, From, Letterhead, Paper, Part, Row } from '../paper/model';
import type { ChangesWords } from '../words';
import { workParts } from './work';

/** @param between nothing where no revision holds what was sent: then only the price can be put beside the other */
export function changesPaper(
  job: Job,
  between: Comparison | undefined,
  letterhead: Letterhead | undefined,
  version: string,
): Paper {
  const sent = lastSent(job, between);
  return framed({
    job,
    letterhead,
    version,
    kind: 'changes',
    title: (words) => words.changes.title,
    parts: (words) => [
      {
        part: 'words',
        text: words.changes.since(sent && words.date(sent)),
        strong: true,
        from: fromSent(job, sent),
      },
      ...why(job, sent, words.changes),
      ...(between ? workParts(between, words) : []),
      ...price(job, between, words.changes),
    ],
  });
}

/** The day of the quote that the other revision is of; empty where none was sent. */
function lastSent(job: Job, between: Comparison | undefined): string {
  const of = between ? recordOf(between.before).sent : recordOf(job).sent;
  return of.at(-1)?.date ?? recordOf(job).sent.at(-1)?.date ?? '';
}

/** The record’s line of that day. */
function fromSent(job: Job, day: string): From {
  return () => fromLines(recordOf(job).sent.findLast(({ date }) => date === day)?.line)();
}

/** What turned up since. */
function why(job: Job, sent: string, words: ChangesWords): Part[] {
  const found = recordOf(job).found.filter(({ date }) => date >= sent);
  if (!found.length) return [];
  return [
    { part: 'heading', level: 2, text: words.why },
    {
      part: 'list',
      items: found.map(({ what }) => [what]),
      from: found.map(({ line }) => fromLines(line)),
    },
  ];
}

interface Money {
  readonly label: string;
  readonly was: Exact;
  readonly is: Exact;
}

function price(job: Job, between: Comparison | undefined, words: ChangesWords): Part[] {
  if (job.price.total.gaps.length)
    return [
      {
        part: 'warning',
        strong: words.notComplete,
        text: words.notAnOffer,
        from: fromTerms(job.price.total),
      },
    ];
  const rows = between ? compared(between, words) : kept(job, words);
  if (!rows.length) return [{ part: 'words', text: words.nothing }];
  const heads = [words.what, words.was, words.is, words.by];
  return [
    {
      part: 'together',
      parts: [
        { part: 'heading', level: 2, text: words.price },
        {
          part: 'table',
          name: 'price',
          columns: heads.map((title, i) => ({ title, holds: i ? 'number' : 'text' })),
          rows: rows.map((row, i) => rowOf(row, job, i === rows.length - 1)),
        },
      ],
    },
  ];
}

function compared({ money, before, after }: Comparison, words: ChangesWords): Money[] {
  if (!money || before.price.total.gaps.length) return [];
  const tax = taxOf(money.net, money.total);
  return [
    { label: words.net, was: money.net.before ?? ZERO, is: money.net.after ?? ZERO },
    { label: taxName(before, after, words), was: tax.was, is: tax.is },
    { label: words.total, was: money.total.before ?? ZERO, is: money.total.after ?? ZERO },
  ].filter(({ was, is }, i) => i !== 1 || !(was.isZero() && is.isZero()));
}

function taxName(before: Job, after: Job, words: ChangesWords): string {
  const names = [before, after].flatMap(({ price }) => price.taxes.map(({ name }) => name));
  return new Set(names).size === 1 ? names[0]! : words.tax;
}

function taxOf(net: MoneyPart, total: MoneyPart) {
  const of = (side: 'before' | 'after') => (total[side] ?? ZERO).sub(net[side] ?? ZERO);
  return { was: of('before'), is: of('after') };
}

/** By what the record keeps of what was sent. */
function kept(job: Job, words: ChangesWords): Money[] {
  const since = sinceSent(job);
  if (!since) return [];
  return [{ label: words.total, was: since.price.value, is: job.price.total.value }];
}

function rowOf({ label, was, is }: Money, job: Job, last: boolean): Row {
  return {
    cells: [{ text: label }, cell(was, job), cell(is, job), cell(is.sub(was), job, true)],
    role: last ? 'grand' : undefined,
    from: fromTerms(job.price.total),
  };
}

function cell(amount: Exact, { env }: Job, signed = false): Cell {
  const { code } = env.money;
  const sign = signed && amount.gt(0) ? '+' : '';
  const minus = amount.isNegative() && !amount.isZero() ? '−' : '';
  const text = `${sign}${minus}${showValue(amount.abs(), code, env)}`;
  return { text, value: amount.toFixed(), unit: code };
}
