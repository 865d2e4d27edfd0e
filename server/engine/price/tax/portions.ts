/**
 * Which part of the price bears which tax. All that is alike bears as much of the price before tax as of the cost: pieces of
 * work by what they take, with all that the job pays for beside them; costs that have a tax line by themselves.
 */

import { fromGeometry } from '../../../../shared/exact';
import { later, phrase, spoken } from '../../../../shared/phrase';
import type { Needs } from '../../brickwork/needs';
import type { Env } from '../../resolve/env';
import { counted, difference, sum, type Term } from '../../working/term';
import type { SourceBlock } from '../../workspace/source';
import type { Costs } from '../costs';
import type { OtherCost } from '../others';
import { generalTax, type TaxKind, taxOf } from './kinds';
import { type OwnTaxes, ownTax } from './own';

/** The pieces of work of a job, by whose cost the price is shared out. */
export interface Pieces {
  readonly works: readonly { readonly block: SourceBlock; readonly needs: Needs }[];
  readonly taxes: OwnTaxes;
  readonly costs: Costs;
}

/** What is taxed alike. */
export interface Portion {
  readonly kind: TaxKind;
  /** Places of pieces of work in the list; of one portion that is all there is, every one is its. */
  readonly works: readonly number[] | 'all';
  /** Costs with a tax line of their own. */
  readonly items: readonly OtherCost[];
  /** What it costs, of all that the job costs; nothing for one that is all there is. */
  readonly cost?: Term;
}

/** What a job costs, in the parts that matter here. */
export interface Paid {
  readonly cost: Term;
  readonly others: readonly OtherCost[];
  /** What pieces of work cost by themselves, in plain numbers, in their order. */
  readonly each: () => readonly number[];
  /** The same of some of them as a term that says how it hangs on ranges; `of` is all of it. */
  readonly followed: (at: readonly number[]) => { readonly some: Term; readonly of: Term };
}

interface Members {
  readonly kind: TaxKind;
  readonly works: number[];
  readonly items: OtherCost[];
}

export function portionsOf(pieces: Pieces | undefined, paid: Paid, env: Env): Portion[] {
  const general = generalTax(env);
  const own = paid.others.filter((other) => ownTax(other.block));
  if (!pieces?.taxes.size && !own.length) return [{ kind: general, works: 'all', items: [] }];
  const members = membersOf(pieces, own, general, env);
  const rest = own.length
    ? difference(phrase`cost of all else`, env.money.code, paid.cost, ownCost(own, env))
    : paid.cost;
  const works = pieces?.works.length ?? 0;
  // Where there is no work to bear it, what no line taxes by itself is taxed as the job is.
  const there = members.filter((m, i) => m.works.length || m.items.length || (i === 0 && !works));
  if (there.length === 1) return [{ kind: there[0]!.kind, works: 'all', items: [] }];
  return there.map((m, i) => ({ ...m, cost: costOf(m, i, { rest, works, paid, env }) }));
}

function ownCost(own: readonly OtherCost[], env: Env): Term {
  return sum(
    phrase`costs taxed by themselves`,
    env.money.code,
    own.map((o) => o.cost),
  );
}

/** The general tax first, then each other as it comes. */
function membersOf(
  pieces: Pieces | undefined,
  own: readonly OtherCost[],
  general: TaxKind,
  env: Env,
): Members[] {
  const all = new Map<string, Members>();
  const of = (kind: TaxKind): Members => {
    const known = all.get(kind.key) ?? { kind, works: [], items: [] };
    all.set(kind.key, known);
    return known;
  };
  of(general);
  for (let at = 0; at < (pieces?.works.length ?? 0); at++) {
    const setting = pieces!.taxes.get(at);
    of(setting ? taxOf(setting, env, general) : general).works.push(at);
  }
  for (const item of own) of(taxOf(ownTax(item.block)!, env, general)).items.push(item);
  return [...all.values()];
}

interface Of {
  readonly rest: Term;
  readonly works: number;
  readonly paid: Paid;
  readonly env: Env;
}

function costOf({ works: at, items, kind }: Members, i: number, of: Of): Term {
  const { rest, works, env } = of;
  const own = items.map((item) => item.cost);
  const label = phrase`cost of what is charged with ${kind.said}`;
  if (!works) return sum(label, env.money.code, i === 0 ? [rest, ...own] : own);
  return sum(label, env.money.code, at.length ? [carried(at, of), ...own] : own);
}

const NOTE = later`as much of it as the work itself costs, of all the work`;

function carried(at: readonly number[], { rest, paid, env }: Of): Term {
  const label = phrase`cost of the work, and of all else in proportion`;
  if (!rest.ranged) {
    const part = partOf(at, paid.each());
    const value = fromGeometry(rest.value.toNumber() * part);
    return counted(label, value, env.money.code, { args: [rest], note: spoken(NOTE) });
  }
  const { some, of } = paid.followed(at);
  const [top, below, all] = [some, of, rest].map((t) => t.value.toNumber());
  return counted(label, fromGeometry(below ? (all! * top!) / below : 0), env.money.code, {
    args: [rest, some, of],
    note: spoken(NOTE),
    again: ([r, s, o]) => (o ? (r! * s!) / o : 0),
  });
}

/** Work of which nothing costs anything bears its part all the same. */
function partOf(at: readonly number[], each: readonly number[]): number {
  const all = each.reduce((a, b) => a + b, 0);
  if (!(all > 0)) return at.length / each.length;
  return at.reduce((a, i) => a + each[i]!, 0) / all;
}
