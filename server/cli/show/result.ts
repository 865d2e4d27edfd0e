/** The result of a job in tables. */
import { phrase } from '../../../shared/phrase';
import { owedOf } from '../../engine/life/owed';
import { recordOf } from '../../engine/life/record';
import { type Result, resultOf } from '../../engine/life/result';
import type { TaskResult } from '../../engine/life/tasks';
import { showTerm } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { type Io, paint } from '../io';
import type { Opened } from '../session';
import { type Row, table } from './table';

const SIDES = ['left', 'right', 'right', 'left'] as const;

export function resultReport({ job, shown }: Opened, io: Io): string[] {
  const result = resultOf(job);
  const money = recordOf(job).block
    ? ['', ...titled(phrase`Paid and owed`, owedRows(job), io)]
    : [];
  if (!result) return [phrase`${shown}: nothing is recorded as worked or spent yet.`, ...money];
  const head = ['', phrase`reckoned`, phrase`happened`, ''];
  return [
    paint(io, 'bold', result.soFar ? phrase`Result so far` : phrase`Result`),
    ...table([head, ...resultRows(result, job)], SIDES),
    '',
    paint(io, 'bold', phrase`By task`),
    ...taskTable(result.tasks, job),
    ...money,
  ];
}

function titled(title: string, rows: readonly Row[], io: Io): string[] {
  return [paint(io, 'bold', title), ...table(rows, ['left', 'right'])];
}

function resultRows(result: Result, job: Job): Row[] {
  const { parts, cost, overhead, leaves, margin, earns, hours, net } = result;
  const row = (label: string, a: Term | undefined, b: Term | undefined, note = ''): Row => [
    label,
    a ? shown(a, job) : '',
    b ? shown(b, job) : '',
    note,
  ];
  const some = parts.filter(
    ({ estimated, actual }) => !estimated.value.isZero() || !actual.value.isZero(),
  );
  return [
    row(phrase`Price before tax`, result.job.price.price, net),
    ...some.map((p) =>
      row(p.actual.label, p.estimated, p.actual, p.asEstimated ? phrase`as reckoned` : ''),
    ),
    row(phrase`Cost`, cost.estimated, cost.actual),
    ...(overhead.value.isZero()
      ? []
      : [row(phrase`Overhead`, overhead, overhead, phrase`as reckoned`)]),
    row(phrase`What it leaves`, leaves.estimated, leaves.actual),
    row(phrase`of the price before tax`, margin.estimated, margin.actual),
    row(phrase`Hours, of one person`, hours.estimated, earns && hours.actual),
    ...(earns
      ? [row(phrase`Earned for each hour of the gang`, earns.estimated, earns.actual)]
      : []),
  ];
}

function taskTable(tasks: readonly TaskResult[], job: Job): string[] {
  const head = [
    '',
    phrase`hours reckoned`,
    phrase`worked`,
    phrase`to do`,
    phrase`done`,
    phrase`in an hour`,
  ];
  const text = (term: Term | undefined) => (term ? shown(term, job) : '');
  const rows = tasks.map((t) => [
    t.task || phrase`no task said`,
    text(t.estimated),
    text(t.worked),
    text(t.amountEstimated),
    text(t.amount),
    text(t.output),
  ]);
  return table([head, ...rows], ['left', 'right', 'right', 'right', 'right', 'right']);
}

function owedRows(job: Job): Row[] {
  const { price, invoiced, paid, held, owed, toInvoice } = owedOf(job);
  const rows: [string, Term][] = [
    [phrase`Price with tax`, price],
    [phrase`Invoiced`, invoiced],
    [phrase`Paid`, paid],
    [phrase`Held back`, held],
    [phrase`Owed`, owed],
    [phrase`Still to invoice`, toInvoice],
  ];
  const some = rows.filter(([label, term]) => label !== phrase`Held back` || !term.value.isZero());
  return some.map(([label, term]) => [label, shown(term, job)]);
}

function shown(term: Term, { env }: Job): string {
  return term.gaps.length && term.value.isZero() ? '?' : showTerm(term, env);
}
