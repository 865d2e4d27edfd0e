/** perpend why: the working of one figure, down to the lines it came from. */

import { later, phrase } from '../../../shared/phrase';
import type { Figure } from '../../engine/brickwork/needs';
import { allFigures } from '../../engine/views/job-view';
import { showTerm } from '../../engine/views/show';
import type { Given } from '../args';
import { FAILED, WrongUse } from '../exits';
import type { Io } from '../io';
import { whyDocument } from '../json/documents';
import { near } from '../near';
import type { Opened } from '../session';
import { numberAndUnit, table } from '../show/table';
import { workingLines } from '../show/working';
import { type Command, codeOf, fileAnd, JSON_OPTION, sessionOf, WORKSPACE } from './command';

const DEPTH = {
  name: '--depth',
  value: 'N',
  about: later`show so many levels of it; all of them without`,
};

export const why: Command = {
  name: 'why',
  takes: 'FILE [FIGURE]',
  about: later`show how a figure came about, or list the figures`,
  more: [
    later`A working is a tree: a figure, the sum that made it, and below it each part with
the line of the job, the firm's file or the library that says it. A part that
has been shown before is not shown again: (above). Steps that change nothing are
left out; --json has every one.`,
  ],
  options: [DEPTH, JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file, id] = fileAnd(given, 'why', 1);
    const depth = depthOf(given);
    const session = sessionOf(given, io);
    const opened = session.open(file);
    const figures = allFigures(opened.job);
    const code = codeOf({ opened: [opened], unread: [] });
    const asJson = given.has(JSON_OPTION.name);
    if (id === undefined) {
      if (asJson) io.raw(whyDocument(figures, opened, session));
      else io.out(listing(figures, opened));
      return code;
    }
    const figure = figures.find((f) => f.key === id);
    if (!figure) return unknown(id, figures, opened, io);
    if (asJson) io.raw(whyDocument([figure], opened, session));
    else io.out(`${workingLines(figure, opened.job.env, session, depth, io).join('\n')}\n`);
    return code;
  },
};

function depthOf(given: Given): number {
  const said = given.value(DEPTH.name);
  if (said === undefined) return Number.POSITIVE_INFINITY;
  if (!/^\d{1,6}$/.test(said))
    throw new WrongUse(phrase`--depth needs a whole number, and ${said} is none.`);
  return Number(said);
}

function listing(figures: readonly Figure[], { job, shown }: Opened): string {
  if (!job.isJob) return phrase`${shown} holds no work, and so no figures.\n`;
  const rows = figures.map(({ key, term }) => [
    key,
    ...numberAndUnit(showTerm(term, job.env)),
    term.label,
  ]);
  return `${table(rows, ['left', 'right', 'left', 'left'], 0).join('\n')}\n`;
}

function unknown(id: string, figures: readonly Figure[], { shown }: Opened, io: Io): number {
  const meant = near(
    id,
    figures.map((f) => f.key),
  );
  const hint = meant.length
    ? phrase`Did you mean ${meant.join(phrase` or `)}?`
    : phrase`perpend why ${shown} lists them.`;
  io.err(phrase`perpend: There is no figure ${id} in ${shown}. ${hint}\n`);
  return FAILED;
}
