import {
  chmodSync,
  cpSync,
  mkdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { FIRM_FILE, firmJob } from '../harness/firm-jobs';
import { readJson } from '../tree';
import { inside } from './inside';
import { bundle, folderOf, perpend, useCommandLine } from './perpend';

useCommandLine();
const validate = new Ajv2020({ strict: true, strictRequired: false }).compile(
  readJson('shared/json-schema/perpend-1.schema.json'),
);

const job = (title: string, record: readonly string[], more = '') =>
  `perpend 1\nuse "../firm.perp"\njob "${title}"\n${more}wall a\n  length 3.37 m\n  height 8 courses\nrecord\n${record.map((l) => `  ${l}\n`).join('')}`;

const FILES = {
  'firm.perp': FIRM_FILE,
  'jobs/a.perp': job('Mill wall', ['sent 2026-03-02 £1,200.00']),
  'jobs/b.perp': job('Forge pier', [
    'sent 2026-01-05 £600.00',
    'accepted 2026-01-09',
    'invoiced 2026-02-01 £600.00',
    'paid 2026-02-10 £480.00',
  ]),
};

const cwd = () => folderOf(FILES);
const jobs = (folder: string, ...more: string[]) =>
  inside(['jobs', 'jobs', '--date', '2026-03-31', ...more], { cwd: folder });

describe('perpend jobs', () => {
  test('tells what is out, won, owed and paid, in 80 columns', () => {
    const { code, out, err } = jobs(cwd());
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(out).toBe(`jobs: 2 jobs, as of 2026-03-31

How they stand
                     jobs      price
  Out                   1  £1,200.00
  Won, all invoiced     1    £600.00

Out
  Mill wall  2026-03-02  29 days  £1,200.00

Invoiced and paid
  Invoiced  £600.00
  Paid      £480.00
  Owed      £120.00

Owed, the oldest first
  Forge pier  2026-02-01  58 days  44 late  £120.00

By the day of the invoice
                      before tax      tax  with tax
  2026-01 to 2026-03     £500.00  £100.00   £600.00

By the day of payment
                      before tax     tax  with tax
  2026-01 to 2026-03     £400.00  £80.00   £480.00
`);
  });

  test('as JSON is valid, and its amounts are exact', () => {
    const { out } = jobs(cwd(), '--json');
    const document = JSON.parse(out);
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    const [pounds] = document.currencies;
    expect(pounds.owed.value).toBe('120');
    expect(pounds.jobs.map((j: { file: string; state: string }) => [j.file, j.state])).toEqual([
      ['a.perp', 'out'],
      ['b.perp', 'done'],
    ]);
    expect(validate({ ...document, day: undefined })).toBe(false);
  });

  test('prices a job with several rates, and no other, for its tax', () => {
    const rate = (tax: string) => `wall b\n  tax ${tax}\n  length 3.37 m\n  height 8 courses\n`;
    const firm = `${FIRM_FILE}brick standard\n  price £1 each\nmaterial cement\n  pack 25 kg bag at £6\nmaterial sand\n  pack 850 kg bag at £50\nmaterial lime\n  pack 25 kg bag at £9\n`;
    const two = job('Two rates', ['invoiced 2026-02-01 £600.00'], rate('none "Why not"'));
    const folder = folderOf({ 'firm.perp': firm, 'jobs/a.perp': two });
    const { out } = jobs(folder, '--json');
    const [quarter] = JSON.parse(out).currencies[0].quarters;
    // Walls alike: half of the price before tax bears 20%, so tax is 20 of 220 parts: 600 / 11 = 54.55.
    expect([quarter.invoiced.unknown.value, quarter.invoiced.tax.value]).toEqual(['0', '54.55']);
  });

  test('does not follow links, or look into hidden folders', () => {
    const folder = cwd();
    const other = folderOf({ 'far.perp': job('Far', []) });
    symlinkSync(path.join(other, 'far.perp'), path.join(folder, 'jobs/link.perp'));
    symlinkSync(other, path.join(folder, 'jobs/linked'));
    mkdirSync(path.join(folder, 'jobs/.git'));
    writeFileSync(path.join(folder, 'jobs/.git/x.perp'), job('Hidden', []));
    expect(jobs(folder).out).toContain('jobs: 2 jobs, as of');
  });

  test('writes nothing that was not asked for', () => {
    const folder = cwd();
    const before = statSync(path.join(folder, 'jobs')).mtimeMs;
    jobs(folder);
    jobs(folder, '--rates');
    expect(statSync(path.join(folder, 'jobs')).mtimeMs).toBe(before);
    expect(readFileSync(path.join(folder, 'firm.perp'), 'utf8')).toBe(FIRM_FILE);
  });

  test.each([
    [['jobs'], 'needs a folder'],
    [['jobs', 'nowhere'], 'cannot be used'],
    [['jobs', 'jobs', '--date', '2026-02-30'], 'no date'],
    [['jobs', 'jobs', '--write', 'firm.perp'], 'only with --rates'],
    [['jobs', 'jobs', '--rates', '--write', 'none.perp'], 'no such file'],
    [['jobs', 'jobs', '--index', 'firm.perp'], 'would be overwritten'],
  ])('%j is refused', (args, why) => {
    const { code, err } = inside(args, { cwd: cwd() });
    expect(code).toBe(2);
    expect(err).toContain(why);
  });
});

describe('perpend jobs --index', () => {
  test('gives the same, from the index too, and follows an edit', () => {
    const folder = cwd();
    const plain = jobs(folder).out;
    expect(jobs(folder, '--index', 'kept.json').out).toBe(plain);
    const first = readFileSync(path.join(folder, 'kept.json'), 'utf8');
    expect(jobs(folder, '--index', 'kept.json').out).toBe(plain);
    expect(readFileSync(path.join(folder, 'kept.json'), 'utf8')).toBe(first);
    writeFileSync(
      path.join(folder, 'jobs/a.perp'),
      job('Mill wall', ['sent 2026-03-02 £1,300.00']),
    );
    const { out } = jobs(folder, '--index', 'kept.json');
    expect(out).toContain('£1,300.00');
    expect(jobs(folder).out).toBe(out);
  });

  test('a damaged one is made anew, and that is said', () => {
    const folder = cwd();
    const plain = jobs(folder, '--index', 'kept.json').out;
    const kept = path.join(folder, 'kept.json');
    const good = readFileSync(kept, 'utf8');
    writeFileSync(kept, good.slice(0, 100));
    const { code, out, err } = jobs(folder, '--index', 'kept.json');
    expect([code, out, err]).toEqual([0, plain, expect.stringContaining('made anew')]);
    expect(readFileSync(kept, 'utf8')).toBe(good);
  });

  test('another file is left as it is', () => {
    const folder = folderOf({ ...FILES, 'letter.txt': 'Dear Sir' });
    const { code, err } = jobs(folder, '--index', 'letter.txt');
    expect([code, err]).toEqual([0, expect.stringContaining('left as it is')]);
    expect(readFileSync(path.join(folder, 'letter.txt'), 'utf8')).toBe('Dear Sir');
  });
});

describe('perpend jobs --rates', () => {
  const past = () =>
    folderOf({
      'firm.perp': FIRM_FILE.replaceAll('\n', '\r\n'),
      ...Object.fromEntries(Array.from({ length: 30 }, (_, i) => [`jobs/${i}.perp`, firmJob(i)])),
    });

  test('tells what past jobs come to beside what is reckoned', () => {
    const { code, out } = jobs(past(), '--rates');
    expect(code).toBe(0);
    expect(out).toMatch(
      /facework, bricks +\d+ +\d+ +5\d\.\d +5\d\.\d to 5\d\.\d +4\d\.\.\d\d +60\.0 +\*/,
    );
    expect(out.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });

  test('as JSON is valid', () => {
    const document = JSON.parse(jobs(past(), '--rates', '--json').out);
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    expect(document.outputs[0]).toMatchObject({ task: 'facework', enough: true });
  });

  test('writes them into the firm’s file when asked, and then has nothing more to say', () => {
    const folder = past();
    const { code, out } = jobs(folder, '--rates', '--write', 'firm.perp');
    expect([code, out]).toEqual([0, expect.stringContaining('1 line written into firm.perp')]);
    const text = readFileSync(path.join(folder, 'firm.perp'), 'utf8');
    expect(text).toMatch(/\r\n {2}facework {2}5\d(\.\d)? bricks per h\r\n/);
    expect(text.replace(/facework .*\r/, '')).toBe(
      FIRM_FILE.replaceAll('\n', '\r\n').replace(/facework .*\r/, ''),
    );
    const again = jobs(folder, '--rates', '--write', 'firm.perp').out;
    expect(again).toContain('firm.perp needs no change.');
  });

  test('counts no job of another firm for a firm’s file', () => {
    const folder = past();
    writeFileSync(path.join(folder, 'other.perp'), FIRM_FILE);
    const { out } = jobs(folder, '--rates', '--write', 'other.perp');
    expect(out).toContain('other.perp needs no change.');
  });

  test('leaves the old file whole where it may not write', () => {
    const folder = past();
    // Root may write anywhere, so there the command runs as somebody else, from where that one can read it.
    const other = process.getuid?.() === 0 ? 65_534 : undefined;
    cpSync(bundle(), path.join(folder, 'perpend.cjs'));
    chmodSync(folder, 0o555);
    const ran = perpend(['jobs', 'jobs', '--rates', '--write', 'firm.perp'], {
      cwd: folder,
      uid: other,
      script: path.join(folder, 'perpend.cjs'),
    });
    chmodSync(folder, 0o755);
    expect([ran.code, ran.err]).toEqual([2, expect.stringContaining('cannot be written')]);
    expect(readFileSync(path.join(folder, 'firm.perp'), 'utf8')).toContain('facework  60 bricks');
  });
});
