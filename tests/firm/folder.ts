/** Jobs in memory as an index gives them, and random records. */
import fc from 'fast-check';
import { summaryOf } from '../../server/engine/firm/read';
import { Settings } from '../../server/engine/firm/setting';
import type { FiledJob } from '../../server/engine/firm/summary';
import { type Files, inRoot, workspaceOf } from '../engine/world';
import { FIRM_FILE } from '../harness/firm-jobs';

export const FIRM = { 'firm.perp': FIRM_FILE };

export function filed(files: Files): FiledJob[] {
  return Object.entries(files).map(([name, text]) => ({
    file: inRoot(name),
    summary: summaryOf(text),
  }));
}

export function settingsOf(files: Files = {}): Settings {
  return new Settings(workspaceOf({ ...FIRM, ...files }));
}

/** A job with a wall of so many courses that its price is something, and these lines in its record. */
export function jobWith(record: readonly string[], more = ''): string {
  const lines = record.map((line) => `  ${line}`).join('\n');
  return `perpend 1\nuse "firm.perp"\njob "Wall"\n${more}wall a\n  length 3.37 m\n  height 8 courses\n${lines ? `record\n${lines}\n` : ''}`;
}

const date = fc
  .tuple(
    fc.integer({ min: 2023, max: 2026 }),
    fc.integer({ min: 1, max: 12 }),
    fc.integer({ min: 1, max: 28 }),
  )
  .map(([y, m, d]) => `${y}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}`);

const money = fc.integer({ min: 1, max: 2_000_000 }).map((pence) => `£${(pence / 100).toFixed(2)}`);

const worked = fc
  .record({
    date,
    people: fc.integer({ min: 1, max: 5 }),
    hours: fc.constantFrom('7.5 h', '8 h', '90 min', '4 h'),
    done: fc.option(fc.integer({ min: 100, max: 900 }).map((n) => `facework ${n} bricks`)),
  })
  .map((w) => `worked ${w.date} ${w.people} people ${w.hours} ${w.done ?? ''}`.trim());

const paying = (kind: string) => fc.tuple(date, money).map(([d, m]) => `${kind} ${d} ${m}`);

export const aRecord = fc.array(
  fc.oneof(
    paying('sent'),
    date.map((d) => `accepted ${d}`),
    worked,
    paying('invoiced'),
    paying('invoiced'),
    paying('paid'),
    fc.tuple(date, money, money).map(([d, a, b]) => `paid ${d} ${a} deducted ${b}`),
    paying('retained'),
    paying('released'),
    paying('spent'),
  ),
  { maxLength: 14 },
);
