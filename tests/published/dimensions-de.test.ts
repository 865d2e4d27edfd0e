/** Octametric dimensions of DIN 4172 and heights of courses, through the German library. */
import { describe, expect, test } from 'vitest';
import { figure, findingCodes, jobOf } from '../examples/engine';
import { DE_SIZES } from './sizes';

/** In millimetres, since 1.115 m could be read as 1115 m. */
const mm = (metres: number) => Math.round(metres * 1000);

const wall = (length: number, right = 'stopped', height = '4 courses', brick = 'nf') =>
  jobOf(
    `use de\n\nwall w\n  brick ${brick}\n  length ${mm(length)} mm\n  height ${height}\n  right ${right}\n`,
  );

const window = (width: number) =>
  jobOf(
    `use de\n\nwall w\n  length ${mm(width + 3.98)} mm\n  height 12 courses\n\n  opening o\n    from left 1.99 m\n    width ${mm(width)} mm\n    sill 4 courses\n    height 4 courses\n`,
  );

const joint = (job: ReturnType<typeof wall>) =>
  job.works[0]!.facts.settingOut!.bands[0]!.segments[0]!.runs[0]!.joint;

describe.each(DE_SIZES)('raster %f m', (raster, clear, outer) => {
  // KLB Klimaleichtblock, Maßordnung: outer = n x 12.5 - 1, opening = n x 12.5 + 1, projection = n x 12.5 cm.
  test('follows the rule of eighths', () => {
    const n = Math.round(raster / 0.125);
    expect(n * 0.125).toBeCloseTo(raster, 9);
    expect(n * 0.125 + 0.01).toBeCloseTo(clear, 9);
    expect(n * 0.125 - 0.01).toBeCloseTo(outer, 9);
  });
  test('the outer length works with joints of 10 mm', () => {
    expect(findingCodes(wall(outer))).not.toContain('fit-run');
    expect(joint(wall(outer))).toBeCloseTo(10, 6);
  });
  test('the projection works with joints of 10 mm', () => {
    expect(joint(wall(raster, 'butted'))).toBeCloseTo(10, 6);
  });
  test('the opening works', () => {
    expect(findingCodes(window(clear))).not.toContain('opening-width');
  });
});

test('a wall of 2.50 m raster is 2.49 m', () => {
  expect(joint(wall(2.49))).toBeCloseTo(10, 6);
});

// DIN 18100 as at bau-wiki.de, widths of door openings; 0.635 to 1.135 m.
test.each([0.635, 0.76, 0.885, 1.01, 1.135])('a door opening of %f m works', (width) => {
  expect(findingCodes(window(width))).not.toContain('opening-width');
});

test('twenty millimetres more do not', () => {
  expect(findingCodes(wall(1.01))).toContain('fit-run');
  expect(findingCodes(window(1.03))).toContain('opening-width');
});

// hausjournal.net, Mauersteine Maße: 8 DF = 6 NF = 4 x 2DF = 50 cm.
test.each([
  ['df', 8],
  ['nf', 6],
  ['zwei-df', 4],
] as const)('%s: %i courses are half a metre', (brick, courses) => {
  expect(figure(wall(0.99, 'stopped', `${courses} courses`, brick), 'w.height')).toBeCloseTo(
    0.5,
    9,
  );
  const said = wall(0.99, 'stopped', '50 cm', brick);
  expect(figure(said, 'w.courses')).toBe(courses);
  expect(findingCodes(said)).not.toContain('fit-height');
});
