/** By what the price is shared out: what each thing that a job pays for costs, by what pieces of work take of it. */
import type { Exact } from '../../../shared/exact';
import { shareOut } from '../../../shared/money';
import type { Needs } from '../brickwork/needs';
import type { MixBatch } from '../mortar/batch';
import type { Term } from '../working/term';
import type { Purchase } from './buying';
import { plainOf } from './costs';
import { type ByPartner, partnerKey } from './partners';

/** What a job pays for. */
export interface WeighedBy {
  readonly purchases: readonly Purchase[];
  readonly batches: readonly MixBatch[];
  /** Of the work itself, all of the gang together. */
  readonly hours: Term;
  readonly labour: Term;
  readonly partners: readonly ByPartner[];
}

/** What a piece of work takes of one thing that the job pays for. */
export interface Part extends Thing {
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
export class Weights {
  private readonly things = new Map<string, Thing>();
  private readonly labour: Thing;

  constructor(price: WeighedBy) {
    // All that is paid, setting up and driving too: each hour of the work bears its part of it.
    this.labour = thing('labour', 'labour', price.hours, price.labour.value.toNumber());
    for (const { name, title, hours, labour } of price.partners)
      this.take(partnerKey(name), `${title}: labour`, hours, labour.value.toNumber());
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
  price: WeighedBy,
): number {
  const loose = (material: string, of: MixBatch['parts']) =>
    of.reduce((sum, p) => (p.material === material ? sum + p.volume.value.toNumber() : sum), 0);
  const all = price.batches.flatMap((b) => b.parts);
  return parts.reduce((sum, part) => {
    const share = over(part.volume.value.toNumber(), loose(part.material, all));
    return sum + share * (costs.get(`material ${part.material}`) ?? 0);
  }, 0);
}
