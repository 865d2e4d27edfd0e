/** Copies of the examples: whole they come to the same, without costs they are still the work. */
import { describe, expect, test } from 'vitest';
import { sharedCopy } from '../../../server/engine/share';
import { wholeCopy } from '../../../server/engine/share/whole';
import type { Job } from '../../../server/engine/workspace/job';
import { jobOnDisk } from '../../examples/engine';
import { jobOf } from '../world';

const errors = ({ findings }: Job) =>
  findings.filter((f) => f.severity === 'error').map((f) => f.message);

describe.each(['garden-wall', 'knocked-pier', 'repair', 'de-mauer'])('examples/%s', (name) => {
  const job = jobOnDisk(`examples/${name}/job.perp`);

  test('whole, it is one file that comes to the same price', () => {
    const text = wholeCopy(job, 'A copy.');
    expect(text).not.toMatch(/^use "/m);
    const copy = jobOf(text);
    expect(errors(copy)).toEqual([]);
    expect(copy.price.total.value.toFixed()).toBe(job.price.total.value.toFixed());
  });

  test('without costs it reads without an error, and without a price', () => {
    const { text } = sharedCopy(job, { without: 'costs', client: true, head: 'A copy.' });
    expect(errors(jobOf(text))).toEqual([]);
    expect(text).not.toMatch(/[£€]|\bsource\b|\bprice\b|\blabour\b/);
    expect(text.match(/#/g)).toHaveLength(1);
  });
});

test('the price that was sent stays without costs, and goes without money', () => {
  const job = jobOf(
    'perpend 1\njob "A"\nwall n\n  brick standard\n  length 2.24 m\n  height 4 courses\nrecord\n  sent 2026-03-02 £815.40\n',
  );
  const made = (without: 'costs' | 'money') =>
    sharedCopy(job, { without, client: true, head: 'A copy.' }).text;
  expect(made('costs')).toContain('\nprice\n  agreed    £815.40 with tax\n');
  expect(jobOf(made('costs')).price.total.value.toFixed()).toBe('815.4');
  expect(made('money')).not.toContain('815');
});

test('options that were not taken are not in it, those that were are', () => {
  const job = jobOf(
    'perpend 1\njob "A"\nwall n\n  length 2.24 m\n  height 4 courses\nwall s "Seat"\n  length 1.115 m\n  height 6 courses\n  option seat\noption high\n  change n height 8 courses\noption seat\nrecord\n  accepted 2026-03-02 high\n',
  );
  const { text } = sharedCopy(job, { without: 'costs', client: true, head: 'A copy.' });
  expect(text).toContain('height    8 courses');
  expect(text).not.toMatch(/seat|option/i);
});

test('a name in the notation that says who it is for is told', () => {
  const job = jobOf(
    'perpend 1\njob "A"\n  client "Mrs Quillbank"\nwall quillbank-north\n  length 2.24 m\n  height 4 courses\n',
  );
  const wishes = { without: 'money', head: 'A copy.' } as const;
  expect(sharedCopy(job, { ...wishes, client: false }).names).toEqual(['quillbank-north']);
  expect(sharedCopy(job, { ...wishes, client: true }).names).toEqual([]);
});
