/** What has happened to a job, day by day, what is paid and owed, and what its price has moved by since it was given. */
import type { Fixed } from '../../engine/life/agreed';
import { type Move, movedSince } from '../../engine/life/moved';
import { type Entry, type JobRecord, recordOf } from '../../engine/life/record';
import { showTerm } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { rowOf, tableOf, tableUnder, termCell, under } from '../cells';
import { framed } from '../framed';
import { fromOrigins } from '../from';
import { owedTable } from '../outcome/paper';
import type { Letterhead, Paper, Part, Row } from '../paper/model';
import type { RecordedKind, RecordWords, Words } from '../words';

export function recordPage(job: Job, letterhead: Letterhead | undefined, version: string): Paper {
  return framed({
    job,
    letterhead,
    version,
    kind: 'record',
    title: (words) => words.pages.record.title,
    parts: (words) => partsOf(job, words),
    foot: (words) => words.pages.forFirm,
  });
}

function partsOf(job: Job, words: Words): Part[] {
  const { record } = words.pages;
  const rows = rowsOf(recordOf(job), job, words);
  if (!rows.length) return [{ part: 'words', text: record.nothing }];
  return [
    tableOf('record', record.heads, rows, [3]),
    ...under(words.outcome.paid, owedTable(job, words.outcome)),
    ...moved(job, words),
  ];
}

interface Happened extends Entry {
  readonly kind: RecordedKind;
  readonly more: string;
  readonly amount?: Term;
}

function rowsOf(record: JobRecord, job: Job, words: Words): Row[] {
  const { record: said } = words.pages;
  const all = happened(record, job, words);
  const line = ({ line: { origin } }: Entry) => origin.span.line;
  // The earliest first; of one day as they are written.
  all.sort((a, b) => (a.date === b.date ? line(a) - line(b) : a.date < b.date ? -1 : 1));
  return all.map(({ kind, date, more, amount, line: { origin } }) => ({
    // A day stands on one line.
    ...rowOf(
      words.date(date).replaceAll(' ', '\u00a0'),
      said.kinds[kind],
      more,
      termCell(amount, job),
    ),
    from: () => [origin.block.place(origin.span)],
  }));
}

function happened(record: JobRecord, job: Job, words: Words): Happened[] {
  const { record: said } = words.pages;
  const text = (term: Term | undefined) => (term ? showTerm(term, job.env) : '');
  const of = <E extends Entry>(
    kind: RecordedKind,
    entries: readonly E[],
    more: (entry: E) => string,
    amount?: (entry: E) => Term | undefined,
  ) =>
    entries.map((entry): Happened => {
      const { line, date } = entry;
      return { line, date, kind, more: more(entry), amount: amount?.(entry) };
    });
  const paying = (entry: { readonly amount?: Term }) => entry.amount;
  const none = () => '';
  return [
    ...of('sent', record.sent, none, paying),
    ...of('accepted', record.accepted, ({ options }) => said.options(options), paying),
    ...of('lost', record.lost ? [record.lost] : [], ({ why }) => why),
    ...of('found', record.found, ({ what }) => what),
    ...of('worked', record.worked, ({ people, hours, task, amount }) =>
      said.workedBy(text(people), text(hours), task, text(amount)),
    ),
    ...of('spent', record.spent, (e) => said.spentFor(e.what, words.outcome.parts[e.part]), paying),
    ...of('invoiced', record.invoiced, (e) => said.invoiceOf(e.number, e.what), paying),
    ...of(
      'paid',
      record.paid,
      (e) => [e.what, e.deducted ? said.deducted(text(e.deducted)) : ''].filter(Boolean).join(' '),
      paying,
    ),
    ...of(
      'retained',
      record.retained,
      ({ until }) => said.heldUntil(until ? words.date(until) : ''),
      paying,
    ),
    ...of('released', record.released, none, paying),
  ];
}

/** What moved the price since it was given, the biggest first. */
function moved(job: Job, words: Words): Part[] {
  const found = movedSince(job);
  if (!found) return [];
  const { record } = words.pages;
  const rows = [
    ...found.parts.map((move) => movedRow(move, job)),
    movedRow({ label: words.quote.total, was: found.entry.amount, now: found.now }, job),
  ];
  const last = rows.length - 1;
  const table = tableOf(
    'moved',
    [record.what, record.was, record.is],
    rows.map((row, i) => (i === last ? { ...row, role: 'total' } : row)),
  );
  return [...tableUnder(record.moved, table), sinceWhen(found, job, words)];
}

function movedRow({ label, was, now }: Pick<Move, 'label' | 'was' | 'now'>, job: Job): Row {
  return rowOf(label, termCell(was, job), termCell(now, job));
}

function sinceWhen({ how, entry }: Fixed, { env }: Job, words: Words): Part {
  const { since }: RecordWords = words.pages.record;
  return {
    part: 'words',
    text: since(how, words.date(entry.date), showTerm(entry.amount, env)),
    small: true,
    from: fromOrigins(entry.line.origin),
  };
}
