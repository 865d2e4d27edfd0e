/** What the commands print with --json that make a file: next, new, share, take. Shapes are promised in shared/json-schema. */
import type { Comparison } from '../../engine/compare';
import type { Fixed } from '../../engine/life/agreed';
import type { NextJob } from '../../engine/life/next';
import { VERSION } from '../version';
import { moneyJson } from './compare';
import { amountJson } from './measure';

export function nextDocument(
  made: NextJob,
  found: Comparison,
  sent: Fixed | undefined,
  files: { readonly file: string; readonly out: string },
): string {
  const { cleared, rates } = made;
  return madeDocument('next', {
    ...files,
    options: [...found.before.taken],
    cleared,
    rates,
    sent: sent && {
      date: sent.entry.date,
      how: sent.how,
      price: amountJson(sent.entry.amount, found.before),
    },
    money: moneyJson(found),
  });
}

export function madeDocument(format: string, body: object): string {
  const document = {
    $schema: 'perpend-1.schema.json',
    format: `perpend-${format}`,
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    ...body,
  };
  return `${JSON.stringify(document)}\n`;
}
