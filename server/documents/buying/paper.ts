/** The buying list as a paper: a table for each merchant. */
import type { Job } from '../../engine/workspace/job';
import { framed } from '../framed';
import { fromTerms } from '../from';
import type { Letterhead, Paper, Part } from '../paper/model';
import type { BuyingWords } from '../words';
import { type Order, ordersOf } from './list';
import { orderTable } from './table';

export interface BuyingWishes {
  /** Whether the firm's own prices are on it. */
  readonly prices: boolean;
  /**
   * `read`: to be read. `sheets`: figures bare, a table for each merchant. `rows`: one table of all, in which each row
   * says from whom.
   */
  readonly as: 'read' | 'sheets' | 'rows';
}

export function buyingPaper(
  job: Job,
  letterhead: Letterhead | undefined,
  wishes: BuyingWishes,
  version: string,
): Paper {
  return framed({
    job,
    letterhead,
    version,
    kind: 'buying',
    title: (words) => words.buying.title,
    parts: (words) => [...gaps(job, words.buying), ...lists(job, wishes, words.buying)],
  });
}

/** What could not be counted yet: a list that looks whole and is not costs a journey. */
function gaps({ price }: Job, words: BuyingWords): Part[] {
  const missing = new Set(price.purchases.flatMap((p) => p.bought.gaps.map((gap) => gap.what)));
  if (!missing.size) return [];
  const from = fromTerms(...price.purchases.map((p) => p.bought).filter((of) => of.gaps.length));
  return [{ part: 'warning', strong: words.notWhole, text: [...missing].join('; '), from }];
}

function lists(job: Job, { prices, as }: BuyingWishes, words: BuyingWords): Part[] {
  const orders = ordersOf(job);
  if (!orders.length) return [{ part: 'words', text: words.nothing }];
  const shown = { prices, bare: as !== 'read', merchant: as === 'rows' };
  if (as === 'rows') return [orderTable('to-buy', orders, job, shown, words)];
  return orders.map((order) => orderPart(order));

  function orderPart(order: Order): Part {
    const called = order.merchant || words.anyone;
    return {
      part: 'together',
      parts: [
        { part: 'heading', level: 2, text: called },
        orderTable(called, [order], job, shown, words),
      ],
    };
  }
}
