/** The record: what was sent holds, and what moved is told by the figures that were kept. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acceptedOptions, agreedJob, fixedPrice, heldPrice } from '../../server/engine/life/agreed';
import { movedSince } from '../../server/engine/life/moved';
import { owedOf } from '../../server/engine/life/owed';
import { recordOf } from '../../server/engine/life/record';
import { quotedOn, sentLines } from '../../server/engine/life/write';
import { showTerm } from '../../server/engine/views/show';
import type { Term } from '../../server/engine/working/term';
import { jobOf } from '../engine/world';
import { FIRM } from '../findings/tells';
import '../harness/seed';

const JOB = `perpend 1
use "firm.perp"
job "A"
wall north
  brick   red
  length  4490 mm
  height  4 courses
  stands  held
price
  overhead 10%
  profit 20%
option higher "A course more"
  change north height 5 courses
`;

const at = (record: string, text = JOB, firm = FIRM) =>
  jobOf(record ? `${text}record\n${record}` : text, { 'firm.perp': firm });

const sent = (date = '2026-03-02', text = JOB) => {
  const job = at('', text);
  return `${sentLines(date, quotedOn(date, job)).join('\n')}\n`;
};

describe('the record of a job', () => {
  test('is read by day, whatever the order of its lines', () => {
    const record = recordOf(
      at('  paid 2026-03-20 £10\n  paid 2026-03-04 £20\n  accepted 2026-03-05 higher £500.00\n'),
    );
    expect(record.paid.map((p) => p.date)).toEqual(['2026-03-04', '2026-03-20']);
    expect(record.accepted[0]).toMatchObject({ options: ['higher'] });
    expect(record.accepted[0]!.amount!.value.toNumber()).toBe(500);
  });

  test('knows hours of all who came, tasks, parts, numbers and what was kept back', () => {
    const record = recordOf(
      at(`  worked    2026-03-09 2 people 7.5 h facework 410 bricks
  worked    2026-03-10 1 person 90 min
  spent     2026-03-09 £212.40 "sand"
  spent     2026-03-10 £30 for others
  invoiced  2026-03-12 £362.50 as 26-041-1 "Deposit"
  paid      2026-03-20 £300 deducted £62.50
  retained  2026-03-20 £20 until 2026-09-16
  released  2026-09-16 £5
  lost      2026-09-17 "Too dear"
`),
    );
    expect(record.worked.map((w) => w.hours.value.toNumber())).toEqual([15, 1.5]);
    expect(record.worked.map((w) => w.task)).toEqual(['facework', '']);
    expect(record.spent.map((s) => [s.what, s.part])).toEqual([
      ['sand', 'materials'],
      ['', 'others'],
    ]);
    expect(record.invoiced[0]).toMatchObject({ number: '26-041-1', what: 'Deposit' });
    expect(record.retained[0]!.until).toBe('2026-09-16');
    expect(record.lost).toMatchObject({ date: '2026-09-17', why: 'Too dear' });
  });

  test('is empty for a job without one, and what a used file records is not the job’s', () => {
    expect(recordOf(at('')).sent).toEqual([]);
    const firm = `${FIRM}record\n  sent 2026-01-01 £9\n`;
    expect(recordOf(at('', JOB, firm)).sent).toEqual([]);
  });

  test('what is owed is invoiced, less paid, deducted and held back', () => {
    const owed = owedOf(
      at(`  invoiced  2026-03-12 £300
  paid      2026-03-20 £100 deducted £20
  retained  2026-03-20 £15
  released  2026-09-16 £5
`),
    );
    // 300 - 100 - 20 - (15 - 5) = 170; 346.80 - 300 = 46.80 is not invoiced yet.
    const number = (term: Term) => term.value.toNumber();
    expect([owed.invoiced, owed.paid, owed.held, owed.owed, owed.toInvoice].map(number)).toEqual([
      300, 120, 10, 170, 46.8,
    ]);
  });
});

describe('a price that was given', () => {
  test('is that of the job before an acceptance, and of the job with its options after it', () => {
    const before = at('  sent 2026-03-02 £346.80\n  accepted 2026-03-05 higher\n');
    expect(fixedPrice(before)!.job).toBe(before);
    expect(acceptedOptions(before)).toEqual(['higher']);
    expect(agreedJob(before)).toBe(before.options.with(['higher']));
    const after = at('  accepted 2026-03-05 higher\n  sent 2026-03-06 £406.80\n');
    expect(fixedPrice(after)!.job).toBe(agreedJob(after));
    expect(movedSince(after)).toBeUndefined();
    const yes = at('  sent 2026-03-02 £346.80\n  accepted 2026-03-05 higher £406.80\n');
    expect(fixedPrice(yes)).toMatchObject({ how: 'accepted' });
    expect(movedSince(yes)).toBeUndefined();
  });

  test('is paid with what accepted options add to it', () => {
    // £60 more with the course: £350 was given for the job without it.
    const job = at('  sent 2026-03-02 £350\n  accepted 2026-03-05 higher\n');
    expect(heldPrice(job).value.toNumber()).toBe(410);
  });

  test('stands as long as nothing moves, and is told with what moved once a rate does', () => {
    const record = sent();
    expect(movedSince(at(record))).toBeUndefined();
    const dearer = FIRM.replace('price  £1 each', 'price  £1.25 each').replace(
      '£16 per h',
      '£20 per h',
    );
    const moved = movedSince(at(record, JOB, dearer))!;
    const said = moved.parts.map(
      (m) => `${m.id} ${showTerm(m.was!, moved.job.env)} ${showTerm(m.now!, moved.job.env)}`,
    );
    // 84 bricks at £1.25; 1.6 h at £47.50.
    expect(said.slice(0, 2)).toEqual(expect.arrayContaining(['cost.red £84.00 £105.00']));
    expect(said).toContain('job.labour £69.60 £76.00');
    const sizes = moved.parts.map((m) => m.by!.abs().toNumber());
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    expect(moved.all.map((m) => m.id)).toContain('job.price');
  });

  test('tells what is new and what is gone since', () => {
    const more = `${JOB.replace('height  4', 'height  5')}cost skip "Skip" 1 at £90\n`;
    const moved = movedSince(at(sent(), more))!;
    const skip = moved.all.find((m) => m.id === 'job.others')!;
    expect(skip.was).toBeUndefined();
    expect(skip.by!.toNumber()).toBe(90);
    const back = movedSince(at(sent('2026-03-02', more)))!;
    expect(back.all.find((m) => m.id === 'job.others')!.by!.toNumber()).toBe(-90);
  });

  test('what was written by hand tells only of what it has', () => {
    const job = at('  sent 2026-03-02 £300\n    was job.labour £50\n');
    expect(movedSince(job)!.all.map((m) => m.id)).toEqual(['job.labour']);
    expect(movedSince(at('  sent 2026-03-02 £300\n'))!.all).toEqual([]);
  });

  test('tells nothing of a figure that is the same in another unit, or in none', () => {
    const ids = (was: string) =>
      movedSince(at(`  sent 2026-03-02 £300\n    was ${was}\n`))!.all.map((m) => m.id);
    // 1.6 h (common practice: an hour is 60 min).
    expect(ids('north.hours 96 min')).toEqual([]);
    expect(ids('north.hours 97 min')).toEqual(['north.hours']);
    expect(ids('north.bricks 80')).toEqual([]);
    expect(ids('north.bricks 79')).toEqual(['north.bricks']);
  });

  test('as it is written is read back without a fault and holds, whatever the job', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 500, max: 9000 }),
        fc.integer({ min: 1, max: 20 }),
        fc.constantFrom('GBP', 'EUR', 'JPY', 'CHF', 'KWD'),
        (length, courses, currency) => {
          const firm = FIRM.replace(/£([\d.]+)/g, `$1 ${currency}`);
          const text = `perpend 1\nuse "firm.perp"\njob\n  currency ${currency}\nwall n-1\n  brick red\n  length ${length} mm\n  height ${courses} courses\n`;
          const files = { 'firm.perp': firm };
          const lines = sentLines('2026-03-02', jobOf(text, files));
          const job = jobOf(`${text}record\n${lines.join('\n')}\n`, files);
          expect(job.price.total.gaps).toEqual([]);
          const [block] = job.book.blocksOf('record');
          expect(block!.read.faults).toEqual([]);
          expect(job.findings.filter((f) => f.severity === 'error')).toEqual([]);
          expect(fixedPrice(job)!.entry.amount.value.toFixed()).toBe(
            job.price.total.value.toFixed(),
          );
          expect(movedSince(job)).toBeUndefined();
        },
      ),
      { numRuns: 25 },
    );
  });
});
