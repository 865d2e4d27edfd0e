/** An invoice in English. */
import type { InvoiceWords } from './invoice';

export const INVOICE_EN: InvoiceWords = {
  title: 'Invoice',
  draft: 'Draft invoice',
  notAnInvoice: 'NOT AN INVOICE YET.',
  why: {
    errors: 'The job file still has errors, so the amounts may be wrong.',
    gaps: 'Parts of the price are still to be worked out.',
    noNumber: 'It has no number.',
    noDate: 'It has no date.',
  },
  part: 'Part of the price',
  facts: {
    to: 'To',
    number: 'Invoice number',
    date: 'Date',
    due: 'To be paid by',
    site: 'Site',
    ref: 'Our reference',
    taxNumber: 'Your tax number',
  },
  sum: 'What is to be paid',
  workDone: 'The work',
  lineAt: (name, tax, rate) =>
    rate ? `${name}, with ${tax} at ${rate}` : `${name}, without ${tax}`,
  what: 'What for',
  amount: 'Amount',
  lines: 'Sum of these',
  net: 'Before tax',
  taxAt: (name, rate, base) => `${name} at ${rate} on ${base}`,
  noTax: (name, base) => `No ${name} on ${base}`,
  total: 'With tax',
  rounding: 'Rounded to what was agreed',
  due: 'To be paid',
  whole: 'Price of all the work',
  before: 'Invoiced before',
  left: 'Still to come',
  soFar: 'The whole of the work',
  deducted: (title, rate, base) => `${title}: ${rate} of ${base}, which you pay to the tax office`,
  afterDeducted: 'To be paid to us after that',
  held: 'Of this, held back until it is released',
  now: 'To be paid now',
  payment: 'Payment',
  within: (days) =>
    days === 0
      ? 'To be paid at once.'
      : `To be paid within ${days} ${days === 1 ? 'day' : 'days'} of the date of this invoice.`,
  account: (number) => `To account ${number}.`,
  quoting: (number) => `Please say invoice ${number} with the payment.`,
  rounded: 'Tax is worked out once for each rate, to the least coin, halves up.',
};
