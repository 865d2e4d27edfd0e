/** How the figures of a price are rounded, as plain facts that a paper can state. Halves go away from zero throughout. */

import { exact } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import type { Env } from '../resolve/env';
import { counted, type Term } from '../working/term';
import type { Charged } from './charged';

export interface PriceRounding {
  /**
   * `price`: before tax and discounts; `tax`: once for each rate; `agreed`: what makes up for a penny between an agreed
   * price with tax and its parts.
   */
  readonly of:
    | 'price'
    | 'discounts'
    | 'tax'
    | 'parts'
    | 'stages'
    | 'retention'
    | 'deductions'
    | 'agreed';
  /** To a multiple of this much money. */
  readonly to: Term;
}

type Priced = Omit<Charged, 'roundings' | 'figures'>;

/** @param to what the price is rounded to; nothing for a price that is agreed */
export function roundingsOf(price: Priced, to: Term | undefined, env: Env): PriceRounding[] {
  const { code, digits } = env.money;
  const penny = counted(phrase`the least coin`, exact(`1e-${digits}`), code);
  const { discounts, taxes, stages, retention, deductions, rounding } = price;
  const taxed = taxes.some((t) => t.category === 'S' || t.owed);
  const said: [PriceRounding['of'], boolean][] = [
    ['discounts', discounts.length > 0],
    ['tax', taxed],
    ['parts', taxes.length > 1],
    ['stages', stages.length > 0],
    ['retention', retention !== undefined],
    ['deductions', deductions.length > 0],
    ['agreed', rounding !== undefined],
  ];
  return [
    ...(to && !to.value.isZero() ? [{ of: 'price' as const, to }] : []),
    ...said.flatMap(([of, there]) => (there ? [{ of, to: penny }] : [])),
  ];
}
