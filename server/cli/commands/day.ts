/** perpend day: a job day by day, from when to when each task is done. */
import { later, phrase, spoken } from '../../../shared/phrase';
import { takesLonger } from '../../documents/pages/day';
import { type Day, MOST_DAYS } from '../../engine/labour/timetable';
import { showTerm } from '../../engine/views/show';
import { clockText, minutesIn, timetableOf } from '../../engine/views/timetable';
import type { Job } from '../../engine/workspace/job';
import type { Given, Option } from '../args';
import { WrongUse } from '../exits';
import { type Io, paint } from '../io';
import { dayDocument } from '../json/day';
import { table } from '../show/table';
import { type Command, codeOf, fileAnd, JSON_OPTION, sessionOf, WORKSPACE } from './command';

const START: Option = {
  name: '--start',
  value: 'HH:MM',
  about: later`start the days then; without it, as the labour block says`,
};

export const day: Command = {
  name: 'day',
  takes: 'FILE',
  about: later`put the work into days, and each task at its time`,
  more: [
    later`Tasks follow one another as the trade does them. What is built up no higher than
a lift a day waits for the next; other work goes between. Driving, setting up,
cleaning down and breaks are as the labour and travel blocks say.`,
  ],
  options: [START, JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file] = fileAnd(given, 'day', 0);
    const start = startOf(given.value(START.name));
    const session = sessionOf(given, io);
    const opened = session.open(file);
    const days = timetableOf(opened.job, start);
    if (given.has(JSON_OPTION.name)) io.raw(dayDocument(days, opened));
    else io.out(`${report(days, opened.job, io).join('\n')}\n`);
    return codeOf({ opened: [opened], unread: [] });
  },
};

/** @throws WrongUse for what no clock shows */
function startOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const minutes = minutesIn(text);
  if (minutes === undefined)
    throw new WrongUse(phrase`${text} is no time of day. Write it like this: --start 08:00.`);
  return minutes;
}

function report(days: readonly Day[], job: Job, io: Io): string[] {
  if (!days.length) return [nothing(job)];
  const { env, price } = job;
  const charged = phrase`${showTerm(price.hours, env)} of work; charged as ${showTerm(price.days, env)}`;
  const rows = days.flatMap((each, i) => [...one(each, i, io), '']);
  return [...rows, charged, ...beyond(days, job), ...more(days)];
}

function beyond(days: readonly Day[], job: Job): string[] {
  if (!takesLonger(days, job)) return [];
  const { length } = days;
  return [
    phrase`In this order it takes ${length} days, more than the price has, since work waits for work to set.`,
    phrase`Put what goes up in lifts or has to set first, or charge the rest as a cost.`,
  ];
}

const WAITS = { lift: later`no more than a lift a day`, set: later`the concrete sets` };

function nothing({ price }: Job): string {
  return price.hours.value.isZero()
    ? phrase`There is no work in it that takes time.`
    : phrase`Nothing is left of a working day for the work: see the day, set-up and clear-up lines.`;
}

function one({ entries, waits }: Day, i: number, io: Io): string[] {
  const [first] = entries;
  const to = clockText(entries.at(-1)?.to ?? 0);
  const head = phrase`Day ${i + 1}, ${clockText(first?.from ?? 0)} to ${to}`;
  const rows = entries.map((e) => [clockText(e.from), e.label, e.work ?? '']);
  const wait = waits ? [phrase`  the rest waits for the next day: ${spoken(WAITS[waits])}`] : [];
  return [paint(io, 'bold', head), ...table(rows, ['left', 'left', 'left']), ...wait];
}

function more(days: readonly Day[]): string[] {
  return days.length < MOST_DAYS ? [] : [phrase`Only the first ${MOST_DAYS} days are shown.`];
}
