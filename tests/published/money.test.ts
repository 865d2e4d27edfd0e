/** Currencies as ISO 4217 has them, and the standard rates of tax that the libraries start from. */
import codes from 'currency-codes';
import { describe, expect, test } from 'vitest';
import { defaultTerm } from '../../server/engine/resolve/env';
import { jobOf } from '../examples/engine';

const ISO = codes.data.filter((c) => c.code !== 'XXX' && c.code !== 'XTS');

describe('ISO 4217, list one, 2024-06-25, as in currency-codes 2.2.0', () => {
  test('there are as many as the standard has', () => expect(ISO.length).toBeGreaterThan(170));

  test.each(ISO.map((c) => [c.code, c.digits] as const))('%s has %i digits', (code, digits) => {
    const job = jobOf(`job "Trial"\n  currency ${code}\n\nuse uk\n`);
    expect(job.findings.filter((f) => f.severity === 'error')).toEqual([]);
    expect(job.env.money.code).toBe(code);
    expect(job.env.money.digits).toBe(digits);
  });

  test('the library has no other', () => {
    const known = new Set(ISO.map((c) => c.code));
    const { book } = jobOf('use uk\n').env;
    const ours = book.all('currencies', 'code').map((s) => s.line.syntax.key!.text);
    expect(ours.filter((code) => !known.has(code))).toEqual([]);
    // Its own currency stands in the country's library too, so that the long list need not be read.
    expect(ours.filter((code, i) => ours.indexOf(code) !== i)).toEqual(['GBP']);
  });

  test.each([
    ['uk', 'GBP'],
    ['us', 'USD'],
    ['de', 'EUR'],
  ])('what %s says of %s is what the standard says', (library, code) => {
    const money = jobOf(`use ${library}\n`).env.money;
    expect(money.code).toBe(code);
    expect(money.digits).toBe(ISO.find((c) => c.code === code)!.digits);
  });
});

describe('standard rates', () => {
  const taxOf = (library: string) =>
    defaultTerm(jobOf(`use ${library}\n`).env, 'tax', 'rate', 'tax').value.toNumber();
  // GOV.UK, VAT Notice 708.
  test('United Kingdom: 20%', () => expect(taxOf('uk')).toBe(20));
  // The npm package sales-tax 2.23.0, rates of 2024.
  test('Germany: 19%', () => expect(taxOf('de')).toBe(19));
  test('United States: left to the state and town', () => expect(taxOf('us')).toBe(0));
});
