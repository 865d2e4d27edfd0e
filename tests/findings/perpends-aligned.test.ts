import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { FIRM, silent } from './tells';

const wall = (width: number, bond = 'english', from = '1.7 m', length = '6.1 m', fit = '') =>
  `perpend 1\nuse "firm.perp"\nwall w\n  brick red\n  stands held\n  bond ${bond}\n  thick 1 brick\n  length ${length}\n  height 20 courses\n${fit}  opening a\n    from left ${from}\n    width ${width} mm\n    sill 5 courses\n    height 9 courses\n`;

/** Somebody's word on how a stretch is cut, which is kept whatever comes of it. */
const DECIDED = '  fit run-3 cut 60 mm at right\n';

const WIDTHS = Array.from({ length: 30 }, (_, i) => 1000 + 5 * i);

describe('perpends-aligned', () => {
  test('is told just where a perpend lies within a joint of one below, with the course and the place', () => {
    let told = 0;
    for (const bond of ['english', 'flemish'])
      for (const width of WIDTHS) {
        const job = jobOf(wall(width, bond, '1.7 m', '6.1 m', DECIDED), { 'firm.perp': FIRM });
        const { poorLaps } = job.works[0]!.facts.settingOut!;
        const aligned = poorLaps.filter(({ lap }) => lap < 10);
        const found = job.findings.filter((f) => f.code === 'perpends-aligned');
        expect(found.length, `${bond} ${width}`).toBe(aligned.length ? 1 : 0);
        told += found.length;
        if (!found.length) continue;
        expect(found[0]!.severity).toBe('information');
        // Where the wall's own name stands.
        expect(found[0]!.place).toMatchObject({ line: 2, start: 5, end: 6 });
        const { course } = aligned[0]!;
        expect(found[0]!.message).toMatch(
          new RegExp(`between courses ${course} and ${course + 1}, [\\d.]+ mm from the left end`),
        );
      }
    expect(told).toBeGreaterThan(0);
    expect(told).toBeLessThan(WIDTHS.length);
  });

  test('is not told where nobody has decided how stretches off the module are laid: they are cut at the reveals', () => {
    for (const bond of ['english', 'flemish'])
      for (const width of WIDTHS) silent(wall(width, bond), 'perpends-aligned');
  });

  test('is not told of openings in brickwork sizes', () => {
    // 112.5 n - 10 to the reveal, 112.5 n + 10 across: CO- and CO+ of the dimension tables.
    for (const width of [910, 1022.5, 1135])
      silent(wall(width, 'flemish', '1677.5 mm', '6065 mm'), 'perpends-aligned');
  });
});
