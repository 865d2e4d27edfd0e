/** What each piece of work costs, and its part of the price: shares that add up to the job’s own figures. */
import { fromMinor, shareOut } from '../../../shared/money';
import type { Env } from '../resolve/env';
import type { Needs } from '../work/needs';
import { counted, sum, type Term } from '../working/term';
import type { JobPrice } from './total';

export interface WorkShare {
  /** Materials and labour. */
  readonly cost: Term;
  /** Of the price before tax: travel, other costs, overhead and profit go along by cost. */
  readonly price: Term;
}

/** The share of each piece of work, by its place in the list. Terms are made when asked for. */
export function sharesOf(
  needs: readonly Needs[],
  price: JobPrice,
  env: Env,
): (at: number) => WorkShare {
  const weights = new Weights(needs, price);
  const costs = needs.map((n) => weights.of(n));
  const { code, digits } = env.money;
  const direct = sum('Materials and labour', code, [price.materials, price.labour]);
  const costShares = shareOut(direct.value, costs, digits);
  const priceShares = shareOut(price.price.value, costs, digits);
  const note = 'shared by what each piece of work takes of every purchase, and by its hours';
  return (at) => ({
    cost: counted('Cost', fromMinor(costShares[at]!, digits), code, { note, args: [direct] }),
    price: counted('Part of the price before tax', fromMinor(priceShares[at]!, digits), code, {
      note: 'shared by cost',
      args: [price.price],
    }),
  });
}

/** Plain numbers: they only set proportions, and the shares are exact whatever they are. */
class Weights {
  private readonly costOf = new Map<string, number>();
  private readonly neededOf = new Map<string, number>();
  private readonly rate: number;

  constructor(needs: readonly Needs[], price: JobPrice) {
    this.rate = price.gang.rate.value.toNumber();
    for (const p of price.purchases)
      this.costOf.set(`${p.kind} ${p.name}`, p.cost.value.toNumber());
    for (const n of needs)
      for (const { key, amount } of plainOf(n).items)
        this.neededOf.set(key, (this.neededOf.get(key) ?? 0) + amount);
    this.costMixes(price);
  }

  /** A mix costs its part of each material that is bought. */
  private costMixes(price: JobPrice): void {
    const loose = new Map<string, number>();
    for (const batch of price.batches)
      for (const part of batch.parts)
        loose.set(part.material, (loose.get(part.material) ?? 0) + part.volume.value.toNumber());
    for (const batch of price.batches) {
      const costs = batch.parts.map((part) => {
        const all = loose.get(part.material) ?? 0;
        return all > 0
          ? ((this.costOf.get(`material ${part.material}`) ?? 0) * part.volume.value.toNumber()) /
              all
          : 0;
      });
      this.costOf.set(
        `mix ${batch.name}`,
        costs.reduce((a, b) => a + b, 0),
      );
    }
  }

  of(needs: Needs): number {
    const { items, hours } = plainOf(needs);
    let total = 0;
    for (const { key, amount } of items) {
      const all = this.neededOf.get(key) ?? 0;
      if (all > 0) total += ((this.costOf.get(key) ?? 0) * amount) / all;
    }
    for (const each of hours) total += each * this.rate;
    return total;
  }
}

/** What a piece of work takes, in plain numbers. */
interface Plain {
  readonly items: readonly { readonly key: string; readonly amount: number }[];
  readonly hours: readonly number[];
}

/** Kept with the needs: of a long job, only the work that changed is turned into numbers again. */
const kept = new WeakMap<Needs, Plain>();

function plainOf(needs: Needs): Plain {
  let plain = kept.get(needs);
  if (!plain) {
    plain = {
      items: [
        ...needs.bricks.map((b) => item(`brick ${b.brick}`, b.bricks)),
        ...needs.pieces.map((p) => item(`piece ${p.material}`, p.count)),
        ...needs.mixes.map((m) => item(`mix ${m.mix}`, m.litres)),
      ],
      hours: needs.tasks.map((t) => t.hours.value.toNumber()),
    };
    kept.set(needs, plain);
  }
  return plain;
}

function item(key: string, amount: Term) {
  return { key, amount: amount.value.toNumber() };
}
