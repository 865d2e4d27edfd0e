/** The money of two revisions: from cost to price, and what moved it. */
import { type Comparison, type MoneyPart, sinceSent } from '../../../engine/compare';
import { showTerm } from '../../../engine/views/show';
import type { Job } from '../../../engine/workspace/job';
import { rowOf, tableOf, tableUnder, termCell } from '../../cells';
import type { Part, Row } from '../../paper/model';
import type { CompareWords, Words } from '../../words';
import { figureRow, moneyRow, signedMoney } from './changes';
import { changeTable } from './work';

export function moneyParts(found: Comparison, words: CompareWords): Part[] {
  const { money, before, after, nothing } = found;
  if (!money) return alone(before, after, words);
  const steps = money.steps.map((step) => moneyRow(step, found));
  const open = money.incomplete && !nothing;
  return [
    ...tableUnder(words.price, changeTable(words.price, steps, words)),
    ...(open ? [{ part: 'words' as const, text: words.incomplete }] : []),
    ...moved(found, words),
  ];
}

/** Where there is nothing to put beside it, the price alone. */
function alone(before: Job, after: Job, words: CompareWords): Part[] {
  const price = (job: Job) => (job.isJob ? termCell(job.price.total, job) : { text: '' });
  if (!before.isJob && !after.isJob) return [];
  const row = rowOf(words.price, price(before), price(after), '');
  return tableUnder(words.price, changeTable(words.price, [row], words));
}

/** Parts, then pieces of work where there are several: each adds up to what it is a part of. */
function moved({ money, before, after }: Comparison, words: CompareWords): Part[] {
  if (!money?.parts.length) return [];
  const by = (part: MoneyPart) => signedMoney(part.difference, after.env);
  const all = (part: MoneyPart, ...more: string[]): Row => {
    return { ...rowOf(words.together, by(part), ...more), role: 'total' };
  };
  const parts = money.parts.map((part) =>
    rowOf(part.label, by(part), boughtText(part, before, after, words)),
  );
  const works = money.works.map((part) => rowOf(part.label, by(part)));
  const heads = [words.what, words.by, words.bought];
  return [
    ...tableUnder(words.moved, tableOf('moved', heads, [...parts, all(money.total, '')], [1])),
    ...(works.length > 1
      ? tableUnder(
          words.byWork,
          tableOf('by-work', [words.what, words.by], [...works, all(money.net)]),
        )
      : []),
  ];
}

function boughtText({ bought }: MoneyPart, before: Job, after: Job, words: CompareWords): string {
  if (!bought) return '';
  const was = bought.before ? showTerm(bought.before, before.env) : words.none;
  const is = bought.after ? showTerm(bought.after, after.env) : words.none;
  return was === is ? is : words.fromTo(was, is);
}

export function keptParts(job: Job, { date, pages: { compare: words } }: Words): Part[] {
  const since = sinceSent(job);
  if (!since) return [];
  const { figures, total, figuresKept, price } = since;
  const rows = [...figures, ...(total ? [total] : [])].map((figure) =>
    figureRow(figure, figure.label, { before: job, after: job }),
  );
  const texts = [
    words.kept(date(since.date), showTerm(price, job.env)),
    ...(rows.length ? [] : [words.nothing]),
    ...(figuresKept ? [] : [words.nothingKept]),
  ];
  return [
    ...texts.map((text): Part => ({ part: 'words', text })),
    ...tableUnder(words.quantities, changeTable(words.quantities, rows, words)),
  ];
}
