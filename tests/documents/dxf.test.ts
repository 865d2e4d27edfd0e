/**
 * DXF drawings, read by two programs that are not ours: ezdxf (Debian: python3-ezdxf), whose audit tells what a
 * CAD program would stumble over, and dxf-parser.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import DxfParser from 'dxf-parser';
import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { sheetsToDxf } from '../../server/documents/dxf';
import { hatchesKnown } from '../../server/documents/dxf/hatches';
import { dxfText } from '../../server/documents/dxf/words';
import { LOOKS } from '../../server/documents/svg-looks';
import { elevation, type Mark, type Sheet, toSheet } from '../../server/engine/drawing';
import { setOut } from '../../server/engine/setting-out';
import { cornersOf } from '../drawing/marks';
import { sheets } from '../drawing/samples';
import { wall } from '../setting-out/fixtures';
import { root } from '../tree';

interface Found {
  version: string;
  units: number;
  errors: string[];
  fixes: string[];
  counts: Record<string, number>;
  layers: string[];
  used: string[];
  extents: [[number, number], [number, number]];
  header: [[number, number], [number, number]];
  texts: string[];
  areas: Record<string, number[]>;
}

const folder = mkdtempSync(path.join(tmpdir(), 'perpend-dxf-'));
afterAll(() => rmSync(folder, { recursive: true }));

const HOSTILE: readonly (readonly [written: string, read: string])[] = [
  ['Wäll "n" – 5 × 2', 'Wäll "n" – 5 × 2'],
  ['a\nb\r\n  0\nEOF', 'a b    0 EOF'],
  ['100 %%d %%%', '100 % %d % % %'],
  ['\\U+0041 \\M+1', '\\ U+0041 \\ M+1'],
  ['^I ^M', '^I ^M'],
  ['one 🧱 two', 'one ? two'],
  ['\u202eabc\u0000\u2028', '?abc  '],
  ['<script>&amp;', '<script>&amp;'],
];

const named = (title: string): Sheet =>
  toSheet(elevation(setOut(wall({ length: 1270, courses: 2 })), { title }));

const files: Readonly<Record<string, readonly Sheet[]>> = {
  ...sheets,
  all: Object.values(sheets).flat(),
  hostile: HOSTILE.map(([written]) => named(written)),
};

/** All files in one call: Python takes longer to start than to read them. */
const found: Record<string, Found> = (() => {
  const names = Object.keys(files);
  const paths = names.map((name) => path.join(folder, `${name}.dxf`));
  for (const [i, name] of names.entries()) writeFileSync(paths[i]!, sheetsToDxf(files[name]!));
  const script = path.join(root, 'tests/documents/audit-dxf.py');
  const printed = execFileSync('/usr/bin/python3', [script, ...paths], { encoding: 'utf8' });
  const read = JSON.parse(printed) as Found[];
  return Object.fromEntries(names.map((name, i) => [name, read[i]!]));
})();

const marksOf = (name: string): Mark[] => files[name]!.flatMap((sheet) => [...sheet.marks]);
const isFilled = (mark: Mark) => mark.kind === 'box' || mark.kind === 'shape';
const isHatched = (mark: Mark) =>
  (mark.kind === 'box' || mark.kind === 'shape') &&
  (LOOKS[mark.ink].hatch !== undefined || LOOKS[mark.ink].dark === true);

/** What there should be of each kind of thing. */
function expected(name: string): Record<string, number> {
  const marks = marksOf(name);
  const counts = {
    LWPOLYLINE: marks.filter(isFilled).length,
    HATCH: marks.filter(isHatched).length,
    LINE: marks.filter((mark) => mark.kind === 'line').length,
    TEXT: marks.filter((mark) => mark.kind === 'text').length,
  };
  return Object.fromEntries(Object.entries(counts).filter(([, count]) => count > 0));
}

describe.each(Object.keys(files))('DXF of %s', (name) => {
  test('ezdxf finds nothing wrong in it, and nothing to mend', () => {
    const { errors, fixes, version, units } = found[name]!;
    expect({ errors, fixes }).toEqual({ errors: [], fixes: [] });
    // AC1015 is the format of the year 2000; unit 4 is the millimetre (DXF Reference, $INSUNITS).
    expect({ version, units }).toEqual({ version: 'AC1015', units: 4 });
  });

  test('has an outline for every box, a line for every line, a hatch in all that is hatched', () => {
    expect(found[name]!.counts).toEqual(expected(name));
  });

  test('every layer that something is on is in the table', () => {
    const { used, layers } = found[name]!;
    expect(used.filter((layer) => !layers.includes(layer))).toEqual([]);
  });

  test('dxf-parser reads the same', () => {
    const parsed = new DxfParser().parseSync(sheetsToDxf(files[name]!))!;
    const counts: Record<string, number> = {};
    for (const { type } of parsed.entities) counts[type] = (counts[type] ?? 0) + 1;
    const { HATCH: _, ...others } = expected(name); // it knows no hatches
    expect(counts).toEqual(others);
    expect(parsed.header.$INSUNITS).toBe(4);
  });
});

describe('DXF', () => {
  test('is at full size: a stretcher is 215 by 65 mm on its layer, a header 102.5 by 65', () => {
    const { areas } = found.front!;
    const count = (ink: string) =>
      marksOf('front').filter((m) => m.kind === 'box' && m.ink === ink && !m.key).length;
    expect(areas.STRETCHERS).toHaveLength(count('stretcher'));
    expect(new Set(areas.STRETCHERS)).toEqual(new Set([215 * 65]));
    expect(new Set(areas.HEADERS)).toEqual(new Set([102.5 * 65]));
  });

  test('the origin is the wall’s left end at the ground; the header tells how far the drawing reaches', () => {
    const sheet = files.front![0]!;
    const corners = sheet.marks.filter((m) => m.kind !== 'text').map(cornersOf);
    const xs = corners.flatMap(({ xs }) => xs.map((x) => (x - sheet.origin.x) * sheet.scale));
    const ys = corners.flatMap(({ ys }) => ys.map((y) => (sheet.origin.y - y) * sheet.scale));
    const { extents, header } = found.front!;
    const near = (n: number) => expect.closeTo(n, 4);
    expect(extents).toEqual([
      [near(Math.min(...xs)), near(Math.min(...ys))],
      [near(Math.max(...xs)), near(Math.max(...ys))],
    ]);
    expect(header[0][0]).toBeLessThanOrEqual(extents[0][0] + 1e-6);
    expect(header[1][1]).toBeGreaterThanOrEqual(extents[1][1] - 1e-6);
    const brick = sheet.marks.find((m) => m.kind === 'box' && m.ink === 'stretcher')!;
    const left = (Math.min(...cornersOf(brick).xs) - sheet.origin.x) * sheet.scale;
    expect(left).toBeCloseTo(0, 6);
  });

  test('whatever a name holds is one text, and reads as it was or near it', () => {
    const { texts } = found.hostile!;
    for (const [, read] of HOSTILE) expect(texts).toContain(read);
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        expect(dxfText(text)).toMatch(/^[ -~]*$/);
      }),
      { numRuns: 500 },
    );
  });

  test('is plain ASCII, the same bytes each time, with no number that is none', () => {
    for (const [name, pages] of Object.entries(files)) {
      const dxf = sheetsToDxf(pages);
      expect(sheetsToDxf(pages)).toBe(dxf);
      expect(dxf, name).not.toMatch(/[^\x00-\x7f]/);
      expect(dxf.replace(/^ {2}1\n.*$/gm, ''), name).not.toMatch(
        /NaN|Infinity|undefined|\de[+-]?\d/,
      );
    }
  });

  test('has every hatch that an SVG drawing has', () => {
    const used = Object.values(LOOKS).flatMap((look) => look.hatch ?? []);
    expect(used.filter((hatch) => !hatchesKnown.includes(hatch))).toEqual([]);
  });
});
