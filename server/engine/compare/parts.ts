/** A price taken apart: none of it left out and none of it twice. */

import { type Exact, ZERO } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import type { Purchase } from '../price/buying';
import { partnerKey } from '../price/partners';
import type { JobPrice } from '../price/total';
import type { Term } from '../working/term';

export interface Part {
  /** What it is in any price. */
  readonly key: string;
  readonly label: string;
  readonly value: Exact;
  /** Of something that is bought: how much of it. */
  readonly bought?: Term;
}

export function partsOf(price: JobPrice): Part[] {
  const known = [...costs(price), ...markUps(price), ...discounts(price)];
  const taxes = taxesOf(price);
  return [...known, ...between(price, known), ...taxes, ...last(price, taxes)];
}

/** Every purchase, labour, every journey, everything else that is paid for. */
function costs(price: JobPrice): Part[] {
  const bought = new Map<Term, Purchase>(price.purchases.map((each) => [each.cost, each]));
  const partners = new Map(price.partners.map((p) => [p.labour, partnerKey(p.name)]));
  const leaves = (term: Term): Part[] => {
    const purchase = bought.get(term);
    if (purchase) return [partOf(purchase, term)];
    if (term.op === 'sum') return term.args.flatMap(leaves);
    const key = term === price.labour ? 'labour' : (partners.get(term) ?? `cost ${term.label}`);
    return [{ key, label: term.label, value: term.value }];
  };
  return leaves(price.cost);
}

function partOf({ kind, name, title, bought }: Purchase, { value }: Term): Part {
  return { key: `buy ${kind} ${name}`, label: title, value, bought };
}

const MARK_UPS = ['contingency', 'overhead', 'profit'];

function markUps({ figures }: JobPrice): Part[] {
  return figures
    .filter(({ key }) => MARK_UPS.includes(key))
    .map(({ key, term }) => ({ key, label: term.label, value: term.value }));
}

function discounts({ discounts: all }: JobPrice): Part[] {
  return all.map(({ title, amount }) => {
    return { key: `discount ${title}`, label: title, value: amount.value.neg() };
  });
}

/** What else the price before tax is more or less than its parts: it is agreed, or lifted, or rounded. */
function between({ price, gross, agreed }: JobPrice, known: readonly Part[]): Part[] {
  const rest = price.value.sub(sumOf(known));
  if (agreed)
    return [{ key: 'agreed', label: phrase`Up or down to the agreed price`, value: rest }];
  const lifted = liftOf(gross);
  return [
    { key: 'least', label: phrase`Up to the least price`, value: lifted },
    { key: 'rounding', label: phrase`Rounding`, value: rest.sub(lifted) },
  ];
}

/** By how much a least price is above what was worked out, by the price’s own working. */
function liftOf(term: Term): Exact {
  const [of] = term.args;
  if (!of) return ZERO;
  if (term.op === 'most') return term.value.sub(of.value);
  const through = term.op === 'named' || term.op === 'cents' || term.op === 'nearest';
  return through ? liftOf(of) : ZERO;
}

function taxesOf({ taxes, tax, taxName }: JobPrice): Part[] {
  if (taxes.length < 2) return [{ key: 'tax', label: taxName, value: tax.value }];
  return taxes.map(({ said, tax: of }) => ({ key: `tax ${said}`, label: said, value: of.value }));
}

/** A penny between a price that is agreed with its tax and the two of them. */
function last({ total, price }: JobPrice, taxes: readonly Part[]): Part[] {
  const value = total.value.sub(price.value).sub(sumOf(taxes));
  return [{ key: 'rounding', label: phrase`Rounding`, value }];
}

function sumOf(parts: readonly Part[]): Exact {
  return parts.reduce((sum, part) => sum.add(part.value), ZERO);
}
