/** Piers against what is printed of them. */
import { describe, expect, test } from 'vitest';
import { faceOf, pierPlans } from '../../server/engine/setting-out';
import { jobOf } from '../examples/engine';

const UK = { length: 215, width: 102.5, height: 65 };
// Modular, BIA: 7 5/8 x 3 5/8 x 2 1/4 in, joints of 3/8 in.
const US = { length: 193.675, width: 92.075, height: 57.15 };

const bricksIn = (text: string) => {
  const [figure] = jobOf(text).works[0]!.figures;
  return figure!.term.value.toNumber();
};

describe('bricks to a course', () => {
  // aiki-kenkyukai.com, How to build a brick wall with pillars: 12 x 12 in takes 4, 16 x 16 in takes 6 (hollow).
  test('of American columns: 4 in one of 12 in, 6 in one of 16 in', () => {
    const hollow = (halves: number) =>
      pierPlans({ width: halves, depth: halves, unit: US, joint: 9.525, core: 'hollow' })!;
    const inches = (mm: number) => (mm + 9.525) / 25.4;
    for (const [halves, nominal, bricks] of [
      [3, 12, 4],
      [4, 16, 6],
    ] as const) {
      const laid = hollow(halves);
      expect(inches(laid.width)).toBeCloseTo(nominal, 6);
      for (const { pieces } of laid.courses)
        expect(pieces.map((p) => p.piece)).toEqual(Array(bricks).fill('whole'));
    }
  });

  // Collinson, Brickwork and Bricklaying (zhclg.com): a two-brick pier in English bond is 440 mm square.
  test('of a pier 440 mm square: six whole bricks and two split for closers', () => {
    expect(bricksIn('pier g\n  size 440 x 440 mm\n  height 10 courses\n')).toBe(10 * (6 + 2));
  });
});

describe('a pier of the library', () => {
  const SIZES = [1, 1.5, 2, 2.5].flatMap((a) => [1, 1.5, 2, 2.5].map((b) => [a, b] as const));

  // Lueger, Lexikon der gesamten Technik (1904), Pfeilerverband: no two joints over each other in courses that follow.
  test.each(['uk', 'us', 'de'])('can be laid as it is counted, in %s', (library) => {
    for (const [a, b] of SIZES) {
      const job = jobOf(
        `use ${library}\n\npier g\n  size ${a} x ${b} bricks\n  height 2 courses\n`,
      );
      const { pier } = job.works[0]!.facts;
      const { placed, plan } = pier!;
      expect(placed).toBeDefined();
      for (const [i, { pieces }] of placed!.entries())
        for (const { piece, count } of plan.plans[i % plan.plans.length]!)
          expect(pieces.filter((p) => p.piece === piece)).toHaveLength(count);
    }
  });

  // Lueger, the same: on a square plan the second course is the first turned a quarter.
  test('two and two and a half bricks square turns its courses a quarter', () => {
    for (const halves of [4, 5]) {
      const counts = {
        4: [
          { piece: 'whole', count: 6 },
          { piece: 'closer', count: 4 },
        ],
        5: [
          { piece: 'whole', count: 10 },
          { piece: 'half', count: 1 },
          { piece: 'closer', count: 4 },
        ],
      } as const;
      const laid = pierPlans({
        width: halves,
        depth: halves,
        unit: UK,
        joint: 10,
        counts: [counts[halves as 4 | 5]],
      })!;
      const shown = (course: number, side: 'front' | 'left') =>
        faceOf(laid.courses[course]!, side).map((p) => p.piece);
      expect(shown(0, 'front')).toEqual(shown(1, 'left'));
      expect(shown(1, 'front')).toEqual(shown(0, 'left'));
    }
  });
});

/**
 * Calculating bricks and blocks (scribd 366389516; teachcivil.blogspot.com): a pier of one brick built into a half-brick
 * wall takes 14 bricks more to the metre of height, one of one and a half bricks 34: one brick a course, and two and a
 * half, by 13.33 courses. It leaves out the half bat in the core, and that the tool has three-quarter bats beside the
 * pier to keep its joints apart, each out of a whole brick: a quarter of one is lost.
 */
describe('bricks more to the metre of an attached pier', () => {
  const courses = 40;
  const more = (pier: string) => {
    const wall = (lines: string) =>
      bricksIn(`wall w\n  stands held\n  length 4490 mm\n  height ${courses} courses\n${lines}`);
    return wall(`  pier p\n    at left 2250 mm\n    size ${pier}\n    projects back\n`) - wall('');
  };
  const metres = courses * 0.075;

  test('of one brick: 13.33, and two three-quarter bats in every second course', () => {
    expect(Math.ceil(courses / metres)).toBe(14);
    expect(more('1 x 1 bricks')).toBe(courses + (2 * (courses / 2)) / 4);
  });

  test('of one and a half: 33.33, its core, and two three-quarter bats in every course', () => {
    expect(Math.ceil((2.5 * courses) / metres)).toBe(34);
    expect(more('1.5 x 1.5 bricks')).toBe(2.5 * courses + courses / 2 + (2 * courses) / 4);
  });
});

describe('limits', () => {
  // Bailey and Hancock, Brickwork 2 and Associated Studies (1990), ch. 8: at most eight times the least dimension.
  test('a pier that stands alone is told of above eight times its least side', () => {
    const codes = (courses: number) =>
      jobOf(`pier g\n  size 1.5 x 1.5 bricks\n  height ${courses} courses\n`).findings.map(
        (f) => f.code,
      );
    const most = Math.floor((8 * 327.5) / 75);
    expect(codes(most)).not.toContain('pier-slender');
    expect(codes(most + 1)).toContain('pier-slender');
  });

  // Collinson (zhclg.com/…/attached-piers.htm): a pier of a 215 mm wall stops no lower than 645 mm from its top.
  test('an attached pier is told of that stops lower than 645 mm under the top of a one-brick wall', () => {
    const codes = (height: string) =>
      jobOf(
        `wall n\n  bond english\n  thick 1 brick\n  length 5390 mm\n  height 30 courses\n  pier p\n    at left 2475 mm\n    size 2 x 1.5 bricks\n    projects back\n    height ${height}\n`,
      ).findings.map((f) => f.code);
    expect(codes('22 courses')).not.toContain('pier-low');
    expect(codes('21 courses')).toContain('pier-low');
    expect([(30 - 22) * 75, (30 - 21) * 75].map((mm) => mm <= 645)).toEqual([true, false]);
  });
});
