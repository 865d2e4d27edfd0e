/** Amounts, taxes and totals of an invoice, as UBL has them. */
import type { Exact } from '../../../../shared/exact';
import type { Allowance, Invoice, Tax, TaxGroup } from '../types';
import { branch, leaf, type Xml } from './xml';

/** Amounts are said with the decimals of their currency, two at most (BR-DEC). */
export function amountXml(name: string, amount: Exact, { currency, digits }: Invoice): Xml {
  return leaf(name, amount.toFixed(Math.min(digits, 2)), `currencyID="${currency}"`);
}

export function categoryXml(name: string, { category, rate }: Tax, reason = ''): Xml {
  return branch(
    name,
    leaf('cbc:ID', category),
    // Outside the tax there is no rate (BR-O-05), and of a reverse charge it is nothing (BR-AE-05).
    category === 'O' ? '' : leaf('cbc:Percent', category === 'S' ? rate.toFixed() : '0'),
    leaf('cbc:TaxExemptionReason', reason),
    branch('cac:TaxScheme', leaf('cbc:ID', 'VAT')),
  );
}

export function allowanceXml({ reason, amount, tax }: Allowance, invoice: Invoice): Xml {
  return branch(
    'cac:AllowanceCharge',
    leaf('cbc:ChargeIndicator', 'false'),
    leaf('cbc:AllowanceChargeReason', reason),
    amountXml('cbc:Amount', amount, invoice),
    categoryXml('cac:TaxCategory', tax),
  );
}

export function taxTotalXml(invoice: Invoice): Xml {
  return branch(
    'cac:TaxTotal',
    amountXml('cbc:TaxAmount', invoice.totals.tax, invoice),
    ...invoice.taxes.map((group) => subtotalXml(group, invoice)),
  );
}

function subtotalXml(group: TaxGroup, invoice: Invoice): Xml {
  const why = group.category === 'S' || group.category === 'Z' ? '' : group.reason;
  return branch(
    'cac:TaxSubtotal',
    amountXml('cbc:TaxableAmount', group.base, invoice),
    amountXml('cbc:TaxAmount', group.amount, invoice),
    categoryXml('cac:TaxCategory', group, why),
  );
}

export function totalsXml(invoice: Invoice): Xml {
  const { totals } = invoice;
  const unlessZero = (name: string, amount: Exact) =>
    amount.isZero() ? '' : amountXml(name, amount, invoice);
  return branch(
    'cac:LegalMonetaryTotal',
    amountXml('cbc:LineExtensionAmount', totals.lines, invoice),
    amountXml('cbc:TaxExclusiveAmount', totals.net, invoice),
    amountXml('cbc:TaxInclusiveAmount', totals.gross, invoice),
    unlessZero('cbc:AllowanceTotalAmount', totals.allowances),
    unlessZero('cbc:PrepaidAmount', totals.prepaid),
    unlessZero('cbc:PayableRoundingAmount', totals.rounding),
    amountXml('cbc:PayableAmount', totals.due, invoice),
  );
}
