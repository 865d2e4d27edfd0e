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
    expect(err).toBe('perpend: Say which part of job.perp to draw. There is walnorth, walsouth.\n');
  });

  test('says what there is, for a name that is not', () => {
    const cwd = folderOf(FILES);
    const { code, err } = perpend(['draw', 'job.perp', 'walnort'], { cwd });
    expect([code, err]).toEqual([
      2,
      'perpend: job.perp has nothing called walnort to draw. Did you mean walnorth?\n',
    ]);
  });

  test.each([
    ['firm.perp', '', 'There is nothing to draw in firm.perp: it holds no wall and no pier.'],
    [
      'point.perp',
      '',
      'There is nothing to draw in point.perp: a repair that builds nothing again has no drawing.',
    ],
    ['point.perp', 'joints', 'joints builds nothing again, and so has no drawing.'],
    [
      'half.perp',
      'walsouth',
      'walsouth cannot be laid yet, and so not drawn: perpend check half.perp. There is walnorth.',
    ],
  ])('of %s %s says why there is no drawing', (file, block, said) => {
    const args = ['draw', file, ...(block ? [block] : [])];
    const point = `perpend 1\n\nuse "firm.perp"\n\nrepair joints\n  brick secret-red\n  repoint 2 m2 raked 20 mm\n`;
    const ran = perpend(args, { cwd: folderOf({ ...FILES, 'point.perp': point }) });
    expect(ran).toEqual({ code: 2, out: '', err: `perpend: ${said}\n` });
  });

  test('draws a pier that stands alone, its top and its damp course', () => {
    const pier = `pier post "Gate post"\n  brick secret-red\n  size 2 x 2 bricks\n  height 20 courses\n  coping brick-on-edge\n  dpc engineering 2 courses\n`;
    const cwd = folderOf({ ...FILES, 'pier.perp': `perpend 1\n\nuse "firm.perp"\n\n${pier}` });
    const { code, out } = perpend(['draw', 'pier.perp'], { cwd });
    expect(code).toBe(0);
    expect(out).toContain('<title id="title">Gate post</title>');
    expect(out).toContain('Elevation of a pier, Gate post, 440 by 440 mm, 20 courses high.');
    // 20 courses of 75 mm; then a bed of 10 mm and a brick's width, 102.5 mm.
    for (const text of ['1500', '1612.5', 'damp-proof course', 'brick on edge'])
      expect(out).toContain(`>${text}</text>`);
  });

  test('calls openings by their titles', () => {
    const { out } = perpend(['draw', 'job.perp', 'walnorth'], { cwd: folderOf(FILES) });
    expect(out).toContain('>Side gate</text>');
    expect(out).not.toContain('gatehole');
  });

  test('is in feet and inches on Letter paper where the job is', () => {
    const imperial = `perpend 1\n\nuse us\n\nwall a "Wall"\n  bond running\n  length 275 5/8 in\n  height 12 courses\n`;
    const { out } = perpend(['draw', '-'], { input: imperial });
    expect(out).toContain('width="279.4mm" height="215.9mm"');
    expect(out).toContain('Sizes in feet and inches.');
    expect(out).toContain('>22&#39;-11 5/8&quot;</text>');
    expect(out).not.toContain('7000.9');
  });
});

describe('perpend draw --view', () => {
  test.each([
    ['front', 'Elevation of a wall'],
    ['back', 'Elevation of the back of a wall'],
    ['plan', 'Two courses on plan, one on the other, of each place: '],
    ['rod', 'Gauge rod, '],
  ])('%s', (view, said) => {
    const cwd = folderOf(FILES);
    const { code, out, err } = perpend(['draw', 'job.perp', 'walnorth', '--view', view], { cwd });
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain(`<desc id="desc">${said}`);
  });

  test('without it is the front', () => {
    const cwd = folderOf(FILES);
    const args = ['draw', 'job.perp', 'walnorth'];
    expect(perpend([...args, '--view', 'front'], { cwd }).out).toBe(perpend(args, { cwd }).out);
  });

  test('all, into a folder, is a file for each sheet; into one file, all of them', () => {
    const cwd = folderOf({ ...FILES, 'drawings/keep.txt': '' });
    const args = ['draw', 'job.perp', 'walnorth', '--view', 'all', '--out'];
    expect(perpend([...args, 'drawings'], { cwd })).toEqual({ code: 0, out: '', err: '' });
    const names = readdirSync(path.join(cwd, 'drawings')).sort();
    expect(names).toContain('walnorth-front.svg');
    expect(names).toContain('walnorth-rod.svg');
    expect(names.filter((name) => /^walnorth-plan(-\d)?\.svg$/.test(name))).not.toEqual([]);
    const sheetsIn = names.filter((name) => name.endsWith('.svg')).length;
    // Each sheet is a page at its scale; all of them in one picture are not, and it says so.
    expect(perpend([...args, 'all.svg'], { cwd })).toEqual({
      code: 0,
      out: '',
      err: `perpend: all.svg holds ${sheetsIn} sheets, one under another, and is no page to print. For a page each, name a folder: --out FOLDER/\n`,
    });
    expect(perpend([...args, 'all.dxf'], { cwd }).err).toBe('');
    const one = readFileSync(path.join(cwd, 'all.svg'), 'utf8');
    expect(one.match(/<rect [^>]*fill="#fff"\/>/g)).toHaveLength(sheetsIn);
    expect(perpend([...args, 'none/'], { cwd }).err).toContain('the folder is not there');
  });

  test('that is not there says which there are, and what a work has not', () => {
    const cwd = folderOf(FILES);
    const ran = (...more: string[]) => perpend(['draw', 'job.perp', 'walnorth', ...more], { cwd });
    expect(ran('--view', 'side')).toMatchObject({
      code: 2,
      err: 'perpend: There is no view side. There are front, back, plan, top, rod, all. See: perpend --help\n',
    });
    expect(ran('--view', 'bak').err).toContain('Did you mean back?');
    expect(ran('--format', 'pdf').err).toContain('There is no format pdf. There are svg, dxf.');
    expect(ran('--course', '0').err).toContain('--course 0 is no course');
    const bare = `perpend 1\n\nuse "firm.perp"\n\nwall plain\n  brick secret-red\n  length 2 m\n  height 6 courses\n`;
    const plain = folderOf({ ...FILES, 'plain.perp': bare });
    expect(perpend(['draw', 'plain.perp', '--view', 'top'], { cwd: plain })).toEqual({
      code: 2,
      out: '',
      err: 'perpend: plain has no coping and no cap to draw from above.\n',
    });
  });

  test('plan of the course that is asked for', () => {
    const cwd = folderOf(FILES);
    const args = ['draw', 'job.perp', 'walnorth', '--view', 'plan', '--course', '3'];
    const { out } = perpend(args, { cwd });
    expect(out).toContain('>Course 3</text>');
    expect(out).toContain('>Course 4</text>');
    expect(out).not.toContain('>Course 1</text>');
  });

  test('as DXF where the file ends so, or the format is asked for', () => {
    const cwd = folderOf(FILES);
    const args = ['draw', 'job.perp', 'walnorth'];
    const printed = perpend([...args, '--format', 'dxf'], { cwd });
    expect(printed.out).toMatch(/^ {2}0\nSECTION\n[\s\S]*\n {2}0\nEOF\n$/);
    expect(perpend([...args, '--out', 'wall.DXF'], { cwd }).code).toBe(0);
    expect(readFileSync(path.join(cwd, 'wall.DXF'), 'utf8')).toBe(printed.out);
  });

  test('of a repair is what it builds again, reused bricks dotted', () => {
    const { code, out } = perpend(['draw', 'ranged.perp', 'frost'], { cwd: folderOf(FILES) });
    expect(code).toBe(0);
    expect(out).toContain('Elevation of a part of a wall built again, 12 courses high.');
    expect(out).toContain('>reused brick</text>');
    expect(out).toContain('fill="url(#hatch-dots)"');
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
      /^perpend: The job has ranges; in eight of ten jobs alike the price is £[\d,.]+ to £[\d,.]+\.\n$/,
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
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe('perpend: firm.perp holds no work to quote for: no wall, pier or repair.\n');
  });

  test('nor has an empty file, or a text that is no job', () => {
    const empty = perpend(['quote', '-'], { input: '\n  \n' });
    expect(empty).toEqual({
      code: 2,
      out: '',
      err: 'perpend: <stdin> is empty: there is nothing to quote for.\n',
    });
    const cwd = folderOf({ 'letter.txt': 'Dear Sir,\n\nabout the fence.\n' });
    const letter = perpend(['quote', 'letter.txt'], { cwd });
    expect([letter.code, letter.out]).toEqual([2, '']);
    expect(letter.err).toBe(
      'perpend: letter.txt holds no work to quote for: no wall, pier or repair. It has errors: perpend check letter.txt\n',
    );
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
