/** Our invoices by the rules of EN 16931, over random ones; and what is lacking is named, never left to a reader to find. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type {
  Invoice,
  InvoiceLine,
  Party,
  TaxGroup,
} from '../../../server/documents/invoice/types';
import { invoiceUbl, lacking } from '../../../server/documents/invoice/ubl';
import { type Exact, exact, roundTo, ZERO } from '../../../shared/exact';
import { readInvoice } from './read';
import { broken, IN_ORDER, RULES } from './rules';
import '../../harness/seed';

const party = (name: string, taxNumber: string): Party => ({
  name,
  address: ['3 Limekiln Yard'],
  town: 'Saltmarsh End',
  postcode: 'SX9 4QD',
  country: 'GB',
  taxNumber,
  registration: '00000000',
  phone: '01632 960 731',
  email: 'office@wren-brickwork.example',
});

const REASONS = { S: '', Z: '', E: 'Exempt', AE: 'Reverse charge', O: 'Not registered' } as const;
type Id = keyof typeof REASONS;

interface Sold {
  readonly id: Id;
  readonly rate: number;
  readonly pence: number;
  readonly name: string;
}

/** Lines of one tax each, groups of them by tax, totals: reckoned here apart from the engine. */
function invoiceOf(sold: readonly Sold[], off: number, prepaid: number): Invoice {
  const rateOf = ({ id, rate }: Sold) => exact(id === 'S' ? rate : 0);
  const lines: InvoiceLine[] = sold.map((s) => ({
    name: s.name,
    says: ['laid & pointed', '<b>'],
    net: exact(s.pence).div(100),
    tax: { category: s.id, rate: rateOf(s) },
  }));
  const first = lines[0]!.tax;
  const allowance = { reason: 'Discount', amount: exact(off).div(100), tax: first };
  const keys = [...new Set(lines.map((l) => `${l.tax.category} ${l.tax.rate}`))];
  const taxes: TaxGroup[] = keys.map((key) => {
    const mine = lines.filter((l) => `${l.tax.category} ${l.tax.rate}` === key);
    const sum = mine.reduce((all, l) => all.add(l.net), ZERO);
    const base = mine[0]!.tax === first ? sum.sub(allowance.amount) : sum;
    const { category, rate } = mine[0]!.tax;
    const amount = roundTo(base.mul(rate).div(100), 2);
    return { category, rate, base, amount, reason: REASONS[category] };
  });
  const sumOf = (values: readonly Exact[]) => values.reduce((all, v) => all.add(v), ZERO);
  const net = sumOf(taxes.map((t) => t.base));
  const tax = sumOf(taxes.map((t) => t.amount));
  const paid = exact(prepaid).div(100);
  return {
    number: '26-041-1',
    issued: '2026-03-12',
    due: '2026-03-26',
    terms: 'Within 14 days.',
    reference: '26-041',
    notes: [],
    currency: 'GBP',
    digits: 2,
    seller: party(
      'Wren & Daughter Brickwork',
      sold.some((s) => s.id === 'O') ? '' : 'GB 000 0000 00',
    ),
    buyer: party('Quillbank Growers', '000 0000 01'),
    lines,
    allowances: off ? [allowance] : [],
    taxes,
    totals: {
      lines: sumOf(lines.map((l) => l.net)),
      allowances: allowance.amount,
      net,
      tax,
      gross: net.add(tax),
      prepaid: paid,
      rounding: ZERO,
      due: net.add(tax).sub(paid),
    },
    account: 'GB00 TEST 0000 0000 0000 00',
  };
}

const name = fc.string({ minLength: 1, maxLength: 30 }).filter((text) => /\w/.test(text));
const taxed = fc.record({
  id: fc.constantFrom<Id>('S', 'Z', 'E', 'AE'),
  rate: fc.constantFrom(5, 19, 20),
  pence: fc.integer({ min: -50_000, max: 9_000_000 }),
  name,
});
const outside = taxed.map((sold): Sold => ({ ...sold, id: 'O' }));
const some = (of: fc.Arbitrary<Sold>) => fc.array(of, { minLength: 1, maxLength: 8 });

it('keeps every rule, and the order of the schema', () => {
  fc.assert(
    fc.property(
      fc.oneof(some(taxed), some(outside)),
      fc.integer({ min: 0, max: 5000 }),
      fc.integer({ min: 0, max: 5000 }),
      (sold, off, prepaid) => {
        const invoice = invoiceOf(sold, off, prepaid);
        expect(lacking(invoice)).toEqual([]);
        const read = readInvoice(invoiceUbl(invoice));
        expect(broken(read, [...RULES, ...IN_ORDER])).toEqual([]);
      },
    ),
    { numRuns: 300 },
  );
});

const plain = invoiceOf([{ id: 'S', rate: 20, pence: 120_000, name: 'Wall' }], 0, 0);

it.each<[string, Partial<Invoice>, RegExp]>([
  ['number', { number: '' }, /BR-02/],
  ['date', { issued: '' }, /BR-03/],
  ['country', { seller: { ...plain.seller, country: 'Britain' } }, /BR-09/],
  ['the client’s country', { buyer: { ...plain.buyer, country: '' } }, /BR-11/],
  ['tax number', { seller: { ...plain.seller, taxNumber: '' } }, /BR-S-02/],
  ['lines', { lines: [] }, /BR-16/],
  ['when to pay', { due: '', terms: '' }, /BR-CO-25/],
  ['two decimals', { digits: 3, currency: 'KWD' }, /BR-DEC/],
])('names a missing %s', (_, without, told) => {
  expect(lacking({ ...plain, ...without }).join('\n')).toMatch(told);
});

it('puts the country before a tax number that has none', () => {
  const read = readInvoice(invoiceUbl(plain));
  expect(read.one('AccountingCustomerParty/Party/PartyTaxScheme/CompanyID')).toBe('GB000000001');
});
