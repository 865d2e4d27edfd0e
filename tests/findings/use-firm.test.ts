import { describe, expect, test } from 'vitest';
import { type Asked, inRoot, jobOf, workspaceOf } from '../engine/world';
import { afterWay, FIRM, findingsOf, silent, tells } from './tells';

const WALL = 'wall north\n  brick engineering\n  length 1790 mm\n  height 4 courses\n';
const told = (text: string, files = {}) => findingsOf('use-firm', text, files);

describe('use-firm', () => {
  test('is told of a job without prices, beside a firm’s file that it does not use', () => {
    const [found] = told(`perpend 1\nuse uk\njob "A"\n${WALL}`);
    expect(found).toMatchObject({ severity: 'warning', place: { line: 2, start: 0, end: 7 } });
    tells(
      `
        perpend 1
        job "A"
        ^^^^^^^ use-firm: this job uses no file, though “firm.perp” is there: its prices do not count here. Write in the job: use "firm.perp"
        ^^^^^^^ incomplete: no price is given for Standard brick
        ^^^^^^^ incomplete: no price is given for Cement
        ^^^^^^^ incomplete: no price is given for Hydrated lime
        ^^^^^^^ incomplete: no price is given for Building sand
        ^^^^^^^ incomplete: no gang is given
        use uk
        wall north
          length 1790 mm
          height 4 courses
      `,
      { ways: ['Add “use "firm.perp"”'] },
    );
  });

  test.each([
    [
      'before a library that the job names, so that the firm is believed first',
      'perpend 1\n\njob "A"\n\n# Ours.\nuse uk\n\n',
      'perpend 1\n\njob "A"\n\n# Ours.\nuse "firm.perp"\nuse uk\n\n',
    ],
    [
      'else under the job',
      'perpend 1\n\njob "A"\n  client "B"\n\n',
      'perpend 1\n\njob "A"\n  client "B"\n\nuse "firm.perp"\n\n',
    ],
    [
      'parted from what follows at once',
      'perpend 1\njob "A"\n',
      'perpend 1\njob "A"\n\nuse "firm.perp"\n\n',
    ],
    ['else under the edition', 'perpend 1\n\n', 'perpend 1\n\nuse "firm.perp"\n\n'],
  ])('the line is put %s', (_, head, wanted) => {
    const text = head + WALL;
    const [found] = told(text);
    const after = afterWay(text, found!.ways[0]!.edits);
    expect(after).toBe(wanted + WALL);
    expect(told(after)).toEqual([]);
    expect(findingsOf('incomplete', after)).toEqual([]);
  });

  // The same rules as for a new job: the nearest in or above its folder.
  test.each([
    ['beside it', ['jobs/oak/firm.perp', 'jobs/firm.perp', 'firm.perp'], 'firm.perp'],
    ['in the folder above', ['jobs/firm.perp', 'firm.perp'], '../firm.perp'],
    ['two folders up', ['firm.perp'], '../../firm.perp'],
  ])('the nearest counts: %s', (_, names, wanted) => {
    const firms = Object.fromEntries(names.map((name) => [name, FIRM]));
    const job = workspaceOf({ ...firms, 'jobs/oak/job.perp': `perpend 1\nuse uk\n${WALL}` }).job(
      inRoot('jobs/oak/job.perp'),
    )!;
    const [found] = job.findings.filter((each) => each.code === 'use-firm');
    expect(found!.message).toContain(`use "${wanted}"`);
    expect(found!.ways[0]!.edits[0]!.text).toBe(`use "${wanted}"\n`);
  });

  test.each([
    ['a job that uses it', `perpend 1\nuse "firm.perp"\n${WALL}`],
    ['one that uses another file', `perpend 1\nuse "other.perp"\n${WALL}`],
    ['one whose price is complete without', 'perpend 1\nuse uk\ncost skip "Skip" 1 at £100\n'],
    [
      'a template, which has no prices',
      `perpend 1\nuse uk\ntemplate "A"\n  ask north length "How long?"\n${WALL}`,
    ],
    ['what is no job', 'perpend 1\nuse uk\nbrick b\n'],
  ])('is not told of %s', (_, text) => {
    silent(text, 'use-firm', { 'other.perp': 'perpend 1\nuse uk\n' });
  });

  test('nor where there is none', () => {
    const { findings } = jobOf(`perpend 1\nuse uk\n${WALL}`);
    expect(findings.map((each) => each.code)).not.toContain('use-firm');
  });

  test('is told as soon as one is there, and asks the disk once until something else than work changes', () => {
    const files: Record<string, string> = { 'job.perp': `perpend 1\nuse uk\n${WALL}` };
    const asked: Asked = { resolved: [], read: [] };
    const workspace = workspaceOf(files, asked);
    const name = inRoot('job.perp');
    workspace.opened(name, files['job.perp']!);
    const codes = () => workspace.job(name)!.findings.map((each) => each.code);
    expect(codes()).not.toContain('use-firm');
    const before = asked.read.length;
    for (const digit of '123456789') {
      workspace.replaced(name, files['job.perp']!.replace('1790', `179${digit}`));
      workspace.edited(name, [
        { startLine: 4, startColumn: 9, endLine: 4, endColumn: 13, text: `1${digit}90` },
      ]);
      codes();
    }
    // Each new text looks once; the edits of the wall in it do not.
    expect(asked.read.length - before).toBeLessThanOrEqual(9);
    files['firm.perp'] = FIRM;
    workspace.changedOutside(inRoot('firm.perp'));
    expect(codes()).toContain('use-firm');
  });
});
