/** Weights and heights at which cautions begin, against those who set them; each caution by itself: tests/findings/cautions. */
import { describe, expect, test } from 'vitest';
import { findingCodes, jobOf } from '../examples/engine';

const told = (code: string, text: string, use = 'uk') =>
  findingCodes(jobOf(`use ${use}\n\n${text}`)).includes(`caution-${code}`);

/**
 * HSE, Construction Information Sheet 37, Handling heavy building blocks (scribd 486929427), 4: blocks heavier than 20 kg
 * (44 lb), handled alone and over and over.
 */
describe('blocks heavier than 20 kg', () => {
  const backed = (mass: string) =>
    `brick heavy\n  size 440 x 100 x 215 mm\n  joint 10 mm\n  mass ${mass}\n\nwall w\n  stands held\n  length 2240 mm\n  height 9 courses\n  backing heavy cavity 75 mm\n`;
  test('are told of, and 20 kg are not', () => {
    expect(told('lifting', backed('20 kg'))).toBe(false);
    expect(told('lifting', backed('20.1 kg'))).toBe(true);
  });
  test('44 lb are 20 kg', () => {
    expect(told('lifting', backed('44 lb'))).toBe(false);
    expect(told('lifting', backed('44.5 lb'))).toBe(true);
  });
});

const bagged = (pack: string, material: string) =>
  `material ${material}\n  pack ${pack} bag at $6\n\nwall w\n  stands held\n  length 2240 mm\n  height 4 courses\n`;

// CPWR Construction Solutions: half-weight bags of cement, since one of 94 lb is over NIOSH's 51 lb.
test('a bag of 94 lb is over NIOSH’s 51 lb, and one of half the weight is not', () => {
  const bag = (pounds: number) => told('bags', bagged(`${pounds} lb`, 'portland-cement'), 'us');
  expect([bag(94), bag(51.1), bag(51), bag(47)]).toEqual([true, true, false, false]);
});

// Planning Portal, Fences, gates and garden walls (Government leaflet): advice beyond a lean of 30, 70 and 100 mm.
test.each([
  ['1/2 brick', 'stretcher', 30],
  ['1 brick', 'english', 70],
  ['1.5 bricks', 'english', 100],
])('%s, %s: advice beyond %i mm', (thick, bond, mm) => {
  const wall = (lean: number) =>
    `wall w\n  thick ${thick}\n  bond ${bond}\n  length 2240 mm\n  height 4 courses\n  leans ${lean} mm\n`;
  expect(told('leaning', wall(mm))).toBe(false);
  expect(told('leaning', wall(mm + 1))).toBe(true);
});

// Planning Portal (England): over 1 m beside a highway used by vehicles, over 2 m elsewhere. Courses of 100 mm.
test.each([
  ['1 m', 10],
  ['40 m', 20],
])('a road %s away: %i courses of 100 mm need no permission, one more does', (road, courses) => {
  const wall = (count: number) =>
    `brick tall\n  size 215 x 102.5 x 90 mm\n  joint 10 mm\n\nwall w\n  brick tall\n  length 2240 mm\n  height ${count} courses\n  road ${road}\n`;
  expect(told('planning', wall(courses))).toBe(false);
  expect(told('planning', wall(courses + 1))).toBe(true);
});

// Party Wall etc. Act 1996, section 6, and 3 to 5 (statute text, forresterandco.com): within 6 m; on the line itself.
test('a footing 6 m from the boundary is told of, one further is not', () => {
  const wall = (away: string) =>
    `wall w\n  length 2240 mm\n  height 4 courses\n  footing 450 x 225 mm\n  boundary ${away}\n`;
  expect(told('boundary', wall('6 m'))).toBe(true);
  expect(told('boundary', wall('6.01 m'))).toBe(false);
  expect(told('party-wall', wall('0 m'))).toBe(true);
  expect(told('party-wall', wall('0.1 m'))).toBe(false);
});

// OSHA 29 CFR 1926.706(b), from memory: masonry walls over 8 ft high are braced.
test('an American wall over 8 ft is braced: 36 courses of modular brick are 8 ft', () => {
  const wall = (courses: number) =>
    `wall w\n  stands held\n  length 95 5/8 in\n  height ${courses} courses\n`;
  expect(told('bracing', wall(36), 'us')).toBe(false);
  expect(told('bracing', wall(37), 'us')).toBe(true);
});

/** What a caution says, with the numbers of its source in it. */
describe('the words', () => {
  const said = (code: string, text: string, use: string) =>
    jobOf(`use ${use}\n\n${text}`)
      .findings.filter((f) => f.code === `caution-${code}`)
      .map((f) => f.message.replaceAll('\u00a0', ' '))
      .join();
  const wall = 'wall w\n  stands held\n  length 2240 mm\n  height 4 courses\n';
  const repair = 'repair r\n  repoint 1 m2 raked 20 mm\n';

  test.each([
    // NHBC Standards 2022 and 2023 (nhbc-standards.co.uk): 3 C and falling; up to 6 days; over 30 C.
    ['weather', wall, 'uk', ['3 C and falling', '6 days', '30 C']],
    // NPS Preservation Brief 2 (oldhouseweb.com): 40 to 95 F.
    ['weather', wall, 'us', ['40 and 95 F', '100 F', '4 ft']],
    // HSE, brick and tile (workright.campaign.gov.uk): 0.1 mg/m3, eight hours; INDG463: brick up to 30%.
    ['silica', wall, 'uk', ['0.1 mg/m3', '8 hours', '30%']],
    // HSE INDG463: mortar 25 to 70%.
    ['raking', repair, 'uk', ['25 to 70%']],
    // OSHA Table 1 (29 CFR 1926.1153): 25 ft3 a minute for each inch of wheel; respirators of APF 10 and 25.
    ['raking', repair, 'us', ['25 cubic feet a minute', 'APF 10', '4 hours']],
  ] as const)('%s', (code, text, use, numbers) => {
    for (const number of numbers) expect(said(code, text, use)).toContain(number);
  });
});
