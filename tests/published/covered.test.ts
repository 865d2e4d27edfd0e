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
  ['bricks and mortar by thickness, by joint, to a thousand', ['mortar-laid'], 'NAVEDTRA'],
  ['mortar by thickness: old German brick, half a brick to two', ['mortar-laid'], 'Opderbecke'],
  ['mortar to the m2: DE formats', ['mortar-laid'], 'Priller'],
  ['repointing: litres by depth, by area and by length', ['quantities'], '17.2%'],
  ['bricks more for an attached pier', ['piers'], 'scribd 366389516'],
  ['copings', ['coping'], 'common practice'],
  ['mixes', ['mixes', 'mortars'], 'Lyons'],
  ['classes and types of mortar, from their parts', ['mortar-classes'], 'Beall'],
  [
    'cement coefficients of CPWD, by both yield models',
    ['mortars', '../engine/mortar/mixes'],
    'CPWD',
  ],
  ['worked examples of mixes, with bags and money', ['mixing', 'mortars'], 'engineeringcivil.com'],
  ['bulking of sand', ['mixing', '../engine/mortar/mixes'], 'slideplayer 3426948'],
  ['dry mortar in bags', ['mixing'], 'mot.be'],
  ['working life', ['limits'], 'Masonry Magazine'],
  ['sizes of bricks within tolerance, and over a delivery', ['tolerances'], 'EN 771-1'],
  ['labour: Andalusia; the libraries’ outputs beside what is printed', ['labour'], 'Andalucía'],
  ['cement and sand to the m3, Andalusia', ['mixing'], 'AGM00200'],
  ['labour: QS hours, IS 7272, team, unloading, taking down', ['labour'], 'IS 7272'],
  ['the slower of laying and serving', ['../engine/hours', 'labour'], 'scribd 617796324'],
  ['lift of a day, coping, movement joints, raking, bulk of waste', ['limits'], 'BS 5628-2'],
  ['cautions: weights, leans, heights, temperatures, silica', ['cautions'], 'Information Sheet 37'],
  ['cautions, each with where it applies and where not', ['../findings/cautions/uk'], 'HSG47'],
  ['lintels and arches', ['openings'], 'NHBC'],
  ['footings', ['footings'], 'foundation'],
  ['piers and their plans', ['piers'], 'Lueger'],
  ['currencies and standard rates of tax', ['money'], 'ISO 4217'],
  ['units', ['units'], 'yard and pound'],
  ['what the command line prints of these', ['command-line'], 'Crown copyright'],
  ['spread of prices: closed forms', ['../engine/ranges/spread'], 'Irwin'],
  ['spread of prices in steps, of the slower of two', ['../engine/ranges/steps'], 'closed form'],
  ['free-standing heights', ['free-standing'], 'Planning Portal'],
];

/** Read, and not checked: nothing here works it out, or the source contradicts itself. */
const GAPS: readonly (readonly [string, string])[] = [
  ['mean girth of a closed run of walls (DIT Dublin; 40.80 m)', 'no figure of a job is a girth'],
  ['DIN 18100 heights', 'the copy read says 201 cm, the standard 200.5'],
  ['fatbadgers bond counts', 'held within 4% only: its own assumption is rough'],
  ['Spon’s mortar table', 'from memory only'],
  [
    '0.5 to 0.8 m3 of mortar to 1000 bricks (estimating handbook)',
    'an allowance for what is lost on site; the firm’s waste line says it',
  ],
  [
    '1 kg of mortar to a brick, 1 t of sand to 1000 (Collinson)',
    'a rule for ordering: 0.6 kg is what lies in the joints of a solid brick',
  ],
  [
    '32 l or 50 kg of mortar to the m2, Module 50 (mot.be)',
    'it contradicts its own 12.5 l to 25 kg: 50 kg are 25 l',
  ],
  ['360 l of pointing to 100 m2 (mur-tag.dk)', 'it does not say how deep, nor for which brick'],
  ['cube strengths at 7 and 28 days, older BS 5628', 'no figure is a strength but that of a class'],
  [
    'workmanship: beds within 5 mm, line, plumb',
    'the tool sets out work; it does not measure what was built',
  ],
  [
    'hours to cut out a brick, to repoint a m2',
    'none found in print; the libraries’ are common practice',
  ],
  ['12 man-hours to the m3 (architects-construction)', 'an unnamed page, mixing and laying in one'],
  ['water carrier (bhisti) of IS 7272', 'a gang serves as one: its water is in the serving line'],
  [
    'brickwork of 220 kg/m2 by half bricks (BS 648)',
    'from memory; a wall’s mass is no figure of a job',
  ],
  ['manual handling, 25 kg and 16 kg', 'from memory; HSE’s own page sets no safe weight'],
  [
    'rebuild or repoint where 25 to 50% is bad (NPS Preservation Brief 2)',
    'a judgement on site, no figure',
  ],
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
