/**
 * What is checked against the outside, and where: so that a gap shows. A subject is in one table or the other; each
 * file named has a source beside its checks.
 */
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

const HERE = import.meta.dirname;

/** Subject, the files that check it, and a word of a source that is named there. */
const CHECKED: readonly (readonly [string, readonly string[], string])[] = [
  ['formats: bricks to the m2 or ft2, UK, US, DE, NL, AU', ['formats'], 'archtoolbox'],
  ['large formats and blocks to the m2, DE walls of 115 to 490 mm', ['blocks'], 'Priller'],
  ['bricks to the m3', ['cubic'], 'IS 1077'],
  ['a brick is two widths and a joint', ['coordination'], 'Designing Buildings'],
  ['UK lengths: CO+, CO, CO-', ['dimensions-uk'], 'Technical Information Sheet 9'],
  ['DE lengths and courses', ['dimensions-de'], 'DIN 18100'],
  ['US courses and lengths', ['dimensions-us'], 'BIA Technical Note 10B'],
  ['AU, IN, NL courses', ['blocks'], 'Midland Brick'],
  ['bricks to the m2 by thickness, half a brick to two', ['bonds', 'quantities'], 'Key skills'],
  ['facing bricks by bond, and bond corrections', ['bonds'], 'BIA Technical Note 10'],
  ['laps of every bond', ['laps'], 'DIN EN 1996-2'],
  ['mortar to bricks', ['quantities', 'mortars'], 'BIA Technical Note 10'],
  ['copings', ['coping'], 'common practice'],
  ['mixes', ['mixes', 'mortars'], 'Lyons'],
  ['classes and types of mortar, from their parts', ['mortar-classes'], 'Beall'],
  ['free-standing heights', ['free-standing'], 'Planning Portal'],
];

/** Read, and not checked: nothing here works it out, or the source contradicts itself. */
const GAPS: readonly (readonly [string, string])[] = [
  ['mean girth of a closed run of walls (DIT Dublin; 40.80 m)', 'no figure of a job is a girth'],
  ['DIN 18100 heights', 'the copy read says 201 cm, the standard 200.5'],
  ['fatbadgers bond counts', 'held within 4% only: its own assumption is rough'],
  ['Spon’s mortar table', 'from memory only'],
  ['BIA Technical Note 10, Table 4 in full', 'not found in print'],
];

describe('checked against the outside', () => {
  test.each(CHECKED)('%s', (_, files, source) => {
    const texts = files.map((file) => {
      const name = path.join(HERE, `${file}.test.ts`);
      expect(existsSync(name), name).toBe(true);
      return readFileSync(name, 'utf8');
    });
    expect(texts.some((text) => text.toLowerCase().includes(source.toLowerCase()))).toBe(true);
  });

  test('what is not says why', () => {
    for (const [what, why] of GAPS) expect(why.length, what).toBeGreaterThan(10);
  });
});
