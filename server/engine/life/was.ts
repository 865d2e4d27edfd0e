/** What a price is made of, as the record keeps it: figures by id, to the digits that are written down. */
import { roundTo } from '../../../shared/exact';
import type { Figure } from '../brickwork/needs';
import { partnerFigures } from '../price/partners';
import type { Env } from '../resolve/env';
import { workFigures } from '../views/job-view';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';

/** Of a longer job only the whole is kept: nobody reads a record of hundreds of lines. */
const MOST_KEPT = 40;

/** Not kept: what others are the sum of, and what is no part of the price. */
const NOT_KEPT: ReadonlySet<string> = new Set([
  'time',
  'leaves',
  'leaves-share',
  'earns',
  'asked',
  'asked-total',
  'deducted',
  'retention',
]);

const OF_WORK: ReadonlySet<string> = new Set(['bricks', 'hours', 'price']);

export function fixedFigures(job: Job): Figure[] {
  const { works, price, env } = job;
  const own = works.length <= MOST_KEPT ? works.flatMap((work) => ofWork(work, job)) : [];
  const bought = price.purchases.length <= MOST_KEPT ? price.purchases : [];
  const options = job.taken.size ? [] : job.options.priced;
  const all = [
    ...price.figures
      .filter(({ key }) => !NOT_KEPT.has(key))
      .map(({ key, term }) => ({ key: `job.${key}`, term })),
    ...partnerFigures(price.partners),
    ...own,
    ...bought.map((p) => ({ key: `cost.${p.name}`, term: p.cost })),
    ...options.map((o) => ({ key: `option.${o.name}.price`, term: o.price.total })),
  ];
  return all.filter(({ term }) => canBeKept(term, env));
}

function ofWork(work: Job['works'][number], job: Job): readonly Figure[] {
  const keys = new Set([...OF_WORK].map((key) => `${work.name}.${key}`));
  return workFigures(work, job).filter(({ key }) => keys.has(key));
}

/** In money, or in a unit that a line of the record can say. */
function canBeKept({ value, unit, gaps }: Term, { money }: Env): boolean {
  if (gaps.length || value.isZero()) return false;
  return unit === money.code || KEPT_IN.has(unit);
}

const KEPT_IN: ReadonlySet<string> = new Set(['h', 'days', 'bricks']);

/** As it is written down: money to its digits, all else to two. */
export function kept({ value, unit }: Pick<Term, 'value' | 'unit'>, { money }: Env) {
  return roundTo(value, unit === money.code ? money.digits : 2);
}
