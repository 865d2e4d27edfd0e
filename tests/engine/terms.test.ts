import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cents,
  convert,
  counted,
  difference,
  fact,
  missing,
  most,
  named,
  nearest,
  product,
  quotient,
  raised,
  share,
  sum,
  type Term,
  up,
  withGaps,
} from '../../server/engine/working/term';
import { exact } from '../../shared/exact';

const n = (value: string | number, unit = '') => fact('a', value, unit);
const gap = missing('b', '', 'b is not known');
const value = (term: Term) => term.value.toFixed();

describe('a term', () => {
  test.each([
    ['sum', sum('', '', [n('0.1'), n('0.2'), n('0.3')]), '0.6'],
    ['sum of nothing', sum('', '', []), '0'],
    ['difference', difference('', '', n(1), n('0.9')), '0.1'],
    ['product', product('', '', [n('1.1'), n('1.1'), n(100)]), '121'],
    ['product of nothing', product('', '', []), '1'],
    ['quotient', quotient('', '', n(7), n(4)), '1.75'],
    ['share', share('', '', n('17.5'), n(200)), '35'],
    ['raised', raised('', '', n(200), n(5)), '210'],
    ['up', up('', '', n('2.0001')), '3'],
    ['up from a whole', up('', '', n(2)), '2'],
    ['up by half days', up('', '', n('1.2'), '', n('0.5')), '1.5'],
    ['up by a step of zero', up('', '', n('1.2'), '', n(0)), '1.2'],
    ['nearest 5', nearest('', '', n('1002.5'), n(5)), '1005'],
    ['nearest 5, below the half', nearest('', '', n('1002.49'), n(5)), '1000'],
    ['nearest 0', nearest('', '', n('1002.49'), n(0)), '1002.49'],
    ['cents, half up', cents('', n('1.005'), 2), '1.01'],
    ['cents, half away from zero', cents('', n('-1.005'), 2), '-1.01'],
    ['cents of yen', cents('', n('99.5'), 0), '100'],
    ['most', most('', '', n(3), n(4)), '4'],
    ['named', named('c', n(9)), '9'],
    ['convert', convert('', 'mm', n(2, 'in'), exact('25.4')), '50.8'],
    ['counted', counted('', 1.5, ''), '1.5'],
  ])('%s', (_, term, wanted) => expect(value(term)).toBe(wanted));

  test('a third three times is one again, to forty digits', () => {
    const third = quotient('', '', n(1), n(3));
    expect(sum('', '', [third, third, third]).value.toDecimalPlaces(30).toFixed()).toBe('1');
    expect(value(up('', '', product('', '', [third, n(3)])))).toBe('1');
  });

  test('a quotient by zero is a gap that says so, never an endless number', () => {
    const term = quotient('', '', n(1), fact('output', 0, 'h'));
    expect(value(term)).toBe('0');
    expect(term.gaps.map((g) => g.what)).toEqual(['output is zero']);
    expect(quotient('', '', n(1), gap).gaps).toEqual(gap.gaps);
  });

  test('what the setting-out gives that is no number counts as none', () => {
    for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY])
      expect(value(counted('', wrong, ''))).toBe('0');
  });

  test.each([
    ['sum', (a: Term) => sum('', '', [n(1), a])],
    ['difference', (a: Term) => difference('', '', n(1), a)],
    ['product', (a: Term) => product('', '', [n(1), a])],
    ['quotient', (a: Term) => quotient('', '', a, n(1))],
    ['share', (a: Term) => share('', '', n(1), a)],
    ['raised', (a: Term) => raised('', '', a, n(1))],
    ['up', (a: Term) => up('', '', n(1), '', a)],
    ['nearest', (a: Term) => nearest('', '', n(1), a)],
    ['cents', (a: Term) => cents('', a, 2)],
    ['most', (a: Term) => most('', '', n(1), a)],
    ['named', (a: Term) => named('', a)],
    ['convert', (a: Term) => convert('', '', a, exact(1))],
    ['counted', (a: Term) => counted('', 1, '', { args: [a] })],
  ])('a gap goes through a %s, once', (_, make) => {
    expect(make(gap).gaps).toEqual(gap.gaps);
    expect(make(n(2)).gaps).toEqual([]);
    const both = sum('', '', [make(gap), gap, withGaps(n(1), gap.gaps)]);
    expect(both.gaps).toEqual(gap.gaps);
  });

  test('money is rounded half away from zero at every amount', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e9, max: 1e9 }),
        fc.constantFrom(0, 2, 3),
        (tenths, digits) => {
          const minor = exact(tenths).div(10);
          const amount = minor.div(exact(10).pow(digits));
          const rounded = cents('', n(amount.toFixed()), digits).value.mul(exact(10).pow(digits));
          const away = Math.sign(tenths) * Math.floor((Math.abs(tenths) + 5) / 10);
          expect(rounded.toNumber()).toBe(away === 0 ? rounded.toNumber() * 0 : away);
        },
      ),
      { seed: 20260302, numRuns: 500 },
    );
  });

  test('up is the smallest multiple that is not less', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e7 }), fc.integer({ min: 1, max: 400 }), (a, b) => {
        const step = n(exact(b).div(4).toFixed());
        const term = up('', '', n(exact(a).div(16).toFixed()), '', step);
        const steps = Math.ceil(a / 16 / (b / 4));
        expect(term.value.toNumber()).toBe((steps * b) / 4);
      }),
      { seed: 20260302, numRuns: 500 },
    );
  });
});
