/** What pieces of work cost by themselves, as terms that say how it hangs on ranges: only made where the job has some. */

import { fromGeometry } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import type { Needs } from '../../brickwork/needs';
import type { MixBatch } from '../../mortar/batch';
import { counted, sum, type Term } from '../../working/term';
import { partnerKey } from '../partners';
import type { WeighedBy } from '../weights';

/** What is paid for all of a thing. */
interface PaidFor {
  readonly paid: Term;
  readonly whole: Term;
}

/** Of all of a job’s work, and of some of it. */
export function followedBy(
  by: WeighedBy,
  works: readonly { readonly needs: Needs }[],
  code: string,
): (at: readonly number[]) => { readonly some: Term; readonly of: Term } {
  const things = thingsOf(by, code);
  const costOf = (needs: readonly Needs[]) =>
    sum(phrase`cost of the work`, code, costs(needs, things, code));
  const of = costOf(works.map((w) => w.needs));
  return (at) => ({ some: costOf(at.map((i) => works[i]!.needs)), of });
}

function costs(needs: readonly Needs[], things: ReadonlyMap<string, PaidFor>, code: string) {
  const amounts = new Map<string, Term[]>();
  for (const [key, amount] of needs.flatMap(amountsOf)) {
    const list = amounts.get(key);
    if (list) list.push(amount);
    else amounts.set(key, [amount]);
  }
  return [...amounts].flatMap(([key, list]) => {
    const of = things.get(key);
    return of ? [part(key, sum(key, list[0]!.unit, list), of, code)] : [];
  });
}

function amountsOf(needs: Needs): (readonly [string, Term])[] {
  return [
    ...needs.bricks.map((n) => [`brick ${n.brick}`, n.bricks] as const),
    ...needs.pieces.map((n) => [`piece ${n.material}`, n.count] as const),
    ...needs.mixes.map((n) => [`mix ${n.mix}`, n.litres] as const),
    ...needs.tasks.map((n) => [n.by ? partnerKey(n.by.name) : 'labour', n.hours] as const),
  ];
}

/** Of what is paid for all, as much as it takes of all. */
function part(label: string, amount: Term, { paid, whole }: PaidFor, code: string): Term {
  const again = ([a, p, w]: readonly number[]) => (w ? (a! * p!) / w : 0);
  const args = [amount, paid, whole];
  const value = again(args.map((arg) => arg.value.toNumber()));
  return counted(label, fromGeometry(value), code, { args, again });
}

function thingsOf({ purchases, batches, hours, labour, partners }: WeighedBy, code: string) {
  const things = new Map<string, PaidFor>([['labour', { paid: labour, whole: hours }]]);
  for (const by of partners) things.set(partnerKey(by.name), { paid: by.labour, whole: by.hours });
  const paid = new Map(purchases.map((p) => [`${p.kind} ${p.name}`, p.cost]));
  for (const { kind, name, cost, needed } of purchases)
    if (kind !== 'material') things.set(`${kind} ${name}`, { paid: cost, whole: needed });
  for (const mix of batches)
    things.set(`mix ${mix.name}`, { paid: mixCost(mix, batches, paid, code), whole: mix.laid });
  return things;
}

/** A mix costs its part of each material that is bought for all of them. */
function mixCost(
  mix: MixBatch,
  batches: readonly MixBatch[],
  paid: ReadonlyMap<string, Term>,
  code: string,
): Term {
  const label = phrase`what ${mix.name} costs`;
  if (mix.ready) return sum(label, code, [paid.get(`material ${mix.name}`) ?? []].flat());
  const all = batches.flatMap((b) => b.parts);
  const parts = mix.parts.flatMap(({ material, volume }) => {
    const cost = paid.get(`material ${material}`);
    if (!cost) return [];
    const alike = all.filter((p) => p.material === material).map((p) => p.volume);
    return [part(material, volume, { paid: cost, whole: sum(material, volume.unit, alike) }, code)];
  });
  return sum(label, code, parts);
}
