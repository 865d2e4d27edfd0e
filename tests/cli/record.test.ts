/** perpend record: writes a line into the job, and nothing else. */
import { chmodSync, cpSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { readJson } from '../tree';
import { FILES } from './jobs';
import { bundle, folderOf, perpend, useCommandLine } from './perpend';

useCommandLine();

const OPTION = '\noption higher "Two courses more"\n  change  walnorth height 20 courses\n';
const JOB = FILES['job.perp'] + OPTION;
const DAY = ['--date', '2026-03-02'];

const folder = (job = JOB) => folderOf({ ...FILES, 'job.perp': job });
const textIn = (cwd: string) => readFileSync(path.join(cwd, 'job.perp'), 'utf8');
const record = (cwd: string, ...words: string[]) =>
  perpend(['record', 'job.perp', ...words, ...(words.includes('--date') ? [] : DAY)], { cwd });
const codes = (cwd: string) => {
  const { out } = perpend(['check', '--json', 'job.perp'], { cwd });
  return (JSON.parse(out) as { files: { findings: { code: string }[] }[] }).files[0]!.findings.map(
    (f) => f.code,
  );
};

describe('perpend record', () => {
  test('sent keeps the price and what it is made of, and holds', () => {
    const cwd = folder();
    const { code, out } = record(cwd, 'sent');
    expect([code, out]).toEqual([
      0,
      expect.stringMatching(
        /^job\.perp:\d+: sent +2026-03-02 £[\d.]+, and \d+ figures that it is made of\n$/,
      ),
    ]);
    const text = textIn(cwd);
    expect(text.startsWith(`${JOB}\nrecord\n  sent      2026-03-02 £`)).toBe(true);
    expect(text).toMatch(/\n {4}was {5}job\.labour £[\d.]+\n/);
    expect(text).toMatch(/\n {4}was {5}option\.higher\.price £[\d.]+\n/);
    expect(codes(cwd)).not.toContain('sent-moved');
    writeFileSync(path.join(cwd, 'firm.perp'), FILES['firm.perp'].replace('£28.70', '£31.20'));
    expect(codes(cwd)).toContain('sent-moved');
    expect(perpend(['check', 'job.perp'], { cwd }).out).toContain('What moved: ');
  });

  test('accepted takes the price with the options, and the agreed job holds', () => {
    const cwd = folder();
    record(cwd, 'sent');
    const { code } = record(cwd, 'accepted', 'higher', '--date', '2026-03-05');
    expect(code).toBe(0);
    expect(textIn(cwd)).toMatch(/\n {2}accepted {2}2026-03-05 higher £[\d.]+\n {4}was /);
    expect(codes(cwd).filter((c) => /sent|options|record/.test(c))).toEqual([]);
  });

  test('accepted at another price than was sent says so', () => {
    const cwd = folder();
    record(cwd, 'sent');
    expect(record(cwd, 'accepted', 'higher', '--date', '2026-03-05').err).toBe('');
    const moved = folder();
    record(moved, 'sent');
    writeFileSync(path.join(moved, 'firm.perp'), FILES['firm.perp'].replace('£28.70', '£31.20'));
    expect(record(moved, 'accepted').err).toMatch(
      /^perpend: The client holds a price of £[\d,.]+; it is written at £[\d,.]+, what job\.perp/,
    );
  });

  test('a title of one word is a title, though the shell took its marks', () => {
    const cwd = folder();
    expect(record(cwd, 'invoiced', '£362.50', 'as', '26-041-1', 'Deposit').code).toBe(0);
    expect(textIn(cwd)).toMatch(/invoiced +2026-03-02 £362\.50 as 26-041-1 "Deposit"\n/);
  });

  test.each([
    [
      ['worked', '2', 'people', '7.5', 'h', 'facework', '410', 'bricks'],
      'worked    2026-03-02 2 people 7.5 h facework 410 bricks',
    ],
    [
      ['spent', '£212.40', 'sand and cement', 'for', 'materials'],
      'spent     2026-03-02 £212.40 "sand and cement" for materials',
    ],
    [['spent', '£212.40', 'sand', 'for', 'travel'], undefined],
    [
      ['invoiced', '£362.50', 'as', '26-041-1', 'The "deposit" due'],
      'invoiced  2026-03-02 £362.50 as 26-041-1 "The \\"deposit\\" due"',
    ],
    [['paid', '£362.50 deducted £12'], 'paid      2026-03-02 £362.50 deducted £12'],
    [['lost', 'too dear for us'], 'lost      2026-03-02 "too dear for us"'],
    [['retained', '£20', 'until', '2026-09-16'], 'retained  2026-03-02 £20 until 2026-09-16'],
    [['accepted'], undefined],
  ])('%j is written as the record has it', (words, line) => {
    const cwd = folder(`${JOB}\nrecord\n  sent      2026-03-01 £100.00\n`);
    const { code, err } = record(cwd, ...words);
    if (line === undefined) {
      if (words[0] === 'accepted') expect(code).toBe(0);
      else expect([code, err]).toEqual([2, expect.stringContaining('cannot be read')]);
    } else {
      expect(err).toBe('');
      expect(textIn(cwd)).toBe(`${JOB}\nrecord\n  sent      2026-03-01 £100.00\n  ${line}\n`);
    }
  });

  test('keeps comments, line ends, the mark of UTF-8 and what is not in order elsewhere', () => {
    const text =
      `\ufeff${JOB}record   # what happened\n\n  sent 2026-03-01 £9   # by post\n# the firm's own\ncost x "X" 1 at £1`.replaceAll(
        '\n',
        '\r\n',
      );
    const cwd = folder(text);
    expect(record(cwd, 'paid', '£5').code).toBe(0);
    expect(textIn(cwd)).toBe(
      text
        .replace(
          '  sent 2026-03-01 £9   # by post\r\n',
          '  sent      2026-03-01 £9             # by post\r\n  paid      2026-03-02 £5\r\n',
        )
        .replace('record   #', `record${' '.repeat(32)}#`),
    );
  });

  test('a file without an end of line gets one', () => {
    const cwd = folder('perpend 1\njob "A"');
    expect(record(cwd, 'paid', '£5').code).toBe(0);
    expect(textIn(cwd)).toBe('perpend 1\njob "A"\n\nrecord\n  paid      2026-03-02 £5\n');
  });

  test('says where it is, as JSON too', () => {
    const { out } = perpend(['record', 'job.perp', 'paid', '£5', ...DAY, '--json'], {
      cwd: folder(),
    });
    const validate = new Ajv2020({ strict: true, strictRequired: false }).compile(
      readJson('shared/json-schema/perpend-1.schema.json'),
    );
    const document = JSON.parse(out) as { line: number; lines: string[] };
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    expect(document).toMatchObject({
      line: JOB.split('\n').length + 2,
      lines: ['paid      2026-03-02 £5'],
    });
  });

  test.each([
    ['nothing', []],
    ['what no record knows', ['recieved', '£5']],
    ['a line that cannot be read', ['paid', 'five pounds']],
    ['an option that there is not', ['accepted', 'caps']],
    ['a day that no calendar has', ['paid', '£5', '--date', '2026-02-30']],
    ['a date that is none', ['paid', '£5', '--date', 'today']],
  ])('refuses %s, and leaves the file as it was', (_, words) => {
    const cwd = folder();
    const { code, err } = record(cwd, ...words);
    expect([code, err]).toEqual([2, expect.stringMatching(/^perpend: .+/)]);
    expect(textIn(cwd)).toBe(JOB);
    expect(readdirSync(cwd).sort()).toEqual(Object.keys(FILES).sort());
  });

  test('keeps no price that is not complete, unless it is told one', () => {
    const text = JOB.replace(/length +\S+ m\n/, 'length ?\n');
    const cwd = folder(text);
    expect(text).not.toBe(JOB);
    const { code, err } = record(cwd, 'sent');
    expect([code, err]).toEqual([2, expect.stringContaining('is not complete')]);
    expect(textIn(cwd)).toBe(text);
    expect(record(cwd, 'sent', '£900.00').code).toBe(0);
    expect(textIn(cwd)).toContain('  sent      2026-03-02 £900.00\n');
  });

  test('without a date it is today’s', () => {
    const cwd = folder();
    perpend(['record', 'job.perp', 'paid', '£5'], { cwd });
    expect(textIn(cwd)).toMatch(/ {2}paid {6}\d{4}-\d{2}-\d{2} £5\n$/);
  });

  test('a folder that may not be written to leaves the file whole', () => {
    const cwd = folder();
    // Root may write anywhere, so there the command runs as somebody else, from where that one can read it.
    const other = process.getuid?.() === 0 ? 65_534 : undefined;
    cpSync(bundle(), path.join(cwd, 'perpend.cjs'));
    chmodSync(cwd, 0o555);
    const ran = perpend(['record', 'job.perp', 'paid', '£5', ...DAY], {
      cwd,
      uid: other,
      script: path.join(cwd, 'perpend.cjs'),
    });
    chmodSync(cwd, 0o755);
    expect([ran.code, ran.err]).toEqual([2, expect.stringContaining('cannot be written')]);
    expect(textIn(cwd)).toBe(JOB);
  });
});

describe('perpend result', () => {
  const worked = `${JOB}\nrecord\n  worked 2026-03-09 2 people 7.5 h facework 410 bricks\n  spent 2026-03-09 £212.40 "sand"\n  invoiced 2026-03-12 £300.00\n  paid 2026-03-20 £100\n`;

  test('shows what happened beside what was reckoned', () => {
    const { code, out } = perpend(['result', 'job.perp'], { cwd: folder(worked) });
    expect(code).toBe(0);
    expect(out).toMatch(/reckoned +happened/);
    expect(out).toMatch(/Materials +£[\d.,]+ +£212\.40/);
    expect(out).toMatch(/facework +[\d.]+ h +15 h +[\d,.]+ bricks +410 bricks +[\d.]+ bricks\/h/);
    expect(out).toMatch(/Owed +£200\.00/);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  test('says so where nothing has happened', () => {
    const { out } = perpend(['result', 'job.perp'], { cwd: folder() });
    expect(out).toBe('job.perp: nothing is recorded as worked or spent yet.\n');
  });

  test('is JSON that its schema takes', () => {
    const validate = new Ajv2020({ strict: true, strictRequired: false }).compile(
      readJson('shared/json-schema/perpend-1.schema.json'),
    );
    for (const text of [worked, JOB]) {
      const { out } = perpend(['result', '--json', 'job.perp'], { cwd: folder(text) });
      const document = JSON.parse(out) as { result?: { tasks: { task: string }[] } };
      expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
      if (text === worked) expect(document.result!.tasks[0]!.task).toBe('facework');
    }
  });
});
