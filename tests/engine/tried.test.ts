import { describe, expect, test } from 'vitest';
import { took } from '../harness/took';
import { jobOf } from './world';

const wall = (lines: string) => `perpend 1
use uk
wall north
  stands  held
  height  8 courses
${lines}`;

const waysOf = (text: string, code: string) =>
  jobOf(text, {})
    .findings.filter((f) => f.code === code)
    .flatMap((f) => f.ways);

describe('ways out are tried before they are offered', () => {
  // A window of 950 mm, 440 mm from either end: 1022.5 and 1135 mm would still go in.
  const roomy = wall(
    '  length 1830 mm\n  opening w\n    from left 440 mm\n    width 950 mm\n    sill 4 courses\n',
  );
  // The same at the very end: anything wider reaches beyond the wall, and the opening would be left out.
  const tight = wall(
    '  length 1390 mm\n  opening w\n    from left 440 mm\n    width 950 mm\n    sill 4 courses\n',
  );

  test('all of them where all do what they say', () => {
    expect(waysOf(roomy, 'opening-width').map((w) => w.title)).toEqual(
      expect.arrayContaining(['Make it 910 mm', 'Make it 1022.5 mm']),
    );
  });

  test('not one that leaves an error', () => {
    expect(waysOf(tight, 'opening-width').map((w) => w.title)).toEqual(['Make it 910 mm']);
  });

  test('an opening measured from the right is moved by its own line, not by the length of the wall', () => {
    const text = wall('  length 3000 mm\n  opening g\n    from right 500 mm\n    width 910 mm\n');
    const ways = waysOf(text, 'fit-run');
    expect(ways.length).toBeGreaterThan(0);
    expect(ways.filter((w) => w.title.startsWith('Make the wall'))).toEqual([]);
  });

  test('of a wall with very many findings the first are tried; one that nobody tried offers nothing', () => {
    const openings = Array.from(
      { length: 900 },
      (_, i) =>
        `  opening o${i}\n    from left ${i * 1000 + 440} mm\n    width 137 mm\n    sill 1 courses\n    height 1 courses\n`,
    );
    const text = wall(`  length 905 m\n${openings.join('')}`);
    const cpu = process.cpuUsage();
    const told = jobOf(text, {}).findings.filter((f) => f.code === 'opening-width');
    const offering = told.filter((f) => f.ways.length);
    expect(told.length).toBeGreaterThanOrEqual(900);
    // 4509 lines: not one of them is worked out again.
    expect(offering).toEqual([]);
    // All of them tried one by one would take a quarter of an hour.
    expect(process.cpuUsage(cpu).user / 1e6).toBeLessThan(20);
  });

  test('whoever asks for one finding has its ways tried, however many were asked for before', () => {
    const openings = Array.from(
      { length: 60 },
      (_, i) =>
        `  opening o${i}\n    from left ${i * 2231 + 665} mm\n    width 905 mm\n    sill 2 courses\n    height 4 courses\n    lintel 100 x 65 mm slab\n`,
    );
    const text = wall(`  length 134030 mm\n${openings.join('')}`);
    const job = jobOf(text, {});
    const listed = job.findings.filter((f) => f.ways.length);
    const last = jobOf(text, {})
      .findings.filter((f) => f.code === listed[0]!.code)
      .at(-1)!;
    expect(listed.some((f) => f.place.line === last.place.line && f.code === last.code)).toBe(
      false,
    );
    expect(last.ways.length).toBeGreaterThan(0);
  });

  test('a way that is sure is offered untried: to tie a wall is always possible', () => {
    const main = `wall main\n  bond english\n  thick 2 bricks\n  stands held\n  length 300 m\n  height 4 courses\n`;
    const cross = (i: number) =>
      `wall c${i}\n  stands held\n  length 2240 mm\n  height 4 courses\n  left tee main ${i * 1030 + 2000} mm bonded\n`;
    const text = `perpend 1\nuse uk\n${main}${Array.from({ length: 250 }, (_, i) => cross(i)).join('')}`;
    const told = jobOf(text, {}).findings.filter((f) => f.code === 'tee-unbonded');
    const titles = told.map((f) => f.ways.map((w) => w.title));
    expect(titles.length).toBeGreaterThan(200);
    expect(titles.filter((t) => !t.includes('Tie it: tied'))).toEqual([]);
    expect(titles.at(-1)).toEqual(['Tie it: tied']);
  });

  test('of a long wall with many findings the first are tried, and no other is offered', () => {
    // 28 windows of 905 mm under half-round arches, no number of half bricks apart: each way lays the wall again.
    const openings = Array.from(
      { length: 28 },
      (_, i) =>
        `  opening o${i}\n    from left ${i * 2231 + 665} mm\n    width 905 mm\n    sill 2 courses\n    height 12 courses\n    head semicircular\n    lintel 100 x 65 mm slab\n`,
    );
    const text = wall(`  length 62458 mm\n${openings.join('')}`).replace('8 courses', '30 courses');
    const once = took(() => jobOf(text, {}).findings, 3);
    const { findings } = jobOf(text, {});
    let offered = 0;
    const tried = took(() => {
      offered = findings.filter((f) => f.ways.length).length;
    });
    expect(offered).toBeGreaterThan(0);
    expect(offered).toBeLessThan(findings.length);
    // Seven times what it takes to work the job out once; all of the ways, each tried, would be 140 times.
    expect(tried / once).toBeLessThan(40);
  });
});
