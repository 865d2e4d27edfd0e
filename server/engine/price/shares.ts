/** What each piece of work costs, and its part of the price: shares that add up to the job’s own figures. */
import { type Exact, fromGeometry } from '../../../shared/exact';
import { fromMinor, Shares, shareOut } from '../../../shared/money';
import type { Needs } from '../brickwork/needs';
import type { MixBatch } from '../mortar/batch';
import type { Env } from '../resolve/env';
import { showTerm, showValue } from '../views/show';
import { counted, sum, type Term } from '../working/term';
import { type Costs, type HasNeeds, plainOf } from './costs';
import type { JobPrice } from './total';

export interface WorkShare {
  /** Materials and labour. */
  readonly cost: Term;
  /** Of the price before tax: travel, other costs, overhead and profit go along by cost. */
  readonly price: Term;
}

/** The share of each piece of work, by its place in the list. Terms are made when asked for. */
export function sharesOf(
  works: readonly HasNeeds[],
  price: JobPrice,
  env: Env,
  costs: Costs,
): (at: number) => WorkShare {
  const weights = new Weights(price);
  const shares = new Shares(costs.of(works, (key) => weights.each(key), weights.hour));
  const { code, digits } = env.money;
  const direct = sum('Materials and labour', code, [price.materials, price.labour]);
  const costShare = shares.of(direct.value, digits);
  const priceShare = shares.of(price.price.value, digits);
  const note = 'shared by what each piece of work takes of every purchase, and by its hours';
  return (at) => {
    const minor = costShare(at);
    const cost = counted('Cost', fromMinor(minor, digits), code, {
      note,
      args: [direct],
      detail: () => costDetail(weights, works[at]!.needs, [minor, direct.value], env),
    });
    const part = counted('Part of the price before tax', fromMinor(priceShare(at), digits), code, {
      note: 'shared by cost',
      args: [price.price, cost],
      detail: () => [
        `its cost is ${showTerm(cost, env)} of ${showTerm(direct, env)}, and it bears as much of ${showTerm(price.price, env)}`,
        ROUNDED,
      ],
    });
    return { cost, price: part };
  };
}

const ROUNDED = 'rounded so that all shares add up';

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
  if (!each.some((money) => money > 0)) return ['nothing it takes has a cost to share by', ROUNDED];
  const money = shareOut(fromMinor(minor, digits), each, digits);
  const paid = weights.paid(direct, digits);
  const lines = parts.map(({ key, title, unit, amount, whole }, i) => {
    const show = (value: number) => showValue(fromGeometry(value), unit, env);
    const pence = (value: number) => showValue(fromMinor(value, digits), code, env);
    return `${title}: ${bare(show(amount), show(whole))} of ${show(whole)}, ${pence(money[i]!)} of ${pence(paid.get(key)!)}`;
  });
  return [...lines, ROUNDED];
}

/** “931 of 1,050 bricks”: the unit is said once when it is the same word. */
function bare(part: string, whole: string): string {
  const [number = part, unit] = part.split('\u00a0');
  return unit === 'bricks' && whole.endsWith(unit) ? number : part;
}

/** What a piece of work takes of one thing that the job pays for. */
interface Part extends Thing {
  readonly amount: number;
  readonly money: number;
}

/** One thing that the whole job pays for. */
interface Thing {
  readonly key: string;
  readonly title: string;
  readonly unit: string;
  /** Of the whole job, and what that costs. */
  readonly whole: number;
  readonly paid: number;
  /** What one of it costs: a brick, a piece, a litre of a mix. */
  readonly each: number;
}

/** Plain numbers: they only set proportions, and the shares are exact whatever they are. */
class Weights {
  private readonly things = new Map<string, Thing>();
  private readonly labour: Thing;

  constructor(price: JobPrice) {
    // All that is paid, setting up and driving too: each hour of the work bears its part of it.
    this.labour = thing('labour', 'labour', price.hours, price.labour.value.toNumber());
    const costs = new Map<string, number>();
    for (const { kind, name, title, cost, needed } of price.purchases) {
      const money = cost.value.toNumber();
      costs.set(`${kind} ${name}`, money);
      // Materials are paid for by the mixes they go into.
      if (kind !== 'material') this.take(`${kind} ${name}`, title, needed, money);
    }
    for (const { name, title, laid, parts, ready } of price.batches) {
      const paid = ready ? (costs.get(`material ${name}`) ?? 0) : mixCost(parts, costs, price);
      this.take(`mix ${name}`, title, laid, paid);
    }
  }

  private take(key: string, title: string, amount: Term, paid: number): void {
    this.things.set(key, thing(key, title, amount, paid));
  }

  /** What one of a thing costs; nothing for one that the job does not pay for. */
  each(key: string): number {
    return this.things.get(key)?.each ?? 0;
  }

  get hour(): number {
    return this.labour.each;
  }

  /** What the job pays for each thing, in pence that add up to all of it: the cost of a mix is a part of its materials’. */
  paid(direct: Exact, digits: number): ReadonlyMap<string, number> {
    const all = [...this.things.values(), this.labour];
    const money = shareOut(
      direct,
      all.map((t) => t.paid),
      digits,
    );
    return new Map(all.map((t, i) => [t.key, money[i]!]));
  }

  /** What makes up a piece of work’s cost, thing by thing; one that comes up twice is told once. */
  parts(needs: Needs): Part[] {
    const { items, hours } = plainOf(needs);
    const amounts = new Map<Thing, number>();
    for (const { key, amount } of items) {
      const of = this.things.get(key);
      if (of) amounts.set(of, (amounts.get(of) ?? 0) + amount);
    }
    amounts.set(this.labour, hours);
    return [...amounts].map(([of, amount]) => ({
      ...of,
      amount,
      money: of.paid * over(amount, of.whole),
    }));
  }
}

function thing(key: string, title: string, amount: Term, paid: number): Thing {
  const whole = amount.value.toNumber();
  return { key, title, unit: amount.unit, whole, paid, each: over(paid, whole) };
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
