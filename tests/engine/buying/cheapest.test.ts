/** The cheapest packs against every set there is. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cheapestPacks } from '../../../server/engine/price/buying/cheapest';
import { Decimal, exact } from '../../../shared/exact';
import { took } from '../../harness/took';
import '../../harness/seed';

interface Offer {
  readonly content: number;
  readonly price: number;
}

const offers = (list: readonly Offer[]) =>
  list.map(({ content, price }) => ({ content: exact(content), price: exact(price) }));

const totals = (counts: readonly number[], of: readonly Offer[], need: number) => {
  const sum = (each: (o: Offer, n: number) => number) =>
    of.reduce((all, o, i) => all + each(o, counts[i]!), 0);
  return {
    cost: sum((o, n) => o.price * n),
    over: sum((o, n) => o.content * n) - need,
    packs: sum((_, n) => n),
  };
};

/** Every set of packs that covers the need and has none to spare. */
function everySet(need: number, of: readonly Offer[]) {
  let best: ReturnType<typeof totals> | undefined;
  const look = (i: number, counts: number[], left: number) => {
    if (i === of.length) {
      if (left > 0) return;
      const set = totals(counts, of, need);
      const by = best && (set.cost - best.cost || set.over - best.over || set.packs - best.packs);
      if (by === undefined || by < 0) best = set;
      return;
    }
    const most = Math.max(0, Math.ceil(left / of[i]!.content));
    for (let n = 0; n <= most; n++) look(i + 1, [...counts, n], left - n * of[i]!.content);
  };
  look(0, [], need);
  return best!;
}

describe('the cheapest packs', () => {
  const offer = fc.record({
    content: fc.integer({ min: 1, max: 12 }),
    price: fc.integer({ min: 0, max: 30 }),
  });
  test('are the cheapest of all sets there are, with the least over and the fewest packs', () => {
    const any = fc.tuple(
      fc.integer({ min: 0, max: 40 }),
      fc.array(offer, { minLength: 1, maxLength: 3 }),
    );
    fc.assert(
      fc.property(any, ([need, list]) => {
        const counts = cheapestPacks(exact(need), offers(list))!;
        expect(totals(counts, list, need)).toEqual(everySet(need, list));
      }),
      { numRuns: 600 },
    );
  });

  test('are the same in whatever order they are offered', () => {
    const any = fc.tuple(
      fc.integer({ min: 0, max: 400 }),
      fc.uniqueArray(offer, {
        minLength: 1,
        maxLength: 4,
        selector: (o) => `${o.content} ${o.price}`,
      }),
    );
    fc.assert(
      fc.property(any, ([need, list]) => {
        const turned = [...list].reverse();
        const [a, b] = [list, turned].map((l) => cheapestPacks(exact(need), offers(l))!);
        expect(totals([...b!].reverse(), list, need)).toEqual(totals(a!, list, need));
      }),
    );
  });

  test('two bags beside a bulk bag, where a second bulk bag is dearer', () => {
    const list = [
      { content: 850, price: 50 },
      { content: 25, price: 3.5 },
    ];
    expect(cheapestPacks(exact(900), offers(list))).toEqual([1, 2]);
    expect(cheapestPacks(exact(1300), offers(list))).toEqual([2, 0]);
    expect(cheapestPacks(exact(300), offers(list))).toEqual([0, 12]);
    expect(cheapestPacks(exact(400), offers(list))).toEqual([1, 0]);
  });

  test('a billionth over a whole is no other bag', () => {
    const need = new Decimal(25).div(3).mul(3).plus('1e-12');
    expect(cheapestPacks(need, offers([{ content: 25, price: 6 }]))).toEqual([1]);
  });

  test.each([
    ['nothing in them', '10', [{ content: 0, price: 3 }]],
    ['no offer', '10', []],
    ['no end', 'Infinity', [{ content: 25, price: 3 }]],
    ['past all sense', '1e40', [{ content: 25, price: 3 }]],
  ])('%s: nothing is bought', (_, need, list) => {
    expect(cheapestPacks(exact(need), offers(list as Offer[]))).toBeUndefined();
  });

  test('absurd lists cost no more than a blink', () => {
    const list = Array.from({ length: 12 }, (_, i) => ({
      content: 1 + i / 1e6 + i * i * 1e-9,
      price: 1 + i / 1e6 + i * i * 1e-9,
    }));
    const counts = () => cheapestPacks(exact('987654.321'), offers(list))!;
    expect(totals(counts(), list, 987654.321).over).toBeGreaterThanOrEqual(-1e-6);
    expect(took(counts, 4)).toBeLessThan(400);
  });
});
