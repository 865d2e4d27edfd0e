import { randomBytes } from 'node:crypto';
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { FILES, FIRM, JOB } from './jobs';
import { folderOf, program as perpend, useCommandLine } from './perpend';

useCommandLine();

const READERS = ['price', 'check', 'why', 'format', 'draw', 'quote'];

describe('a file that cannot be read', () => {
  test.each(READERS)('perpend %s says that there is none', (command) => {
    const { code, out, err } = perpend([command, 'gone.perp'], { cwd: folderOf() });
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe('perpend: gone.perp cannot be read: there is no such file.\n');
  });

  test.each(READERS.filter((name) => name !== 'check'))(
    'perpend %s says that it is a folder',
    (command) => {
      const { code, err } = perpend([command, '.'], { cwd: folderOf() });
      expect([code, err]).toEqual([2, 'perpend: . cannot be read: it is a folder.\n']);
    },
  );

  test('perpend check looks through a folder, and an empty one has nothing wrong in it', () => {
    const { code, out } = perpend(['check', '.'], { cwd: folderOf({ 'a.perp': 'wal a\n' }) });
    expect(code).toBe(1);
    expect(out).toContain('a.perp:1:1');
    expect(perpend(['check', '.'], { cwd: folderOf() }).code).toBe(0);
  });

  test.each(READERS)('perpend %s does not take bytes that are no text', (command) => {
    const cwd = folderOf({ 'a.perp': Buffer.from([0x70, 0xff, 0xfe, 0x00]) });
    const { code, out, err } = perpend([command, 'a.perp'], { cwd });
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe('perpend: a.perp cannot be read: it is not text in UTF-8.\n');
  });

  test('a file larger than any job is not read', () => {
    const cwd = folderOf({ 'a.perp': Buffer.alloc(17 * 1024 * 1024, 0x20) });
    const { code, err } = perpend(['check', 'a.perp'], { cwd });
    expect([code, err]).toEqual([2, 'perpend: a.perp cannot be read: it is larger than 16 MiB.\n']);
  });

  test('a text too large for the engine is a finding, and is never formatted away', () => {
    const input = `perpend 1\n${'# x\n'.repeat(1_100_000)}`;
    const check = perpend(['check', '-'], { input });
    expect(check.code).toBe(1);
    expect(check.out).toContain('error file-too-large');
    const format = perpend(['format', '-'], { input });
    expect([format.code, format.out]).toEqual([2, '']);
  });

  test('a name that no system takes is no crash', () => {
    const { code, err } = perpend(['check', 'x'.repeat(5000)]);
    expect(code).toBe(2);
    expect(err).toMatch(/cannot be read: there is no such file\.\n$/);
  });
});

describe('whatever the bytes', () => {
  /** Bytes of every kind; and texts of the notation's own words in no order, which get much further in. */
  const words = `${JOB}\n${FIRM}`.split(/(\s+)/);
  const shuffled = (seed: number) => {
    const bytes = randomBytes(seed);
    return [...bytes].map((byte, i) => words[(byte * 7 + i * 13) % words.length]).join('');
  };
  const inputs: [string, Buffer][] = [
    ['random bytes', randomBytes(2000)],
    ['zeros', Buffer.alloc(500)],
    ['half a character', Buffer.from('perpend 1\nwall é').subarray(0, -1)],
    ['words in no order', Buffer.from(shuffled(900))],
    ['other words in no order', Buffer.from(`perpend 1\n${shuffled(900)}`)],
    ['a thousand walls', Buffer.from('wall a\n length 1 m\n height 9 courses\n'.repeat(1000))],
    ['long words', Buffer.from(`perpend 1\n${'w'.repeat(100_000)}\n`)],
  ];

  test.each(inputs)(
    '%s end in an exit code and a sentence',
    (_, input) => {
      for (const command of READERS) {
        const { code, err } = perpend([command, '-'], { input });
        expect([0, 1, 2], `${command} ${input.toString('base64')}`).toContain(code);
        expect(err, input.toString('base64')).not.toMatch(/fault of the program|\n +at /);
      }
    },
    60_000,
  );

  test('nothing that a terminal obeys comes out', () => {
    const evil = '\u001b]0;x\u0007\u001b[31m\u202e\u009b2J';
    const input = `perpend 1\n\nuse uk\n\njob "A${evil}"\n\nwall n "B${evil}"\n  length 3 m\n  height 4 ${evil}\n`;
    for (const command of ['price', 'check', 'why']) {
      const { out, err } = perpend([command, '-'], { input });
      expect(out + err).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/);
    }
  });
});

describe('what a job may use', () => {
  const USES = (name: string) => JOB.replace('firm.perp', name);
  const codes = (cwd: string, file: string, ...more: string[]) => {
    const { out } = perpend(['check', '--json', file, ...more], { cwd });
    const { files } = JSON.parse(out) as { files: { findings: { code: string }[] }[] };
    return files[0]!.findings
      .map((finding) => finding.code)
      .filter((code) => code.startsWith('use-'));
  };

  test('files beside it, and above it as far as a project goes', () => {
    const cwd = folderOf({
      'firm.perp': FIRM,
      'jobs/a/job.perp': USES('../../firm.perp'),
      'jobs/b.perp': USES('a/no.perp'),
    });
    // Nothing marks a project: the folder that the command runs in is the workspace of what lies under it.
    expect(codes(cwd, 'jobs/a/job.perp')).toEqual([]);
    const jobs = path.join(cwd, 'jobs');
    expect(codes(jobs, 'a/job.perp')).toEqual(['use-outside']);
    expect(codes(folderOf(), path.join(jobs, 'a/job.perp'))).toEqual(['use-outside']);
    expect(codes(cwd, 'jobs/b.perp')).toEqual(['use-missing']);
    expect(codes(jobs, 'a/job.perp', '--workspace', '..')).toEqual([]);
    expect(codes(cwd, 'jobs/a/job.perp', '--workspace=jobs')).toEqual(['use-outside']);
    mkdirSync(path.join(cwd, '.git'));
    expect(codes(cwd, 'jobs/a/job.perp')).toEqual([]);
    writeFileSync(path.join(cwd, 'jobs/package.json'), '{}');
    expect(codes(cwd, 'jobs/a/job.perp')).toEqual(['use-outside']);
  });

  test('a use that lies outside is told with the option that lets it in', () => {
    const cwd = folderOf({ 'firm.perp': FIRM, 'jobs/job.perp': USES('../firm.perp') });
    const { out } = perpend(['check', 'job.perp'], { cwd: path.join(cwd, 'jobs') });
    expect(out).toMatch(/error use-outside: .*\n {4}way out: .*--workspace FOLDER\n/);
  });

  test('no link leads out, of a file or of a folder; one within is followed', () => {
    const secret = folderOf({ 'firm.perp': FIRM });
    const cwd = folderOf({ 'real/firm.perp': FIRM });
    symlinkSync(path.join(secret, 'firm.perp'), path.join(cwd, 'out.perp'));
    symlinkSync(secret, path.join(cwd, 'away'));
    symlinkSync('real/firm.perp', path.join(cwd, 'in.perp'));
    for (const name of ['out', 'away', 'in'])
      writeFileSync(
        path.join(cwd, `${name}-job.perp`),
        USES(name === 'away' ? 'away/firm.perp' : `${name}.perp`),
      );
    expect(codes(cwd, 'out-job.perp')).toEqual(['use-outside']);
    expect(codes(cwd, 'away-job.perp')).toEqual(['use-outside']);
    expect(codes(cwd, 'in-job.perp')).toEqual([]);
  });

  test('a whole name leads nowhere outside, nor does a folder or a device pass for a file', () => {
    const secret = folderOf({ 'firm.perp': FIRM });
    const cwd = folderOf({
      'a.perp': USES(path.join(secret, 'firm.perp')),
      'b.perp': USES('/dev/zero'),
      'c.perp': USES('.'),
    });
    expect(codes(cwd, 'a.perp')).toEqual(['use-outside']);
    expect(codes(cwd, 'b.perp')).toEqual(['use-outside']);
    expect(codes(cwd, 'c.perp')).toEqual(['use-missing']);
  });

  test('what is piped in counts from the current folder', () => {
    const cwd = folderOf(FILES);
    const piped = perpend(['price', '-'], { cwd, input: JOB });
    const read = perpend(['price', 'job.perp'], { cwd });
    const named = piped.out
      .replaceAll('<stdin>', 'job.perp')
      .replace(/(perpend (?:check|why)) -/g, '$1 job.perp');
    expect(named).toBe(read.out);
  });

  test('a workspace that is none is wrong use', () => {
    const cwd = folderOf(FILES);
    expect(perpend(['check', 'job.perp', '--workspace', 'no'], { cwd }).code).toBe(2);
    expect(perpend(['check', 'job.perp', '--workspace', 'job.perp'], { cwd }).code).toBe(2);
  });
});

test('two runs say the same, to the byte', () => {
  const cwd = folderOf(FILES);
  const runs = [
    ['price', 'job.perp', 'ranged.perp', 'half.perp'],
    ['price', '--json', 'job.perp', 'wrong.perp'],
    ['check', 'job.perp', 'wrong.perp'],
    ['check', '--json', 'job.perp'],
    ['why', 'job.perp', 'job.price'],
    ['quote', 'job.perp'],
    ['draw', 'job.perp', 'walnorth'],
  ];
  for (const args of runs) {
    const first = perpend(args, { cwd });
    expect(first.out).not.toBe('');
    expect(perpend(args, { cwd, env: { TZ: 'Pacific/Auckland', LANG: 'de_DE.UTF-8' } })).toEqual(
      first,
    );
  }
});
