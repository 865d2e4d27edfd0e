import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { FIRM, findingsIn, silent, tells } from './tells';

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
        // 225 x 2.2 / 12: what rules still call a lap.
        const short = poorLaps.filter(({ lap }) => lap < 41.25);
        const over = short.filter(({ lap }) => lap < 10);
        const aligned = over.length ? over : short;
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

  test('is told at a lintel whose end stands under a perpend, with a bearing that laps', () => {
    // From 890 mm, bearing 100: its joint is at 785, under the perpend at 782.5 (107.5 + 3 x 225) of every second course.
    // 145 mm is the first in steps of 5 that keeps 225 x 2.2 / 12 = 41.25 mm from it: 890 - 145 - 5 = 740 = 782.5 - 42.5.
    const lintel = (bearing: string) => `perpend 1
use "firm.perp"
wall w
  brick red
  stands held
  length 4490 mm
  height 12 courses
  opening a
    from left 890 mm
    width 910 mm
    sill 3 courses
    height 5 courses
${bearing}    lintel 100 x 65 mm slab
`;
    const marked = lintel('').replace(
      'slab\n',
      'slab\n    ^^^^^^^^^^^^^^^^^^^^^^^ perpends-aligned: Perpends stand over one another beside what spans the opening a: between courses 8 and 10, 785 mm from the left end\n',
    );
    tells(marked, { ways: ['Bear 145 mm'] });
    silent(lintel('    bearing 145 mm\n'), 'perpends-aligned');
  });

  test('is told of the back of a thick wall where the front laps, once and as such', () => {
    // 605 - 180 - 5 and 605 + 895 + 180 + 5 = 1685 mm are the joints at the ends of the lintel; the front has no perpend near them.
    const text = (thick: string) => `perpend 1
use "firm.perp"
wall w
  brick red
  bond english
  thick ${thick}
  stands held
  length 2472 mm
  height 12 courses
  opening a
    from left 605 mm
    width 895 mm
    sill 3 courses
    height 5 courses
    lintel 100 x 65 mm slab
    bearing 180 mm
`;
    const told = (thick: string) =>
      findingsIn(text(thick)).filter(
        (f) => f.code === 'perpends-aligned' && f.message.startsWith('In the back'),
      );
    const [found, ...others] = told('1.5 bricks');
    expect(others).toEqual([]);
    expect(found!.severity).toBe('information');
    expect(found!.message).toMatch(
      /^In the back perpends stand over one another, where .*: between courses 8 and 9, 1685 mm from the left end/,
    );
    expect(told('1 brick')).toEqual([]);
  });
});
