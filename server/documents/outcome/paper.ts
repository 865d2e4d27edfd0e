/** The result of a job as a paper for the firm itself: what was reckoned beside what happened. */
import { owedOf } from '../../engine/life/owed';
import { type Result, resultOf } from '../../engine/life/result';
import type { TaskResult } from '../../engine/life/tasks';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { tableOf, termCell, under } from '../cells';
import { framed } from '../framed';
import type { Letterhead, Paper, Part, Row, Table } from '../paper/model';
import type { OutcomeWords } from '../words';

export function outcomePaper(job: Job, letterhead: Letterhead | undefined, version: string): Paper {
  const result = resultOf(job);
  return framed({
    job,
    letterhead,
    version,
    kind: 'result',
    title: (words) => (result?.soFar ? words.outcome.soFar : words.outcome.title),
    parts: (words) => [
      ...(result
        ? resultParts(result, job, words.outcome)
        : [{ part: 'words' as const, text: words.outcome.nothingYet }]),
      ...under(words.outcome.paid, owedTable(job, words.outcome)),
    ],
    foot: (words) => words.outcome.forFirm,
  });
}

function resultParts(result: Result, job: Job, words: OutcomeWords): Part[] {
  return [
    ...(result.soFar ? [{ part: 'words' as const, text: words.notAll }] : []),
    ...under(words.money, money(result, job, words)),
    ...(result.tasks.length ? under(words.tasks, tasks(result.tasks, job, words)) : []),
  ];
}

function money(result: Result, job: Job, words: OutcomeWords): Table {
  const { parts, cost, overhead, leaves, margin, earns, hours, net } = result;
  const row = (label: string, a?: Term, b?: Term, role?: Row['role']): Row => ({
    cells: [{ text: label }, termCell(a, job), termCell(b, job)],
    role,
  });
  const some = parts.filter((p) => !p.estimated.value.isZero() || !p.actual.value.isZero());
  const said = (p: (typeof parts)[number]) =>
    p.asEstimated ? `${words.parts[p.part]} (${words.asReckoned})` : words.parts[p.part];
  return tableOf(
    'result',
    [words.what, words.reckoned, words.happened],
    [
      row(words.net, result.job.price.price, net),
      ...some.map((p) => row(said(p), p.estimated, p.actual)),
      row(words.cost, cost.estimated, cost.actual, 'total'),
      ...(overhead.value.isZero() ? [] : [row(words.overhead, overhead, overhead)]),
      row(words.leaves, leaves.estimated, leaves.actual, 'total'),
      row(words.margin, margin.estimated, margin.actual),
      row(words.hours, hours.estimated, earns && hours.actual),
      ...(earns ? [row(words.earns, earns.estimated, earns.actual)] : []),
    ],
  );
}

function tasks(all: readonly TaskResult[], job: Job, words: OutcomeWords): Table {
  const heads = [
    words.task,
    words.hoursReckoned,
    words.hoursWorked,
    words.toDo,
    words.done,
    words.inAnHour,
  ];
  const rows = all.map(
    (t): Row => ({
      cells: [
        { text: t.task || words.noTask },
        ...[t.estimated, t.worked, t.amountEstimated, t.amount, t.output].map((of) =>
          termCell(of, job),
        ),
      ],
    }),
  );
  return tableOf('tasks', heads, rows);
}

/** What is invoiced, paid and owed. */
export function owedTable(job: Job, words: OutcomeWords): Table {
  const { price, invoiced, paid, held, owed: due, toInvoice } = owedOf(job);
  const rows: (readonly [string, Term])[] = [
    [words.price, price],
    [words.invoiced, invoiced],
    [words.paidIn, paid],
    ...(held.value.isZero() ? [] : [[words.held, held] as const]),
    [words.owed, due],
    [words.toInvoice, toInvoice],
  ];
  return tableOf(
    'paid',
    [words.what, words.happened],
    rows.map(([label, term]) => ({ cells: [{ text: label }, termCell(term, job)] })),
  );
}
