/** perpend quote in each form, and what is said of logos and letters. */
import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import type { Io } from '../../server/cli/io';
import { run } from '../../server/cli/run';
import { escaped } from '../../shared/escaped';
import { readJson } from '../tree';
import { FILES, FIRM, JOB } from './jobs';
import { bundle, folderOf, program as perpend, useCommandLine, usePapers } from './perpend';

useCommandLine();
usePapers();

/** One red dot. */
const LOGO = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAADElEQVR4nGP4z8AAAAMBAQDJ/pLvAAAAAElFTkSuQmCC',
  'base64',
);
const WITH_LOGO = FIRM.replace('  terms ', '  logo        "papers/logo.png"\n  terms ');

function written(
  args: readonly string[],
  files: Readonly<Record<string, string | Buffer>> = FILES,
) {
  const cwd = folderOf(files);
  return { cwd, ...perpend(args, { cwd }) };
}

describe('perpend quote --as', () => {
  test.each([
    ['q.pdf', '%PDF-1.7'],
    ['q.PDF', '%PDF-1.7'],
    ['q.md', '**Marl'],
    ['q.html', '<!doctype html>'],
    ['q.htm', '<!doctype html>'],
    ['quote', '<!doctype html>'],
  ])('is by the ending of %s', (out, begins) => {
    const { cwd, code, err } = written(['quote', 'job.perp', '--out', out]);
    expect([code, err]).toEqual([0, '']);
    expect(readFileSync(path.join(cwd, out), 'latin1').slice(0, begins.length)).toBe(begins);
  });

  test('goes before the ending', () => {
    const { cwd } = written(['quote', 'job.perp', '--as', 'md', '--out', 'q.html']);
    expect(readFileSync(path.join(cwd, 'q.html'), 'utf8')).toContain('# Quote');
  });

  test.each(['quote', 'site'])('as JSON a %s says what its page says', (command) => {
    const cwd = folderOf(FILES);
    const { out, code } = perpend([command, 'job.perp', '--json'], { cwd });
    const schema = readJson<object>('shared/json-schema/perpend-1.schema.json');
    const validate = new Ajv2020({ strict: true, strictRequired: false }).compile(schema);
    const paper = JSON.parse(out) as { parts: { part: string; text?: string }[] };
    expect(code).toBe(0);
    expect(validate(paper)).toBe(true);
    const page = perpend([command, 'job.perp', '--as', 'html'], { cwd }).out;
    const heads = paper.parts.filter((p) => p.part === 'heading').map((p) => p.text!);
    expect(heads.length).toBeGreaterThan(2);
    for (const head of heads) expect(page).toContain(escaped(head));
  });

  test('a file that says it is something else is refused', () => {
    const ran = perpend(['quote', 'job.perp', '--out', 'q.docx'], { cwd: folderOf(FILES) });
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain('A paper is no .docx: give it .html, .pdf, .md, or --as.');
  });

  test('a form that is not there says which there are', () => {
    expect(written(['quote', 'job.perp', '--as', 'xlsx']).err).toBe(
      'perpend: There is no form xlsx. There are html, pdf, md. See: perpend --help\n',
    );
    expect(written(['quote', 'job.perp', '--as', 'pfd']).err).toContain('Did you mean pdf?');
  });

  test('pdf goes through a pipe, whole and the same each time, and not to a terminal', () => {
    const cwd = folderOf(FILES);
    const piped = spawnSync(process.execPath, [bundle(), 'quote', 'job.perp', '--as', 'pdf'], {
      cwd,
    });
    expect(piped.status).toBe(0);
    expect(piped.stdout.subarray(0, 8).toString()).toBe('%PDF-1.7');
    perpend(['quote', 'job.perp', '--out', 'q.pdf'], { cwd });
    expect(Buffer.compare(readFileSync(path.join(cwd, 'q.pdf')), piped.stdout)).toBe(0);
    const said: string[] = [];
    const io: Io = {
      cwd,
      colour: false,
      terminal: true,
      out: () => {},
      raw: () => said.push('something was printed'),
      err: (text) => said.push(text),
    };
    expect(run(['quote', 'job.perp', '--as', 'pdf'], io)).toBe(2);
    expect(said).toEqual([
      'perpend: A PDF is no text for a terminal: give --out FILE.pdf. See: perpend --help\n',
    ]);
  });

  test('holds the same words in every form, and none that is for the firm alone', () => {
    const cwd = folderOf(FILES);
    const made = ['pdf', 'md', 'html'].map((form) => {
      perpend(['quote', 'job.perp', '--out', `q.${form}`], { cwd });
      return readFileSync(path.join(cwd, `q.${form}`), 'utf8');
    });
    const pdf = execFileSync('pdftotext', ['-layout', path.join(cwd, 'q.pdf'), '-'], {
      encoding: 'utf8',
    });
    for (const text of [pdf, ...made.slice(1)]) {
      for (const words of [
        'Wall along the lane',
        'T. Alder',
        '15 January 2026',
        'Price before tax',
        'Payment within 10 days',
      ])
        expect(text).toContain(words);
      expect(text).not.toMatch(/overhead|profit|labour|gang|merchant|secret-red|239\.83/i);
    }
  });

  test('a letter that the fonts have not is told', () => {
    const files = { ...FILES, 'job.perp': JOB.replace('T. Alder', '木村') };
    const { code, err } = written(['quote', 'job.perp', '--out', 'q.pdf'], files);
    expect([code, err]).toEqual([
      0,
      'perpend: The fonts of a PDF have no 木 村: a box stands for each. A page of HTML shows them.\n',
    ]);
    expect(written(['quote', 'job.perp', '--out', 'q.html'], files).err).toBe('');
  });

  test('without the fonts beside the program says so', () => {
    const cwd = folderOf({
      ...FILES,
      'papers.cjs': readFileSync(path.join(path.dirname(bundle()), 'papers.cjs')),
      'perpend.cjs': readFileSync(bundle()),
    });
    const ran = perpend(['quote', 'job.perp', '--out', 'q.pdf'], {
      cwd,
      script: path.join(cwd, 'perpend.cjs'),
    });
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('The fonts of a PDF are not there');
  });
});

describe('the firm’s logo', () => {
  const files = { ...FILES, 'firm.perp': WITH_LOGO };

  test('is at the head of the page, from the file beside that of the firm', () => {
    const { cwd, code, err } = written(['quote', 'job.perp', '--out', 'q.html'], {
      ...files,
      'papers/logo.png': LOGO,
    });
    expect([code, err]).toEqual([0, '']);
    expect(readFileSync(path.join(cwd, 'q.html'), 'utf8')).toContain(
      `<img src="data:image/png;base64,${LOGO.toString('base64')}" alt="The sign of Marl &amp; Pike Brickwork">`,
    );
  });

  test.each([
    ['there is no such file', files],
    ['it is no PNG and no JPEG', { ...files, 'papers/logo.png': 'root:x:0:0' }],
    ['it is larger than 1 MiB', { ...files, 'papers/logo.png': Buffer.alloc(1024 * 1024 + 1) }],
    [
      'it lies outside the workspace',
      { ...files, 'firm.perp': WITH_LOGO.replace('papers/logo.png', '../../../etc/hostname') },
    ],
  ])('is left out, and the quote made, where %s', (why, these) => {
    const { cwd, code, err } = written(['quote', 'job.perp', '--out', 'q.html'], these);
    expect(code).toBe(0);
    expect(err).toMatch(/^perpend: The logo \S+ is left out: /);
    expect(err).toContain(why);
    expect(readFileSync(path.join(cwd, 'q.html'), 'utf8')).not.toContain('data:image/png');
  });
});

describe('a file that cannot be written', () => {
  const big = `${JOB}\n  note "${'Long. '.repeat(3000)}"\n`;
  const files = { ...FILES, 'job.perp': big, 'q.html': 'the old quote' };
  const quote = ['quote', 'job.perp', '--out', 'q.html'];
  const half = (cwd: string) => readdirSync(cwd).filter((name) => name.startsWith('.q.html'));

  test('for a limit in mid-write leaves the old one whole, and nothing beside it', () => {
    const cwd = folderOf(files);
    const { status, stderr } = spawnSync(
      '/bin/sh',
      ['-c', `trap '' XFSZ; ulimit -f 8; exec "$0" "$@"`, process.execPath, bundle(), ...quote],
      { cwd, encoding: 'utf8' },
    );
    expect([status, stderr]).toEqual([
      2,
      'perpend: q.html cannot be written: the disk takes no file so large.\n',
    ]);
    expect(readFileSync(path.join(cwd, 'q.html'), 'utf8')).toBe('the old quote');
    expect(readdirSync(cwd).sort()).toEqual(Object.keys(files).sort());
  });

  test('for a kill in mid-write leaves the old one whole, or the new one', async () => {
    const cwd = folderOf(files);
    const child = spawn(process.execPath, [bundle(), ...quote], { cwd, stdio: 'ignore' });
    const ended = once(child, 'exit');
    while (child.exitCode === null && !half(cwd).length) await setImmediate();
    child.kill('SIGKILL');
    await ended;
    const left = readFileSync(path.join(cwd, 'q.html'), 'utf8');
    // What was half written does not stand in the way of the next.
    expect(perpend(quote, { cwd }).code).toBe(0);
    const whole = readFileSync(path.join(cwd, 'q.html'), 'utf8');
    expect(whole).toMatch(/<\/html>\n$/);
    expect(['the old quote', whole]).toContain(left);
  });

  test('for a full disk says so, and a device stays a device', () => {
    const cwd = folderOf(FILES);
    expect(perpend(['quote', 'job.perp', '--out', '/dev/full'], { cwd })).toMatchObject({
      code: 2,
      err: 'perpend: /dev/full cannot be written: the disk is full.\n',
    });
    expect(perpend(['quote', 'job.perp', '--out', '/dev/null'], { cwd }).code).toBe(0);
    for (const name of ['/dev/full', '/dev/null'])
      expect(statSync(name).isCharacterDevice()).toBe(true);
  });
});
