/** Arches: radius, arcs, rings and what they take of a wall. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Arch,
  archCourses,
  archGaps,
  archOf,
  halfWidthAt,
  radiusOf,
  ringArea,
  ringBricks,
  ringsOf,
  soffitArea,
  wedgeArea,
} from '../../server/engine/setting-out';

const RING = { ring: 102.5, bed: 10 };
const made = (span: number, rise: number, rings = 1): Arch =>
  archOf({ span, rise, rings, ...RING })!;

describe('radius', () => {
  test('span 3.5 m, rise 1 m: 2.031 m, as worked out at paramvisions.com, “length & volume of the segmental arch”', () => {
    expect(radiusOf(3500, 1000) / 1000).toBeCloseTo(2.031, 3);
  });

  test('the same by (s² + 4h²) / 8h, as devutl.com, “Arch calculator”, has it', () => {
    for (const [s, h] of [
      [910, 115],
      [2400, 600],
      [1200, 150],
    ] as const)
      expect(radiusOf(s, h)).toBeCloseTo((s * s + 4 * h * h) / (8 * h), 9);
  });

  test('of a semicircle it is half the span, and its springers lie level', () => {
    const arch = made(1022.5, 511.25);
    expect(arch).toMatchObject({ radius: 511.25, drop: 0, skewback: 0 });
    expect(arch.lean).toBeCloseTo(Math.PI / 2, 12);
    expect(arch.crown).toBeCloseTo(511.25 + 102.5, 9);
  });
});

describe('arcs', () => {
  /**
   * Standard tapered arch bricks AR1 at the spans they are made for, as bovingdonbricks.co.uk prints them: so many bricks
   * in the semicircle, 75 mm at the back and so much at the soffit, ring 102 mm. Either number leaves parallel joints
   * of acceptable width.
   */
  test.each([
    [910, 59, 20, 21],
    [1360, 64, 28, 29],
    [1810, 66, 36, 37],
    [2710, 69, 53, 54],
  ])('span %i mm: bricks of 75 and %i mm, %i or %i to the semicircle', (span, thin, ...numbers) => {
    const arch = archOf({ span, rise: span / 2, rings: 1, ring: 102, bed: 10 })!;
    const joint = (radius: number, each: number, n: number) =>
      (2 * arch.lean * radius - n * each) / (n + 1);
    for (const n of numbers) {
      const [soffit, back] = [joint(arch.radius, thin, n), joint(arch.back, 75, n)];
      for (const each of [soffit, back]) {
        expect(each).toBeGreaterThan(7.5);
        expect(each).toBeLessThan(13);
      }
      // “The taper may vary between 0.9 mm and 1.6 mm for the smallest span.”
      expect(Math.abs(soffit - back)).toBeLessThan(1.6);
    }
  });
});

describe('rings', () => {
  test('a semicircle over 900 mm by hand: 19 uncut bricks, 8.9 mm at the soffit, 25 at the back', () => {
    const arch = made(900, 450);
    const [ring] = ringsOf(arch, 65, 5);
    // π x 450 = 1413.7; (1413.7 - 5) / 70 = 20.1, and the odd number below it is 19.
    expect(ring!.count).toBe(19);
    expect(ring!.soffit).toBeCloseTo((Math.PI * 450 - 19 * 65) / 20, 9);
    expect(ring!.back).toBeCloseTo((Math.PI * 552.5 - 19 * 65) / 20, 9);
  });

  test('axed bricks are whole at the back, and their joints even', () => {
    const arch = made(900, 450);
    const [ring] = ringsOf(arch, 65, 10, 'axed');
    // π x 552.5 = 1735.7; (1735.7 - 10) / 75 = 23.009.
    expect(ring).toMatchObject({ count: 23 });
    expect(ring!.soffit).toBe(ring!.back);
    const wedge = (Math.PI * (552.5 ** 2 - 450 ** 2)) / 2 - 24 * ring!.back * 102.5;
    expect(ringBricks(ring!, arch.lean, 65, 'axed')).toBeCloseTo(wedge, 6);
  });

  test('are odd, as many as go in, and wider at the back than at the soffit, whatever the arch', () => {
    const shapes = fc.record({
      span: fc.double({ min: 300, max: 6000, noNaN: true }),
      share: fc.double({ min: 0.02, max: 0.5, noNaN: true }),
      rings: fc.integer({ min: 1, max: 5 }),
    });
    fc.assert(
      fc.property(shapes, ({ span, share, rings }) => {
        const arch = made(span, span * share, rings);
        const found = ringsOf(arch, 65, 5);
        expect(found).toHaveLength(rings);
        for (const ring of found) {
          expect(ring.count % 2).toBe(1);
          expect(ring.soffit).toBeGreaterThanOrEqual(5 - 1e-6);
          expect(ring.back).toBeGreaterThan(ring.soffit);
          const arc = 2 * arch.lean * ring.inner;
          expect((ring.count + 2) * 70 + 5).toBeGreaterThan(arc - 1e-6);
          // Bricks and joints together are the ring itself.
          const joints = ((ring.soffit + ring.back) / 2) * (ring.count + 1) * RING.ring;
          const all = arch.lean * (ring.outer ** 2 - ring.inner ** 2);
          expect(ringBricks(ring, arch.lean, 65, 'rough') + joints).toBeCloseTo(all, 3);
        }
      }),
      { numRuns: 200 },
    );
  });
});

describe('what an arch takes of the face', () => {
  const shapes = fc.record({
    span: fc.double({ min: 300, max: 4000, noNaN: true }),
    share: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
    rings: fc.integer({ min: 1, max: 3 }),
  });

  test('is as wide all the way up as its area says, to a ten-thousandth', () => {
    fc.assert(
      fc.property(shapes, ({ span, share, rings }) => {
        const arch = made(span, span * share, rings);
        const steps = 20_000;
        const each = arch.crown / steps;
        let area = 0;
        for (let i = 0; i < steps; i++) area += 2 * halfWidthAt(arch, (i + 0.5) * each) * each;
        const exact = soffitArea(arch) + ringArea(arch);
        expect(Math.abs(area - exact) / exact).toBeLessThan(1e-4);
      }),
      { numRuns: 60 },
    );
  });

  test('course by course: gaps and wedges are its area, no gap wider than it is, and the last course holds the crown', () => {
    fc.assert(
      fc.property(shapes, ({ span, share, rings }) => {
        const arch = made(span, span * share, rings);
        const at = { middle: 5000, course: 7 };
        const courses = archCourses(arch, at, { gauge: 75, bed: 10 });
        expect(courses[0]!.course).toBe(7);
        expect(courses.length * 75).toBeGreaterThanOrEqual(arch.crown - 1e-6);
        expect((courses.length - 1) * 75).toBeLessThan(arch.crown);
        for (const { least, most, course } of courses) {
          expect(least).toBeLessThanOrEqual(most + 1e-9);
          for (const up of [10, 25, 40, 55, 75])
            expect(halfWidthAt(arch, (course - 7) * 75 + up)).toBeGreaterThanOrEqual(least - 1e-6);
        }
        const gaps = archGaps(courses, at);
        const whole = gaps.reduce((sum, { from, to }) => sum + (to - from) * 75, 0);
        const exact = soffitArea(arch) + ringArea(arch);
        expect(wedgeArea(arch, gaps, 75) + whole).toBeCloseTo(exact, 3);
      }),
      { numRuns: 200 },
    );
  });

  test('a skewback leans as the radius does: over 910 mm, 115 mm of rise, by hand', () => {
    const arch = made(910, 115);
    // r = (455² + 115²) / 230 = 957.6 mm; sin = 455 / 957.6.
    expect(arch.radius).toBeCloseTo((455 ** 2 + 115 ** 2) / 230, 9);
    const sin = 455 / arch.radius;
    expect(halfWidthAt(arch, arch.skewback)).toBeCloseTo((arch.radius + 102.5) * sin, 6);
    // The cosine of the lean is the centre's depth over the radius: the skewback rises by 102.5 of it.
    expect(arch.skewback).toBeCloseTo((102.5 * (arch.radius - 115)) / arch.radius, 6);
    expect(halfWidthAt(arch, 0)).toBe(455);
  });
});

test('what makes no arch is none', () => {
  const of = (span: number, rise: number, rings = 1) => archOf({ span, rise, rings, ...RING });
  for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(of(bad, 100)).toBeNull();
    expect(of(900, bad)).toBeNull();
    expect(of(900, 100, bad)).toBeNull();
  }
  expect(of(900, 451)).toBeNull();
  expect(of(900, 450)).not.toBeNull();
});
