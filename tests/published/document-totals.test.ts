/**
 * Sample invoices published with the validation artefacts of EN 16931 (ConnectingEurope, eInvoicing-EN16931 1.3.16;
 * EUPL-1.2, tests/published/en16931): from their lines, allowances and charges our arithmetic makes their totals.
 */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  type DocumentTotals,
  documentTotals,
  type Rounding,
  type TaxCategory,
  type TaxedAmount,
} from '../../server/engine/price/document-totals';
import { Decimal, exact } from '../../shared/exact';
import { type Element, readInvoice } from '../documents/en16931/read';

const FOLDER = path.join(import.meta.dirname, 'en16931');
const FILES = readdirSync(FOLDER).filter((file) => file.endsWith('.xml'));

const amount = (text: string) => exact(text || '0');

function taxed(of: Element, net: string, category: string): TaxedAmount {
  return {
    net: amount(of.one(net)),
    category: of.one(`${category}/ID`) as TaxCategory,
    rate: amount(of.one(`${category}/Percent`)),
  };
}

function totalsOf(invoice: Element, round?: Rounding): DocumentTotals {
  const whole = invoice.all('AllowanceCharge');
  const charge = (e: Element) => ['true', '1'].includes(e.one('ChargeIndicator'));
  const all = (which: boolean) =>
    whole.filter((e) => charge(e) === which).map((e) => taxed(e, 'Amount', 'TaxCategory'));
  return documentTotals(
    {
      lines: invoice
        .all('InvoiceLine')
        .map((e) => taxed(e, 'LineExtensionAmount', 'Item/ClassifiedTaxCategory')),
      allowances: all(false),
      charges: all(true),
      prepaid: amount(invoice.one('LegalMonetaryTotal/PrepaidAmount')),
      rounding: amount(invoice.one('LegalMonetaryTotal/PayableRoundingAmount')),
      digits: 2,
    },
    round,
  );
}

/** As a plain record: what our arithmetic makes, and what the file prints. */
function made(t: DocumentTotals): Record<string, string> {
  const groups = t.taxes.map((g) => [
    `${g.category} ${g.rate.toFixed()}`,
    `${g.base.toFixed(2)} ${g.tax.toFixed(2)}`,
  ]);
  const plain = { lines: t.lines, net: t.net, tax: t.tax, gross: t.gross, due: t.due };
  return {
    ...Object.fromEntries(Object.entries(plain).map(([k, v]) => [k, v.toFixed(2)])),
    allowances: t.allowances.toFixed(2),
    charges: t.charges.toFixed(2),
    ...Object.fromEntries(groups),
  };
}

function printed(invoice: Element): Record<string, string> {
  const money = (name: string) => amount(invoice.one(`LegalMonetaryTotal/${name}`)).toFixed(2);
  // A second sum of tax is the same in the seller’s own currency, by a rate of exchange.
  const [tax] = invoice.all('TaxTotal');
  const groups = tax!
    .all('TaxSubtotal')
    .map((g) => [
      `${g.one('TaxCategory/ID')} ${amount(g.one('TaxCategory/Percent')).toFixed()}`,
      `${amount(g.one('TaxableAmount')).toFixed(2)} ${amount(g.one('TaxAmount')).toFixed(2)}`,
    ]);
  return {
    lines: money('LineExtensionAmount'),
    net: money('TaxExclusiveAmount'),
    tax: amount(tax!.one('TaxAmount')).toFixed(2),
    gross: money('TaxInclusiveAmount'),
    due: money('PayableAmount'),
    allowances: money('AllowanceTotalAmount'),
    charges: money('ChargeTotalAmount'),
    ...Object.fromEntries(groups),
  };
}

const invoiceIn = (file: string) => readInvoice(readFileSync(path.join(FOLDER, file), 'utf8'));

describe('the published sample invoices', () => {
  test('are all there', () => {
    expect(FILES.length).toBe(10);
  });

  test.each(FILES)('%s: totals and tax sums as printed', (file) => {
    const invoice = invoiceIn(file);
    expect(made(totalsOf(invoice))).toEqual(printed(invoice));
  });

  test('two of them would fail if halves were rounded to even', () => {
    const even: Rounding = (value, digits) =>
      value.toDecimalPlaces(digits, Decimal.ROUND_HALF_EVEN);
    const failing = FILES.filter((file) => {
      const invoice = invoiceIn(file);
      return (
        JSON.stringify(made(totalsOf(invoice, even))) !== JSON.stringify(made(totalsOf(invoice)))
      );
    });
    expect(failing.sort()).toEqual(['guide-example2.xml', 'ubl-tc434-example2.xml']);
  });
});
