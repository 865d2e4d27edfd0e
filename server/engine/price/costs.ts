/** What each piece of work of a job costs, in plain numbers, for all of them at every keystroke: amounts in rows, multiplied out. */
import type { Needs } from '../brickwork/needs';
import { Groups } from '../workspace/groups';
import { partnerKey } from './partners';

/** What a piece of work takes, in plain numbers. */
export interface Plain {
  readonly items: readonly { readonly key: string; readonly amount: number }[];
  readonly hours: number;
}

/** Kept with the needs: of a long job, only the work that changed is turned into numbers again. */
const kept = new WeakMap<Needs, Plain>();

export function plainOf(needs: Needs): Plain {
  let plain = kept.get(needs);
  if (!plain) {
    plain = {
      items: [
        ...needs.bricks.map((b) => item(`brick ${b.brick}`, b.bricks)),
        ...needs.pieces.map((p) => item(`piece ${p.material}`, p.count)),
        ...needs.mixes.map((m) => item(`mix ${m.mix}`, m.litres)),
        ...needs.tasks.flatMap(({ by, hours }) => (by ? [item(partnerKey(by.name), hours)] : [])),
      ],
      hours: needs.tasks.reduce((sum, t) => sum + (t.by ? 0 : t.hours.value.toNumber()), 0),
    };
    kept.set(needs, plain);
  }
  return plain;
}

function item(key: string, amount: { readonly value: { toNumber(): number } }) {
  return { key, amount: amount.value.toNumber() };
}

/** Amounts of several pieces of work: a row for each, a column for each thing, hours in the first. */
interface Rows {
  readonly keys: readonly string[];
  readonly amounts: Float64Array;
  readonly count: number;
}

function rowsOf(works: readonly HasNeeds[]): Rows {
  const plain = works.map((work) => plainOf(work.needs));
  const keys = [...new Set(plain.flatMap((p) => p.items.map((i) => i.key)))];
  const wide = keys.length + 1;
  const amounts = new Float64Array(wide * works.length);
  plain.forEach(({ items, hours }, i) => {
    amounts[i * wide] = hours;
    for (const { key, amount } of items) amounts[i * wide + 1 + keys.indexOf(key)]! += amount;
  });
  return { keys, amounts, count: works.length };
}

export interface HasNeeds {
  readonly needs: Needs;
}

/** Kept from one state of a job to the next. */
export class Costs {
  private readonly rows = new Groups<HasNeeds, Rows>(rowsOf);

  /** In the order of the work; `each` tells what one of a thing costs, `hour` what an hour does. */
  of(works: readonly HasNeeds[], each: (key: string) => number, hour: number): number[] {
    const costs: number[] = [];
    for (const { keys, amounts, count } of this.rows.of(works)) {
      const prices = [hour, ...keys.map(each)];
      const wide = prices.length;
      for (let i = 0; i < count; i++) {
        let cost = 0;
        for (let k = 0; k < wide; k++) cost += amounts[i * wide + k]! * prices[k]!;
        costs.push(cost);
      }
    }
    return costs;
  }
}
