/** Jobs by how they stand, and what is owed of them. */
import { daysBetween } from '../../../engine/firm/days';
import { STATES, type State } from '../../../engine/firm/state';
import { rowOf, tableOf, tableUnder } from '../../cells';
import type { Part, Row } from '../../paper/model';
import { money, nameOf, type Showing } from './showing';

/** So many of each list, unless all are asked for. */
const LISTED = 20;

export function standing(to: Showing): Part[] {
  const { of, words } = to;
  const rows = STATES.flatMap((state): Row[] => {
    const { jobs, price, unpriced } = of.states[state];
    if (!jobs) return [];
    const without = unpriced && state !== 'not-sent' ? words.withoutPrice(unpriced) : '';
    const cell = unpriced < jobs ? money(price, to) : '';
    return [rowOf(words.states[state], { text: `${jobs}`, value: `${jobs}` }, cell, without)];
  });
  const heads = [words.state, words.jobs, words.price, ''];
  return tableUnder(words.stand, tableOf('states', heads, rows, [1, 2]));
}

export function jobsIn(state: State, to: Showing): Part[] {
  const { of, day, words } = to;
  const rows = of.jobs
    .filter((job) => job.state === state)
    .map((job) => {
      const days = `${daysBetween(job.since, day) ?? 0}`;
      const price = job.price ? money(job.price, to) : '?';
      return rowOf(nameOf(job, to), to.date(job.since), { text: days, value: days }, price);
    });
  const heads = [words.job, words.since, words.days, words.price];
  return listed(words.states[state], state, heads, rows, to);
}

export function owed(to: Showing): Part[] {
  const { of, words } = to;
  const rows = of.open.map(({ job, date, amount, days, late }) => {
    const by = late !== undefined && late > 0 ? { text: `${late}`, value: `${late}` } : '';
    const open = { text: `${days}`, value: `${days}` };
    return rowOf(nameOf(job, to), to.date(date), open, by, money(amount, to));
  });
  const heads = [words.job, words.since, words.days, words.late, words.amount];
  return listed(words.open, 'owed', heads, rows, to);
}

/** The first few, and how many more there are. */
function listed(
  title: string,
  name: string,
  heads: readonly string[],
  rows: readonly Row[],
  { all, words }: Showing,
): Part[] {
  const some = all ? rows : rows.slice(0, LISTED);
  const more = rows.length - some.length;
  const numbers = heads.map((_, i) => i).slice(2);
  return [
    ...tableUnder(title, tableOf(name, heads, some, numbers)),
    ...(more ? [{ part: 'words' as const, text: words.andMore(more) }] : []),
  ];
}
