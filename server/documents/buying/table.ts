/** What is bought as a table: for readers, or with bare figures and their units apart, for other programs. */
import type { Purchase } from '../../engine/price/buying';
import { factsNamed } from '../../engine/resolve/env';
import { sum, type Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { termCell } from '../cells';
import { fromBlock, fromTerms } from '../from';
import type { Cell, From, Row, Table } from '../paper/model';
import type { BuyingWords } from '../words';
import { heldBy, type Order } from './list';

export interface Shown {
  /** What the firm pays is on it. */
  readonly prices: boolean;
  /** Figures stand bare, their units beside them. */
  readonly bare: boolean;
  /** The first column says from whom. */
  readonly merchant: boolean;
}

/** Decimals of an amount for another program: a gram, a cubic centimetre. */
const DECIMALS = 3;

export function orderTable(
  name: string,
  orders: readonly Order[],
  job: Job,
  shown: Shown,
  words: BuyingWords,
): Table {
  const rows = orders.flatMap((order) => order.purchases.map((each) => rowOf(each, order)));
  return { part: 'table', name, columns: columns(shown, words), rows: [...rows, ...total()] };

  function rowOf(purchase: Purchase, { merchant }: Order): Row {
    const { title, needed, bought, cost } = purchase;
    const holds = heldBy(purchase);
    const amounts = [needed, bought].flatMap((term) => amount(term));
    const none = shown.bare ? [{ text: '' }, { text: '' }] : [{ text: '' }];
    const pack = holds ? amount(holds).map((cell) => ({ ...cell, from: fromTerms(bought) })) : none;
    const first = shown.merchant ? [{ text: merchant }, { text: title }] : [{ text: title }];
    const money = shown.prices ? amount(cost) : [];
    return { cells: [...first, ...amounts, ...pack, ...money], from: fromGoods(purchase, job) };
  }

  function amount(term: Term): Cell[] {
    return shown.bare ? bare(term, job) : [termCell(term, job)];
  }

  /** A reader wants to know what it comes to; a program adds up for itself. */
  function total(): Row[] {
    if (!shown.prices || shown.bare) return [];
    const costs = orders.flatMap((order) => order.purchases.map(({ cost }) => cost));
    const blank = { text: '' };
    const cells = [
      { text: words.all },
      blank,
      blank,
      blank,
      termCell(sum(words.all, job.env.money.code, costs), job),
    ];
    return [{ cells, role: 'total' }];
  }
}

/** The block that says what it is and costs. */
function fromGoods({ kind, name }: Purchase, { env }: Job): From {
  const kinds = kind === 'brick' ? (['brick'] as const) : (['material', 'mix', 'brick'] as const);
  return () => fromBlock(kinds.map((of) => factsNamed(env, of, name)?.block).find(Boolean))();
}

function columns({ prices, bare: apart, merchant }: Shown, words: BuyingWords): Table['columns'] {
  const unit = apart ? [words.unit] : [];
  const money = prices ? [words.cost, ...(apart ? [words.currency] : [])] : [];
  const heads = [
    words.what,
    words.needed,
    ...unit,
    words.buy,
    ...unit,
    words.pack,
    ...unit,
    ...money,
  ];
  const texts = new Set([words.what, words.unit, words.currency]);
  const all = merchant ? [words.merchant, ...heads] : heads;
  return all.map((title, i) => ({
    title,
    holds: i && !texts.has(title) ? ('number' as const) : ('text' as const),
  }));
}

function bare(term: Term, job: Job): Cell[] {
  const shown = termCell(term, job);
  if (shown.value === undefined) return [shown, { text: '' }];
  const { code, digits } = job.env.money;
  const exactly = term.value.toDecimalPlaces(DECIMALS).toFixed();
  const value = term.unit === code ? term.value.toFixed(digits) : exactly;
  return [{ text: value, value }, { text: term.unit }];
}
