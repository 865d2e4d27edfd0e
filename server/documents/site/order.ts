/** The order of work, day by day. */
import type { Day } from '../../engine/labour/timetable';
import { clockText, timetableOf } from '../../engine/views/timetable';
import type { Job } from '../../engine/workspace/job';
import type { Part, Row } from '../paper/model';
import type { SiteWords } from '../words';

export function orderParts(job: Job, words: SiteWords): Part[] {
  const days = timetableOf(job);
  if (!days.length) return [];
  return [
    { part: 'heading', level: 2, text: words.order },
    ...days.map((day, i) => oneDay(day, i + 1, words)),
  ];
}

function oneDay({ entries, waits }: Day, number: number, words: SiteWords): Part {
  const rows = entries.map(
    (entry): Row => ({
      cells: [
        { text: clockText(entry.from) },
        { text: clockText(entry.to) },
        { text: entry.label },
        { text: entry.work ?? '' },
      ],
    }),
  );
  const heads = [words.from, words.to, words.what, words.work];
  const parts: Part[] = [
    { part: 'heading', level: 3, text: words.day(number) },
    {
      part: 'table',
      name: words.day(number),
      columns: heads.map((title) => ({ title, holds: 'text' })),
      rows,
    },
  ];
  if (waits) parts.push({ part: 'words', text: words.waits[waits] });
  return { part: 'together', parts };
}
