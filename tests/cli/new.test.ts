/** perpend new: a job from a template, by a few questions. perpend next: one from a past job. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Io } from '../../server/cli/io';
import { run } from '../../server/cli/run';
import { TEMPLATES } from '../../server/engine/templates';
import { root } from '../tree';
import { inside } from './inside';
import { folderOf } from './perpend';

const FIRM = readFileSync(path.join(root, 'examples/firm.perp'), 'utf8');
const folder = () => folderOf({ 'firm.perp': FIRM, '.git/HEAD': '' });
const textOf = (cwd: string, name = 'new.perp') => readFileSync(path.join(cwd, name), 'utf8');
const BRICK: Readonly<Record<string, readonly string[]>> = {
  'garden-wall': ['wall'],
  'gate-piers': ['piers'],
  'repoint-wall': ['face'],
  'frost-damage': ['frost'],
  'knocked-pier': ['pier', 'end'],
};

/** Somebody at a terminal who says these lines, and then no more. */
function saying(lines: string[], args: readonly string[], cwd: string) {
  let out = '';
  const io: Io = {
    cwd,
    colour: false,
    ask: (question) => {
      out += question;
      return lines.shift();
    },
    out: (text) => {
      out += text;
    },
    raw: () => {},
    err: (text) => {
      out += text;
    },
  };
  return { code: run(args, io), out };
}

describe('perpend new', () => {
  test('lists every template that ships', () => {
    const files = readdirSync(path.join(root, 'server/library/templates'));
    expect([...TEMPLATES.keys()].map((name) => `${name}.perp`).sort()).toEqual(files.sort());
    const { code, out } = inside(['new', '--list']);
    expect(code).toBe(0);
    for (const name of TEMPLATES.keys()) expect(out).toContain(`${name}  `);
  });

  test.each([...TEMPLATES.keys()])(
    '%s is priced whole with a firm’s file, and without an error',
    (name) => {
      const cwd = folder();
      const sets = BRICK[name]!.flatMap((of) => ['--set', `${of} brick=harwick-red`]);
      const made = inside(['new', name, '--out', 'new.perp', ...sets], { cwd });
      expect([made.code, made.err]).toEqual([0, '']);
      expect(made.out).toContain('It uses firm.perp.');
      expect(textOf(cwd)).not.toMatch(/^template|^ +ask/m);
      const { code, out } = inside(['price', '--json', 'new.perp'], { cwd });
      expect(code).toBe(0);
      expect(JSON.parse(out)).toMatchObject({ files: [{ complete: true }] });
    },
  );

  test('without a firm’s file it lacks prices, and says so', () => {
    const cwd = folderOf({ '.git/HEAD': '' });
    const { code, out } = inside(['new', 'gate-piers', '--out', 'new.perp'], { cwd });
    expect([code, out]).toEqual([
      0,
      expect.stringContaining('It is incomplete: perpend check new.perp'),
    ]);
    expect(inside(['check', 'new.perp'], { cwd }).code).toBe(0);
  });

  test('asks one thing after another, again where an answer is wrong, and keeps what is not said', () => {
    const cwd = folder();
    const said = ['Mrs "O" #3', '', 'three', '3', 'harwich-red', 'harwick-red', '2.5 x 2.5 bricks'];
    const { code, out } = saying(said, ['new', 'gate-piers', '--out', 'new.perp'], cwd);
    expect(code).toBe(0);
    expect(out.match(/How many piers\? \[2\]/g)).toHaveLength(2);
    expect(out).toContain('No brick is called “harwich-red”');
    const text = textOf(cwd).replace(/ +/g, ' ');
    for (const line of [
      'client "Mrs \\"O\\" #3"',
      'number 3',
      'brick harwick-red',
      'size 2.5 x 2.5 bricks',
      'height 26 courses',
    ])
      expect(text).toContain(line);
    expect(text).not.toContain('site');
  });

  test('nothing is written for a wrong answer, an unknown question, a name that is taken', () => {
    const cwd = folder();
    const make = (...more: string[]) =>
      inside(['new', 'gate-piers', '--out', 'new.perp', ...more], { cwd });
    expect(make('--set', 'piers height=high').err).toContain('“height” wants');
    expect(make('--set', 'piers hight=3 courses').err).toContain('Did you mean piers height?');
    expect(make('--set', 'piers').err).toContain('cannot be read');
    expect(inside(['new', 'gate-pier', '--out', 'a.perp'], { cwd }).err).toContain('gate-piers?');
    expect(inside(['new', 'firm.perp', '--out', 'a.perp'], { cwd }).err).toContain(
      'is no template',
    );
    expect(inside(['new', 'gate-piers', '--out', 'a.txt'], { cwd }).err).toContain('.perp');
    expect(existsSync(path.join(cwd, 'new.perp'))).toBe(false);
    writeFileSync(path.join(cwd, 'new.perp'), 'mine');
    expect(make()).toMatchObject({ code: 2, err: expect.stringContaining('is there already') });
    expect(textOf(cwd)).toBe('mine');
    expect(readdirSync(cwd).sort()).toEqual(['.git', 'firm.perp', 'new.perp']);
  });

  test('an answer cannot write other lines', () => {
    const cwd = folder();
    const args = [
      'new',
      'gate-piers',
      '--out',
      'new.perp',
      '--set',
      'job client=A\n  site "B"\nprice\n  profit 90%',
    ];
    inside(args, { cwd });
    expect(textOf(cwd)).not.toMatch(/^price|^ +site/m);
  });

  test('a template of one’s own reaches its files from the new place', () => {
    const cwd = folder();
    const own =
      'perpend 1\ntemplate "Post"\n  ask post height "How high?"\nuse "../firm.perp"\npier post\n  brick harwick-red\n  size 2 x 2 bricks\n  height 6 courses # not more\n';
    const folders = folderOf({
      '.git/HEAD': '',
      'firm.perp': FIRM,
      'mine/post.perp': own,
      'jobs/26/x': '',
    });
    const { code } = inside(
      ['new', 'mine/post.perp', '--out', 'jobs/26/a.perp', '--set', 'post height=8 courses'],
      { cwd: folders },
    );
    expect(code).toBe(0);
    const text = textOf(folders, 'jobs/26/a.perp');
    expect(text).toContain('use "../../firm.perp"');
    expect(text).toMatch(/height +8 courses +# not more/);
    expect(cwd).not.toBe(folders);
  });
});

const PAST = `perpend 1
job "Wall"
  client "Mrs Quillbank"
  date 2026-03-02
use "firm.perp"
wall north
  brick harwick-red
  length 4.49 m  # paced
  height 10 courses
brick harwick-red
  price £0.80 each
option high
  change north height 12 courses
record
  sent 2026-03-02 £900.00
  accepted 2026-03-05 high
`;

describe('perpend next', () => {
  test('keeps the work as agreed, clears the client, and tells what moved the price', () => {
    const cwd = folder();
    writeFileSync(path.join(cwd, 'old.perp'), PAST);
    const args = [
      'next',
      'old.perp',
      '--out',
      'new.perp',
      '--client',
      'A "B"',
      '--date',
      '2026-06-01',
    ];
    const { code, out } = inside(args, { cwd });
    expect(code).toBe(0);
    const text = textOf(cwd).replace(/ +/g, ' ');
    for (const line of [
      'height 12 courses',
      'client "A \\"B\\""',
      'date 2026-06-01',
      '# paced',
      'price £0.92 each',
    ])
      expect(text).toContain(line);
    expect(text).not.toMatch(/Quillbank|option|record|900/);
    expect(out).toContain('sent 2026-03-02');
    expect(out).toContain('brick harwick-red price £0.80 each → £0.92 each');
    expect(out).toMatch(/What moved it, the biggest first\n +Harwick red facing +\+£/);
    expect(textOf(cwd, 'old.perp')).toBe(PAST);
  });

  test('refuses what is no date, and a name that is taken', () => {
    const cwd = folder();
    writeFileSync(path.join(cwd, 'old.perp'), PAST);
    const next = (...more: string[]) => inside(['next', 'old.perp', ...more], { cwd });
    expect(next('--out', 'n.perp', '--date', '2026-02-30').err).toContain('is no date');
    expect(next('--out', 'old.perp').err).toContain('is there already');
    expect(next().err).toContain('--out');
    expect(next('--out', 'none/n.perp').err).toContain('the folder is not there');
    expect(textOf(cwd, 'old.perp')).toBe(PAST);
  });
});
