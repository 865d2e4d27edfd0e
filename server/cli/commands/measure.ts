/** perpend measure: what a job does not know yet, and what hangs on it: the list to take to the site. */

import { later, phrase } from '../../../shared/phrase';
import type { Spread } from '../../engine/ranges/of-job';
import { inJobsAlike } from '../../engine/views/alike';
import { type FindOut, toFindOut } from '../../engine/views/find-out';
import { rangePlace, rangeText, type Unmeasured, unmeasuredIn } from '../../engine/views/measure';
import { showTerm } from '../../engine/views/show';
import type { Job } from '../../engine/workspace/job';
import type { Given } from '../args';
import { type Io, paint } from '../io';
import { measureDocument } from '../json/measure';
import type { Opened, Session } from '../session';
import { type Row, table } from '../show/table';
import { type Command, codeOf, fileAnd, JSON_OPTION, sessionOf, WORKSPACE } from './command';

/** More figures that wait for one measure are not told one by one. */
const MOST_WAITING = 4;

export const measure: Command = {
  name: 'measure',
  takes: 'FILE',
  about: later`list what is not measured yet, and what the price hangs on`,
  more: [
    later`First the lines with ? in them, and what waits for each. Then what no line says
and a caution hangs on, such as how far the boundary is. Then the ranges,
each with its share of the spread of the price, the biggest first: measure that
before you price. The spread is what 256 samples come to, the same every time,
each range taken evenly from end to end; low and high are where the defaults’
price-between has them.`,
  ],
  options: [JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file] = fileAnd(given, 'measure', 0);
    const session = sessionOf(given, io);
    const opened = session.open(file);
    if (given.has(JSON_OPTION.name)) io.raw(measureDocument(opened, session));
    else io.out(`${reportOf(opened, session, io).join('\n')}\n`);
    return codeOf({ opened: [opened], unread: [] });
  },
};

function reportOf({ job, shown }: Opened, session: Session, io: Io): string[] {
  const open = unmeasuredIn(job);
  const parts = [
    openPart(open, session, io),
    findOutPart(toFindOut(job), session, io),
    rangePart(job, session, io),
  ].filter((p) => p.length);
  if (!parts.length)
    return [phrase`${shown}: nothing is left to measure, and no range moves the price.`];
  return parts.flatMap((part, i) => (i ? ['', ...part] : part));
}

function openPart(open: readonly Unmeasured[], session: Session, io: Io): string[] {
  if (!open.length) return [];
  const rows = open.map(({ block, span, text, waiting }): Row => {
    const place = block.place(span);
    return [text, `${session.shown(place.file)}:${place.line + 1}`, waitingText(waiting)];
  });
  const head = [phrase`line`, phrase`where`, phrase`waits for it`];
  return [
    paint(io, 'bold', phrase`Still to be measured`),
    ...table([head, ...rows], ['left', 'left', 'left']),
  ];
}

/** What cautions hang on, and a line that would say it. */
function findOutPart(asked: readonly FindOut[], session: Session, io: Io): string[] {
  if (!asked.length) return [];
  const rows = asked.map(({ what, line, works, place }): Row => {
    const at = `${session.shown(place.file)}:${place.line + 1}`;
    return [what, waitingText(works), at, line ?? ''];
  });
  const head = [phrase`what`, phrase`of`, phrase`where`, phrase`said by a line like`];
  return [
    paint(io, 'bold', phrase`To find out on site`),
    ...table([head, ...rows], ['left', 'left', 'left', 'left']),
  ];
}

function waitingText(ids: readonly string[]): string {
  const more = ids.length - MOST_WAITING;
  return more > 0
    ? phrase`${ids.slice(0, MOST_WAITING).join(', ')} and ${more} more`
    : ids.join(', ');
}

/** Shares as they are shown, so that a reader who adds them up finds the rest. */
function together({ ranges }: Spread): string[] {
  const rest = 100 - ranges.reduce((all, { share }) => all + Math.round(share * 100), 0);
  return rest >= WORTH_TELLING
    ? [
        phrase`  the other ${rest}%: small ranges, several together, and steps of whole packs and days`,
      ]
    : [];
}

/** Less is the rounding of the shares. */
const WORTH_TELLING = 5;

function rangePart(job: Job, session: Session, io: Io): string[] {
  const { spread, env, price } = job;
  if (!spread) return [];
  const rows = spread.ranges.map((range): Row => {
    const place = rangePlace(range);
    const share = `${Math.round(range.share * 100)}%`;
    return [rangeText(range), `${session.shown(place.file)}:${place.line + 1}`, share];
  });
  const [likely, low, high] = [price.total, spread.low, spread.high].map((t) => showTerm(t, env));
  return [
    paint(io, 'bold', phrase`Measure this before you price`),
    ...table(
      [[phrase`range`, phrase`where`, phrase`of the spread`], ...rows],
      ['left', 'left', 'right'],
    ),
    ...together(spread),
    phrase`  price likely ${likely}; ${inJobsAlike(env)} ${low} to ${high}`,
  ];
}
