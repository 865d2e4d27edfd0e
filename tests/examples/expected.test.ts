/**
 * Every example has its expected totals beside it, in a table that a reader can hold against the editor.
 * Each of those figures is worked out a second time in by-hand/, in plain arithmetic that shares nothing
 * with the engine: so the table is checked, and not merely copied.
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { archedGate } from './by-hand/arched-gate';
import { withLeft } from './by-hand/arithmetic';
import { deMauer } from './by-hand/de-mauer';
import { enclosure } from './by-hand/enclosure';
import { gardenWall } from './by-hand/garden-wall';
import { gatePiers } from './by-hand/gate-piers';
import { knockedPier } from './by-hand/knocked-pier';
import { logStore } from './by-hand/log-store';
import { repair } from './by-hand/repair';
import { repointing } from './by-hand/repointing';
import { steppedWall } from './by-hand/stepped-wall';
import { usWall } from './by-hand/us-wall';
import { figuresOf, jobOnDisk } from './engine';

const EXAMPLES: Readonly<Record<string, () => Record<string, number>>> = {
  'garden-wall': gardenWall,
  repair,
  'knocked-pier': knockedPier,
  repointing,
  'gate-piers': gatePiers,
  'arched-gate': archedGate,
  'log-store': logStore,
  enclosure,
  'stepped-wall': steppedWall,
  'us-wall': usWall,
  'de-mauer': deMauer,
};

const FOLDER = path.resolve(import.meta.dirname, '../../examples');

/** Rows of a table: `| north.bricks | 1,050 bricks |`. */
function expected(name: string): Map<string, string> {
  const text = readFileSync(path.join(FOLDER, name, 'expected.md'), 'utf8');
  const rows = [...text.matchAll(/^\| `([^`]+)` \| (.+?) \|$/gm)];
  return new Map(rows.map(([, id, value]) => [id!, value!]));
}

/** The engine keeps lengths of the setting-out to a millionth of a millimetre. */
const WITHIN = 1e-6;

describe.each(Object.keys(EXAMPLES))('%s', (name) => {
  const figures = figuresOf(jobOnDisk(`examples/${name}/job.perp`));
  const byHand = withLeft(EXAMPLES[name]!());
  const table = expected(name);

  test('the table has every figure of the job, and no other', () => {
    expect([...table.keys()].sort()).toEqual([...figures.keys()].sort());
  });

  test('a reader sees what the table says', () => {
    for (const [id, text] of table) expect(`${id} ${figures.get(id)!.text}`).toBe(`${id} ${text}`);
  });

  test('worked out by hand, every figure is the same', () => {
    expect(Object.keys(byHand).sort()).toEqual([...table.keys()].sort());
    for (const [id, value] of Object.entries(byHand)) {
      const off = Math.abs(figures.get(id)!.value - value);
      expect(off, `${id}: ${figures.get(id)!.value}, by hand ${value}`).toBeLessThanOrEqual(
        WITHIN * Math.max(1, Math.abs(value)),
      );
    }
  });
});
