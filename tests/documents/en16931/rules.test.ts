/**
 * The rules hold for the invoices published with the standard (eInvoicing-EN16931 1.3.16, EUPL-1.2, in
 * tests/published/en16931), so they ask no more than it does; and they are broken by each figure changed.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readInvoice } from './read';
import { broken } from './rules';

const FOLDER = new URL('../../published/en16931/', import.meta.url);
const files = readdirSync(FOLDER).filter((name) => name.endsWith('.xml'));
const read = (name: string) => readFileSync(new URL(name, FOLDER), 'utf8');

it('has all ten of them', () => {
  expect(files).toHaveLength(10);
});

it.each(files)('holds for %s', (name) => {
  expect(broken(readInvoice(read(name)))).toEqual([]);
});

it.each([
  ['PayableAmount', 'BR-CO-16'],
  ['TaxInclusiveAmount', 'BR-CO-15'],
  ['TaxExclusiveAmount', 'BR-CO-13'],
  ['LineExtensionAmount', 'BR-CO-10'],
  ['TaxableAmount', 'BR-CO-17'],
])('is broken by another %s', (element, rule) => {
  const changed = read('ubl-tc434-example3.xml').replace(
    new RegExp(`(<cbc:${element}[^>]*>)([^<]*)`),
    (_, tag: string, amount: string) => `${tag}${(Number(amount) + 1000).toFixed(2)}`,
  );
  expect(broken(readInvoice(changed))).toContain(rule);
});
