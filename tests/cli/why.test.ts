import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { run } from '../../server/cli/run';
import { readJson } from '../tree';
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

  test('a length in another unit has its line under it, and rounding that changes nothing is no step', () => {
    const text = `perpend 1\n\nuse uk\n\nrepair r\n  mix general\n  thick 1 brick\n  bond english\n  rebuild 1.35 m x 9 courses\n`;
    const { out } = perpend(['why', '-', 'r.down'], { input: text });
    const lines = out.replaceAll('\u00a0', ' ').split('\n');
    const at = lines.findIndex((line) => line.includes('length rebuilt: 1,350 mm = 1.35 m'));
    expect(lines[at + 1]).toMatch(/^ +standard input:9:11 {2}rebuild 1\.35 m x 9 courses$|:9:11 /);
    expect(out.match(/length rebuilt/g)).toHaveLength(1);
    expect(out).not.toMatch(/9.courses, down to whole ones/);
    // Of one kind of brick down the sum is that kind.
    expect(out.match(/108.bricks/g)).toHaveLength(1);
  });

  test('--json has every step, the figure asked for or all of them', () => {
    const folder = cwd();
    const one = JSON.parse(perpend(['why', 'job.perp', 'job.cost', '--json'], { cwd: folder }).out);
    expect(one).toMatchObject({ format: 'perpend-why', version: 1, file: 'job.perp' });
    expect(one.figures.map((f: { id: string }) => f.id)).toEqual(['job.cost']);
    expect(one.steps[one.figures[0].working]).toMatchObject({ text: one.figures[0].text });
    expect(one.figures[0].working).toBe(one.steps.length - 1);
    const all = JSON.parse(perpend(['why', 'job.perp', '--json'], { cwd: folder }).out);
    const price = JSON.parse(perpend(['price', 'job.perp', '--json'], { cwd: folder }).out);
    expect(all.figures).toEqual(price.files[0].figures);
    expect(all.steps).toEqual(price.files[0].steps);
    const schema = readJson('shared/json-schema/perpend-1.schema.json') as object;
    const fits = new Ajv2020({ strict: false }).compile(schema);
    expect([fits(one), fits(all)]).toEqual([true, true]);
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
