import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { invoiceOf } from '../../server/documents/invoice/make';
import { quarterOf } from '../../server/engine/firm/days';
import { type Overview, overviewOf } from '../../server/engine/firm/overview';
import { STATES } from '../../server/engine/firm/state';
import { shareOfTotal } from '../../server/engine/firm/turnover';
import { owedOf } from '../../server/engine/life/owed';
import { recordOf } from '../../server/engine/life/record';
import { type Exact, exact, ZERO } from '../../shared/exact';
import { jobOf } from '../engine/world';
import { took } from '../harness/took';
import { aRecord, FIRM, filed, jobWith, settingsOf } from './folder';

/** After everything that the tests write. */
const LAST = '2030-01-01';

function over(jobs: readonly string[], day = LAST): Overview {
  const files = Object.fromEntries(jobs.map((text, i) => [`job-${i}.perp`, text]));
  return overviewOf(filed(files), settingsOf(files), day);
}

function only(text: string, day = LAST) {
  const [currency] = over([text], day).currencies;
  return { currency: currency!, job: currency!.jobs[0]! };
}

const add = (all: readonly Exact[]) => all.reduce((sum, each) => sum.add(each), ZERO);
const sent = 'sent 2026-03-02 £1,200.00';
const yes = 'accepted 2026-03-05';
const all = 'invoiced 2026-03-12 £1,200.00';

describe('how a job stands', () => {
  test.each([
    [[], 'not-sent'],
    [[sent], 'out'],
    [[sent, 'lost 2026-03-05 "Dear"'], 'lost'],
    [[sent, 'lost 2026-03-05', 'sent 2026-03-09 £1,100.00'], 'out'],
    [[sent, 'lost 2026-03-05', 'accepted 2026-03-20'], 'in-hand'],
    [[sent, yes], 'in-hand'],
    [[sent, yes, 'sent 2026-03-06 £1,300.00'], 'in-hand'],
    [[sent, 'worked 2026-03-09 2 people 7.5 h'], 'in-hand'],
    [[sent, yes, 'invoiced 2026-03-12 £1,199.99'], 'in-hand'],
    [[sent, yes, all], 'done'],
    [[sent, yes, all, 'paid 2026-03-20 £1,199.99'], 'done'],
    [[sent, yes, all, 'paid 2026-03-20 £1,000.00 deducted £200.00'], 'paid'],
    [[sent, yes, all, 'retained 2026-03-20 £60.00', 'paid 2026-03-20 £1,140.00'], 'done'],
  ])('%j is %s', (record, state) => {
    expect(only(jobWith(record)).job.state).toBe(state);
  });

  test('is told as of the day: what comes after it is left out', () => {
    const text = jobWith([sent, yes, all]);
    const states = ['2026-03-01', '2026-03-02', '2026-03-05', '2026-03-12'];
    expect(states.map((day) => only(text, day).job.state)).toEqual([
      'not-sent',
      'out',
      'in-hand',
      'done',
    ]);
  });
});

describe('what is owed', () => {
  test('is that of the job alone, whatever its record', () => {
    fc.assert(
      fc.property(aRecord, (record) => {
        const text = jobWith(record);
        const { job } = only(text);
        const alone = jobOf(text, FIRM);
        const { invoiced, paid, held, owed } = owedOf(alone);
        const told = [job.invoiced, job.paid, job.held, job.owed].map((v) => v.toFixed());
        expect(told).toEqual([invoiced, paid, held, owed].map((t) => t.value.toFixed()));
        expect(add(job.open.map((o) => o.amount)).eq(job.owed)).toBe(true);
        const [now] = recordOf(alone).sent.slice(-1);
        if (now && !recordOf(alone).accepted.length)
          expect(job.price?.toFixed()).toBe(now.amount.value.toFixed());
      }),
      { numRuns: 60 },
    );
  });

  test('ages by invoice: payments settle the oldest', () => {
    const { currency } = only(
      jobWith([
        'invoiced 2026-01-10 £100.00',
        'invoiced 2026-02-10 £200.00',
        'paid 2026-02-20 £130.00',
      ]),
      '2026-03-12',
    );
    // 10 February to 12 March 2026 is 30 days; the firm’s file says 14.
    expect(currency.open.map((o) => [o.date, o.amount.toFixed(), o.days, o.late])).toEqual([
      ['2026-02-10', '170', 30, 16],
    ]);
  });

  test('what is held back is owed from its release on', () => {
    const record = ['invoiced 2026-01-10 £100.00', 'retained 2026-01-10 £5.00'];
    const paid = [...record, 'paid 2026-01-20 £95.00'];
    expect(only(jobWith(paid)).currency.open).toEqual([]);
    const { currency } = only(jobWith([...paid, 'released 2026-07-10 £5.00']), '2026-07-11');
    expect(currency.open.map((o) => [o.date, o.amount.toFixed()])).toEqual([['2026-07-10', '5']]);
  });
});

describe('the whole', () => {
  const jobs = fc.array(
    aRecord.map((record) => jobWith(record)),
    { minLength: 1, maxLength: 6 },
  );

  test('is the sum of its parts', () => {
    fc.assert(
      fc.property(jobs, (texts) => {
        const { currencies, jobs: count } = over(texts);
        expect(count).toBe(texts.length);
        for (const c of currencies) {
          expect(STATES.reduce((n, s) => n + c.states[s].jobs, 0)).toBe(c.jobs.length);
          const sums = (key: 'invoiced' | 'paid') => add(c.quarters.map((q) => q[key].gross));
          expect(sums('invoiced').eq(c.invoiced)).toBe(true);
          expect(sums('paid').eq(c.paid)).toBe(true);
          expect(add(c.open.map((o) => o.amount)).eq(c.owed)).toBe(true);
          for (const { invoiced, paid } of c.quarters)
            for (const t of [invoiced, paid])
              expect(t.net.add(t.tax).add(t.unknown).eq(t.gross)).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('is the same in whatever order the files come', () => {
    fc.assert(
      fc.property(jobs, fc.infiniteStream(fc.nat()), (texts, by) => {
        const files = Object.fromEntries(texts.map((text, i) => [`job-${i}.perp`, text]));
        const shuffled = filed(files)
          .map((job) => ({ job, at: by.next().value as number }))
          .sort((a, b) => a.at - b.at)
          .map(({ job }) => job);
        const told = (of: Overview) =>
          JSON.stringify(of, (key, value) => (key === 'setting' ? 0 : value));
        const settings = settingsOf(files);
        expect(told(overviewOf(shuffled, settings, LAST))).toBe(
          told(overviewOf(filed(files), settings, LAST)),
        );
      }),
      { numRuns: 25 },
    );
  });

  test('never adds two currencies', () => {
    const pounds = jobWith([all]);
    const euros = jobWith(['invoiced 2026-03-12 €900.00'], '  currency EUR\n');
    const { currencies } = over([pounds, euros, pounds]);
    expect(currencies.map((c) => [c.code, c.jobs.length, c.invoiced.toFixed()])).toEqual([
      ['GBP', 2, '2400'],
      ['EUR', 1, '900'],
    ]);
  });

  test('leaves out, and says so, what is in another currency or cannot be read', () => {
    const { job } = only(jobWith([all, 'invoiced 2026-03-13 €5.00', 'paid yesterday £3.00']));
    expect([job.invoiced.toFixed(), job.leftOut]).toEqual(['1200', 2]);
  });

  test('a record of very many lines takes no square of them', () => {
    const many = (n: number) =>
      jobWith([
        ...Array(n).fill('invoiced 2026-03-12 £0.00'),
        ...Array(n).fill('retained 2026-03-13 £1.00'),
      ]);
    const text = many(10_000);
    const work = () => expect(only(text).job.held.toFixed()).toBe('10000');
    expect(took(work)).toBeLessThan(20_000);
  });

  test('tells of a job whose firm’s file is not there', () => {
    const text = jobWith([all]).replace('firm.perp', 'gone.perp');
    expect(only(text).job.setting.lost).toBe(true);
    expect(only(jobWith([all])).job.setting.lost).toBe(false);
  });

  test('counts files that hold no job apart', () => {
    const files = { ...FIRM, 'job.perp': jobWith([]) };
    const { jobs: count, others } = overviewOf(filed(files), settingsOf(), LAST);
    expect([count, others]).toEqual([1, 1]);
  });
});

describe('quarters', () => {
  /** HMRC, DMBM530020: quarters of stagger group 1 end in March, of group 2 in April, of group 3 in May. */
  test.each([
    [1, '2026-03-31', '2026-01', '2026-03'],
    [1, '2026-04-01', '2026-04', '2026-06'],
    [2, '2026-01-31', '2025-11', '2026-01'],
    [2, '2026-04-30', '2026-02', '2026-04'],
    [3, '2026-02-28', '2025-12', '2026-02'],
    [3, '2026-05-31', '2026-03', '2026-05'],
    [12, '2026-02-28', '2025-12', '2026-02'],
  ])('from %s: %s lies in %s to %s', (begins, day, from, to) => {
    expect(quarterOf(day, begins)).toEqual({ from, to });
  });

  test('begin as the firm’s file says', () => {
    const firm = `${FIRM['firm.perp']}\ndefaults\n  quarters from 2\n`;
    const text = jobWith(['invoiced 2026-01-20 £120.00']);
    const settings = settingsOf({ 'firm.perp': firm });
    const [currency] = overviewOf(filed({ 'job.perp': text }), settings, LAST).currencies;
    expect(currency!.quarters.map((q) => q.from)).toEqual(['2025-11']);
  });

  test('by invoice and by payment are told apart', () => {
    const { currency } = only(jobWith([all, 'paid 2026-04-20 £600.00']));
    const told = currency.quarters.map((q) => [
      q.from,
      q.invoiced.tax.toFixed(),
      q.paid.tax.toFixed(),
    ]);
    // VAT fraction of a price with 20% in it: 1/6 (HMRC, VAT Notice 700, from memory).
    expect(told).toEqual([
      ['2026-01', '200', '0'],
      ['2026-04', '0', '100'],
    ]);
  });
});

describe('tax', () => {
  test('is that of the invoices on paper, to the penny of their rounding', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 40_000 }), { minLength: 1, maxLength: 4 }),
        (parts) => {
          const record = parts.map(
            (p, i) => `invoiced 2026-03-1${i} £${(p / 100).toFixed(2)} as n-${i}`,
          );
          const text = jobWith(['sent 2026-03-02 £2,000.00', ...record]);
          const job = jobOf(text, FIRM);
          const taxes = parts.map((_, i) => {
            const made = invoiceOf(job, { number: `n-${i}` });
            if (typeof made === 'string') throw new Error(made);
            return made.invoice.totals.tax;
          });
          const told = only(text).currency.quarters.map((q) => q.invoiced.tax);
          const most = exact(parts.length).div(100);
          expect(add(told).sub(add(taxes)).abs().lte(most)).toBe(true);
        },
      ),
      { numRuns: 20 },
    );
  });

  test.each([
    ['  tax none "Not registered"\n', '1200', '0'],
    ['  tax reverse-charge 20%\n', '1200', '0'],
    ['  tax 5%\n', '1142.86', '57.14'],
    ['', '1000', '200'],
  ])('%j leaves %s before tax', (line, net, tax) => {
    const [quarter] = only(jobWith([all], line)).currency.quarters;
    expect([quarter!.invoiced.net.toFixed(), quarter!.invoiced.tax.toFixed()]).toEqual([net, tax]);
  });

  test('of a job with several rates is not known, unless somebody prices it', () => {
    const text = jobWith([all]).replace('wall a\n', 'wall a\n  tax 5%\n');
    const files = { 'job.perp': text };
    const none = overviewOf(filed(files), settingsOf(), LAST).currencies[0]!.quarters[0]!;
    expect([none.invoiced.net, none.invoiced.unknown].map((v) => v.toFixed())).toEqual([
      '0',
      '1200',
    ]);
    const parts = shareOfTotal([
      { base: exact(500), rate: exact(20) },
      { base: exact(500), rate: exact(5) },
    ]);
    const known = overviewOf(filed(files), settingsOf(), LAST, () => parts).currencies[0]!;
    // 500 of 1125 in all is 533.33 of 1200, and that twice: tax 106.67 and 26.67.
    const { net, unknown } = known.quarters[0]!.invoiced;
    expect([net.toFixed(), unknown.toFixed()]).toEqual(['1066.66', '0']);
  });
});
