/** What becomes of the bricks that come down: laid again, halves, broken, bought. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../harness/seed';
import { figuresOf, GATE, OWN } from './repairing';

const DOWN = `${OWN}rebuild 120 bricks\n`;

describe('salvage', () => {
  // 60% of 120; a brick in twenty breaks at cleaning, so 72 / 0.95 = 75.8 are tried.
  test('a share of what comes down, in whole bricks', () => {
    const of = figuresOf(`${DOWN}salvage 60%`);
    expect([of('reused'), of('cleaned'), of('broken'), of('short')]).toEqual([72, 76, 48, 48]);
    expect(figuresOf(`${DOWN}salvage 62%`)('reused')).toBe(74);
  });

  test('so many bricks, and of a range its middle', () => {
    expect(figuresOf(`${DOWN}salvage 70 bricks`)('reused')).toBe(70);
    expect(figuresOf(`${DOWN}salvage 70..80 bricks`)('reused')).toBe(75);
  });

  test('never more than come down, and none cleaned that is not there', () => {
    const of = figuresOf(`${DOWN}salvage 500 bricks`);
    expect([of('reused'), of('cleaned'), of('broken'), of('short')]).toEqual([120, 120, 0, 0]);
  });

  test('bricks of a coping come down with the rest', () => {
    // 1.35 m of bricks on edge, 75 mm each.
    const of = figuresOf(`${DOWN}recope 1.35 m\nsalvage 50%`);
    expect([of('down'), of('recoped'), of('reused'), of('short')]).toEqual([138, 18, 69, 69]);
  });

  test('bricks cut out come in pieces: none is cleaned, each is bought', () => {
    const of = figuresOf(`${DOWN}cut-out 5 bricks\nsalvage 100%`);
    expect([of('down'), of('reused'), of('short')]).toEqual([120, 120, 5]);
  });
});

describe('halves', () => {
  // Behind a face in English bond every second course is stretchers, one of two behind: a brick in four goes unseen.
  test('go behind the face, and two of them save a brick', () => {
    const of = figuresOf(`${OWN}rebuild 4.5 m x 8 courses\nsalvage 50%\nhalves 10%`);
    expect([of('down'), of('reused'), of('halves'), of('halves-used')]).toEqual([320, 160, 32, 32]);
    expect([of('broken'), of('short')]).toEqual([320 - 160 - 32, 320 - 160 - 16]);
  });

  // A pier of one and a half bricks hides a half bat in every course.
  test('go in the core of a pier, as many as it has courses', () => {
    const of = figuresOf('in gate\nrebuild 14 courses\nsalvage 20 bricks\nhalves 30', GATE);
    expect([of('halves'), of('halves-used'), of('short')]).toEqual([30, 14, 63 - 20 - 7]);
  });

  // Two bricks square hide a brick in each course, where its core is bricks at all: 16 courses of 1.2 m.
  const SQUARE =
    'brick plain\nmix general\nsize 2 x 2 bricks\nrebuild 1.2 m\nsalvage 50%\nhalves 20\n';

  test.each(['concrete', 'hollow', 'bats'])('have no place in a core of %s', (core) => {
    const own = figuresOf(`${SQUARE}core ${core}`);
    const of = (key: string) => own(key);
    expect(['down', 'reused', 'halves-used', 'short'].map(of)).toEqual([96, 48, 0, 48]);
    const gate = GATE.replace('1.5 x 1.5', '2 x 2').replace('cap ', `core ${core}\n  cap `);
    const at = figuresOf('in gate\nrebuild 1.2 m\nsalvage 50%\nhalves 20', gate);
    expect(['down', 'reused', 'halves-used', 'short'].map(at)).toEqual([96, 48, 0, 48]);
  });

  test.each([
    ['a core of bricks', 'core bricks'],
    ['a core of halves', 'core halves'],
  ])('have one in %s', (_what, core) => {
    const of = figuresOf(`${SQUARE}${core}`);
    expect([of('halves-used'), of('short')]).toEqual([20, of('down') - of('reused') - 10]);
  });

  test('have no place where every brick shows', () => {
    const of = figuresOf('brick plain\nmix general\nrebuild 1.35 m x 8 courses\nhalves 10');
    expect([of('halves'), of('halves-used'), of('short')]).toEqual([10, 0, 48]);
  });

  test('an odd one saves nothing', () => {
    const of = figuresOf(`${OWN}rebuild 4.5 m x 8 courses\nhalves 7`);
    expect([of('halves-used'), of('short')]).toEqual([6, 317]);
  });

  test('so many bricks hide as many as their bond would in any part of the wall', () => {
    // A quarter of 120 bricks, two halves each.
    const of = figuresOf(`${DOWN}halves 100`);
    expect(of('halves-used')).toBe(60);
  });
});

describe('whatever is said', () => {
  const amount = fc.integer({ min: 1, max: 400 });
  const part = fc.integer({ min: 0, max: 100 });
  const salvage = fc.oneof(
    part.map((n) => `salvage ${n}%\n`),
    amount.map((n) => `salvage ${n} bricks\n`),
    fc.constant(''),
  );
  const halves = fc.oneof(
    part.map((n) => `halves ${n}%\n`),
    amount.map((n) => `halves ${n}\n`),
    fc.constant(''),
  );
  const said = (of: ReturnType<typeof figuresOf>, key: string, line: string) =>
    line ? of(key) : 0;

  test('every brick down is laid again, leaves a half or is broken; every brick wanted is there', () => {
    fc.assert(
      fc.property(amount, salvage, halves, part, (down, reuse, kept, cut) => {
        const of = figuresOf(
          `${OWN}rebuild ${down} bricks\ncut-out ${cut + 1} bricks\n${reuse}${kept}`,
        );
        const reused = said(of, 'reused', reuse);
        const half = said(of, 'halves', kept);
        const saved = said(of, 'halves-used', kept) / 2;
        expect(reused + half + of('broken')).toBe(down);
        expect(reused + saved + of('short')).toBe(down + cut + 1);
        for (const n of [reused, half, saved, of('broken'), of('short')])
          expect(n).toBeGreaterThanOrEqual(0);
        expect(saved * 2).toBeLessThanOrEqual(half);
        if (reuse) expect(of('cleaned')).toBeGreaterThanOrEqual(reused);
        if (reuse) expect(of('cleaned')).toBeLessThanOrEqual(down - half);
      }),
      { numRuns: 30 },
    );
  });
});
