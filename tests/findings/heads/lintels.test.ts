/** How far a lintel reaches, along the wall and through it. */
import { describe, expect, test } from 'vitest';
import { jobView } from '../../../server/engine/views/job-view';
import { jobOf } from '../../engine/world';
import { FIRM, findingsOf, silent, tells } from '../tells';
import { windowWith } from './window';

describe('bearing-short', () => {
  test('is told of a lintel that bears less than the table asks for its span', () => {
    tells(
      windowWith(`    lintel   100 x 65 mm slab
    bearing  75 mm
    ^^^^^^^^^^^^^^ bearing-short: bears 75 mm on each side of an opening 910 mm wide, less than the 100 mm asked for
`),
      { ways: ['Bear 100 mm'] },
    );
    tells(
      windowWith(`    lintel  100 x 65 x 1060 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ bearing-short: bears 75 mm
`),
      { ways: ['A lintel 1110 mm long'] },
    );
  });

  test('is an error of a lintel no longer than its opening, which is left out: no price is complete', () => {
    const [found] = tells(
      windowWith(`    lintel  100 x 65 x 600 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ bearing-short: A lintel 600 mm long bears on nothing over an opening 910 mm wide: it is left out
`),
      { ways: ['A lintel 1110 mm long'] },
    );
    expect(found!.severity).toBe('error');
    const job = (lintel: string) =>
      jobOf(windowWith(`    lintel ${lintel} slab\n`), { 'firm.perp': FIRM });
    const open = (lintel: string) =>
      jobView(job(lintel)).totals.some((f) => f.id === 'job.price' && !f.complete);
    expect([open('100 x 65 x 910 mm'), open('100 x 65 x 1110 mm')]).toEqual([true, false]);
    const pieces = job('100 x 65 x 910 mm').works[0]!.needs.pieces;
    expect(pieces.filter((p) => p.material === 'slab')).toEqual([]);
  });

  test('nor may a bearing be nought, or hide that the lintel is too short', () => {
    const told = (lines: string) => findingsOf('bearing-short', windowWith(lines));
    const [nought] = told('    lintel 100 x 65 mm slab\n    bearing 0 mm\n');
    expect([nought!.severity, nought!.ways.map((w) => w.title)]).toEqual([
      'error',
      ['Bear 100 mm'],
    ]);
    const [hidden] = told('    lintel 100 x 65 x 600 mm slab\n    bearing 150 mm\n');
    expect(hidden!.severity).toBe('error');
    // 910 + 2 x 150 = 1210.
    expect(hidden!.ways.map((w) => w.title)).toEqual(['A lintel 1210 mm long']);
  });

  test('is not told from the least bearing up: 100 mm to 1.2 m, 150 mm over it (NHBC Standards 2020, 6.1.12, Table 5)', () => {
    const wide = (bearing: number) =>
      windowWith(`    lintel 100 x 65 mm slab\n    bearing ${bearing} mm\n`)
        .replace('width   910 mm', 'width   1247.5 mm')
        .replace('2240 mm', '2577.5 mm');
    silent(windowWith('    lintel 100 x 65 mm slab\n    bearing 100 mm\n'), 'bearing-short');
    silent(windowWith('    lintel 100 x 65 mm slab\n'), 'bearing-short');
    silent(wide(150), 'bearing-short');
    const codes = jobOf(wide(149), { 'firm.perp': FIRM }).findings.map((f) => f.code);
    expect(codes).toContain('bearing-short');
  });
});

describe('lintel-narrow', () => {
  const thick = '  thick   1 brick\n  bond    english\n';

  test('is told of one lintel under half of a wall (NHBC Standards 2020, 6.1.12: at most 25 mm hang over)', () => {
    // 215 - 140 = 75 mm; two of 100 and the joint between them leave 5.
    tells(
      windowWith(
        `    bearing 130 mm
    lintel  140 x 65 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^ lintel-narrow: under a wall 215 mm thick: 75 mm of it hangs over, more than the 25 mm
`,
        thick,
      ),
      { ways: ['2 lintels 100 mm wide'] },
    );
    silent(windowWith('    lintel 100 x 65 mm slab\n', thick), 'lintel-narrow');
    silent(windowWith('    lintel 215 x 65 mm slab\n', thick), 'lintel-narrow');
    silent(windowWith('    lintel 100 x 65 mm slab\n'), 'lintel-narrow');
  });
});
