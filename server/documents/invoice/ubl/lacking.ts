/** What an electronic invoice needs by EN 16931 and a job may not say. The rules’ numbers stand beside each. */
import type { Invoice } from '../types';

/** Each in words for whoever writes the file: what is missing, and the line that says it. Nothing when nothing is. */
export function lacking(invoice: Invoice): string[] {
  const { seller, buyer, taxes } = invoice;
  const has = (...categories: readonly string[]) =>
    taxes.some((group) => categories.includes(group.category));
  const wants: readonly (readonly [boolean, string])[] = [
    [!invoice.number, 'a number: give it one (BR-02)'],
    [!invoice.issued, 'a date: “invoiced” in the record, or --date (BR-03)'],
    [!seller.name, 'who sends it: a “firm” block (BR-06)'],
    [!buyer.name, 'who it is for: “client” in the job, or a “bill-to” block (BR-07)'],
    [!isCountry(seller.country), 'the firm’s country in two letters, such as “country GB” (BR-09)'],
    [!isCountry(buyer.country), 'the client’s country in two letters: “bill-to” (BR-11)'],
    [
      invoice.digits > 2,
      `a currency of two decimals at most: amounts in ${invoice.currency} have ${invoice.digits} (BR-DEC)`,
    ],
    [!invoice.lines.length, 'something to be paid for (BR-16)'],
    [
      has('S', 'Z', 'E', 'AE') && !seller.taxNumber,
      'the firm’s tax number: “tax-number” in its block (BR-S-02, BR-Z-02, BR-E-02, BR-AE-02)',
    ],
    [
      has('AE') && !buyer.taxNumber,
      'the client’s tax number, as the client is to pay the tax: “tax-number” in “bill-to” (BR-AE-02)',
    ],
    [
      has('O') && !seller.registration,
      'a number by which the firm is known: “registration” in its block (BR-CO-26)',
    ],
    [
      has('O') && taxes.length > 1,
      'one kind of tax: work outside the tax goes on an invoice of its own (BR-O-11)',
    ],
    [
      taxes.some((g) => 'E AE O'.split(' ').includes(g.category) && !g.reason),
      'why there is no tax, in a sentence after the word “tax” (BR-E-10, BR-AE-10, BR-O-10)',
    ],
    [
      invoice.totals.due.gt(0) && !invoice.due && !invoice.terms,
      'when it is to be paid: “payment” in the firm’s block (BR-CO-25)',
    ],
  ];
  return wants.filter(([missing]) => missing).map(([, what]) => what);
}

function isCountry(code: string): boolean {
  return /^[A-Z]{2}$/.test(code);
}
