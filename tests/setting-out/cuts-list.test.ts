import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cutList,
  cutsInPier,
  piecesAt,
  placeCourse,
  type SettingOut,
  setOut,
  tally,
} from '../../server/engine/setting-out';
import { plainWall, rudeWall } from './arbitrary';
import { BONDS, overAll, wall } from './fixtures';

/** The list written out: each piece with its course and where it begins, as often as it stands there. */
function writtenOut(out: SettingOut, range: { from: number; to: number | null }): string[] {
  return cutList(out, range).flatMap((place) => {
    const { piece, from, to, every, each, at } = place;
    const spots = at.reduce((sum, s) => sum + s.count, 0);
    const lines: string[] = [];
    for (let course = from; course < to; course += every)
      for (const { from: x, by, count } of at)
        for (let i = 0; i < count; i++)
          for (let leaf = 0; leaf < each / spots; leaf++)
            lines.push(`${course} ${piece} ${(x + i * by).toFixed(3)}`);
    return lines;
  });
}

/** The same from pieces laid one by one. */
function laidOut(out: SettingOut, from: number, to: number): string[] {
  const lines: string[] = [];
  for (let course = from; course < to; course++)
    for (const { piece, x } of placeCourse(out, course))
      if (piece !== 'whole') lines.push(`${course} ${piece} ${x.toFixed(3)}`);
  return lines;
}

const closeTo = (line: string) => line.replace('-0.000', '0.000');

describe('the cut list', () => {
  test.each([
    ['plain walls', plainWall],
    ['walls with openings and piers', rudeWall],
  ])('of %s is every piece that is laid and not whole, in its course and its place', (_, walls) => {
    fc.assert(
      fc.property(walls, fc.nat(3), (spec, from) => {
        const out = setOut(spec);
        const list = writtenOut(out, { from, to: null }).map(closeTo).sort();
        expect(list).toEqual(laidOut(out, from, spec.courses).map(closeTo).sort());
      }),
      { numRuns: 150 },
    );
  });

  test('agrees with the count', () => {
    fc.assert(
      fc.property(rudeWall, (spec) => {
        const out = setOut(spec);
        const all = tally(out);
        const sum = (piece: string) =>
          cutList(out, { from: 0, to: null })
            .filter((p) => p.piece === piece)
            .reduce((total, p) => total + piecesAt(p), 0);
        expect(sum('half')).toBe(all.halves);
        expect(sum('three-quarter')).toBe(all.threeQuarters);
        expect(sum('closer')).toBe(all.closers);
        expect(sum('cut')).toBe(all.cuts.reduce((total, c) => total + c.count, 0));
      }),
      { numRuns: 150 },
    );
  });

  test('stretcher bond: a half bat at either end of every second course', () => {
    const list = cutList(setOut(wall({ length: overAll(10), courses: 9 })), { from: 0, to: null });
    expect(list).toEqual([
      {
        piece: 'half',
        length: 102.5,
        from: 1,
        to: 9,
        every: 2,
        each: 2,
        at: [
          { from: 0, by: 112.5, count: 1 },
          { from: overAll(10) - 102.5, by: 112.5, count: 1 },
        ],
      },
    ]);
    expect(piecesAt(list[0]!)).toBe(8);
  });

  test('one brick thick in English bond: closers behind the quoin headers', () => {
    const spec = wall({ bond: BONDS.english, thickness: 2, length: overAll(12), courses: 4 });
    const [closers, ...others] = cutList(setOut(spec), { from: 0, to: null });
    expect(others).toEqual([]);
    expect(closers).toMatchObject({ piece: 'closer', length: 46.25, every: 2, each: 2 });
  });

  test('costs nothing for bricks: ten million in a wall', () => {
    const spec = wall({ length: overAll(100_000), courses: 200 });
    const out = setOut(spec);
    const list = cutList(out, { from: 0, to: null });
    expect(list.length).toBeLessThan(3);
    expect(list.reduce((sum, p) => sum + piecesAt(p), 0)).toBe(tally(out).halves);
  });

  test('of a pier: what its plans cut, in courses and not in places', () => {
    const plans = [
      [
        { piece: 'whole' as const, count: 3 },
        { piece: 'closer' as const, count: 2 },
      ],
      [],
    ];
    const pier = { name: 'p', width: 440, depth: 215, courses: 7, plans };
    expect(cutsInPier(pier, { from: 1, to: null })).toEqual([
      { piece: 'closer', length: 0, from: 2, to: 7, every: 2, each: 2, at: [] },
    ]);
  });
});
