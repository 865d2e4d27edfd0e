/** Parts of the price: of each piece of work, and of each cost that is taxed by itself. Those taxed alike add up to what they are taxed on. */

import { fromMinor, Shares } from '../../../../shared/money';
import { later, phrase, spoken } from '../../../../shared/phrase';
import type { Env } from '../../resolve/env';
import { showTerm } from '../../views/show';
import { counted, type Term } from '../../working/term';
import type { OtherCost } from '../others';
import type { JobPrice } from '../total';
import type { TaxGroup } from './taxes';

export interface PricePart {
  /** Before tax. */
  readonly base: Term;
  /** Before tax and before discounts. */
  readonly gross: Term;
  readonly tax: TaxGroup;
}

/** How the parts of one row of tax are shared out. */
interface Row {
  readonly tax: TaxGroup;
  readonly base: (at: number) => number;
  readonly gross: (at: number) => number;
}

const ROUNDED = later`rounded so that all shares add up`;

export class PriceParts {
  private readonly rows: readonly Row[];
  /** The row of each piece of work, and its place there. */
  private readonly places = new Map<number, readonly [Row, number]>();

  /** `each`: what pieces of work cost by themselves, in their order. */
  constructor(
    private readonly price: JobPrice,
    each: readonly number[],
    private readonly env: Env,
  ) {
    const rest = restOf(price, each);
    this.rows = price.taxes.map((tax) => rowOf(tax, each, rest, env));
    for (const row of this.rows)
      if (row.tax.works !== 'all')
        for (const [i, at] of row.tax.works.entries()) this.places.set(at, [row, i]);
  }

  /** `why`: put into words when somebody asks for the working. */
  ofWork(at: number, cost: Term, why: () => string): PricePart {
    const [row, place] = this.places.get(at) ?? [this.rows[0]!, at];
    return this.part(row, place, cost, why);
  }

  /** Costs that have a tax line of their own, where that is another tax than the job’s. */
  ofItems(): (PricePart & { readonly item: OtherCost })[] {
    return this.rows.flatMap((row) => {
      const before = row.tax.works === 'all' ? 0 : row.tax.works.length;
      return row.tax.items.map((item, i) => {
        const why = () =>
          phrase`it is ${showTerm(item.cost, this.env)} of ${showTerm(this.price.cost, this.env)}`;
        return { ...this.part(row, before + i, item.cost, why), item };
      });
    });
  }

  private part(row: Row, at: number, cost: Term, why: () => string): PricePart {
    const { tax } = row;
    const base = this.term(tax.base, row.base(at), cost, why);
    const gross = tax.gross === tax.base ? base : this.term(tax.gross, row.gross(at), cost, why);
    return { base, gross, tax };
  }

  private term(all: Term, minor: number, cost: Term, why: () => string): Term {
    const { code, digits } = this.env.money;
    return counted(phrase`Part of the price before tax`, fromMinor(minor, digits), code, {
      note: phrase`shared by cost`,
      args: [all, cost],
      detail: () => [
        phrase`${why()}, and it bears as much of ${showTerm(all, this.env)}`,
        spoken(ROUNDED),
      ],
    });
  }
}

/** What all work together bears of the cost, for each unit of what it costs by itself. */
function restOf(price: JobPrice, each: readonly number[]): number {
  const own = price.taxes.flatMap((t) => t.items).reduce((s, i) => s + i.cost.value.toNumber(), 0);
  const all = each.reduce((a, b) => a + b, 0);
  return all > 0 ? (price.cost.value.toNumber() - own) / all : 1;
}

function rowOf(tax: TaxGroup, each: readonly number[], rest: number, env: Env): Row {
  const works = tax.works === 'all' ? each : tax.works.map((at) => each[at]! * rest);
  const shares = new Shares([...works, ...tax.items.map((i) => i.cost.value.toNumber())]);
  const { digits } = env.money;
  return {
    tax,
    base: shares.of(tax.base.value, digits),
    gross: shares.of(tax.gross.value, digits),
  };
}
