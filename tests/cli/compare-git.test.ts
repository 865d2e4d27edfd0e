/** perpend compare and git, the real one, in repositories of their own: revisions, what was sent, the driver of git diff. */
import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, renameSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { read } from '../tree';
import { inside } from './inside';
import { FIRM, JOB, RANGED } from './jobs';
import { bundle, folderOf, perpend, useCommandLine } from './perpend';

useCommandLine();

/** No setting of whoever runs the tests, and the same hour for every commit. */
const ENV = {
  PATH: process.env.PATH ?? '',
  HOME: '/nonexistent',
  GIT_CONFIG_NOSYSTEM: '1',
  GIT_CONFIG_GLOBAL: '/dev/null',
  GIT_AUTHOR_NAME: 'A. Mason',
  GIT_AUTHOR_EMAIL: 'mason@example.invalid',
  GIT_COMMITTER_NAME: 'A. Mason',
  GIT_COMMITTER_EMAIL: 'mason@example.invalid',
};

function git(cwd: string, ...args: string[]) {
  const done = spawnSync('git', args, { cwd, env: ENV, encoding: 'utf8' });
  return { code: done.status, out: done.stdout, err: done.stderr };
}

function committed(cwd: string): string {
  expect(git(cwd, 'add', '-A').code).toBe(0);
  expect(git(cwd, 'commit', '-q', '-m', 'as it stands').err).toBe('');
  return git(cwd, 'rev-parse', 'HEAD').out.trim();
}

function repository(files: Readonly<Record<string, string | Buffer>>): string {
  const cwd = folderOf(files);
  git(cwd, 'init', '-q', '-b', 'main');
  committed(cwd);
  return cwd;
}

const write = (cwd: string, name: string, text: string | Buffer) =>
  writeFileSync(path.join(cwd, name), text);

const JOBS = { 'jobs/wall.perp': JOB.replace('"firm.perp"', '"../firm.perp"'), 'firm.perp': FIRM };
const LONGER = JOBS['jobs/wall.perp'].replace('length  5 m', 'length  5.3 m');

describe('--since', () => {
  test('takes the job and the files it uses from the revision', () => {
    const cwd = repository(JOBS);
    write(cwd, 'jobs/wall.perp', LONGER);
    write(cwd, 'firm.perp', FIRM.replace('£0.97 each', '£1.02 each'));
    for (const [folder, file] of [
      ['.', 'jobs/wall.perp'],
      ['jobs', 'wall.perp'],
    ] as const) {
      const { code, out, err } = inside(['compare', '--since', 'HEAD', file], {
        cwd: path.join(cwd, folder),
      });
      expect([code, err]).toEqual([0, '']);
      expect(out).toMatch(/wall\.perp at [0-9a-f]{10} → /);
      expect(out).toContain('    · length 5 m → 5.3 m');
      expect(out).toContain(
        '  · brick secret-red (firm.perp)\n    · price £0.97 each → £1.02 each',
      );
    }
  });

  test('by any name of a revision, and nothing is written', () => {
    const cwd = repository(JOBS);
    git(cwd, 'tag', 'first');
    write(cwd, 'jobs/wall.perp', LONGER);
    committed(cwd);
    git(cwd, 'gc', '-q');
    const before = git(cwd, 'status', '--porcelain').out;
    for (const name of [
      'first',
      'HEAD~1',
      'main^',
      '@{0}~1',
      ':/as it stands~1',
      'HEAD~1^{tree}~0',
    ])
      inside(['compare', '--since', name, 'jobs/wall.perp'], { cwd });
    const { out } = inside(['compare', '--since', 'first', 'jobs/wall.perp'], { cwd });
    expect(out).toContain('    · length 5 m → 5.3 m');
    expect(git(cwd, 'status', '--porcelain').out).toBe(before);
  });

  test('what is no revision, or did not hold the file, is said', () => {
    const cwd = repository(JOBS);
    write(cwd, 'new.perp', JOB);
    const first = git(cwd, 'rev-parse', '--short=10', 'HEAD').out.trim();
    const cases: [string, string, string][] = [
      ['nowhere', 'jobs/wall.perp', 'There is no revision nowhere in this repository.'],
      ['--output=x', 'jobs/wall.perp', '--output=x is no revision. See: perpend --help'],
      ['$(touch x)', 'jobs/wall.perp', 'There is no revision $(touch x) in this repository.'],
      [
        'HEAD:firm.perp',
        'jobs/wall.perp',
        'There is no revision HEAD:firm.perp in this repository.',
      ],
      [
        'HEAD',
        'new.perp',
        `new.perp cannot be read in revision ${first}: there is no such file there.`,
      ],
    ];
    for (const [since, file, said] of cases) {
      const args = ['compare', `--since=${since}`, file];
      expect(inside(args, { cwd })).toEqual({ code: 2, out: '', err: `perpend: ${said}\n` });
    }
    expect(git(cwd, 'status', '--porcelain').out).toBe('?? new.perp\n');
  });

  test('a text that was no UTF-8 there is said; a file it used that was not there, or a link, is missing', () => {
    const cwd = repository({ 'job.perp': Buffer.from([0xff, 0xfe, 0x41]) });
    write(cwd, 'job.perp', JOB);
    const { code, err } = inside(['compare', '--since', 'HEAD', 'job.perp'], { cwd });
    expect([code, err]).toEqual([2, expect.stringContaining('it is not text in UTF-8')]);
    symlinkSync('/etc/hostname', path.join(cwd, 'firm.perp'));
    committed(cwd);
    rmSync(path.join(cwd, 'firm.perp'));
    write(cwd, 'firm.perp', FIRM);
    const { out } = inside(['compare', '--since', 'HEAD', 'job.perp'], { cwd });
    expect(out).toContain('− error use-missing');
  });

  test('no program that the repository names is started', () => {
    const cwd = repository({ ...JOBS, '.gitattributes': '*.perp diff=x filter=x\n' });
    const trap = `touch ${path.join(cwd, 'trapped')} #`;
    for (const key of [
      'core.fsmonitor',
      'core.pager',
      'core.sshCommand',
      'diff.external',
      'diff.x.command',
      'diff.x.textconv',
      'filter.x.smudge',
      'filter.x.clean',
      'gpg.program',
      'pager.log',
    ])
      git(cwd, 'config', key, trap);
    git(cwd, 'config', 'log.showSignature', 'true');
    write(cwd, 'jobs/wall.perp', `${LONGER}\nrecord\n  sent 2026-03-02 £10\n`);
    for (const how of [['--since', 'HEAD'], ['--sent']])
      expect(inside(['compare', ...how, 'jobs/wall.perp'], { cwd }).code).toBe(0);
    const names = spawnSync('ls', ['-a'], { cwd, encoding: 'utf8' }).stdout;
    expect(names).not.toContain('trapped');
  });
});

const SENT = `\nrecord\n  sent 2026-03-02 £4,000.00\n`;

describe('--sent', () => {
  /** A quote went out, the price was changed, the file was moved, a second went out, and more was changed. */
  function life(): string {
    const cwd = repository(JOBS);
    const file = 'jobs/wall.perp';
    write(cwd, file, JOBS[file] + SENT);
    committed(cwd);
    write(cwd, file, LONGER + SENT);
    committed(cwd);
    renameSync(path.join(cwd, file), path.join(cwd, 'jobs/lane wall.perp'));
    committed(cwd);
    return cwd;
  }

  test('finds the revision in which the last of it first stood, under the name it had', () => {
    const cwd = life();
    const { code, out, err } = inside(['compare', '--sent', 'jobs/lane wall.perp'], { cwd });
    expect([code, err]).toEqual([0, '']);
    const then = git(cwd, 'rev-parse', '--short=10', 'HEAD~2').out.trim();
    expect(out.split('\n')[0]).toBe(`jobs/wall.perp at ${then} → jobs/lane wall.perp`);
    expect(out).toContain('    · length 5 m → 5.3 m');
  });

  test('the last one counts, however it is written since', () => {
    const cwd = life();
    const file = 'jobs/lane wall.perp';
    const second = '  sent 2026-03-09 £4,100.00\n';
    write(cwd, file, LONGER + SENT + second);
    committed(cwd);
    write(
      cwd,
      file,
      LONGER.replace('height  8', 'height  9') +
        SENT +
        second.replace('  sent', '    sent   ') +
        '# end\n',
    );
    const { out } = inside(['compare', '--sent', file], { cwd });
    expect(out).toContain('    · height 8 courses → 9 courses');
    expect(out).not.toContain('length 5 m');
  });

  test('what the record itself wrote down has not moved, though it keeps but two decimals', () => {
    const cwd = folderOf({ 'job.perp': JOB, 'firm.perp': FIRM });
    expect(inside(['record', 'job.perp', 'sent', '--date', '2026-03-02'], { cwd })).toMatchObject({
      err: '',
    });
    const { code, out } = inside(['compare', '--sent', '--check', 'job.perp'], { cwd });
    expect(out).toContain('Nothing that the record keeps has changed.');
    expect(code).toBe(0);
  });

  test('where git does not hold it, the record itself is compared', () => {
    const kept = `${SENT}    was job.net £1.00\n    was walsouth.bricks 10 bricks\n`;
    const cwd = folderOf({ 'job.perp': JOB + kept, 'firm.perp': FIRM });
    const { code, out, err } = inside(['compare', '--sent', 'job.perp'], { cwd });
    expect(code).toBe(0);
    expect(err).toBe(
      'perpend: The file is in no git repository. Compared is what the record keeps.\n',
    );
    expect(out).toContain('job.perp, sent 2026-03-02 at £4,000.00');
    expect(out).toMatch(/Price before tax +£1\.00 +£[\d,.]+ +\+£/);
    expect(out).toMatch(/Bricks +10 bricks +\d+ bricks +\+\d+ bricks/);
    git(cwd, 'init', '-q');
    expect(inside(['compare', '--sent', '--check', 'job.perp'], { cwd })).toMatchObject({
      code: 1,
      err: expect.stringContaining(
        'No revision of git holds the line “sent 2026-03-02 £4,000.00” yet.',
      ),
    });
  });
});

/** A repository whose git diff is perpend. */
function driven(files: Readonly<Record<string, string | Buffer>>): string {
  const cwd = repository({ ...files, '.gitattributes': '*.perp diff=perpend\n' });
  const command = `'${process.execPath}' '${bundle()}' compare --driver --`;
  git(cwd, 'config', 'diff.perpend.command', command);
  return cwd;
}

describe('as the diff of git', () => {
  test('a file that changed, and one of which only comments did', () => {
    const cwd = driven({ ...JOBS, 'other.perp': JOB });
    write(cwd, 'jobs/wall.perp', LONGER);
    write(cwd, 'other.perp', `# seen\n${JOB}`);
    const { code, out, err } = git(cwd, 'diff');
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('diff jobs/wall.perp\n');
    expect(out).toContain('    · length 5 m → 5.3 m');
    expect(out).toContain('diff other.perp\nNothing that counts has changed.\n');
    expect(out).not.toContain('use-missing');
  });

  test('from a folder below, between commits, and in a log', () => {
    const cwd = driven(JOBS);
    write(cwd, 'jobs/wall.perp', LONGER);
    expect(git(path.join(cwd, 'jobs'), 'diff').out).toContain('length 5 m → 5.3 m');
    committed(cwd);
    expect(git(cwd, 'diff', 'HEAD~1', 'HEAD').out).toContain('length 5 m → 5.3 m');
    expect(git(cwd, 'log', '-p', '--ext-diff', '-1').out).toContain('length 5 m → 5.3 m');
  });

  test('files that are added, gone, renamed, or only made executable', () => {
    const gone = `perpend 1\n\njob "Nothing like the others"\n`;
    const cwd = driven({ ...JOBS, 'old.perp': JOB, 'mode.perp': JOB, 'gone.perp': gone });
    write(cwd, 'added.perp', RANGED);
    rmSync(path.join(cwd, 'gone.perp'));
    mkdirSync(path.join(cwd, 'done'));
    renameSync(path.join(cwd, 'old.perp'), path.join(cwd, 'done/new.perp'));
    write(cwd, 'done/new.perp', JOB.replace('length  5 m', 'length  5.2 m'));
    chmodSync(path.join(cwd, 'mode.perp'), 0o755);
    git(cwd, 'add', '-A');
    const { code, out, err } = git(cwd, 'diff', '--cached', '-M');
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('diff added.perp: new file, mode 100644\n');
    expect(out).toContain('  + repair frost “Frosted length”: new');
    expect(out).toContain('diff gone.perp: file is gone\n');
    expect(out).toContain('diff old.perp → done/new.perp\n');
    expect(out).toContain('    · length 5 m → 5.2 m');
    expect(out).toContain(
      'diff mode.perp: mode 100644 → 100755\nNothing that counts has changed.\n',
    );
  });

  test('what cannot be read is said, and does not end the diff', () => {
    const cwd = driven({ 'a.perp': JOB, 'b.perp': JOB, '-c.perp': JOB, 'd e "f.perp': JOB });
    write(cwd, 'a.perp', Buffer.from([0xff, 0x00]));
    write(cwd, 'b.perp', JOB.replace('length  5 m', 'length  5.2 m'));
    write(cwd, '-c.perp', JOB.replace('length  5 m', 'length  5.4 m'));
    write(cwd, 'd e "f.perp', JOB.replace('length  5 m', 'length  5.6 m'));
    const { code, out, err } = git(cwd, 'diff');
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('a.perp cannot be read: it is not text in UTF-8.');
    for (const length of ['5.2 m', '5.4 m', '5.6 m'])
      expect(out).toContain(`length 5 m → ${length}`);
  });

  test('a file that is not merged yet', () => {
    const cwd = driven({ 'a.perp': JOB, 'firm.perp': FIRM });
    git(cwd, 'checkout', '-q', '-b', 'side');
    write(cwd, 'a.perp', JOB.replace('length  5 m', 'length  6 m'));
    committed(cwd);
    git(cwd, 'checkout', '-q', 'main');
    write(cwd, 'a.perp', JOB.replace('length  5 m', 'length  7 m'));
    committed(cwd);
    git(cwd, 'merge', '-q', 'side');
    const { code, out } = git(cwd, 'diff', '--cached');
    expect(code).toBe(0);
    expect(out).toContain('a.perp: not merged yet');
  });

  test('given other than git gives is wrong use', () => {
    expect(inside(['compare', '--driver', 'a', 'b'])).toEqual({
      code: 2,
      out: '',
      err: 'perpend: perpend compare --driver is given its words by git. See: perpend --help\n',
    });
  });

  test('as a converter: git’s own lines, without differences of layout', () => {
    const cwd = repository({ 'a.perp': JOB, '.gitattributes': '*.perp diff=perpend\n' });
    git(cwd, 'config', 'diff.perpend.textconv', `'${process.execPath}' '${bundle()}' format`);
    write(cwd, 'a.perp', JOB.replaceAll('\n  ', '\n       ').replace('5 m', '5.2 m'));
    const lines = git(cwd, 'diff')
      .out.split('\n')
      .filter((line) => /^[+-] /.test(line));
    expect(lines.map((line) => line.replace(/ +/g, ' '))).toEqual([
      '- length 5 m',
      '+ length 5.2 m',
    ]);
  });
});

/** As README has it. */
const HOOK = `#!/bin/sh\n${/```\n#!\/bin\/sh\n([\s\S]*?)```/.exec(read('README.md'))![1]}`;

test('as a hook before a commit: files out of order are not committed', () => {
  const cwd = repository({ 'a b.perp': JOB });
  const bin = folderOf({ perpend: `#!/bin/sh\nexec '${process.execPath}' '${bundle()}' "$@"\n` });
  chmodSync(path.join(bin, 'perpend'), 0o755);
  write(cwd, '.git/hooks/pre-commit', HOOK);
  chmodSync(path.join(cwd, '.git/hooks/pre-commit'), 0o755);
  const commit = () =>
    spawnSync('git', ['commit', '-q', '-a', '-m', 'x'], {
      cwd,
      env: { ...ENV, PATH: `${bin}:${ENV.PATH}` },
      encoding: 'utf8',
    });
  write(cwd, 'a b.perp', JOB.replace('length  5 m', 'length 5.2 m'));
  const refused = commit();
  expect([refused.status, refused.stdout + refused.stderr]).toEqual([
    1,
    expect.stringContaining('a b.perp: would change'),
  ]);
  expect(perpend(['format', '--write', 'a b.perp'], { cwd }).code).toBe(0);
  expect(commit().status).toBe(0);
  write(cwd, 'c.txt', 'no job');
  git(cwd, 'add', '-A');
  expect(commit().status).toBe(0);
});
