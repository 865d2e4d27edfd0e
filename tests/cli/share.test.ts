/** perpend share and perpend take: a copy that goes out to a partner firm, and comes back. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { readJson, root } from '../tree';
import { inside } from './inside';
import { folderOf } from './perpend';

const FIRM = readFileSync(path.join(root, 'examples/firm.perp'), 'utf8');
const JOB = `perpend 1
# Mrs Quillbank pays late.
job "Wall for Mrs Quillbank"
  client "Mrs Quillbank"
use "firm.perp"
wall north "North wall"
  brick harwick-red
  length 4.49 m  # paced
  height 10 courses
  note "Agreed at £900 in all"
record
  sent 2026-03-02 £911.40
`;
const folder = () => folderOf({ 'firm.perp': FIRM, 'job.perp': JOB, '.git/HEAD': '' });
const textOf = (cwd: string, name: string) => readFileSync(path.join(cwd, name), 'utf8');
const share = (cwd: string, without: string, out: string, ...more: string[]) =>
  inside(
    ['share', 'job.perp', '--for', 'Halden Brothers', '--without', without, '--out', out, ...more],
    { cwd },
  );
const validate = new Ajv2020({ strict: true, strictRequired: false }).compile(
  readJson('shared/json-schema/perpend-1.schema.json'),
);

describe('perpend share', () => {
  test('without costs the client’s price stays, and what was taken out is told', () => {
    const cwd = folder();
    const { code, out } = share(cwd, 'costs', 'out.perp');
    expect(code).toBe(0);
    expect(textOf(cwd, 'out.perp')).toMatch(
      /^perpend 1\n\n# A copy for Halden Brothers, without costs and margin\.\n/,
    );
    expect(textOf(cwd, 'out.perp')).toMatch(/price\n +agreed +£911\.40 with tax/);
    expect(out).toContain('“Agreed at £900 in all” → “Agreed at … in all”');
    expect(out).toContain('It says what the client pays: £911.40 with tax.');
    expect(inside(['check', 'out.perp'], { cwd }).code).toBe(0);
  });

  test('without money and client, into a folder, under a name that says nothing', () => {
    const cwd = folder();
    mkdirSync(path.join(cwd, 'away'));
    expect(share(cwd, 'money,client', 'away/').code).toBe(0);
    const text = textOf(cwd, 'away/job-for-halden-brothers.perp');
    expect(text).not.toMatch(/Quillbank|911|900|£/);
    expect(text).toContain('job "Wall for …"');
  });

  test('whole it holds everything, in one file', () => {
    const cwd = folder();
    share(cwd, 'nothing', 'out.perp');
    const text = textOf(cwd, 'out.perp');
    for (const part of ['pays late', 'record', '# paced', 'bricklayer', 'brick harwick-red "'])
      expect(text).toContain(part);
    expect(text).not.toContain('use "');
  });

  test('nothing is written over, and nothing at all where something is wrong', () => {
    const cwd = folder();
    expect(share(cwd, 'costs', 'job.perp').err).toContain('is there already');
    expect(share(cwd, 'cost', 'a.perp').err).toContain('--without costs');
    expect(share(cwd, 'client', 'a.perp').code).toBe(2);
    expect(share(cwd, 'costs,money', 'a.perp').code).toBe(2);
    expect(share(cwd, 'nothing,client', 'a.perp').code).toBe(2);
    expect(share(cwd, 'costs', 'none/').err).toContain('is not there');
    writeFileSync(
      path.join(cwd, 'job.perp'),
      JOB.replace('"Mrs Quillbank"\nuse', 'Mrs Quillbank\nuse'),
    );
    expect(share(cwd, 'money', 'a.perp').err).toContain('job.perp:4 cannot be read');
    writeFileSync(path.join(cwd, 'job.perp'), JOB.replace('wall north', 'wall quillbank'));
    expect(share(cwd, 'money,client', 'a.perp').err).toContain('“quillbank” says who it is for');
    expect(readdirSync(cwd).sort()).toEqual(['.git', 'firm.perp', 'job.perp']);
  });
});

describe('perpend take', () => {
  const back = (cwd: string) => {
    share(cwd, 'money,client', 'back.perp');
    const text = textOf(cwd, 'back.perp').replace('4.49 m', '4.94 m');
    writeFileSync(path.join(cwd, 'back.perp'), text);
  };

  test('what came back is written into ours, and into nothing else of it', () => {
    const cwd = folder();
    back(cwd);
    const check = inside(['take', 'job.perp', '--from', 'back.perp', '--all', '--check'], { cwd });
    expect(check.out).toContain('wall north: length 4.49 m → length 4.94 m');
    expect(textOf(cwd, 'job.perp')).toBe(JOB);
    expect(
      inside(['take', 'job.perp', '--from', 'back.perp', '--block', 'north'], { cwd }).code,
    ).toBe(0);
    expect(textOf(cwd, 'job.perp')).toBe(JOB.replace('4.49 m', '4.94 m'));
    expect(inside(['take', 'job.perp', '--from', 'back.perp', '--all'], { cwd }).out).toContain(
      'Nothing to take.',
    );
  });

  test('what to take has to be said, and to be there', () => {
    const cwd = folder();
    back(cwd);
    const take = (...more: string[]) => inside(['take', 'job.perp', ...more], { cwd });
    expect(take('--from', 'back.perp').err).toContain('--block NAME, or --all');
    expect(take('--from', 'back.perp', '--block', 'nort').err).toContain('Did you mean north?');
    expect(take('--all').err).toContain('--from');
    expect(textOf(cwd, 'job.perp')).toBe(JOB);
  });
});

test('what next, new, share and take print with --json is as the schema says', () => {
  const cwd = folder();
  const runs = [
    ['new', '--list', '--json'],
    ['new', 'gate-piers', '--out', 'a.perp', '--json'],
    ['next', 'job.perp', '--out', 'b.perp', '--json'],
    ['share', 'job.perp', '--for', 'H', '--without', 'costs', '--out', 'c.perp', '--json'],
    ['take', 'job.perp', '--from', 'c.perp', '--all', '--json'],
  ];
  for (const args of runs) {
    const { code, out, err } = inside(args, { cwd });
    expect([code, err]).toEqual([0, '']);
    expect(validate(JSON.parse(out)) || [args[0], validate.errors]).toBe(true);
  }
});
