import {
  chmodSync,
  cpSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { format } from '../../grammar/print';
import { bundle, folderOf, perpend, useCommandLine } from './perpend';

useCommandLine();

const UGLY =
  'perpend 1\njob    "A"\n   ref 26-1 # mine\n\n\n\nwall  a\n length 3 m\n      height    6 courses';
const NEAT = format(UGLY);

function text(folder: string, name: string): string {
  return readFileSync(path.join(folder, name), 'utf8');
}

describe('perpend format', () => {
  test('prints one file, from disk or piped in, and leaves it', () => {
    const cwd = folderOf({ 'a.perp': UGLY });
    expect(NEAT).not.toBe(UGLY);
    expect(perpend(['format', 'a.perp'], { cwd })).toEqual({ code: 0, out: NEAT, err: '' });
    expect(perpend(['format', '-'], { input: UGLY })).toEqual({ code: 0, out: NEAT, err: '' });
    expect(text(cwd, 'a.perp')).toBe(UGLY);
  });

  test('--check names what would change, exits with 1, and changes nothing', () => {
    const cwd = folderOf({ 'a.perp': UGLY, 'b.perp': NEAT });
    expect(perpend(['format', '--check', 'a.perp', 'b.perp'], { cwd })).toEqual({
      code: 1,
      out: 'a.perp: would change\n',
      err: '',
    });
    expect(perpend(['format', '--check', 'b.perp'], { cwd })).toEqual({
      code: 0,
      out: '',
      err: '',
    });
    expect(text(cwd, 'a.perp')).toBe(UGLY);
  });

  test('--write writes what changes, keeps its mode, and leaves nothing beside it', () => {
    const cwd = folderOf({ 'a.perp': UGLY, 'b.perp': NEAT });
    chmodSync(path.join(cwd, 'a.perp'), 0o640);
    const before = statSync(path.join(cwd, 'b.perp'));
    expect(perpend(['format', '--write', 'a.perp', 'b.perp'], { cwd })).toEqual({
      code: 0,
      out: 'a.perp: put in order\n',
      err: '',
    });
    expect(text(cwd, 'a.perp')).toBe(NEAT);
    expect(statSync(path.join(cwd, 'a.perp')).mode & 0o777).toBe(0o640);
    expect(statSync(path.join(cwd, 'b.perp'))).toMatchObject({
      ino: before.ino,
      mtimeMs: before.mtimeMs,
    });
    expect(readdirSync(cwd).sort()).toEqual(['a.perp', 'b.perp']);
  });

  test('--write through a link changes what it points to, and the link stays', () => {
    const cwd = folderOf({ 'real/a.perp': UGLY });
    symlinkSync('real/a.perp', path.join(cwd, 'link.perp'));
    expect(perpend(['format', '--write', 'link.perp'], { cwd }).code).toBe(0);
    expect(text(cwd, 'real/a.perp')).toBe(NEAT);
    expect(readdirSync(path.join(cwd, 'real'))).toEqual(['a.perp']);
  });

  test('a folder that may not be written to leaves the old file whole', () => {
    const cwd = folderOf({ 'job/a.perp': UGLY });
    // Root may write anywhere, so there the command runs as somebody else, from where that one can read it.
    const other = process.getuid?.() === 0 ? 65_534 : undefined;
    cpSync(bundle(), path.join(cwd, 'perpend.cjs'));
    for (const name of ['.', 'job']) chmodSync(path.join(cwd, name), 0o555);
    const ran = perpend(['format', '--write', 'job/a.perp'], {
      cwd,
      uid: other,
      script: path.join(cwd, 'perpend.cjs'),
    });
    for (const name of ['.', 'job']) chmodSync(path.join(cwd, name), 0o755);
    expect(ran).toEqual({
      code: 2,
      out: '',
      err: 'perpend: job/a.perp cannot be written: its folder may not be written to.\n',
    });
    expect(text(cwd, 'job/a.perp')).toBe(UGLY);
    expect(readdirSync(path.join(cwd, 'job'))).toEqual(['a.perp']);
  });

  test('a new file that cannot be made leaves the old one whole', () => {
    const name = `${'n'.repeat(248)}.perp`; // one more sign and no system would take it
    const cwd = folderOf({ [name]: UGLY });
    const { code, err } = perpend(['format', '--write', name], { cwd });
    expect(code).toBe(2);
    expect(err).toContain('cannot be written');
    expect(text(cwd, name)).toBe(UGLY);
    expect(readdirSync(cwd)).toEqual([name]);
  });

  test('one file that cannot be read does not keep the others from their turn', () => {
    const cwd = folderOf({ 'a.perp': UGLY });
    const { code, out, err } = perpend(['format', '--write', 'gone.perp', 'a.perp'], { cwd });
    expect([code, out]).toEqual([2, 'a.perp: put in order\n']);
    expect(err).toBe('perpend: gone.perp cannot be read: there is no such file.\n');
  });

  test.each([
    ['line ends of Windows', UGLY.replaceAll('\n', '\r\n')],
    ['a mark of UTF-8', `\ufeff${UGLY}`],
    ['line ends of both kinds', UGLY.replace('\n', '\r\n')],
    ['nothing in it', ''],
    ['no newline at its end', 'perpend 1'],
    ['lines that cannot be read', 'perpend 1\n)(*\n\u0000 \u00a0x\n wall\n'],
  ])('gives what the formatter gives for a file with %s', (_, input) => {
    expect(perpend(['format', '-'], { input }).out).toBe(format(input));
  });

  test.each([
    [['a.perp', 'b.perp'], 'With more than one file give --write or --check.'],
    [['--write', '--check', 'a.perp'], 'Give --write or --check, not both.'],
    [['--write', '-'], 'What is piped in cannot be written back: leave --write out.'],
  ])('%j is wrong use', (args, said) => {
    const cwd = folderOf({ 'a.perp': UGLY, 'b.perp': UGLY });
    const ran = perpend(['format', ...args], { cwd });
    expect(ran).toEqual({ code: 2, out: '', err: `perpend: ${said} See: perpend --help\n` });
    expect(text(cwd, 'a.perp')).toBe(UGLY);
  });

  test('a folder in the way is not written over', () => {
    const cwd = folderOf();
    mkdirSync(path.join(cwd, 'q.html'));
    writeFileSync(path.join(cwd, 'job.perp'), UGLY);
    const { code, err } = perpend(['quote', 'job.perp', '--out', 'q.html'], { cwd });
    expect(code).toBe(2);
    expect(err).toContain('perpend: q.html cannot be written: it is a folder.\n');
    expect(readdirSync(cwd).sort()).toEqual(['job.perp', 'q.html']);
  });
});
