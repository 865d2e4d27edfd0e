/** The timetable of a job: each task at its time, day by day. */
import { type Day, MOST_DAYS } from '../../engine/labour/timetable';
import { showTerm } from '../../engine/views/show';
import { clockText, hoursOf, timetableOf } from '../../engine/views/timetable';
import type { Job } from '../../engine/workspace/job';
import { rowOf, tableOf, under } from '../cells';
import { framed } from '../framed';
import { fromTerms } from '../from';
import type { Letterhead, Paper, Part } from '../paper/model';
import type { DayWords, SiteWords, Words } from '../words';

/** @param start minutes from midnight; without it, as the files say */
export function dayPage(
  job: Job,
  letterhead: Letterhead | undefined,
  version: string,
  start?: number,
): Paper {
  return framed({
    job,
    letterhead,
    version,
    kind: 'day',
    title: (words) => words.pages.day.title,
    parts: (words) => partsOf(job, timetableOf(job, start), words),
  });
}

function partsOf(job: Job, days: readonly Day[], { pages: { day }, site }: Words): Part[] {
  const { price, env } = job;
  if (!days.length) {
    const none = price.hours.value.isZero();
    return [{ part: 'words', text: none ? day.noWork : day.noTime }];
  }
  const said = [
    day.charged(showTerm(price.hours, env), showTerm(price.days, env)),
    ...(takesLonger(days, job) ? [day.longer(days.length)] : []),
    ...(days.length < MOST_DAYS ? [] : [day.onlyFirst(MOST_DAYS)]),
  ];
  return [
    ...days.flatMap((each, i) => oneDay(each, i, day, site)),
    ...said.map((text): Part => ({ part: 'words', text, from: fromTerms(price.hours) })),
  ];
}

/** Work that waits may take more days than the price has, in the order it stands in. */
export function takesLonger({ length }: readonly Day[], { price: { days } }: Job): boolean {
  return length > Math.ceil(days.value.toNumber()) && length < MOST_DAYS && !days.gaps.length;
}

function oneDay({ entries, waits }: Day, i: number, words: DayWords, site: SiteWords): Part[] {
  const [from, to] = [entries[0]?.from ?? 0, entries.at(-1)?.to ?? 0].map(clockText);
  const rows = entries.map((e) => {
    const row = rowOf(clockText(e.from), clockText(e.to), e.label, e.work ?? '');
    return { ...row, from: fromTerms(hoursOf(e)) };
  });
  const heads = [site.from, site.to, site.what, site.work];
  const text = words.dayFromTo(i + 1, from!, to!);
  const title = { text, from: fromTerms(...entries.map(hoursOf)) };
  const wait: Part[] = waits ? [{ part: 'words', text: site.waits[waits] }] : [];
  return under(title, tableOf(site.day(i + 1), heads, rows, []), ...wait);
}
