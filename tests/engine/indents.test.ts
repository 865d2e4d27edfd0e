/** Indents for a wall toothed into standing work, by hand: one in every second course, a brick out for each brick of thickness. */
import { describe, expect, test } from 'vitest';
import { jobOf } from './world';

const wall = (lines: string, courses = 12) =>
  jobOf(
    `perpend 1\nuse uk\nwall w\n  stands held\n  length 2250 mm\n  height ${courses} courses\n${lines}`,
  ).works[0]!;
const figures = (...of: Parameters<typeof wall>) =>
  new Map(wall(...of).figures.map((f) => [f.key, f.term.value.toNumber()]));

describe('indents cut in standing work', () => {
  test('one in every second course, on either side', () => {
    for (const side of ['left', 'right']) {
      expect(figures(`  ${side} toothed cut\n`).get('indents')).toBe(6);
      expect(figures(`  ${side} toothed cut\n`).get('cut-out')).toBe(6);
    }
  });

  test('of thirteen courses six or seven run in, as the first does or not', () => {
    const found = figures('  right toothed cut\n', 13).get('indents')!;
    expect([6, 7]).toContain(found);
  });

  test('through one brick two half bricks come out, which are one', () => {
    const lines = '  right toothed cut\n  thick 1 brick\n  bond english\n';
    expect(figures(lines).get('indents')).toBe(6);
    expect(figures(lines).get('cut-out')).toBe(6);
  });

  test('through one brick and a half, two bricks an indent', () => {
    const lines = '  right toothed cut\n  thick 1 1/2 bricks\n  bond english\n';
    const found = figures(lines.replace('1 1/2', '1.5'));
    expect(found.get('cut-out')).toBe(2 * found.get('indents')!);
  });

  test('are timed as bricks cut out, and told: half a brick deep in stretcher bond', () => {
    const work = wall('  right toothed cut\n');
    const task = work.needs.tasks.find((t) => t.task === 'cut-out')!;
    // Five an hour of one bricklayer: common practice, as the library has it.
    expect(task.hours.value.toNumber()).toBeCloseTo(6 / 5, 6);
    expect(work.facts.says.join(' ')).toContain(
      'Cut indents one course high and about 113 mm deep into the standing work at its right end',
    );
  });

  test('none where the standing work was left toothed', () => {
    const found = figures('  right toothed\n');
    expect(found.has('indents')).toBe(false);
    expect(found.has('cut-out')).toBe(false);
  });

  test('beside pockets at the other end, the bricks of both together', () => {
    const found = figures('  left block-bonded 3 courses\n  right toothed cut\n');
    expect([found.get('pockets'), found.get('indents'), found.get('cut-out')]).toEqual([2, 6, 12]);
  });

  test('the wall’s own bricks are as without', () => {
    expect(figures('  right toothed cut\n').get('bricks')).toBe(
      figures('  right toothed\n').get('bricks'),
    );
  });
});
