/** The price of a job as its firm reads it: each piece of work, what is bought, from cost to price, and what is left of it. */

import type { Work } from '../../../engine/brickwork/work';
import { betweenOf } from '../../../engine/ranges/spread';
import type { LineFacts } from '../../../engine/resolve/env';
import { workFigures } from '../../../engine/views/job-view';
import { missingOf, showTerm } from '../../../engine/views/show';
import type { Term } from '../../../engine/working/term';
import type { Job } from '../../../engine/workspace/job';
import { ordersOf } from '../../buying/list';
import { orderTable } from '../../buying/table';
import { rowOf, tableOf, tableUnder, termCell, under } from '../../cells';
import { framed } from '../../framed';
import { fromAll, fromBlock, fromLines, fromOrigins, fromTerms } from '../../from';
import type { Letterhead, Paper, Part, Row, Table } from '../../paper/model';
import { titleOf } from '../../quote/work';
import type { PriceWords, Words } from '../../words';
import { leavesPart } from './leaves';
import { optionsPart } from './options';
import { stepTable } from './step-table';

export function pricePage(job: Job, letterhead: Letterhead | undefined, version: string): Paper {
  return framed({
    job,
    letterhead,
    version,
    kind: 'price',
    title: (words) => words.pages.price.title,
    parts: (words) => partsOf(job, words),
    foot: (words) => words.pages.forFirm,
  });
}

function partsOf(job: Job, words: Words): Part[] {
  const { price } = words.pages;
  return [
    ...gaps(job, price),
    ...taken(job, price),
    ...under(price.toPrice, stepTable(job, price), ...range(job, price)),
    ...leavesPart(job, price),
    ...stages(job, price),
    ...optionsPart(job, price),
    ...tableUnder(price.works, works(job, words)),
    ...job.works.flatMap((work) => figures(work, job, words)),
    ...buying(job, words),
  ];
}

function gaps({ price }: Job, words: PriceWords): Part[] {
  const missing = missingOf(price.total);
  return missing.length
    ? [
        {
          part: 'warning',
          strong: words.incomplete,
          text: missing.join('; '),
          from: fromOrigins(...price.total.gaps.map(({ origin }) => origin)),
        },
      ]
    : [];
}

function taken(job: Job, words: PriceWords): Part[] {
  return job.taken.size ? [{ part: 'words', text: words.taken([...job.taken]) }] : [];
}

/** Between what and what it lies, where a range moves it. */
function range({ spread, env, price }: Job, words: PriceWords): Part[] {
  if (!spread) return [];
  const [low, high] = [spread.low, spread.high].map((end) => showTerm(end, env));
  const text = words.between(percentAlike(env), low!, high!);
  return [{ part: 'words', text, from: fromTerms(price.total) }];
}

/** So many of a hundred jobs alike lie between the low and the high price. */
export function percentAlike(env: Job['env']): number {
  const { low, high } = betweenOf(env);
  return Math.round((high - low) * 100);
}

function works(job: Job, words: Words): Table {
  const heads = [words.pages.price.what, words.pages.price.cost, words.pages.price.price];
  const rows = job.works.map((work) => {
    const { cost, price } = job.shareOf(work);
    const title = titleOf(work, job.works, words.quote);
    const row = rowOf(title, termCell(cost, job), termCell(price, job));
    return { ...row, from: fromBlock(work.block) };
  });
  return tableOf('works', heads, rows);
}

/** Of one piece of work, as the editor tells them too. */
function figures(work: Work, job: Job, words: Words): Part[] {
  const { what, amount } = words.pages.price;
  const rows = workFigures(work, job).map(({ term }) => rowOf(term.label, termCell(term, job)));
  return tableUnder(
    { text: titleOf(work, job.works, words.quote), from: fromBlock(work.block) },
    tableOf(work.name, [what, amount], rows),
  );
}

function stages(job: Job, words: PriceWords): Part[] {
  const { stages: all, retention } = job.price;
  const rows = all.map(({ title, due, line }): Row => {
    return stageRow(title, due, line, job);
  });
  const days = retention?.days ? showTerm(retention.days, job.env) : '';
  if (retention) {
    rows.push(stageRow(words.heldBack(days), retention.amount, retention.line, job));
  }
  return tableUnder(words.stages, tableOf('stages', [words.what, words.amount], rows));
}

/** Of the line that says so, before all that the amount hangs on. */
function stageRow(label: string, amount: Term, line: LineFacts, job: Job): Row {
  const { from, ...cell } = termCell(amount, job);
  return { ...rowOf(label, cell), from: fromAll(fromLines(line), from) };
}

function buying(job: Job, words: Words): Part[] {
  const orders = ordersOf(job);
  if (!orders.length) return [];
  const shown = { prices: true, bare: false, merchant: orders.length > 1 };
  return under(words.pages.price.buy, orderTable('to-buy', orders, job, shown, words.buying));
}
