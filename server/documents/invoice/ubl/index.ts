/**
 * An invoice as a UBL 2.1 document that says what EN 16931 asks for. What the standard needs and the job does not say is
 * named by `lacking`, and no document is made without it.
 */
import { exact } from '../../../../shared/exact';
import type { Invoice, InvoiceLine } from '../types';
import { allowanceXml, amountXml, categoryXml, taxTotalXml, totalsXml } from './money';
import { partyXml } from './party';
import { branch, leaf, type Xml } from './xml';

export { lacking } from './lacking';

const NAMESPACES = [
  'xmlns="urn:oasis:names:specification:ubl:schema:xsd:Invoice-2"',
  'xmlns:cac="urn:oasis:names:specification:ubl:schema:xsd:CommonAggregateComponents-2"',
  'xmlns:cbc="urn:oasis:names:specification:ubl:schema:xsd:CommonBasicComponents-2"',
];

/** UNTDID 1001: a commercial invoice. */
const COMMERCIAL = '380';
/** UNTDID 4461: credit transfer. */
const TRANSFER = '30';

/** The invoice as UBL 2.1, in the elements and the order of EN 16931; what it lacks is asked of `lacking` first. */
export function invoiceUbl(invoice: Invoice): string {
  const taxed = invoice.taxes.every((group) => group.category !== 'O');
  const inside = [
    leaf('cbc:CustomizationID', 'urn:cen.eu:en16931:2017'),
    ...headXml(invoice),
    branch('cac:AccountingSupplierParty', partyXml(invoice.seller, taxed)),
    branch('cac:AccountingCustomerParty', partyXml(invoice.buyer, taxed)),
    paymentXml(invoice),
    branch('cac:PaymentTerms', leaf('cbc:Note', invoice.terms)),
    ...invoice.allowances.map((allowance) => allowanceXml(allowance, invoice)),
    taxTotalXml(invoice),
    totalsXml(invoice),
    ...invoice.lines.map((line, i) => lineXml(line, i + 1, invoice)),
  ].filter(Boolean);
  const body = inside.map((part) => part.replace(/^/gm, '  ')).join('\n');
  return `<?xml version="1.0" encoding="UTF-8"?>\n<Invoice ${NAMESPACES.join('\n  ')}>\n${body}\n</Invoice>\n`;
}

function headXml(invoice: Invoice): Xml[] {
  return [
    leaf('cbc:ID', invoice.number),
    leaf('cbc:IssueDate', invoice.issued),
    leaf('cbc:DueDate', invoice.due),
    leaf('cbc:InvoiceTypeCode', COMMERCIAL),
    ...invoice.notes.map((note) => leaf('cbc:Note', note)),
    leaf('cbc:DocumentCurrencyCode', invoice.currency),
    leaf('cbc:BuyerReference', invoice.reference),
  ];
}

function paymentXml({ account, number }: Invoice): Xml {
  if (!account) return '';
  return branch(
    'cac:PaymentMeans',
    leaf('cbc:PaymentMeansCode', TRANSFER),
    leaf('cbc:PaymentID', number),
    branch('cac:PayeeFinancialAccount', leaf('cbc:ID', account.replace(/\s/g, ''))),
  );
}

/** One of each piece of work at its price; a price is never less than nothing (BR-27), so a credit is less than none of it. */
function lineXml({ name, says, net, tax }: InvoiceLine, at: number, invoice: Invoice): Xml {
  const count = exact(net.isNegative() ? -1 : 1);
  return branch(
    'cac:InvoiceLine',
    leaf('cbc:ID', String(at)),
    leaf('cbc:InvoicedQuantity', count.toFixed(), 'unitCode="C62"'),
    amountXml('cbc:LineExtensionAmount', net, invoice),
    branch(
      'cac:Item',
      leaf('cbc:Description', says.join('; ')),
      leaf('cbc:Name', name),
      categoryXml('cac:ClassifiedTaxCategory', tax),
    ),
    branch('cac:Price', amountXml('cbc:PriceAmount', net.abs(), invoice)),
  );
}
