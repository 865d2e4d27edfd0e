/** Walls that meet, from their lines to their pieces on plan: nothing overlaps, and what meets is closed up to its joints. */
import { describe, expect, test } from 'vitest';
import { placeCourse, type SettingOut, tally } from '../../server/engine/setting-out';
import {
  areaOf,
  courseOnGround,
  openArea,
  type Standing,
  worstOverlap,
} from '../setting-out/on-plan';
import { jobOf } from './world';

const START = 'perpend 1\nuse uk\n';
const wall = (name: string, length: string, more: string, courses = 12) =>
  `wall ${name}\n  stands held\n  length ${length}\n  height ${courses} courses\n${more}`;

const laidIn = (text: string) => {
  const { works } = jobOf(`${START}${text}`);
  return (name: string): SettingOut => {
    const { facts } = works.find((w) => w.name === name)!;
    return facts.laid ?? facts.settingOut!;
  };
};

const figures = (text: string, name: string) =>
  new Map(
    jobOf(`${START}${text}`)
      .works.find((w) => w.name === name)!
      .figures.map((f) => [f.key, f.term.value.toNumber()]),
  );

describe('a half-brick wall bonded into the face of another', () => {
  // 4490 mm are 20 bricks; the other wall stands against its back, 1127.5 mm from its left end: over the middle of a brick.
  const text = `${wall('north', '4490 mm', '')}${wall('inner', '2250 mm', '  left tee north 1181.25 mm bonded\n')}`;
  const laid = laidIn(text);
  const north: Standing = { x: 0, y: 0, way: 0 };
  const inner: Standing = { x: 1181.25 + 102.5, y: 102.5, way: 1 };
  const stood = [
    { out: laid('north'), at: north },
    { out: laid('inner'), at: inner },
  ];

  test.each([0, 1, 2, 3])('in course %i nothing overlaps and nothing is left open', (course) => {
    const boxes = courseOnGround(stood, course);
    expect(worstOverlap(boxes)).toBeLessThan(1e-6);
    const junction = { x: 900, y: 0, right: 1600, top: 102.5 };
    expect(openArea(junction, boxes, 10)).toBeLessThan(1e-3);
    const joint = { x: 1181.25, y: 102.5, right: 1181.25 + 102.5, top: 200 };
    expect(openArea(joint, boxes, 10)).toBeLessThan(1e-3);
  });

  test('runs into it in every second course, right through', () => {
    const reach = [0, 1, 2, 3].map((course) =>
      Math.min(...placeCourse(laid('inner'), course).map((p) => p.x)),
    );
    expect(reach).toEqual([-102.5, 10, -102.5, 10]);
  });

  test('both together are as much work as two walls that only touch, but for the joint between them', () => {
    const apart = laidIn(text.replace('bonded', 'tied'));
    const gross = (of: typeof laid) =>
      tally(of('north')).grossVolume + tally(of('inner')).grossVolume;
    expect(gross(laid)).toBeCloseTo(gross(apart), 3);
  });

  test('the pieces counted are the pieces placed', () => {
    const placed = Array.from({ length: 12 }, (_, course) =>
      courseOnGround(stood, course).reduce((sum, box) => sum + areaOf(box), 0),
    ).reduce((sum, area) => sum + area, 0);
    const volume = stood.reduce((sum, { out }) => sum + tally(out).brickVolume, 0);
    expect(volume / 65).toBeCloseTo(placed, 3);
  });
});

describe('a wall block-bonded into standing work', () => {
  const text = wall('garden', '2250 mm', '  right block-bonded 3 courses\n');

  test('runs in by half a brick in three courses, and stops at it in three', () => {
    const reach = [0, 1, 2, 3, 4, 5, 6].map((course) =>
      Math.max(...placeCourse(laidIn(text)('garden'), course).map((p) => p.x + p.along)),
    );
    expect(reach).toEqual([2352.5, 2352.5, 2352.5, 2240, 2240, 2240, 2352.5]);
  });

  test('by hand: two pockets in twelve courses, six bricks cut out, half a brick more in six courses', () => {
    const found = figures(text, 'garden');
    expect(found.get('pockets')).toBe(2);
    expect(found.get('cut-out')).toBe(6);
    // Against the line each course is ten bricks, in whole ones or with a half at both ends; run in it is ten and a half.
    expect(found.get('bricks')).toBe(6 * 10 + 6 * 10.5);
  });

  test('three courses to a block where its line says none: the library’s', () => {
    const plain = figures(text.replace(' 3 courses', ''), 'garden');
    expect(plain).toEqual(figures(text, 'garden'));
  });

  test('at the left end the blocks stand out past it', () => {
    const left = laidIn(text.replace('right', 'left'))('garden');
    const reach = [0, 3].map((course) => Math.min(...placeCourse(left, course).map((p) => p.x)));
    expect(reach).toEqual([-102.5, 10]);
    expect(tally(left).grossVolume).toBeCloseTo(tally(laidIn(text)('garden')).grossVolume, 3);
  });

  test('an opening, a pier and a movement joint keep their places in it', () => {
    const things = `  left block-bonded\n  opening gate\n    from left 1125 mm\n    width 910 mm\n  movement-joint left 3375 mm\n`;
    const garden = laidIn(wall('garden', '5625 mm', things))('garden');
    const [band] = garden.bands;
    expect(band!.segments.map((s) => s.to)).toEqual([1125, 3375, 5625]);
    expect(garden.spec.openings[0]!.from).toBe(1125);
  });
});

describe('a corner with a wall that is block-bonded at its other end', () => {
  test('bonds, and both are counted once', () => {
    const text = `${wall('a', '2250 mm', '  left block-bonded\n  right quoin b\n')}${wall('b', '1790 mm', '  left quoin a\n')}`;
    const laid = laidIn(text);
    const stood = [
      { out: laid('a'), at: { x: 0, y: 0, way: 0 as const } },
      { out: laid('b'), at: { x: 2250, y: 0, way: 1 as const } },
    ];
    for (const course of [0, 1, 2, 3, 4, 5]) {
      const boxes = courseOnGround(stood, course);
      expect(worstOverlap(boxes)).toBeLessThan(1e-6);
      const corner = { x: 2250 - 102.5, y: 0, right: 2250, top: 102.5 };
      expect(openArea(corner, boxes, 10)).toBeLessThan(1e-3);
    }
    const codes = jobOf(`${START}${text}`).findings.map((f) => f.code);
    expect(codes).not.toContain('quoin-unbonded');
  });
});
