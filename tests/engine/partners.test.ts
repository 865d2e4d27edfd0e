/** A part of the work done by a partner firm: by its rates and outputs, its labour a cost by itself. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../harness/seed';
import { moneyChange } from '../../server/engine/compare/money';
import { totalsOf } from '../../server/engine/ide/totals';
import { fixedFigures } from '../../server/engine/life/was';
import { sharedCopy } from '../../server/engine/share';
import { allFigures } from '../../server/engine/views/job-view';
import { timetableOf } from '../../server/engine/views/timetable';
import type { Job } from '../../server/engine/workspace/job';
import { inRoot, jobOf, workspaceOf } from './world';

const BRICK = `brick red
  size   215 x 102.5 x 65 mm
  gauge  4 courses 300 mm
  price  £0.50 each
  waste  0%
price
  profit 10%
  round £0
`;
const OWN = `labour
  bricklayer £20 per h
  gang 1 bricklayer
  day 8 h
output
  facework 50 bricks per h
`;
/** Two lay 40 an hour each, at £30 each: 200 bricks take 2.5 h, and that is £150. Its bricks are its own affair. */
const THEIRS = `perpend 1
use uk
labour
  bricklayer £30 per h
  gang 2 bricklayers
output
  facework 40 bricks per h
brick red
  price £9 each
`;
const FILES = { 'halden.perp': THEIRS };
const PARTNER = 'partner halden "Halden Brothers"\n  file "halden.perp"\n';

/** 20 stretchers x 10 courses: 200 bricks. */
const wall = (name: string, more = '') =>
  `wall ${name}\n  brick red\n  stands held\n  length 4490 mm\n  height 10 courses\n${more}`;
const text = (walls: string, partner = PARTNER, own = OWN) =>
  `perpend 1\nuse uk\njob "A"\n${BRICK}${own}${partner}${walls}`;
const BOTH = text(wall('a') + wall('b', '  by halden\n'));

function figures(job: Job): (key: string) => number | undefined {
  const all = new Map(allFigures(job).map((f) => [f.key, f.term]));
  return (key) => {
    const term = all.get(key);
    return term && Number(term.value.toFixed(6));
  };
}

describe('work done by a partner', () => {
  const job = jobOf(BOTH, FILES);
  const of = figures(job);

  test('takes its gang its own hours, by its own output', () => {
    expect([of('a.hours'), of('b.hours')]).toEqual([4, 2.5]);
    expect(of('partner.halden.hours')).toBe(2.5);
  });

  test('costs what its gang costs, apart from the firm’s own labour, hours and days', () => {
    const alone = figures(jobOf(text(wall('a')), FILES));
    expect(of('partner.halden.labour')).toBe(150);
    for (const id of ['job.hours', 'job.days', 'job.labour'])
      expect([id, of(id)]).toEqual([id, alone(id)]);
    expect(of('job.cost')).toBe(of('job.materials')! + of('job.labour')! + 150);
  });

  test('says in its working which line of which file it came from', () => {
    const { term } = allFigures(job).find((f) => f.key === 'partner.halden.labour')!;
    const files = new Set<string>();
    const look = (t: typeof term): void => {
      if (t.origin) files.add(t.origin.block.file.name);
      t.args.forEach(look);
    };
    look(term);
    expect([...files]).toContain(inRoot('halden.perp'));
  });

  test('lays bricks that the job buys, at the job’s price', () => {
    expect(of('buy.red')).toBe(400);
    expect(of('cost.red')).toBe(200);
  });

  test('bears its cost in its own share, and shares add up', () => {
    const direct = of('job.materials')! + of('job.labour')! + 150;
    expect(of('a.cost')! + of('b.cost')!).toBeCloseTo(direct, 6);
    expect(of('b.cost')! - of('a.cost')!).toBeCloseTo(150 - of('job.labour')!, 6);
  });

  test('earns nothing for the firm’s own hours but what the price leaves', () => {
    const wages = of('job.labour')! + of('job.leaves')!;
    expect(of('job.leaves')).toBeGreaterThan(20);
    expect(of('job.earns')).toBeCloseTo(wages / of('job.hours')!, 2);
  });

  test('is in no timetable of the firm', () => {
    const entries = timetableOf(job).flatMap((day) => day.entries);
    expect(entries.some((e) => e.work === 'a')).toBe(true);
    expect(entries.some((e) => e.work === 'b')).toBe(false);
  });

  test('is kept with a price that is given, and shown among the steps', () => {
    expect(fixedFigures(job).map((f) => f.key)).toContain('partner.halden.labour');
    expect(totalsOf(job)!.steps.map((s) => s.label)).toContain('Halden Brothers: labour');
  });

  test('does not go out in a copy for another firm', () => {
    const copy = sharedCopy(job, { without: 'costs', client: true, head: 'A copy' });
    expect(copy.text.toLowerCase()).not.toContain('halden');
  });
});

test('what its file does not say is as in the job', () => {
  const files = { 'halden.perp': 'perpend 1\nuse uk\noutput\n  facework 100 bricks per h\n' };
  const of = figures(jobOf(text(wall('a') + wall('b', '  by halden\n')), files));
  expect([of('b.hours'), of('partner.halden.labour')]).toEqual([2, 40]);
});

test('comparing tells of it under its name, and the parts are the difference to the penny', () => {
  const [before, after] = [text(wall('a')), BOTH].map((t) => jobOf(t, FILES)) as [Job, Job];
  const change = moneyChange(before, after, [])!;
  const part = change.parts.find((p) => p.key === 'partner halden');
  expect([part?.label, part?.difference.toFixed()]).toEqual(['Halden Brothers: labour', '150']);
  const all = change.parts.reduce((sum, p) => sum + p.difference.toNumber(), 0);
  expect(all).toBeCloseTo(change.total.difference.toNumber(), 6);
});

test('a range in its file moves the price', () => {
  const ranged = { 'halden.perp': THEIRS.replace('£30', '£20..£40') };
  expect(jobOf(BOTH, FILES).spread).toBeUndefined();
  const { low, high } = jobOf(BOTH, ranged).spread!;
  expect(high.value.sub(low.value).toNumber()).toBeGreaterThan(20);
});

test('work laid again for a range is laid by the partner’s outputs in every sample', () => {
  const long = (more: string) => wall('a', more).replace('4490 mm', '4..6 m');
  const files = { 'halden.perp': `perpend 1\nuse uk\n${OWN}` };
  const mine = jobOf(text(long('')), files).spread!;
  const theirs = jobOf(text(long('  by halden\n')), files).spread!;
  expect([theirs.low.value.toFixed(), theirs.high.value.toFixed()]).toEqual([
    mine.low.value.toFixed(),
    mine.high.value.toFixed(),
  ]);
});

test('an option may give work to a partner', () => {
  const option = 'option helped\n  change a by halden\n';
  const job = jobOf(text(wall('a') + option), FILES);
  expect(figures(job)('partner.halden.labour')).toBeUndefined();
  const helped = figures(job.options.with(['helped'])!);
  expect([helped('partner.halden.labour'), helped('job.labour')]).toEqual([150, 0]);
});

test('the result of a job counts what a partner charges, as reckoned until it is paid', () => {
  const record = (spent: string) => `record\n  worked 2026-03-02 1 people 4 h\n${spent}`;
  const of = (spent: string) => figures(jobOf(BOTH + record(spent), FILES));
  // Four hours at 20 pounds, and 150 reckoned or 170 paid.
  expect(of('')('result.labour')).toBe(80 + 150);
  const paid = of('  spent 2026-03-09 £170 "Halden Brothers" for labour\n');
  expect(paid('result.labour')).toBe(80 + 170);
  expect(paid('result.earns')).toBeCloseTo((80 + paid('result.leaves')!) / 4, 2);
});

test('a change of its file is seen, and of a long list too', () => {
  const files = { 'job.perp': BOTH, ...FILES };
  const workspace = workspaceOf(files);
  const open = workspace.job(inRoot('job.perp'))!;
  expect(figures(open)('partner.halden.labour')).toBe(150);
  workspace.opened(inRoot('halden.perp'), THEIRS.replace('£30', '£40'));
  expect(figures(workspace.job(inRoot('job.perp'))!)('partner.halden.labour')).toBe(200);
  const known = workspace.scopeNow(inRoot('job.perp'))!.map((f) => f.name);
  expect(known).toContain(inRoot('halden.perp'));
  const many = Array.from({ length: 70 }, (_, i) => wall(`w${i}`, i % 2 ? '  by halden\n' : ''));
  const of = figures(jobOf(text(many.join('')), FILES));
  expect([of('partner.halden.hours'), of('job.hours')]).toEqual([35 * 2.5, 35 * 4]);
});

test('a partner with the firm’s own rates and outputs makes the labour of its work cost the same', () => {
  const sample = fc.record({
    rate: fc.integer({ min: 1, max: 9999 }),
    output: fc.integer({ min: 5, max: 200 }),
    lay: fc.integer({ min: 1, max: 4 }),
    courses: fc.integer({ min: 1, max: 20 }),
  });
  fc.assert(
    fc.property(sample, ({ rate, output, lay, courses }) => {
      const gang = lay === 1 ? '1 bricklayer' : `${lay} bricklayers`;
      const own = `labour\n  bricklayer £${(rate / 100).toFixed(2)} per h\n  gang ${gang}\n  day 8 h\n  set-up 0 min\n  clear-up 0 min\noutput\n  facework ${output} bricks per h\n`;
      const one = wall('a').replace('10 courses', `${courses} courses`);
      const files = { 'halden.perp': `perpend 1\nuse uk\n${own}` };
      const mine = figures(jobOf(text(one, PARTNER, own), files));
      const theirs = figures(jobOf(text(`${one}  by halden\n`, PARTNER, own), files));
      expect(theirs('partner.halden.labour')).toBe(mine('job.labour'));
      expect(theirs('a.cost')).toBe(mine('a.cost'));
      expect(theirs('job.labour')).toBe(0);
    }),
    { numRuns: 25 },
  );
});
