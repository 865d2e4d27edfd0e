/** What each piece of work costs, and its part of the price: shares that add up to the job’s own figures. */
import { fromMinor, shareOut } from '../../../shared/money';
import type { Env } from '../resolve/env';
import type { Needs } from '../work/needs';
import { counted, sum, type Term } from '../working/term';
import type { MixBatch } from './buy';
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
  const weights = new Weights(price);
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
  /** What one of each thing costs: a brick, a piece, a litre of a mix. */
  private readonly unitCost = new Map<string, number>();
  private readonly rate: number;

  constructor(price: JobPrice) {
    this.rate = price.gang.rate.value.toNumber();
    const costs = new Map<string, number>();
    for (const { kind, name, cost, needed } of price.purchases) {
      const money = cost.value.toNumber();
      costs.set(`${kind} ${name}`, money);
      this.unitCost.set(`${kind} ${name}`, over(money, needed.value.toNumber()));
    }
    for (const { name, laid, parts } of price.batches)
      this.unitCost.set(`mix ${name}`, over(mixCost(parts, costs, price), laid.value.toNumber()));
  }

  of(needs: Needs): number {
    const { items, hours } = plainOf(needs);
    let total = hours * this.rate;
    for (const { key, amount } of items) total += amount * (this.unitCost.get(key) ?? 0);
    return total;
  }
}

function over(money: number, amount: number): number {
  return amount > 0 ? money / amount : 0;
}

/** A mix costs its part of each material that is bought for all of them. */
function mixCost(
  parts: MixBatch['parts'],
  costs: ReadonlyMap<string, number>,
  price: JobPrice,
): number {
  const loose = (material: string, of: MixBatch['parts']) =>
    of.reduce((sum, p) => (p.material === material ? sum + p.volume.value.toNumber() : sum), 0);
  const all = price.batches.flatMap((b) => b.parts);
  return parts.reduce((sum, part) => {
    const share = over(part.volume.value.toNumber(), loose(part.material, all));
    return sum + share * (costs.get(`material ${part.material}`) ?? 0);
  }, 0);
}

/** What a piece of work takes, in plain numbers. */
interface Plain {
  readonly items: readonly { readonly key: string; readonly amount: number }[];
  readonly hours: number;
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
      hours: needs.tasks.reduce((sum, t) => sum + t.hours.value.toNumber(), 0),
    };
    kept.set(needs, plain);
  }
  return plain;
}

function item(key: string, amount: Term) {
  return { key, amount: amount.value.toNumber() };
}
