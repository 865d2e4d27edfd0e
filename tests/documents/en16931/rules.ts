/**
 * The business rules of EN 16931 for UBL, as published with its validation artefacts (ConnectingEurope,
 * eInvoicing-EN16931): written anew here from what each rule says, under its own number. Rules for what our invoices never
 * hold (charges, payees, deliveries, cards, intra-community supply, Canary islands) are left out.
 */
import { Decimal } from '../../../shared/exact';
import type { Element } from './read';

export type Rule = readonly [string, (invoice: Element) => boolean];

const number = (text: string) => new Decimal(text || 0);
const total = (amounts: readonly string[]) =>
  amounts.reduce((sum, amount) => sum.add(number(amount)), new Decimal(0));
const cents = (value: Decimal) => value.toDecimalPlaces(2, Decimal.ROUND_HALF_UP);
const same = (a: Decimal, b: Decimal) => a.eq(b);

const money = (invoice: Element, name: string) => number(invoice.one(`LegalMonetaryTotal/${name}`));
const groups = (invoice: Element) => invoice.all('TaxTotal/TaxSubtotal');
const lines = (invoice: Element) => invoice.all('InvoiceLine');
const lineTax = 'Item/ClassifiedTaxCategory';
const seller = 'AccountingSupplierParty/Party';
const buyer = 'AccountingCustomerParty/Party';

const exists = (way: string) => (invoice: Element) => invoice.has(way);
const ofLines = (ask: (line: Element) => boolean) => (invoice: Element) =>
  lines(invoice).every(ask);
const allowances = (invoice: Element) => invoice.all('AllowanceCharge');

/** XML Schema writes a truth as `true` or `1`. */
const isCharge = (a: Element) => ['true', '1'].includes(a.one('ChargeIndicator'));

const DOCUMENT: readonly Rule[] = [
  ['BR-01', exists('CustomizationID')],
  ['BR-02', exists('ID')],
  ['BR-03', exists('IssueDate')],
  ['BR-04', exists('InvoiceTypeCode')],
  ['BR-05', exists('DocumentCurrencyCode')],
  ['BR-06', exists(`${seller}/PartyLegalEntity/RegistrationName`)],
  ['BR-07', exists(`${buyer}/PartyLegalEntity/RegistrationName`)],
  ['BR-08', exists(`${seller}/PostalAddress`)],
  ['BR-09', exists(`${seller}/PostalAddress/Country/IdentificationCode`)],
  ['BR-10', exists(`${buyer}/PostalAddress`)],
  ['BR-11', exists(`${buyer}/PostalAddress/Country/IdentificationCode`)],
  ['BR-12', exists('LegalMonetaryTotal/LineExtensionAmount')],
  ['BR-13', exists('LegalMonetaryTotal/TaxExclusiveAmount')],
  ['BR-14', exists('LegalMonetaryTotal/TaxInclusiveAmount')],
  ['BR-15', exists('LegalMonetaryTotal/PayableAmount')],
  ['BR-16', exists('InvoiceLine')],
  ['BR-49', (i) => i.all('PaymentMeans').every((p) => p.has('PaymentMeansCode'))],
  ['BR-50', (i) => i.all('PaymentMeans/PayeeFinancialAccount').every((p) => p.has('ID'))],
  [
    'BR-61',
    (i) =>
      i
        .all('PaymentMeans')
        .every(
          (p) =>
            !['30', '57'].includes(p.one('PaymentMeansCode')) || p.has('PayeeFinancialAccount/ID'),
        ),
  ],
  [
    'BR-CO-09',
    (i) =>
      [...i.all(`${seller}/PartyTaxScheme`), ...i.all(`${buyer}/PartyTaxScheme`)].every(
        (p) => p.one('TaxScheme/ID') !== 'VAT' || /^[A-Z]{2}/.test(p.one('CompanyID')),
      ),
  ],
  [
    'BR-CO-25',
    (i) => !money(i, 'PayableAmount').gt(0) || i.has('DueDate') || i.has('PaymentTerms/Note'),
  ],
  [
    'BR-CO-26',
    (i) =>
      i.has(`${seller}/PartyTaxScheme/CompanyID`) ||
      i.has(`${seller}/PartyIdentification/ID`) ||
      i.has(`${seller}/PartyLegalEntity/CompanyID`),
  ],
];

const OF_LINES: readonly Rule[] = [
  ['BR-21', ofLines((l) => l.has('ID'))],
  ['BR-22', ofLines((l) => l.has('InvoicedQuantity'))],
  ['BR-23', ofLines((l) => l.all('InvoicedQuantity')[0]?.attribute('unitCode') !== '')],
  ['BR-24', ofLines((l) => l.has('LineExtensionAmount'))],
  ['BR-25', ofLines((l) => l.has('Item/Name'))],
  ['BR-26', ofLines((l) => l.has('Price/PriceAmount'))],
  ['BR-27', ofLines((l) => number(l.one('Price/PriceAmount')).gte(0))],
  ['BR-31', (i) => allowances(i).every((a) => a.has('Amount'))],
  ['BR-32', (i) => allowances(i).every((a) => a.has('TaxCategory/ID'))],
  [
    'BR-33',
    (i) =>
      allowances(i).every(
        (a) => a.has('AllowanceChargeReason') || a.has('AllowanceChargeReasonCode'),
      ),
  ],
  ['BR-CO-04', ofLines((l) => l.has(`${lineTax}/ID`))],
];

const TOTALS: readonly Rule[] = [
  [
    'BR-CO-10',
    (i) =>
      same(
        money(i, 'LineExtensionAmount'),
        cents(total(lines(i).map((l) => l.one('LineExtensionAmount')))),
      ),
  ],
  [
    'BR-CO-11',
    (i) =>
      same(
        money(i, 'AllowanceTotalAmount'),
        cents(
          total(
            allowances(i)
              .filter((a) => !isCharge(a))
              .map((a) => a.one('Amount')),
          ),
        ),
      ),
  ],
  [
    'BR-CO-12',
    (i) =>
      same(
        money(i, 'ChargeTotalAmount'),
        cents(
          total(
            allowances(i)
              .filter((a) => isCharge(a))
              .map((a) => a.one('Amount')),
          ),
        ),
      ),
  ],
  [
    'BR-CO-13',
    (i) =>
      same(
        money(i, 'TaxExclusiveAmount'),
        cents(
          money(i, 'LineExtensionAmount')
            .add(money(i, 'ChargeTotalAmount'))
            .sub(money(i, 'AllowanceTotalAmount')),
        ),
      ),
  ],
  [
    'BR-CO-14',
    (i) =>
      i
        .all('TaxTotal')
        .filter((t) => t.has('TaxSubtotal'))
        .every((t) =>
          same(
            number(t.one('TaxAmount')),
            cents(total(t.all('TaxSubtotal').map((g) => g.one('TaxAmount')))),
          ),
        ),
  ],
  [
    'BR-CO-15',
    (i) =>
      same(
        money(i, 'TaxInclusiveAmount'),
        cents(
          money(i, 'TaxExclusiveAmount').add(number(i.all('TaxTotal')[0]?.one('TaxAmount') ?? '')),
        ),
      ),
  ],
  [
    'BR-CO-16',
    (i) =>
      same(
        cents(money(i, 'PayableAmount').sub(money(i, 'PayableRoundingAmount'))),
        cents(money(i, 'TaxInclusiveAmount').sub(money(i, 'PrepaidAmount'))),
      ),
  ],
  [
    'BR-CO-17',
    (i) =>
      groups(i).every((g) =>
        same(
          number(g.one('TaxAmount')),
          cents(
            number(g.one('TaxableAmount'))
              .mul(number(g.one('TaxCategory/Percent')))
              .div(100),
          ),
        ),
      ),
  ],
  ['BR-CO-18', exists('TaxTotal/TaxSubtotal')],
  ['BR-45', (i) => groups(i).every((g) => g.has('TaxableAmount'))],
  ['BR-46', (i) => groups(i).every((g) => g.has('TaxAmount'))],
  ['BR-47', (i) => groups(i).every((g) => g.has('TaxCategory/ID'))],
  [
    'BR-48',
    (i) => groups(i).every((g) => g.has('TaxCategory/Percent') || g.one('TaxCategory/ID') === 'O'),
  ],
  ['BR-DEC', (i) => amounts(i).every((amount) => (amount.split('.')[1] ?? '').length <= 2)],
];

function amounts(invoice: Element): string[] {
  const ofTotals = invoice
    .all('LegalMonetaryTotal')
    .flatMap((t) => t.names.map((name) => t.one(name)));
  const ofGroups = groups(invoice).flatMap((g) => [g.one('TaxableAmount'), g.one('TaxAmount')]);
  const ofLine = lines(invoice).map((l) => l.one('LineExtensionAmount'));
  const ofAllowances = allowances(invoice).map((a) => a.one('Amount'));
  return [
    ...ofTotals,
    ...ofGroups,
    ...ofLine,
    ...ofAllowances,
    ...invoice.all('TaxTotal').map((t) => t.one('TaxAmount')),
  ];
}

/** In each category: a group for what lines and allowances name, its base their sum, its tax as the category has it. */
function ofCategory(code: string): Rule[] {
  const mine = (invoice: Element) =>
    groups(invoice).filter((g) => g.one('TaxCategory/ID') === code);
  const named = (invoice: Element) =>
    lines(invoice).some((l) => l.one(`${lineTax}/ID`) === code) ||
    allowances(invoice).some((a) => a.one('TaxCategory/ID') === code);
  const sellerTaxed = exists(`${seller}/PartyTaxScheme/CompanyID`);
  const rates = (invoice: Element) =>
    [
      ...lines(invoice).map((l) => l.all(lineTax)[0]!),
      ...allowances(invoice).flatMap((a) => a.all('TaxCategory')),
      ...groups(invoice).flatMap((g) => g.all('TaxCategory')),
    ].filter((c) => c.one('ID') === code);
  const none = code !== 'S';
  const exempt = ['E', 'AE', 'O'].includes(code);
  return [
    [
      `BR-${code}-01`,
      (i) => named(i) === mine(i).length > 0 && (code === 'S' || mine(i).length <= 1),
    ],
    [
      `BR-${code}-02`,
      (i) =>
        !named(i) ||
        (code === 'O'
          ? !sellerTaxed(i) && !i.has(`${buyer}/PartyTaxScheme/CompanyID`)
          : sellerTaxed(i) && (code !== 'AE' || i.has(`${buyer}/PartyTaxScheme/CompanyID`))),
    ],
    [
      `BR-${code}-05`,
      (i) =>
        rates(i).every((c) =>
          code === 'O'
            ? !c.has('Percent')
            : none
              ? number(c.one('Percent')).isZero()
              : number(c.one('Percent')).gt(0),
        ),
    ],
    [
      `BR-${code}-08`,
      (i) => mine(i).every((g) => same(number(g.one('TaxableAmount')), baseOf(g, i))),
    ],
    [`BR-${code}-09`, (i) => mine(i).every((g) => !none || number(g.one('TaxAmount')).isZero())],
    [
      `BR-${code}-10`,
      (i) =>
        mine(i).every(
          (g) =>
            g.has('TaxCategory/TaxExemptionReason') ||
            g.has('TaxCategory/TaxExemptionReasonCode') === exempt,
        ) && mine(i).every((g) => exempt || !g.has('TaxCategory/TaxExemptionReason')),
    ],
  ];
}

function baseOf(group: Element, invoice: Element): Decimal {
  const id = group.one('TaxCategory/ID');
  const rate = number(group.one('TaxCategory/Percent'));
  const alike = (c: Element | undefined) =>
    c?.one('ID') === id && number(c.one('Percent')).eq(rate);
  const sold = lines(invoice).filter((l) => alike(l.all(lineTax)[0]));
  const off = allowances(invoice).filter((a) => alike(a.all('TaxCategory')[0]));
  const signed = off.map((a) => (isCharge(a) ? a.one('Amount') : `-${a.one('Amount')}`));
  return total([...sold.map((l) => l.one('LineExtensionAmount')), ...signed]);
}

const OUTSIDE: readonly Rule[] = [
  [
    'BR-O-11',
    (i) => {
      const ids = groups(i).map((g) => g.one('TaxCategory/ID'));
      return !ids.includes('O') || ids.every((id) => id === 'O');
    },
  ],
];

/** UBL 2.1 fixes the order of elements in its schemas; this is that order for the elements we write. */
const ORDER: Readonly<Record<string, readonly string[]>> = {
  '': [
    'CustomizationID',
    'ID',
    'IssueDate',
    'DueDate',
    'InvoiceTypeCode',
    'Note',
    'DocumentCurrencyCode',
    'BuyerReference',
    'AccountingSupplierParty',
    'AccountingCustomerParty',
    'PaymentMeans',
    'PaymentTerms',
    'AllowanceCharge',
    'TaxTotal',
    'LegalMonetaryTotal',
    'InvoiceLine',
  ],
  [seller]: ['PartyName', 'PostalAddress', 'PartyTaxScheme', 'PartyLegalEntity', 'Contact'],
  [buyer]: ['PartyName', 'PostalAddress', 'PartyTaxScheme', 'PartyLegalEntity', 'Contact'],
  [`${seller}/PostalAddress`]: [
    'StreetName',
    'AdditionalStreetName',
    'CityName',
    'PostalZone',
    'AddressLine',
    'Country',
  ],
  AllowanceCharge: ['ChargeIndicator', 'AllowanceChargeReason', 'Amount', 'TaxCategory'],
  'TaxTotal/TaxSubtotal': ['TaxableAmount', 'TaxAmount', 'TaxCategory'],
  'TaxTotal/TaxSubtotal/TaxCategory': ['ID', 'Percent', 'TaxExemptionReason', 'TaxScheme'],
  LegalMonetaryTotal: [
    'LineExtensionAmount',
    'TaxExclusiveAmount',
    'TaxInclusiveAmount',
    'AllowanceTotalAmount',
    'PrepaidAmount',
    'PayableRoundingAmount',
    'PayableAmount',
  ],
  InvoiceLine: ['ID', 'InvoicedQuantity', 'LineExtensionAmount', 'Item', 'Price'],
  'InvoiceLine/Item': ['Description', 'Name', 'ClassifiedTaxCategory'],
};

/** The schema’s own order, from memory of UBL 2.1 and as the published samples have it. */
export const IN_ORDER: readonly Rule[] = Object.entries(ORDER).map(([way, order]) => [
  `order of ${way || 'Invoice'}`,
  (invoice) =>
    (way ? invoice.all(way) : [invoice]).every((element) => {
      const places = element.names.map((name) => order.indexOf(name));
      return places.every((place, i) => place >= 0 && (i === 0 || places[i - 1]! < place));
    }),
]);

export const RULES: readonly Rule[] = [
  ...DOCUMENT,
  ...OF_LINES,
  ...TOTALS,
  ...['S', 'Z', 'E', 'AE', 'O'].flatMap(ofCategory),
  ...OUTSIDE,
];

/** The numbers of the rules that an invoice breaks. */
export function broken(invoice: Element, rules: readonly Rule[] = RULES): string[] {
  return rules.filter(([, holds]) => !holds(invoice)).map(([id]) => id);
}
