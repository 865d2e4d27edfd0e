/** A firm's jobs together, in tables. */

import type { Exact } from '../../../shared/exact';
import { later, phrase, spoken } from '../../../shared/phrase';
import { counted, showMoney } from '../../../shared/show';
import { daysBetween } from '../../engine/firm/days';
import type { CurrencyOverview, Overview } from '../../engine/firm/overview';
import { type JobState, STATES, type State } from '../../engine/firm/state';
import type { QuarterRow, Turnover } from '../../engine/firm/turnover';
import { type Io, paint } from '../io';
import { type Row, type Side, table } from './table';

type Named = (file: string) => string;

/** So many of each list, unless all are asked for. */
const LISTED = 20;

const WORDS: Readonly<Record<State, string>> = {
  'not-sent': later`Not sent`,
  out: later`Out`,
  lost: later`Lost`,
  'in-hand': later`Won, in hand`,
  done: later`Won, all invoiced`,
  paid: later`Won, all paid`,
};

export function jobsReport(
  { day, jobs, others, currencies }: Overview,
  folder: string,
  named: Named,
  all: boolean,
  io: Io,
): string[] {
  const files = others
    ? phrase`, and ${counted(others, phrase`other file`, phrase`other files`)}`
    : '';
  const head = phrase`${folder}: ${counted(jobs, phrase`job`, phrase`jobs`)}${files}, as of ${day}`;
  const several = currencies.length > 1;
  const parts = currencies.flatMap((currency) => [
    ...(several ? ['', paint(io, 'bold', phrase`In ${currency.code}`)] : []),
    ...partsOf(currency, day, named, all, io),
  ]);
  return [head, ...parts];
}

function partsOf(of: CurrencyOverview, day: string, named: Named, all: boolean, io: Io): string[] {
  const titled = (title: string, lines: readonly string[]) =>
    lines.length ? ['', paint(io, 'bold', title), ...lines] : [];
  const list = (state: State) => jobsIn(of, state, day, named, all);
  return [
    ...titled(phrase`How they stand`, standing(of)),
    ...titled(phrase`Out`, list('out')),
    ...titled(phrase`Won, in hand`, list('in-hand')),
    ...titled(phrase`Invoiced and paid`, paying(of)),
    ...titled(phrase`Owed, the oldest first`, owed(of, named, all)),
    ...titled(
      phrase`By the day of the invoice`,
      turnover(of, ({ invoiced }) => invoiced),
    ),
    ...titled(
      phrase`By the day of payment`,
      turnover(of, ({ paid }) => paid),
    ),
    ...notes(of),
  ];
}

function standing(of: CurrencyOverview): string[] {
  const rows = STATES.flatMap((state): Row[] => {
    const { jobs, price, unpriced } = of.states[state];
    if (!jobs) return [];
    const without = unpriced && state !== 'not-sent' ? phrase`${unpriced} without a price` : '';
    return [[spoken(WORDS[state]), String(jobs), unpriced < jobs ? money(price, of) : '', without]];
  });
  return table(
    [['', phrase`jobs`, phrase`price`, ''], ...rows],
    ['left', 'right', 'right', 'left'],
  );
}

function jobsIn(of: CurrencyOverview, state: State, day: string, named: Named, all: boolean) {
  const jobs = of.jobs.filter((job) => job.state === state);
  const rows = jobs.map((job) => [
    nameOf(job, named),
    job.since,
    daysText(daysBetween(job.since, day) ?? 0),
    job.price ? money(job.price, of) : '?',
  ]);
  return listed(rows, ['left', 'left', 'right', 'right'], all);
}

function owed(of: CurrencyOverview, named: Named, all: boolean): string[] {
  const rows = of.open.map(({ job, date, amount, days, late }) => [
    nameOf(job, named),
    date,
    daysText(days),
    late !== undefined && late > 0 ? phrase`${late} late` : '',
    money(amount, of),
  ]);
  return listed(rows, ['left', 'left', 'right', 'right', 'right'], all);
}

function listed(rows: readonly Row[], sides: readonly Side[], all: boolean): string[] {
  const some = all ? rows : rows.slice(0, LISTED);
  const left = rows.length - some.length;
  return [...table(some, sides), ...(left ? [phrase`  and ${left} more: --all lists them`] : [])];
}

function paying(of: CurrencyOverview): string[] {
  const { invoiced, paid, held, owed: open } = of;
  const rows: [string, Exact][] = [
    [phrase`Invoiced`, invoiced],
    [phrase`Paid`, paid],
    [phrase`Held back`, held],
    [phrase`Owed`, open],
  ];
  const some = rows.filter(([word, amount]) => word !== phrase`Held back` || !amount.isZero());
  if (invoiced.isZero() && paid.isZero()) return [];
  return table(
    some.map(([word, amount]) => [word, money(amount, of)]),
    ['left', 'right'],
  );
}

function turnover(of: CurrencyOverview, which: (row: QuarterRow) => Turnover): string[] {
  const some = of.quarters.filter((row) => !which(row).gross.isZero());
  if (!some.length) return [];
  const unknown = some.some((row) => !which(row).unknown.isZero());
  const head = [
    '',
    phrase`before tax`,
    phrase`tax`,
    phrase`with tax`,
    ...(unknown ? [phrase`tax not known`] : []),
  ];
  const rows = some.map((row) => {
    const { net, tax, gross, unknown: open } = which(row);
    const last = unknown ? [open.isZero() ? '' : money(open, of)] : [];
    return [
      phrase`${row.from} to ${row.to}`,
      money(net, of),
      money(tax, of),
      money(gross, of),
      ...last,
    ];
  });
  return table([head, ...rows], ['left', ...head.slice(1).map((): Side => 'right')]);
}

function notes({ jobs }: CurrencyOverview): string[] {
  const said = (count: number, text: string) => (count ? [`  ${text}`] : []);
  const left = jobs.reduce((sum, job) => sum + job.leftOut, 0);
  const moved = jobs.filter((job) => job.priceMoved).length;
  const lost = jobs.filter((job) => job.setting.lost).length;
  const lines = [
    ...said(
      lost,
      phrase`${counted(lost, phrase`job uses`, phrase`jobs use`)} a file that is missing or outside the workspace: what it says of currency, tax and days to pay is not taken. See --workspace.`,
    ),
    ...said(
      left,
      phrase`${counted(left, phrase`line`, phrase`lines`)} of records cannot be read or are in another currency, and are left out: perpend check tells of each.`,
    ),
    ...said(
      moved,
      phrase`${counted(moved, phrase`job`, phrase`jobs`)} had options accepted at no price that is written down: the price is without them.`,
    ),
  ];
  return lines.length ? ['', ...lines.flatMap((line) => table([[line.trim()]], ['left']))] : [];
}

function nameOf({ file, summary }: JobState, named: Named): string {
  const { ref, title, client } = summary;
  const said = [ref, title, client].filter(Boolean).join(', ');
  return said || named(file);
}

function daysText(days: number): string {
  return counted(days, phrase`day`, phrase`days`);
}

function money(amount: Exact, { money: of, style }: CurrencyOverview): string {
  return showMoney(amount, of.sign, of.digits, style);
}
