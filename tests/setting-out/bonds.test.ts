import { describe, expect, test } from 'vitest';
import { setOut } from '../../server/engine/setting-out';
import { BONDS, type BondName, overAll, wall } from './fixtures';
import { sketches } from './sketch';

/**
 * Courses as books on bricklaying lay them. Patterns: Collinson, Brickwork and Bricklaying (garden
 * wall bonds), and the glossary of the Tylers and Bricklayers Company; closers, broken and reverse
 * bond: common practice.
 */
function laid(bond: BondName, halves: number, thickness: 1 | 2 = 2) {
  const out = setOut(wall({ bond: BONDS[bond], thickness, length: overAll(halves) }));
  return out.bands[0]!.segments[0]!;
}

describe('bonds between two stopped ends', () => {
  test('stretcher, half brick: alternate courses begin with a half bat', () => {
    expect(sketches(laid('stretcher', 12, 1))).toEqual(['S6', 'h S5 h']);
  });

  test('stretcher on an odd half brick: reverse bond, unbroken', () => {
    const segment = laid('stretcher', 13, 1);
    expect(sketches(segment)).toEqual(['S6 h', 'h S6']);
    expect(segment.broken).toEqual([]);
  });

  test('English: stretcher courses, and header courses with a closer next to each quoin header', () => {
    expect(sketches(laid('english', 12))).toEqual(['S6', 'H c H9 c H']);
  });

  test('English on an odd half brick: one header in the middle of the stretcher course, broken bond', () => {
    const segment = laid('english', 13);
    expect(sketches(segment)).toEqual(['S3 H S3', 'H c H10 c H']);
    expect(segment.broken).toEqual([{ at: 731.25, why: 'bond', where: 'middle' }]);
  });

  test('Flemish: stretcher and header in turn, over header, closer, stretcher', () => {
    expect(sketches(laid('flemish', 8))).toEqual(['S H S H S', 'H c S H S c H']);
  });

  test('Flemish where it does not close: both ends alike, broken in the middle', () => {
    const segment = laid('flemish', 13);
    const [face, over] = sketches(segment);
    expect(face).toBe('S H S H3 S H S');
    expect(over).toMatch(/^H c S H .* S c H$/);
    expect(segment.broken).toHaveLength(1);
  });

  test('English garden wall: three stretcher courses, the middle one beginning with a header', () => {
    expect(sketches(laid('englishGarden', 12))).toEqual(['H c H9 c H', 'S6', 'H S5 H', 'S6']);
  });

  test('Flemish garden wall: three stretchers to a header, headers over the middle stretcher', () => {
    const [face, over] = sketches(laid('flemishGarden', 12));
    expect(face).toBe('S H S3 H S');
    expect(over).toBe('H c S2 H S2 c H');
  });

  test('monk: two stretchers to a header', () => {
    expect(sketches(laid('monk', 12))[0]).toBe('S2 H S2 H S');
  });

  test('header: alternate courses begin with three-quarter bats', () => {
    expect(sketches(laid('header', 12))).toEqual(['H12', 'T H9 T']);
  });

  test('stack: straight joints, as asked', () => {
    expect(sketches(laid('stack', 12))).toEqual(['S6']);
  });

  test('quarter-lap bonds in a half-brick wall take three-quarter bats and snapped headers, no closers', () => {
    expect(sketches(laid('flemish', 8, 1))).toEqual(['S h S h S', 'T S h S T']);
  });
});

describe('bricks of other countries close in the same way', () => {
  // Work sizes and joints: BIA by archtoolbox.com, DIN (backstein.com), KNB (knb-keramiek.nl), AS 4455, IS 1077.
  test.each([
    ['US modular', 193.675, 92.075, 9.525],
    ['DE DF', 240, 115, 10],
    ['NL Waal', 210, 100, 10],
    ['AU standard', 230, 110, 10],
    ['IN modular', 190, 90, 10],
  ])('%s', (_, length, width, joint) => {
    const rows = (bond: BondName, halves: number) => {
      const limits = { least: joint, best: joint, most: joint, leastCut: 40 };
      const unit = { length, width, height: 60 };
      const joints = { bed: 10, perpend: joint };
      const over = ((length + joint) / 2) * halves - joint;
      const spec = { unit, joints, limits, bond: BONDS[bond], thickness: 2 as const, length: over };
      return sketches(setOut(wall(spec)).bands[0]!.segments[0]!);
    };
    expect(rows('english', 12)).toEqual(['S6', 'H c H9 c H']);
    expect(rows('english', 13)).toEqual(['S3 H S3', 'H c H10 c H']);
    expect(rows('flemish', 8)).toEqual(['S H S H S', 'H c S H S c H']);
  });
});

describe('short stretches are laid like piers', () => {
  test.each([
    ['english', 2, ['S', 'H2']],
    ['english', 4, ['S2', 'H c H c H']],
    ['stretcher', 1, ['h', 'h']],
    ['flemish', 2, ['S', 'H2']],
    ['english', 5, ['S H S', 'H c H2 c H']],
  ] as const)('%s, %d half bricks', (bond, halves, courses) => {
    expect(sketches(laid(bond, halves, bond === 'stretcher' ? 1 : 2))).toEqual(courses);
  });
});

test('however short, a one-brick stretch of a bond with headers has headers through it', () => {
  for (const bond of Object.keys(BONDS) as BondName[])
    for (let halves = 2; halves <= 6; halves++)
      if (bond !== 'stretcher' && bond !== 'stack')
        expect(sketches(laid(bond, halves)).join(), `${bond} ${halves}`).toMatch(/H/);
});

describe('toothed and butted ends', () => {
  const run = (part: Parameters<typeof wall>[0]) => setOut(wall(part)).bands[0]!.segments[0]!;

  test('stretcher bond runs a whole brick half its length into the standing work in alternate courses', () => {
    const segment = run({ length: 11 * 112.5, right: 'toothed' });
    expect(sketches(segment)).toEqual(['S6', 'h S5']);
    expect(segment.runs.map((r) => [r.from, r.length])).toEqual([
      [0, 1350],
      [0, 1237.5],
    ]);
  });

  test('a wall toothed on the left is set out from its free end', () => {
    const segment = run({ length: 11 * 112.5, left: 'toothed' });
    expect(sketches(segment)).toEqual(['S6', 'S5 h']);
    expect(segment.runs.map((r) => r.from)).toEqual([-112.5, 0]);
  });

  test('English bond runs a header a quarter brick in', () => {
    const length = 12 * 112.5;
    const segment = run({ length, right: 'toothed', bond: BONDS.english, thickness: 2 });
    expect(sketches(segment)).toEqual(['S6', 'H c H11']);
    expect(segment.runs.map((r) => r.length)).toEqual([length, length + 56.25]);
  });

  test('toothed at both ends no bond is ever broken', () => {
    for (const bond of Object.values(BONDS))
      for (let halves = 4; halves < 40; halves++) {
        const length = halves * 112.5 + 10;
        const segment = run({ length, left: 'toothed', right: 'toothed', bond, thickness: 2 });
        expect(segment.broken).toEqual([]);
        expect(sketches(segment).join()).not.toMatch(/[cTx]/);
      }
  });

  test('a butted end is closed like a free one, with one joint more', () => {
    const segment = run({ length: 12 * 112.5, right: 'butted' });
    expect(sketches(segment)).toEqual(['S6', 'h S5 h']);
    expect(segment.runs[0]!.joint).toBeCloseTo(10, 9);
    expect(segment.runs[0]!.endJoints).toEqual({ left: 0, right: 1 });
  });
});

describe('lengths that do not work', () => {
  test('joints alter within the limits', () => {
    const segment = setOut(wall({ length: 2230 })).bands[0]!.segments[0]!;
    expect(segment.fits).toBe(true);
    expect(segment.runs[0]!.joint).toBeCloseTo(80 / 9, 9);
  });

  test('past the limits one cut takes the rest', () => {
    const segment = setOut(wall({ length: 1270 })).bands[0]!.segments[0]!;
    expect(segment.fits).toBe(false);
    expect(sketches(segment)).toEqual(['S3 x S2', 'h S2 x S2 h']);
    expect(segment.runs[0]!.groups.flatMap((g) => g.pieces)[1]!.length).toBeCloseTo(145, 9);
    expect(segment.broken).toEqual([{ at: 675, why: 'cut', where: 'middle' }]);
  });

  test('never under the least cut: a whole and the rest become two larger pieces', () => {
    const { runs } = setOut(wall({ length: 890 + 25 })).bands[0]!.segments[0]!;
    const pieces = runs.flatMap((r) => r.groups.flatMap((g) => g.pieces));
    const cuts = pieces.filter((p) => p.piece === 'cut').map((p) => p.length);
    expect(cuts.length).toBeGreaterThan(0);
    expect(Math.min(...cuts)).toBeGreaterThanOrEqual(100);
  });
});
