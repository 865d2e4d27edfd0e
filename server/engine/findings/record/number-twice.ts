/** Two invoices of one number. */
import { phrase } from '../../../../shared/phrase';
import { type Invoiced, recordOf } from '../../life/record';
import type { Job } from '../../workspace/job';
import { type Remark, type RemarkWay, rewrite } from '../remark';

/** In the order of the lines: whoever wrote the second should see it there. */
export function invoiceNumberTwice(job: Job): Remark[] {
  const seen = new Map<string, Invoiced>();
  const all = [...recordOf(job).invoiced].filter((each) => each.number);
  const byLine = all.sort((a, b) => a.line.origin.span.line - b.line.origin.span.line);
  return byLine.flatMap((each): Remark[] => {
    const first = seen.get(each.number);
    if (!first) seen.set(each.number, each);
    return first ? [twice(each, first, new Set(all.map(({ number }) => number)))] : [];
  });
}

function twice({ line, number }: Invoiced, first: Invoiced, taken: ReadonlySet<string>): Remark {
  return {
    code: 'invoice-number-twice',
    severity: 'warning',
    origin: line.at('number'),
    message: phrase`The invoice of ${first.date} has the number “${number}” too. Each invoice has a number of its own, by which the client pays it and the tax office asks for it.`,
    related: [{ origin: first.line.at('number'), message: phrase`The first of that number` }],
    ways: nextFree(number, taken).map(
      (free): RemarkWay => ({
        title: phrase`Write ${free}`,
        edits: [rewrite(line.at('number'), free)],
      }),
    ),
  };
}

/** Its last figures counted up, as often as this record takes; other jobs may have it. */
function nextFree(number: string, taken: ReadonlySet<string>): string[] {
  const [, before = '', figures] = /^(.*?)(\d{1,9})$/.exec(number) ?? [];
  if (figures === undefined) return [];
  for (let next = Number(figures) + 1; ; next += 1) {
    const free = before + String(next).padStart(figures.length, '0');
    if (!taken.has(free)) return [free];
  }
}
