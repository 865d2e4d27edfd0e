/** perpend invoice, buying, site, changes and result: what they write, print and say. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { readInvoice } from '../documents/en16931/read';
import { broken, IN_ORDER, RULES } from '../documents/en16931/rules';
import { readJson } from '../tree';
import { inside } from './inside';
import { FILES, FIRM, JOB } from './jobs';
import { folderOf, useCommandLine } from './perpend';

useCommandLine(); // its folders are cleared away

const schema = readJson<object>('shared/json-schema/perpend-1.schema.json');
const validate = new Ajv2020({ allErrors: true, strict: true, strictRequired: false }).compile(
  schema,
);

function json(args: readonly string[], cwd: string) {
  const document = JSON.parse(inside([...args, '--json'], { cwd }).out) as Record<string, unknown>;
  expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
  return document;
}

const RECORD = `${JOB}
record
  sent      2026-01-15 £2,000.00
  worked    2026-02-02 2 people 7.5 h facework 410 bricks
  spent     2026-02-02 £212.40 "sand and cement"
  invoiced  2026-02-03 £600.00 as 26-107-1 "Deposit"
  paid      2026-02-10 £600.00
`;
const jobs = { ...FILES, 'done.perp': RECORD };

describe('perpend invoice', () => {
  test('is the last of the record, and by --number another', () => {
    const cwd = folderOf(jobs);
    const { out, code } = inside(['invoice', 'done.perp', '--as', 'md'], { cwd });
    expect(code).toBe(0);
    expect(out).toMatch(/^# Invoice$/m);
    expect(out).toContain('26-107-1');
    expect(out).toContain('3 February 2026');
    expect(
      inside(['invoice', 'done.perp', '--number', '26-107-1', '--as', 'md'], { cwd }).out,
    ).toBe(out);
  });

  test('without a number or a date is a draft, and says why', () => {
    const { out } = inside(['invoice', 'job.perp', '--as', 'md'], { cwd: folderOf(jobs) });
    expect(out).toContain('NOT AN INVOICE YET');
    expect(out).toMatch(/^# Draft invoice$/m);
  });

  test('of a job with errors or gaps is none', () => {
    const cwd = folderOf(jobs);
    const more = ['--number', '1', '--date', '2026-02-01', '--amount', '10', '--as', 'md'];
    const wrong = inside(['invoice', 'wrong.perp', ...more], { cwd });
    expect([wrong.code, wrong.out.includes('NOT AN INVOICE YET')]).toEqual([1, true]);
    expect(inside(['invoice', 'half.perp', ...more], { cwd }).out).toContain('NOT AN INVOICE YET');
  });

  test.each([
    [['--amount', '-5'], 'is no amount'],
    [['--amount', '1e9'], 'is no amount'],
    [['--amount', 'NaN'], 'is no amount'],
    [['--date', '12.3.2026'], 'is no date'],
    [['--date', '2026-02-31'], 'is no date'],
    [['--stage', 'Nowhere'], 'There is no stage “Nowhere”'],
  ])('%s is told', (more, said) => {
    const { code, out, err } = inside(['invoice', 'job.perp', ...more], { cwd: folderOf(jobs) });
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(said);
  });

  test.each(['quote', 'invoice'])(
    'a %s that charges tax without a tax number is told',
    (command) => {
      const bare = FIRM.replace(/ {2}tax-number.*\n/, '');
      const told = (firm: string, job = JOB) =>
        inside([command, 'job.perp'], { cwd: folderOf({ 'firm.perp': firm, 'job.perp': job }) })
          .err;
      expect(told(FIRM)).not.toContain('tax-number');
      expect(told(bare)).toContain('gives no tax-number, and tax is charged');
      const none = JOB.replace(/^(job .*\n)/m, '$1  tax none "The firm is not registered."\n');
      expect(told(bare, none)).not.toContain('tax-number');
    },
  );

  test('as UBL by its ending keeps the rules; what is lacking is told and nothing written', () => {
    const whole = FIRM.replace('  terms ', '  country GB\n  payment 14 days\n  terms ');
    const job = `${RECORD}\nbill-to "T. Alder"\n  country GB\n`;
    const cwd = folderOf({ 'firm.perp': whole, 'job.perp': job, 'bare.perp': JOB });
    expect(inside(['invoice', 'job.perp', '--out', 'i.xml'], { cwd })).toMatchObject({
      code: 0,
      err: '',
    });
    const read = readInvoice(readFileSync(path.join(cwd, 'i.xml'), 'utf8'));
    expect(broken(read, [...RULES, ...IN_ORDER])).toEqual([]);
    const lacks = inside(['invoice', 'bare.perp', '--out', 'no.xml'], { cwd });
    expect(lacks.code).toBe(2);
    expect(lacks.err).toContain('BR-02');
    expect(readdirSync(cwd)).not.toContain('no.xml');
  });

  test('as UBL is not made of a job with errors, or of a price that is not complete', () => {
    const whole = FIRM.replace('  terms ', '  country GB\n  payment 14 days\n  terms ');
    const cwd = folderOf({ ...jobs, 'firm.perp': whole });
    const more = ['--number', '1', '--date', '2026-02-01', '--amount', '10', '--as', 'ubl'];
    for (const [file, why] of [
      ['wrong.perp', 'a job without errors'],
      ['half.perp', 'a price that is complete'],
    ]) {
      const { code, out, err } = inside(['invoice', file!, ...more], { cwd });
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain(why);
    }
  });

  test('as JSON is valid against the schema', () => {
    const cwd = folderOf(jobs);
    expect(json(['invoice', 'done.perp'], cwd)).toMatchObject({
      number: '26-107-1',
      before: '0.00',
    });
    json(['invoice', 'job.perp', '--stage', '1'], cwd);
  });
});

describe('perpend buying', () => {
  test('holds no money but with --prices, in every form', () => {
    const cwd = folderOf(jobs);
    for (const form of ['html', 'md', 'csv', 'json'] as const) {
      const as = form === 'json' ? ['--json'] : ['--as', form];
      const without = inside(['buying', 'job.perp', ...as], { cwd }).out;
      expect(without).not.toMatch(/£|GBP|563\.57/);
      expect(inside(['buying', 'job.perp', ...as, '--prices'], { cwd }).out).toContain('563.57');
    }
  });

  test('as JSON is valid against the schema', () => {
    const cwd = folderOf(jobs);
    for (const more of [[], ['--prices']]) {
      const { merchants } = json(['buying', 'job.perp', ...more], cwd);
      expect(merchants).toMatchObject([
        { merchant: '', items: [{ title: 'Oddmouth red facing' }, {}, {}, {}] },
      ]);
    }
    json(['buying', 'half.perp', '--prices'], cwd);
  });

  test('as CSV may begin with a mark for spreadsheets', () => {
    const cwd = folderOf(jobs);
    expect(inside(['buying', 'job.perp', '--as', 'csv'], { cwd }).out).toMatch(/^From,What,/);
    expect(inside(['buying', 'job.perp', '--as', 'csv', '--bom'], { cwd }).out).toMatch(
      /^\ufeffFrom,/,
    );
  });

  test('of a file without work is told', () => {
    const { code, out, err } = inside(['buying', 'firm.perp'], { cwd: folderOf(jobs) });
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('holds no work');
  });
});

describe('perpend changes', () => {
  const LATER = RECORD.replace('length  5 m', 'length  6 m').replace(
    '  worked ',
    '  found     2026-01-20 "The footing stops short."\n  worked ',
  );

  test('of two files tells why, the work and the price, and no cost', () => {
    const cwd = folderOf({ ...jobs, 'later.perp': LATER });
    const { code, out } = inside(['changes', 'done.perp', 'later.perp', '--as', 'md'], { cwd });
    expect(code).toBe(0);
    for (const text of [
      '# What has changed',
      'Since our quote of 15 January 2026',
      'The footing stops short',
      'Now: Build a wall 6 m long',
      '| **Price** |',
    ])
      expect(out).toContain(text);
    expect(out).not.toMatch(/28\.70|23\.3|walnorth/);
  });

  test('where no revision is known compares the price alone, and says so', () => {
    const cwd = folderOf({ ...jobs, 'later.perp': LATER });
    const { code, out, err } = inside(['changes', 'later.perp', '--as', 'md'], { cwd });
    expect(code).toBe(0);
    expect(err).toContain('Only the price can be compared.');
    expect(out).toContain('£2,000.00');
  });
});

describe('perpend result and perpend site', () => {
  test('result is read at the terminal, and a paper where one is asked for', () => {
    const cwd = folderOf(jobs);
    const shown = inside(['result', 'done.perp'], { cwd }).out;
    expect(shown).not.toContain('<!doctype');
    const paper = inside(['result', 'done.perp', '--as', 'md'], { cwd }).out;
    // Not all of its price is invoiced yet.
    expect(paper).toMatch(/^# Result so far$/m);
    expect(paper).toContain('For the firm alone');
    expect(inside(['result', 'done.perp', '--out', 'r.html'], { cwd })).toMatchObject({
      code: 0,
      out: '',
    });
    expect(readFileSync(path.join(cwd, 'r.html'), 'utf8')).toMatch(/^<!doctype html>/);
    json(['result', 'done.perp'], cwd);
  });

  test('the site sheet is written for every job, whole or not', () => {
    const cwd = folderOf(jobs);
    for (const file of ['job.perp', 'half.perp', 'ranged.perp', 'done.perp']) {
      const { code, out } = inside(['site', file, '--as', 'md'], { cwd });
      expect([file, code]).toEqual([file, 0]);
      expect(out).toMatch(/^# Site sheet$/m);
      expect(out).not.toContain('£');
    }
    expect(inside(['site', 'wrong.perp'], { cwd }).code).toBe(1);
  });
});
