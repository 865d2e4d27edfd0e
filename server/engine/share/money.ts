/** Money in a line as it was cut: a sign or a code stands before the number or after it, near it or apart. */
import type { Item } from '../../../grammar/syntax';

/** As codes of currencies are written; whether there is such a one is no matter here. */
const CODE = /^[A-Z]{3}$/;
const SIGN = /\p{Sc}/u;

/** Those that money is written with. What could be money is taken for it. */
export function moneyIn(items: readonly Item[]): Set<Item> {
  const found = new Set<Item>();
  items.forEach((item, i) => {
    const [before, after] = [items[i - 1], items[i + 1]];
    if (item.kind === 'money') found.add(item);
    else if (item.kind === 'measure' && item.unit && isCurrency(item.unit.text)) found.add(item);
    else if (item.kind === 'word' && CODE.test(item.text) && after?.kind === 'measure')
      found.add(item).add(after);
    else if (item.kind !== 'text' && 'text' in item && SIGN.test(item.text)) {
      found.add(item);
      for (const beside of [before, after]) if (beside?.kind === 'measure') found.add(beside);
    }
  });
  return found;
}

function isCurrency(unit: string): boolean {
  return CODE.test(unit) || SIGN.test(unit);
}
