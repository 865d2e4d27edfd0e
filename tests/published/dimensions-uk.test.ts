/** The British brickwork dimension table: Technical Information Sheet 9, Table 1 (215 mm bricks), as printed. */
import { describe, expect, test } from 'vitest';
import { findingCodes, jobOf } from '../examples/engine';
import { UK_SIZES } from './sizes';

/** Longer runs lose 20 mm in their joints, at 3 mm each: an opening of 5 1/2 bricks has seven. */
const SHORT = UK_SIZES.filter(([bricks]) => bricks <= 6);
const NARROW = UK_SIZES.filter(([bricks]) => bricks <= 5);

const wall = (length: number, right: string) =>
  jobOf(`use uk\n\nwall w\n  length ${length} mm\n  height 4 courses\n  right ${right}\n`);

/** A window: work stands under and over it. */
const opening = (width: number) =>
  jobOf(
    `use uk\n\nwall w\n  length ${width + 4 * 900 - 20} mm\n  height 12 courses\n\n  opening o\n    from left 1790 mm\n    width ${width} mm\n    sill 4 courses\n    height 4 courses\n`,
  );

const joints = (length: number, right: string) =>
  wall(length, right).works[0]!.facts.settingOut!.bands[0]!.segments[0]!.runs[0]!.joint;

describe('CO-: a wall with two free ends', () => {
  const rows = UK_SIZES.filter(([, , , pier]) => pier !== undefined);
  test.each(rows)('%f bricks: %f %f %f mm', (_, __, ___, pier) => {
    expect(findingCodes(wall(pier!, 'stopped'))).not.toContain('fit-run');
    expect(joints(pier!, 'stopped')).toBeCloseTo(10, 6);
  });
  test.each(SHORT)('%f bricks and 20 mm do not work', (_, __, ___, pier) => {
    expect(findingCodes(wall(pier! + 20, 'stopped'))).toContain('fit-run');
  });
});

describe('CO: a wall with one free end, the other against something', () => {
  test.each(UK_SIZES)('%f bricks: %f %f mm', (_, __, panel) => {
    expect(findingCodes(wall(panel, 'butted'))).not.toContain('fit-run');
    expect(joints(panel, 'butted')).toBeCloseTo(10, 6);
  });
  test.each(SHORT)('%f bricks and 20 mm do not work', (_, __, panel) => {
    expect(findingCodes(wall(panel + 20, 'butted'))).toContain('fit-run');
  });
});

describe('CO+: an opening with work over it', () => {
  test.each(UK_SIZES)('%f bricks: %f mm', (_, width) => {
    expect(findingCodes(opening(width))).not.toContain('opening-width');
  });
  test.each(NARROW)('%f bricks and 20 mm do not work', (_, width) => {
    expect(findingCodes(opening(width + 20))).toContain('opening-width');
  });
});

describe('coursing: Key skills resource sheet, Crown copyright 2000', () => {
  const high = (height: string) => jobOf(`use uk\n\nwall w\n  length 890 mm\n  height ${height}\n`);
  test('four courses are 300 mm', () => {
    expect(high('4 courses').works[0]!.facts.height).toBeCloseTo(300, 9);
  });
  test('900 mm are twelve courses', () => {
    const job = high('900 mm');
    const courses = job.works[0]!.figures.find((f) => f.key === 'courses')!;
    expect(courses.term.value.toNumber()).toBe(12);
    expect(findingCodes(job)).not.toContain('height-joints');
  });
});
