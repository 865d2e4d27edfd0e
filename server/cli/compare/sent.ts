/** What was sent beside what is now, by what the record keeps: where no revision of git holds it. */
import { later, phrase, spoken } from '../../../shared/phrase';
import { sinceSent } from '../../engine/compare';
import { showTerm } from '../../engine/views/show';
import type { Given } from '../args';
import { CLEAN, ERRORS, WrongUse } from '../exits';
import { type Io, paint } from '../io';
import { sentDocument } from '../json/compare';
import { figureRow } from '../show/changes';
import { table } from '../show/table';
import type { Kept } from './sides';

/** @returns the exit code */
export function keptBySent({ kept, why }: Kept, given: Given, check: boolean, io: Io): number {
  if (given.has('--drawing'))
    throw new WrongUse(
      phrase`There is no drawing of what was sent. ${why} The record holds figures.`,
    );
  const { job, shown } = kept;
  const since = sinceSent(job)!;
  const { figures, total, date } = since;
  const sides = { before: { file: shown, sent: date }, after: { file: shown } };
  if (given.has('--json')) io.raw(sentDocument(since, job, sides));
  else {
    io.err(phrase`perpend: ${why} Compared is what the record keeps.\n`);
    const rows = [...figures, ...(total ? [total] : [])].map((figure) =>
      figureRow(figure, figure.label, job.env, job.env),
    );
    const head = phrase`${shown}, sent ${date} at ${showTerm(since.price, job.env)}`;
    const lines = rows.length
      ? table(rows, ['left', 'right', 'right', 'right'])
      : [spoken(NOTHING)];
    const open = since.figuresKept
      ? []
      : [phrase`The record keeps no figures of it but the price.`];
    io.out(`${[paint(io, 'bold', head), ...lines, ...open].join('\n')}\n`);
  }
  return check && (figures.length || total) ? ERRORS : CLEAN;
}

const NOTHING = later`Nothing that the record keeps has changed.`;
