/** The next job from a past one: the work kept to the letter, the client cleared, rates as the firm has them now. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { nextJob } from '../../../server/engine/life/next';
import { SourceFile } from '../../../server/engine/workspace/source';
import { inRoot, workspaceOf } from '../world';

const PAST = `perpend 1

job "Orchard wall"
  ref       26-041
  client    "Quillbank Growers"
  site      "Orchard Lane"
  date      2026-03-02
  tax       20% "VAT"

use "../firm.perp"

# The wall by the lane.
wall north
  brick     harwick-red
  length    7.3 m      # paced out
  height    16 courses

brick harwick-red
  price     £0.92 each # agreed in spring
  waste     5%

price
  profit    20%
  agreed    £1,400

# What came of it.
record
  sent      2026-03-02 £1,450.00
    was job.cost £900.00
  paid      2026-03-20 £1,450.00
`;

const FIRM = `perpend 1

firm "Wren & Daughter"

brick harwick-red
  size      215 x 102.5 x 65 mm
  price     £0.98 each
  waste     5%
`;

const past = new SourceFile('past.perp', PAST);
const firm = new SourceFile('firm.perp', FIRM);

it('keeps the work and every comment, and clears the client', () => {
  const { text, cleared } = nextJob(past, [firm], {});
  for (const line of ['length 7.3 m', '# paced out', '# The wall by the lane.', 'tax 20%'])
    expect(text.replace(/ +/g, ' ')).toContain(line);
  for (const gone of ['Quillbank', 'Orchard Lane', '26-041', '2026', '1,450', '1,400', 'record'])
    expect(
      text
        .split('\n')
        .filter((line) => !line.startsWith('#'))
        .join('\n'),
    ).not.toContain(gone);
  expect(cleared.map((c) => c.text.split(/\s+/)[0])).toEqual(
    'ref client site date agreed record sent was paid'.split(' '),
  );
  expect(text).toContain('# still to be said: ref, client, site, date');
});

it('brings its own rates up to the firm’s, and leaves what is the same', () => {
  const { text, rates } = nextJob(past, [firm], {});
  expect(rates).toEqual([
    { what: 'brick harwick-red price', was: '£0.92 each', now: '£0.98 each' },
  ]);
  expect(text).toMatch(/price +£0\.98 each +# agreed in spring/);
});

it('says what it is told, and reaches the used files from where it lies', () => {
  const wishes = {
    title: 'Wall "two"',
    client: 'P. Oakes',
    date: '2026-11-26',
    ref: '26-102',
    reach: (file: string) => `../${file}`,
  };
  const { text } = nextJob(past, [firm], wishes);
  expect(text).toContain('job "Wall \\"two\\""');
  expect(text).toMatch(/client +"P\. Oakes"/);
  expect(text).toMatch(/ref +26-102/);
  expect(text).toContain('use "../../firm.perp"');
  expect(text).toContain('# still to be said: site');
});

it('brings money up that is written with its sign behind it', () => {
  const job = (price: string) => new SourceFile('', `brick rot\n  price ${price} each\n`);
  const made = (was: string, now: string) => nextJob(job(was), [job(now)], {}).rates;
  expect(made('0.92 €', '0.98 €')).toEqual([
    { what: 'brick rot price', was: '0.92 € each', now: '0.98 € each' },
  ]);
  expect(made('0.92 EUR', '1.05 EUR')).toHaveLength(1);
});

const EXAMPLES = new URL('../../../examples/', import.meta.url);
const jobs = readdirSync(EXAMPLES, { recursive: true, encoding: 'utf8' }).filter((name) =>
  name.endsWith('job.perp'),
);

it.each(jobs)('makes of %s a job of the same work and cost', (name) => {
  const text = readFileSync(new URL(name, EXAMPLES), 'utf8');
  const others = Object.fromEntries(
    readdirSync(EXAMPLES, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.perp'))
      .map((file) => [file, readFileSync(new URL(file, EXAMPLES), 'utf8')]),
  );
  const world = workspaceOf({ ...others, [name]: text });
  const before = world.job(inRoot(name))!;
  const { text: next } = nextJob(before.file, before.scope.files.slice(1), {});
  const after = workspaceOf({ ...others, [name]: next }).job(inRoot(name))!;
  expect(after.works.map((w) => w.name)).toEqual(before.works.map((w) => w.name));
  expect(after.price.cost.value.toFixed()).toBe(before.price.cost.value.toFixed());
  expect(after.findings.filter((f) => f.severity === 'error')).toEqual([]);
});
