/** The order of work, day by day: one table, so that its columns stand under each other. */
import type { Day } from '../../engine/labour/timetable';
import { clockText, hoursOf, timetableOf } from '../../engine/views/timetable';
import type { Job } from '../../engine/workspace/job';
import { fromTerms } from '../from';
import type { Part, Row } from '../paper/model';
import type { SiteWords } from '../words';

export function orderParts(job: Job, words: SiteWords): Part[] {
  const days = timetableOf(job);
  if (!days.length) return [];
  const heads = [words.dayHead, words.from, words.to, words.what, words.work];
  return [
    { part: 'heading', level: 2, text: words.order },
    {
      part: 'table',
      name: words.order,
      columns: heads.map((title) => ({ title, holds: 'text' })),
      rows: days.flatMap((day, i) => dayRows(day, words.day(i + 1), words)),
    },
  ];
}

/** The day is named once; what the rest waits for stands under it. */
function dayRows({ entries, waits }: Day, day: string, words: SiteWords): Row[] {
  const rows = entries.map((entry, i) => {
    const { from, to, label, work } = entry;
    const texts = [i ? '' : day, clockText(from), clockText(to), label, work ?? ''];
    return { cells: texts.map((text) => ({ text })), from: fromTerms(hoursOf(entry)) };
  });
  const why = ['', '', '', waits ? words.waits[waits] : '', ''];
  return waits ? [...rows, { cells: why.map((text) => ({ text })) }] : rows;
}
