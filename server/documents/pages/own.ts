/** Pages for whoever does the job: its figures, worked out and gone over. */
import { phrase } from '../../../shared/phrase';
import { minutesIn } from '../../engine/views/timetable';
import type { Job } from '../../engine/workspace/job';
import { cutsPage, laidIn } from './cuts';
import { dayPage } from './day';
import { alone, type Kind, LISTS, type Making } from './kinds';
import { matchedIn, matchPage } from './match';
import { measurePage } from './measure';
import { mortarPage } from './mortar';
import { pricePage } from './price';
import { recordPage } from './record';

export const OWN: readonly Kind[] = [
  {
    kind: 'price',
    reader: 'firm',
    forms: LISTS,
    title: () => phrase`Price worked out`,
    about: () => phrase`From cost to price, step by step, and what is left of it.`,
    make: price,
  },
  {
    kind: 'measure',
    reader: 'firm',
    forms: LISTS,
    title: () => phrase`To measure`,
    about: () => phrase`What is not measured yet, and what the price hangs on.`,
    make: ({ job, head, version }) => alone(measurePage(job, head, version)),
  },
  {
    kind: 'cuts',
    reader: 'site',
    forms: LISTS,
    title: () => phrase`Cut list`,
    about: () => phrase`What is cut, course by course, and from which bricks.`,
    why: (job) =>
      laidIn(job).length ? undefined : phrase`There is nothing laid that bricks could be cut for.`,
    works: laidIn,
    make: ({ agreed, head, version, options }) => {
      const wrong = notAmong(options.work, laidIn(agreed));
      return wrong ?? alone(cutsPage(agreed, head, version, options.work));
    },
  },
  {
    kind: 'day',
    reader: 'site',
    forms: LISTS,
    title: () => phrase`Timetable`,
    about: () => phrase`Each task at its time, day by day.`,
    make: ({ agreed, head, version, options }) => {
      const start = options.start === undefined ? undefined : startOf(options.start);
      if (typeof start === 'string') return start;
      return alone(dayPage(agreed, head, version, start));
    },
  },
  {
    kind: 'match',
    reader: 'firm',
    forms: LISTS,
    title: () => phrase`Bricks that match`,
    about: () => phrase`Bricks that might be bought for a repair, beside what stands there.`,
    why: (job) => (matchedIn(job).length ? undefined : nothingToMatch()),
    works: matchedIn,
    make: ({ agreed, head, version, options }) => {
      const wrong = notAmong(options.work, matchedIn(agreed));
      return wrong ?? alone(matchPage(agreed, head, version, options.work));
    },
  },
  {
    kind: 'mortar',
    reader: 'site',
    forms: LISTS,
    title: () => phrase`Mortar`,
    about: () => phrase`Batch by batch, what goes into one, and what is left over.`,
    make: ({ agreed, head, version }) => alone(mortarPage(agreed, head, version)),
  },
  {
    kind: 'record',
    reader: 'firm',
    forms: LISTS,
    title: () => phrase`Record`,
    about: () => phrase`What has happened, what is paid and owed, what the price has moved by.`,
    make: ({ job, head, version }) => alone(recordPage(job, head, version)),
  },
];

function price({ job, head, version, options }: Making) {
  const names = options.with ?? [];
  const missing = names.find((name) => !job.options.named(name));
  if (missing !== undefined) return phrase`The job has no option ${missing}.`;
  const taken = names.length ? job.options.with(names)! : job;
  return alone(pricePage(taken, head, version));
}

function nothingToMatch(): string {
  return phrase`There is nothing to compare: that takes a repair which buys bricks, and a candidates or match line in it.`;
}

/** Why there is nothing of the piece of work that was asked for. */
function notAmong(name: string | undefined, works: Job['works']): string | undefined {
  if (name === undefined || works.some((work) => work.name === name)) return undefined;
  const names = works.map((work) => work.name).filter(Boolean);
  return phrase`There is nothing called ${name} here. There is ${names.join(', ')}.`;
}

/** From midnight; or why that is none. */
function startOf(text: string): number | string {
  return minutesIn(text) ?? phrase`${text} is no time of day. Write it like this: 08:00.`;
}
