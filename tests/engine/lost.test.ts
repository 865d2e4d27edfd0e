import { describe, expect, test } from 'vitest';
import { jobView } from '../../server/engine/views/job-view';
import { EXAMPLES, exampleJob } from './examples';

const NAME = 'garden-wall/job.perp';
const text = EXAMPLES[NAME]!;
const whole = jobView(exampleJob(NAME));

const figure = (view: typeof whole, id: string) =>
  [...view.blocks.flatMap((b) => b.figures), ...view.totals].find((f) => f.id === id)!;

describe('a line that cannot be read', () => {
  const job = exampleJob(NAME, { [NAME]: text.replace('450 x 225 mm', '450 by 225 mm') });
  const view = jobView(job);

  test('takes what it says out of the totals, and every figure it fed says so', () => {
    expect(text).toContain('450 x 225 mm');
    expect(figure(whole, 'job.price').complete).toBe(true);
    expect(figure(view, 'job.price').complete).toBe(false);
    expect(figure(view, 'job.price').missing).toEqual([
      'the line “footing   450 by 225 mm” of job.perp is left out',
    ]);
    expect(figure(view, 'north.bricks').complete).toBe(false);
    expect(figure(view, 'north.bricks').value).toBe(figure(whole, 'north.bricks').value);
  });

  test('is told once, at its own place', () => {
    const at = view.findings.filter(
      (f) => f.place.line === text.split('\n').findIndex((l) => l.includes('footing')),
    );
    expect(at.map((f) => f.severity)).toEqual(['error']);
    expect(view.findings.filter((f) => f.code === 'incomplete')).toEqual([]);
  });

  test('in the firm’s file is told at the job’s heading, where the reader is', () => {
    const firm = EXAMPLES['firm.perp']!.replace('per day at £0.45', 'a day at £0.45');
    const without = jobView(exampleJob(NAME, { 'firm.perp': firm }));
    expect(figure(without, 'job.price').complete).toBe(false);
    expect(figure(without, 'job.travel').value).toBe('0');
    expect(without.findings.filter((f) => f.code === 'incomplete').map((f) => f.message)).toEqual([
      'The price is not complete: the line “run       2 x 14 miles a day at £0.45 …” of firm.perp is left out. The other totals stand.',
    ]);
  });

  test('of the firm’s address takes no price: none hangs on it', () => {
    const firm = EXAMPLES['firm.perp']!.replace(/^ {2}address .*$/m, '  address "Low" End"');
    const without = jobView(exampleJob(NAME, { 'firm.perp': firm }));
    expect(firm).not.toBe(EXAMPLES['firm.perp']);
    expect(figure(without, 'job.price')).toEqual(figure(whole, 'job.price'));
  });

  test('said twice takes nothing out: the first holds', () => {
    const twice = text.replace('  footing', '  footing   450 x 225 mm\n  footing');
    expect(figure(jobView(exampleJob(NAME, { [NAME]: twice })), 'job.price').complete).toBe(true);
  });
});

describe('what is left out of the work', () => {
  test('a file that is not there leaves the price incomplete', () => {
    const more = text.replace('use "../firm.perp"', 'use "../firm.perp"\nuse "nowhere.perp"');
    const view = jobView(exampleJob(NAME, { [NAME]: more }));
    expect(figure(view, 'job.price').missing).toEqual([
      '“nowhere.perp” is not there or cannot be read',
    ]);
  });

  test('an opening beyond the wall leaves the price incomplete', () => {
    const far = text.replace('left 2577.5 mm', 'left 25775 mm');
    const view = jobView(exampleJob(NAME, { [NAME]: far }));
    expect(figure(view, 'job.price').missing).toContain('the opening gate is left out');
  });
});
