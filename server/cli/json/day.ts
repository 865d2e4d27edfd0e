/** What perpend day --json prints. Its shape is promised in shared/json-schema. */
import type { Day } from '../../engine/labour/timetable';
import { clockText } from '../../engine/views/timetable';
import type { Opened } from '../session';
import { VERSION } from '../version';
import { amountJson } from './measure';

export function dayDocument(days: readonly Day[], { job, shown }: Opened): string {
  const document = {
    $schema: 'perpend-1.schema.json',
    format: 'perpend-day',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    file: shown,
    hours: amountJson(job.price.hours, job),
    days: amountJson(job.price.days, job),
    timetable: days.map(({ entries }) => ({
      entries: entries.map(({ from, to, label, work, rest }) => ({
        from: clockText(from),
        to: clockText(to),
        label,
        work,
        rest,
      })),
    })),
  };
  return `${JSON.stringify(document)}\n`;
}
