import { describe, expect, test } from 'vitest';
import { run } from '../../server/cli/run';
import { FILES } from './jobs';
import { folderOf, perpend, useCommandLine } from './perpend';

useCommandLine();

const cwd = () => folderOf(FILES);

describe('perpend why', () => {
  test('shows the sum, and the lines that the facts stand in', () => {
    const { code, out } = perpend(['why', 'job.perp', 'cost.secret-red'], { cwd: cwd() });
    expect(code).toBe(0);
    expect(out.split('\n')[0]).toBe('cost.secret-red');
    const price = FILES['firm.perp'].split('\n').indexOf('  price  £0.97 each') + 1;
    expect(out).toContain(`firm.perp:${price}:10  price £0.97 each\n`);
    expect(out).toMatch(/= [\d,]+ bricks × £0\.97\n/);
  });

  test('indents each part under what it is part of', () => {
    const { out } = perpend(['why', 'job.perp', 'job.cost'], { cwd: cwd() });
    const lines = out.trimEnd().split('\n').slice(1);
    const depths = lines.map((line) => /^ */.exec(line)![0].length / 2);
    expect(depths[0]).toBe(1);
    const jumps = depths.filter((depth, i) => i > 0 && depth > depths[i - 1]! + 2);
    expect(jumps).toEqual([]);
  });

  test('shows a shared part once, and less with --depth', () => {
    const folder = cwd();
    const { out } = perpend(['why', 'job.perp', 'job.price'], { cwd: folder });
    expect(out).toContain(' (above)\n');
    expect(out.length).toBeLessThan(200_000);
    const short = perpend(['why', 'job.perp', 'job.price', '--depth', '1'], { cwd: folder }).out;
    expect(short.split('\n')).toHaveLength(5);
    expect(perpend(['why', 'job.perp', 'job.price', '--depth', 'x'], { cwd: folder }).code).toBe(2);
  });

  test('shows a fact once, however many counts rest on it', () => {
    const { out } = perpend(['why', 'job.perp', 'job.bricks'], { cwd: cwd() });
    const facts = out.split('\n').filter((line) => /brick, length: 215 mm/.test(line));
    expect(facts.length).toBeGreaterThan(1);
    expect(facts.filter((line) => !line.endsWith('(above)'))).toHaveLength(1);
    const places = out.match(/^ +firm\.perp:\d+:\d+ {2}size .*$/gm)!;
    expect(places).toHaveLength(3); // length, width and height, each once
  });

  test('names several pieces as several', () => {
    const wall = `perpend 1\n\nuse uk\n\nwall a\n  bond stretcher\n  thick 0.5 bricks\n  length 4.04 m\n  height 4 courses\n`;
    const { out } = perpend(['why', '-', 'a.bricks'], { input: wall });
    expect(out).toContain('18 stretchers');
    expect(out).not.toMatch(/\d\d (stretcher|header|half)[,;]/);
  });

  test('lists the figures without one, each of which it can show', () => {
    const folder = cwd();
    const { code, out } = perpend(['why', 'ranged.perp'], { cwd: folder });
    expect(code).toBe(0);
    const ids = out
      .trimEnd()
      .split('\n')
      .map((line) => line.split(' ')[0]!);
    expect(ids).toContain('frost.short');
    expect(ids.at(-1)).toBe('stage.2');
    expect(new Set(ids).size).toBe(ids.length);
    const said: string[] = [];
    const io = { cwd: folder, colour: false, out: (t: string) => said.push(t), raw() {}, err() {} };
    const codes = ids.map((id) => run(['why', 'ranged.perp', id], io));
    expect(codes.filter((each) => each !== 0)).toEqual([]);
    expect(said.map((each) => each.split('\n')[0])).toEqual(ids);
  });

  test.each([
    ['job.prise', 'job.price'],
    ['walnorth.brick', 'walnorth.bricks'],
    ['mortar', 'walnorth.mortar or walsouth.mortar'],
  ])('for %s proposes %s', (asked, meant) => {
    const { code, out, err } = perpend(['why', 'job.perp', asked], { cwd: cwd() });
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe(`perpend: There is no figure ${asked} in job.perp. Did you mean ${meant}?\n`);
  });

  test('for a figure like no other says where the list is', () => {
    const { code, err } = perpend(['why', 'job.perp', 'xyzzyxyzzy'], { cwd: cwd() });
    expect([code, err]).toEqual([
      2,
      'perpend: There is no figure xyzzyxyzzy in job.perp. perpend why job.perp lists them.\n',
    ]);
  });

  test('says what a figure lacks', () => {
    const { out } = perpend(['why', 'half.perp', 'walsouth.bricks'], { cwd: cwd() });
    expect(out).toMatch(/\[incomplete: .*walsouth/);
  });
});
