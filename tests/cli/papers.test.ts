import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { FILES, FIRM, JOB } from './jobs';
import { folderOf, perpend, useCommandLine } from './perpend';

useCommandLine();

describe('perpend draw', () => {
  test('prints a drawing, or writes it', () => {
    const cwd = folderOf(FILES);
    const printed = perpend(['draw', 'job.perp', 'walnorth'], { cwd });
    expect([printed.code, printed.err]).toEqual([0, '']);
    expect(printed.out).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
    const written = perpend(['draw', 'job.perp', 'walnorth', '--out', 'd.svg'], { cwd });
    expect(written).toEqual({ code: 0, out: '', err: '' });
    expect(readFileSync(path.join(cwd, 'd.svg'), 'utf8')).toBe(printed.out);
    expect(perpend(['draw', 'job.perp', 'walnorth', '--out', '-'], { cwd }).out).toBe(printed.out);
  });

  test('asks which, where there are more', () => {
    const { code, err } = perpend(['draw', 'job.perp'], { cwd: folderOf(FILES) });
    expect(code).toBe(2);
    expect(err).toBe(
      'perpend: Say which part of job.perp to draw. There is walnorth, walsouth. See: perpend --help\n',
    );
  });

  test('says what there is, for a name that is not', () => {
    const cwd = folderOf(FILES);
    const { code, err } = perpend(['draw', 'job.perp', 'walnort'], { cwd });
    expect([code, err]).toEqual([
      2,
      'perpend: job.perp has nothing called walnort to draw. Did you mean walnorth? See: perpend --help\n',
    ]);
    expect(perpend(['draw', 'firm.perp'], { cwd }).err).toContain(
      'Nothing in it can be drawn yet.',
    );
  });
});

describe('perpend quote', () => {
  test('prints a page, or writes it', () => {
    const cwd = folderOf(FILES);
    const printed = perpend(['quote', 'job.perp'], { cwd });
    expect([printed.code, printed.err]).toEqual([0, '']);
    expect(printed.out).toMatch(/^<!doctype html>\n[\s\S]*<\/html>\n$/);
    expect(perpend(['quote', 'job.perp', '--out', 'q.html'], { cwd }).code).toBe(0);
    expect(readFileSync(path.join(cwd, 'q.html'), 'utf8')).toBe(printed.out);
  });

  test('tells the firm what it does not tell the client', () => {
    const cwd = folderOf(FILES);
    const ranged = perpend(['quote', 'ranged.perp'], { cwd });
    expect(ranged.err).toMatch(
      /^perpend: The job has ranges; the price may come out at £[\d,.]+ to £[\d,.]+\.\n$/,
    );
    const half = perpend(['quote', 'half.perp'], { cwd });
    expect([half.code, half.err]).toEqual([
      0,
      'perpend: NOT A QUOTE yet. Parts of the price are still to be worked out. See: perpend check half.perp\n',
    ]);
    expect(half.out).toContain('NOT A QUOTE');
  });

  test('with errors exits with 1, and the page is no quote', () => {
    const { code, out } = perpend(['quote', 'wrong.perp'], { cwd: folderOf(FILES) });
    expect(code).toBe(1);
    expect(out).toContain('NOT A QUOTE');
    const cwd = folderOf({ 'job.perp': JOB, 'firm.perp': FIRM.replace('waste  6%', 'waste  six') });
    const used = perpend(['quote', 'job.perp'], { cwd });
    expect(used.code).toBe(1);
    expect(used.out).toContain('NOT A QUOTE');
  });

  test('a file without work has no quote', () => {
    const { code, out, err } = perpend(['quote', 'firm.perp'], { cwd: folderOf(FILES) });
    expect([code, out, err]).toEqual([2, '', 'perpend: firm.perp holds no work to quote for.\n']);
  });
});

describe('--out', () => {
  test.each(['quote', 'draw'])('of perpend %s does not write over a job', (command) => {
    const cwd = folderOf({
      'firm.perp': FIRM,
      'one.perp': JOB.slice(0, JOB.indexOf('\nwall walsouth')),
    });
    for (const out of ['one.perp', 'new.PERP']) {
      const { code, err } = perpend([command, 'one.perp', '--out', out], { cwd });
      expect(code).toBe(2);
      expect(err).toContain(`--out ${out} is a file in the notation`);
    }
    expect(readdirSync(cwd).sort()).toEqual(['firm.perp', 'one.perp']);
    expect(readFileSync(path.join(cwd, 'one.perp'), 'utf8')).toMatch(/^perpend 1/);
  });

  test('into a folder that is not there says so', () => {
    const cwd = folderOf(FILES);
    const { code, out, err } = perpend(['quote', 'job.perp', '--out', 'no/q.html'], { cwd });
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe('perpend: no/q.html cannot be written: the folder is not there.\n');
    expect(existsSync(path.join(cwd, 'no'))).toBe(false);
  });
});
