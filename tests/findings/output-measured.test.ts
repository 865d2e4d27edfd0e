import { describe, expect, test } from 'vitest';
import type { MeasuredOutput } from '../../server/engine/firm/outputs';
import type { Finding } from '../../shared/finding';
import { inRoot, workspaceOf } from '../engine/world';
import { expectFindings } from '../harness/marks';
import { afterWay } from './tells';

const FACEWORK: MeasuredOutput = {
  task: 'facework',
  unit: 'bricks',
  jobs: 4,
  days: 12,
  hours: 90,
  amount: 4707,
  mean: 52.3,
  low: 48.14,
  high: 56.46,
  by: 'jobs',
  least: 40,
  most: 61,
  without: 0,
};

function find(text: string, past: readonly MeasuredOutput[]): readonly Finding[] {
  const workspace = workspaceOf({ 'firm.perp': text });
  workspace.pastOutputs = () => past;
  const all = workspace.job(inRoot('firm.perp'))!.findings;
  return all.filter((each) => each.code === 'output-measured');
}

const FIRM = `
  perpend 1
  use uk
  output
    facework  60 bricks per h
              ^^^^^^^^^^^^^^^ output-measured: 12 days in 4 jobs came to 52.3 bricks an hour of facework, 80% sure between 48.1 and 56.5; this line reckons with 60
`;

describe('output-measured', () => {
  test('stands at the line of the firm, and each way out clears it', () => {
    const { text, found } = expectFindings(FIRM, (t) => find(t, [FACEWORK]));
    const ways = found[0]!.ways;
    expect(ways.map((way) => way.title)).toEqual([
      'Reckon with 52.3 bricks per h',
      'Reckon with 48.1..56.5 bricks per h',
    ]);
    for (const way of ways) expect(find(afterWay(text, way.edits), [FACEWORK])).toEqual([]);
    expect(afterWay(text, ways[0]!.edits)).toContain('  facework  52.3 bricks per h\n');
  });

  test('stands at the heading where only the library says it, and adds the line', () => {
    const marked = `
      perpend 1
      use uk
      output
      ^^^^^^ output-measured: no line here says it, and the library has 35
        facework  52 bricks per h
    `;
    const past = { ...FACEWORK, task: 'pier-work' };
    const { text, found } = expectFindings(marked, (t) => find(t, [past]));
    const after = afterWay(text, found[0]!.ways[0]!.edits);
    expect(after).toContain('output\n  pier-work 52.3 bricks per h\n');
    expect(find(after, [past])).toEqual([]);
  });

  test('takes a line per day by the firm’s day', () => {
    const per = (n: number) =>
      `perpend 1\nuse uk\nlabour\n  day 8 h\noutput\n  facework ${n} bricks per day\n`;
    expect(find(per(400), [FACEWORK])).toEqual([]);
    const [told] = find(per(480), [FACEWORK]);
    expect(told!.message).toContain('reckons with 60');
    const after = afterWay(per(480), told!.ways[0]!.edits);
    expect(after).toContain('facework 52.3 bricks per h\n');
  });

  test.each([
    ['the line lies within', 'facework 55 bricks per h', FACEWORK],
    ['the line’s own range reaches it', 'facework 45..50 bricks per h', FACEWORK],
    ['the line is in another kind of unit', 'facework 3 m2 per h', FACEWORK],
    ['there are too few days', 'facework 60 bricks per h', { ...FACEWORK, days: 9 }],
    ['there are too few jobs', 'facework 60 bricks per h', { ...FACEWORK, jobs: 2 }],
    ['it is one day', 'facework 60 bricks per h', { ...FACEWORK, low: undefined }],
  ])('is not told where %s', (_, line, past) => {
    expect(find(`perpend 1\nuse uk\noutput\n  ${line}\n`, [past as MeasuredOutput])).toEqual([]);
  });

  test('is of the firm’s file, not of a job or of a file without outputs', () => {
    expect(find('perpend 1\nuse uk\nlabour\n  bricklayer £30 per h\n', [FACEWORK])).toEqual([]);
    expect(
      find('perpend 1\nuse uk\njob "A"\noutput\n  facework 60 bricks per h\n', [FACEWORK]),
    ).toEqual([]);
  });

  test('is not offered in a library that ships', () => {
    const workspace = workspaceOf({});
    workspace.pastOutputs = () => [{ ...FACEWORK, mean: 90, low: 88, high: 92 }];
    const { findings } = workspace.job('library:uk.perp')!;
    expect(findings.filter((each) => each.code === 'output-measured')).toEqual([]);
  });

  test('asks for as many days and jobs as the firm’s file says', () => {
    const text = (days: number) =>
      `perpend 1\nuse uk\ndefaults\n  outputs-measured jobs 2 and days ${days} and sure 90%\noutput\n  facework 60 bricks per h\n`;
    expect(find(text(12), [FACEWORK]).map((f) => f.message.includes('90% sure'))).toEqual([true]);
    expect(find(text(13), [FACEWORK])).toEqual([]);
  });
});
