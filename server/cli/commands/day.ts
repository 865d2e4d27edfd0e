/** perpend day: a job day by day, from when to when each task is done. */
import type { Day } from '../../engine/labour/timetable';
import { MOST_DAYS } from '../../engine/labour/timetable';
import { showTerm } from '../../engine/views/show';
import { clockText, timetableOf } from '../../engine/views/timetable';
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
  about: 'start the days then; without it, as the labour block says',
};

export const day: Command = {
  name: 'day',
  takes: 'FILE',
  about: 'put the work into days, and each task at its time',
  more: [
    'Tasks follow one another as the trade does them. What is built up no higher than',
    'a lift a day waits for the next; other work goes between. Driving, setting up,',
    'cleaning down and breaks are as the labour and travel blocks say.',
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
  const [, hours, minutes] = /^(\d{1,2}):(\d{2})$/.exec(text) ?? [];
  if (hours === undefined || Number(hours) > 23 || Number(minutes) > 59)
    throw new WrongUse(`${text} is no time of day. Write it like this: --start 08:00.`);
  return Number(hours) * 60 + Number(minutes);
}

function report(days: readonly Day[], job: Job, io: Io): string[] {
  if (!days.length) return [nothing(job)];
  const { env, price } = job;
  const charged = `${showTerm(price.hours, env)} of work; charged as ${showTerm(price.days, env)}`;
  const rows = days.flatMap((each, i) => [...one(each, i, io), '']);
  return [...rows, charged, ...beyond(days, job), ...more(days)];
}

/** Work that waits may take more days than the price has, in the order it stands in. */
function beyond({ length }: readonly Day[], { price: { days } }: Job): string[] {
  const there = Math.ceil(days.value.toNumber());
  if (length <= there || length >= MOST_DAYS || days.gaps.length) return [];
  return [
    `In this order it takes ${length} days, more than the price has, since work waits for work to set.`,
    'Put what goes up in lifts or has to set first, or charge the rest as a cost.',
  ];
}

const WAITS = { lift: 'no more than a lift a day', set: 'the concrete sets' };

function nothing({ price }: Job): string {
  return price.hours.value.isZero()
    ? 'There is no work in it that takes time.'
    : 'Nothing is left of a working day for the work: see the day, set-up and clear-up lines.';
}

function one({ entries, waits }: Day, i: number, io: Io): string[] {
  const [first] = entries;
  const to = clockText(entries.at(-1)?.to ?? 0);
  const head = `Day ${i + 1}, ${clockText(first?.from ?? 0)} to ${to}`;
  const rows = entries.map((e) => [clockText(e.from), e.label, e.work ?? '']);
  const wait = waits ? [`  the rest waits for the next day: ${WAITS[waits]}`] : [];
  return [paint(io, 'bold', head), ...table(rows, ['left', 'left', 'left']), ...wait];
}

function more(days: readonly Day[]): string[] {
  return days.length < MOST_DAYS ? [] : [`Only the first ${MOST_DAYS} days are shown.`];
}
