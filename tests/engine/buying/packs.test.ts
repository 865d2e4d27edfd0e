/** Materials in several packs, and loose: the cheapest that is enough, with its working. */
import { describe, expect, test } from 'vitest';
import { workingOf } from '../../../server/engine/views/working';
import { agree, allTerms, evaluated } from '../evaluate';
import { amountOf, termOf, textOf, trial } from '../mortar/trial';

/** A mix of nothing but sand: so many litres of it are so many by 1.6 kg. */
const sand = (kg: number, lines: string) =>
  trial(kg / 1.6, 'parts sand 1\ndry-volume 1', `material sand\n${lines}\n`);

const BULK = '  pack 850 kg bulk-bag at £52\n';
const BAG = '  pack 25 kg bag at £3\n';

describe('several packs', () => {
  test.each([
    [300, '12 bags', 36],
    [450, '1 bulk bag', 52],
    [850, '1 bulk bag', 52],
    [890, '1 bulk bag of 850 kg + 2 bags of 25 kg', 58],
    [1300, '2 bulk bags', 104],
  ])('%d kg are bought as %s', (kg, bought, cost) => {
    for (const lines of [BULK + BAG, BAG + BULK]) {
      const job = sand(kg, lines);
      expect(textOf(job, 'buy.sand')).toBe(bought);
      expect(amountOf(job, 'cost.sand')).toBe(cost);
    }
  });

  test('packs of one name are told apart by what they hold', () => {
    const two = '  pack 850 kg bag at £52\n  pack 25 kg bag at £3\n';
    expect(textOf(sand(890, two), 'buy.sand')).toBe('1 bag of 850 kg + 2 bags of 25 kg');
  });

  test('what is left over is what they hold less what is needed', () => {
    expect(amountOf(sand(890, BULK + BAG), 'left.sand')).toBeCloseTo(10, 9);
    expect(amountOf(sand(300, BULK + BAG), 'left.sand')).toBeCloseTo(0, 9);
  });

  test('the working tells what each pack alone would cost', () => {
    const job = sand(890, BULK + BAG);
    const view = workingOf(termOf(job, 'buy.sand'), job.env);
    const told = view.parts.map((part) => part.label.replaceAll('\u00a0', ' '));
    expect(told).toContain('2 bulk bags of 850 kg alone: £104.00, 810 kg left over');
    expect(told).toContain('36 bags of 25 kg alone: £108.00, 10 kg left over');
  });

  test('every term of it is worked out again from its arguments alone', () => {
    for (const kg of [300, 450, 890, 1300]) {
      const job = sand(kg, `${BULK}${BAG}  price £70 per t\n`);
      for (const key of ['buy.sand', 'cost.sand', 'left.sand'])
        for (const term of allTerms(termOf(job, key))) {
          expect(agree(evaluated(term), term.value), `${key}, ${term.label}`).toBe(true);
          if (!term.again) continue;
          const again = term.again(term.args.map((a) => a.value.toNumber()));
          expect(again).toBeCloseTo(term.value.toNumber(), 6);
        }
    }
  });

  test('a pack sold by volume is weighed against those sold by weight', () => {
    // 1 m3 of sand weighs 1600 kg: cheaper by the kilogram than either bag.
    const job = sand(1500, `${BAG}  pack 1 m3 load at £60\n`);
    expect(textOf(job, 'buy.sand')).toBe('1 load');
    expect(amountOf(job, 'left.sand')).toBeCloseTo(100, 9);
  });

  test('two lines alike are one offer', () => {
    const job = sand(300, BAG + BAG);
    expect(textOf(job, 'buy.sand')).toBe('12 bags');
    expect(amountOf(job, 'cost.sand')).toBe(36);
  });

  test('a pack without a price is not reckoned with where another has one', () => {
    const job = sand(300, `  pack 850 kg bulk-bag\n${BAG}`);
    expect(amountOf(job, 'cost.sand')).toBe(36);
    expect(termOf(job, 'cost.sand').gaps).toEqual([]);
  });

  test('without any price the price lacks it', () => {
    const job = sand(300, '  pack 850 kg bulk-bag\n  pack 25 kg bag\n');
    expect(termOf(job, 'cost.sand').gaps.length).toBeGreaterThan(0);
  });

  test('in another currency is no price', () => {
    const job = sand(300, `  pack 850 kg bulk-bag at $1\n${BAG}`);
    expect(amountOf(job, 'cost.sand')).toBe(36);
  });
});

describe('loose beside packs', () => {
  test('all of it where that costs less', () => {
    const job = sand(600, `${BULK}${BAG}  price £70 per t\n`);
    expect(textOf(job, 'buy.sand')).toBe('600 kg');
    expect(amountOf(job, 'cost.sand')).toBe(42);
    expect(amountOf(job, 'left.sand')).toBeCloseTo(0, 9);
  });

  test('packs where they cost less', () => {
    const job = sand(850, `${BULK}${BAG}  price £70 per t\n`);
    expect(textOf(job, 'buy.sand')).toBe('1 bulk bag');
    expect(amountOf(job, 'cost.sand')).toBe(52);
  });
});
