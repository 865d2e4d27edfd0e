/** The buying list as a paper: a table for each merchant. */

import type { Purchase } from '../../engine/price/buying';
import { showTerm } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { jobFacts } from '../about-job';
import { languageOf } from '../letterhead';
import type { Cell, Letterhead, Paper, Part, Row } from '../paper/model';
import { type BuyingWords, wordsFor } from '../words';
import { type Order, ordersOf } from './list';

/** @param prices whether the firm's own prices are on it */
export function buyingPaper(
  job: Job,
  letterhead: Letterhead | undefined,
  prices: boolean,
  version: string,
): Paper {
  const lang = languageOf(job);
  const words = wordsFor(lang);
  const about = jobFacts(job, words);
  const title = [words.buying.title, about.ref].filter(Boolean).join(' ');
  return {
    kind: 'buying',
    lang,
    date: about.date,
    size: job.env.imperial ? 'Letter' : 'A4',
    title: [title, about.title].filter(Boolean).join(' · '),
    letterhead,
    parts: [
      { part: 'heading', level: 1, text: words.buying.title, under: about.title },
      { part: 'facts', rows: about.rows },
      ...gaps(job, words.buying),
      ...ordersOf(job).flatMap((order) => orderParts(order, job, prices, words.buying)),
    ],
    foot: words.quote.madeWith(version),
    running: [letterhead?.name, title].filter(Boolean).join(' · '),
  };
}

/** What could not be counted yet: a list that looks whole and is not costs a journey. */
function gaps({ price }: Job, words: BuyingWords): Part[] {
  const missing = new Set(price.purchases.flatMap((p) => p.bought.gaps.map((gap) => gap.what)));
  if (!missing.size) return [];
  return [{ part: 'warning', strong: words.notWhole, text: [...missing].join('; ') }];
}

function orderParts(order: Order, job: Job, prices: boolean, words: BuyingWords): Part[] {
  const heads = prices
    ? [words.what, words.needed, words.buy, words.cost]
    : [words.what, words.needed, words.buy];
  const rows = order.purchases.map((purchase) => rowOf(purchase, job, prices));
  const sum = order.purchases.map((p) => p.cost.value).reduce((a, b) => a.add(b));
  const total: Row = {
    cells: [
      { text: words.all },
      { text: '' },
      { text: '' },
      cell({ ...order.purchases[0]!.cost, value: sum }, job),
    ],
    role: 'total',
  };
  return [
    {
      part: 'together',
      parts: [
        { part: 'heading', level: 2, text: order.merchant || words.anyone },
        {
          part: 'table',
          name: order.merchant || 'to-buy',
          columns: heads.map((title, i) => ({ title, holds: i ? 'number' : 'text' })),
          rows: prices ? [...rows, total] : rows,
        },
      ],
    },
  ];
}

function rowOf({ title, needed, bought, cost }: Purchase, job: Job, prices: boolean): Row {
  const cells = [{ text: title }, cell(needed, job), cell(bought, job)];
  return { cells: prices ? [...cells, cell(cost, job)] : cells };
}

/** What is not known at all is a question mark, never a nought. */
function cell(term: Term, job: Job): Cell {
  if (term.gaps.length && term.value.isZero()) return { text: '?' };
  const text = showTerm(term, job.env);
  return term.mixed ? { text } : { text, value: term.value.toFixed(), unit: term.unit };
}
