/** What each piece of work costs, and its part of the price: shares that add up to the job’s own figures. */

import { type Exact, fromGeometry } from '../../../shared/exact';
import { fromMinor, Shares, shareOut } from '../../../shared/money';
import { later, phrase, spoken } from '../../../shared/phrase';
import type { Needs } from '../brickwork/needs';
import type { Env } from '../resolve/env';
import { showTerm, showValue } from '../views/show';
import { counted, sum, type Term } from '../working/term';
import type { Costs, HasNeeds } from './costs';
import type { OtherCost } from './others';
import { type PricePart, PriceParts } from './tax/parts';
import type { TaxGroup } from './tax/taxes';
import type { JobPrice } from './total';
import { Weights } from './weights';

export interface WorkShare {
  /** Materials and labour. */
  readonly cost: Term;
  /** Of the price before tax: travel, other costs, overhead and profit go along by cost. */
  readonly price: Term;
  /** The same before discounts. */
  readonly gross: Term;
  /** How it is taxed. */
  readonly tax: TaxGroup;
}

/** A cost with a tax line of its own, where it is another tax than the job’s: a part of the price by itself. */
export type ItemShare = PricePart & { readonly item: OtherCost };

export interface PriceShares {
  /** By its place in the list. */
  readonly ofWork: (at: number) => WorkShare;
  /** All of them and all work add up to the price before tax. */
  readonly ofItems: () => readonly ItemShare[];
}

/** Terms are made when asked for. */
export function sharesOf(
  works: readonly HasNeeds[],
  price: JobPrice,
  env: Env,
  costs: Costs,
): PriceShares {
  const weights = new Weights(price);
  const each = costs.of(works, (key) => weights.each(key), weights.hour);
  const { code, digits } = env.money;
  const partners = price.partners.map((p) => p.labour);
  const direct = sum(phrase`Materials and labour`, code, [
    price.materials,
    price.labour,
    ...partners,
  ]);
  const costShare = new Shares(each).of(direct.value, digits);
  const parts = new PriceParts(price, each, env);
  const ofWork = (at: number): WorkShare => {
    const minor = costShare(at);
    const cost = counted(phrase`Cost`, fromMinor(minor, digits), code, {
      note: phrase`shared by what each piece of work takes of every purchase, and by its hours`,
      args: [direct],
      detail: () => costDetail(weights, works[at]!.needs, [minor, direct.value], env),
    });
    const why = () => phrase`its cost is ${showTerm(cost, env)} of ${showTerm(direct, env)}`;
    const { base, gross, tax } = parts.ofWork(at, cost, why);
    return { cost, price: base, gross, tax };
  };
  return { ofWork, ofItems: () => parts.ofItems() };
}

const ROUNDED = later`rounded so that all shares add up`;

/** A line for each thing it takes; their money is rounded so that it adds up to the share (`minor`, in pence). */
function costDetail(
  weights: Weights,
  needs: Needs,
  [minor, direct]: readonly [number, Exact],
  env: Env,
): string[] {
  const parts = weights.parts(needs).filter((p) => p.amount > 0);
  const { digits, code } = env.money;
  const each = parts.map((p) => p.money);
  if (!each.some((money) => money > 0))
    return [phrase`nothing it takes has a cost to share by`, spoken(ROUNDED)];
  const money = shareOut(fromMinor(minor, digits), each, digits);
  const paid = weights.paid(direct, digits);
  const lines = parts.map(({ key, title, unit, amount, whole }, i) => {
    const show = (value: number) => showValue(fromGeometry(value), unit, env);
    const pence = (value: number) => showValue(fromMinor(value, digits), code, env);
    return phrase`${title}: ${bare(show(amount), show(whole))} of ${show(whole)}, ${pence(money[i]!)} of ${pence(paid.get(key)!)}`;
  });
  return [...lines, spoken(ROUNDED)];
}

/** “931 of 1,050 bricks”: the unit is said once when it is the same word. */
function bare(part: string, whole: string): string {
  const [number = part, unit] = part.split('\u00a0');
  return unit === 'bricks' && whole.endsWith(unit) ? number : part;
}
