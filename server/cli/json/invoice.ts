/** An invoice as JSON: the values of the paper, amounts as exact decimals. */
import type { Made } from '../../documents/invoice/make';
import type { Tax } from '../../documents/invoice/types';
import { VERSION } from '../version';

export function invoiceJson({ invoice, billed }: Made, lacks: readonly string[], file: string) {
  const { digits } = invoice;
  const money = (amount: { toFixed(digits: number): string }) => amount.toFixed(digits);
  const tax = ({ category, rate }: Tax) => ({ category, rate: rate.toFixed() });
  const { lines, allowances, taxes, totals, ...rest } = invoice;
  const document = {
    $schema: 'perpend-1.schema.json',
    format: 'perpend-invoice',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    file,
    ...rest,
    lines: lines.map((line) => ({
      name: line.name,
      says: line.says,
      net: money(line.net),
      tax: tax(line.tax),
    })),
    allowances: allowances.map((each) => ({
      reason: each.reason,
      amount: money(each.amount),
      tax: tax(each.tax),
    })),
    taxes: taxes.map((group) => ({
      ...tax(group),
      base: money(group.base),
      amount: money(group.amount),
      reason: group.reason,
    })),
    totals: Object.fromEntries(Object.entries(totals).map(([key, amount]) => [key, money(amount)])),
    before: money(billed.before),
    whole: money(billed.whole),
    lacking: lacks,
  };
  return `${JSON.stringify(document)}\n`;
}
