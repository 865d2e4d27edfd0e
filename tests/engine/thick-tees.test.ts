/**
 * Walls bonded into walls of a brick and more, from their lines to their pieces: nothing overlaps, nothing is open, the front
 * of the wall that goes on is as it was, and wherever the two are said to be bonded perpends lap by a quarter brick.
 */
import { describe, expect, test } from 'vitest';
import {
  type PlacedPiece,
  placeCourse,
  type SettingOut,
  tally,
} from '../../server/engine/setting-out';
import { type BuiltCourse, proveFace, provePlan } from '../../server/engine/setting-out/prove';
import { FIRM } from '../findings/tells';
import { courseOnGround, type Standing } from '../setting-out/on-plan';
import { area, asPieces, ofLap } from '../setting-out/proofs';
import { jobOf } from './world';

const COURSES = 12;
const QUARTER = 56.25;
const MAIN = 20 * 225 - 10;
/** Ten bricks with a joint before them. */
const CROSS = 10 * 225;

type Bond = readonly [bond: string, thick: string, half: number];

const THICK: readonly Bond[] = [
  ['english', '1 brick', 2],
  ['english-cross', '1 brick', 2],
  ['flemish', '1 brick', 2],
  ['header', '1 brick', 2],
  ['english-garden-wall 3', '1 brick', 2],
  ['flemish-garden-wall 3', '1 brick', 2],
  ['monk', '1 brick', 2],
  ['english', '1.5 bricks', 3],
  ['flemish', '1.5 bricks', 3],
  ['english', '2 bricks', 4],
  ['flemish', '2 bricks', 4],
];
const ALL: readonly Bond[] = [['stretcher', '1/2 brick', 1], ['third', '1/2 brick', 1], ...THICK];

interface Tee {
  readonly main: Bond;
  readonly cross: Bond;
  readonly at: number;
  readonly side?: 'left' | 'right';
  readonly how?: string;
  readonly more?: string;
  readonly crossMore?: string;
}

const wall = (name: string, [bond, thick]: Bond, length: number, more: string) =>
  `wall ${name}\n  brick red\n  bond ${bond}\n  thick ${thick}\n  stands held\n  length ${length} mm\n  height ${COURSES} courses\n${more}`;

const textOf = ({
  main,
  cross,
  at,
  side = 'left',
  how = 'bonded',
  more = '',
  crossMore = '',
}: Tee) =>
  `perpend 1\nuse "firm.perp"\n${wall('main', main, MAIN, more)}${wall('cross', cross, CROSS, `  ${side} tee main ${at} mm ${how}\n${crossMore}`)}`;

function jobFor(tee: Tee) {
  const job = jobOf(textOf(tee), { 'firm.perp': FIRM });
  const laid = (name: string): SettingOut => {
    const { facts } = job.works.find((w) => w.name === name)!;
    return facts.laid ?? facts.settingOut!;
  };
  const bonded = !job.findings.some((f) => f.code === 'tee-unbonded');
  return { job, bonded, main: laid('main'), cross: laid('cross') };
}

const thickness = ([, , half]: Bond) => half * 112.5 - 10;

/** Against the back of the main wall, its left end first or last. */
function standing({ at, side = 'left', main, cross }: Tee): Standing {
  const y = thickness(main);
  if (side === 'left') return { x: at + thickness(cross), y, way: 1 };
  return { x: at, y: y + CROSS, way: 3 };
}

const ground = { x: 0, y: 0, way: 0 } as const;

function planFaults(tee: Tee, main: SettingOut, cross: SettingOut) {
  const y = thickness(tee.main);
  const outline = [area(0, 0, MAIN, y), area(tee.at, y, tee.at + thickness(tee.cross), y + CROSS)];
  const walls = [
    { out: main, at: ground },
    { out: cross, at: standing(tee) },
  ];
  return Array.from({ length: COURSES }, (_, course) =>
    provePlan(course, asPieces(courseOnGround(walls, course)), outline, { least: 7, most: 13 }),
  ).flat();
}

const shownAt = (pieces: readonly PlacedPiece[], line: number) =>
  pieces
    .filter((p) => p.y < line + 2 && p.y + p.across > line - 2)
    .map((p) => ({ from: p.x, to: p.x + p.along }))
    .sort((a, b) => a.from - b.from);

/** A face as the checker takes it; what stands in it on end or behind it is one piece. */
function faceOf(out: SettingOut, line: number, length: number, also: (course: number) => Piece[]) {
  return Array.from({ length: COURSES }, (_, course): BuiltCourse => {
    const shown = [...shownAt(placeCourse(out, course), line), ...also(course)];
    const pieces = shown.map((p) => ({ piece: 'cut' as const, ...p }));
    const from = Math.min(...pieces.map((p) => p.from));
    return { course, pieces, outline: [{ from, to: length, left: 'stopped', right: 'stopped' }] };
  });
}

interface Piece {
  readonly from: number;
  readonly to: number;
}

/** A quarter brick but for what unlike numbers of joints shift. */
const RULES = { joint: { least: 7, most: 13 }, lap: QUARTER - 3, tooth: 112.5, leastCut: 40 };
const lapFaults = (face: readonly BuiltCourse[]) => proveFace(face, RULES).filter(ofLap);

function faceFaults(tee: Tee, main: SettingOut, cross: SettingOut) {
  const [low, high] = [tee.at, tee.at + thickness(tee.cross)];
  const runsIn = (course: number) =>
    placeCourse(cross, course).some(({ x, along }) =>
      tee.side === 'right' ? x + along > CROSS + 5 : x < -5,
    );
  const back = faceOf(main, thickness(tee.main), MAIN, (course) =>
    runsIn(course) ? [{ from: low, to: high }] : [],
  );
  // Seen from the main wall on: where a course stops, the main wall itself is what it stops at.
  const own = (line: number) =>
    faceOf(cross, line, CROSS, (course) => {
      if (runsIn(course)) return [];
      return tee.side === 'right' ? [{ from: CROSS, to: CROSS + 300 }] : [{ from: -300, to: 0 }];
    });
  return [back, own(0), own(thickness(tee.cross))].flatMap(lapFaults);
}

/** Every place over two bricks. */
const places = Array.from({ length: 8 }, (_, i) => (32 + i) * QUARTER);
/** Of these one for two bonds, another each time. All eight take half a minute of one core and the proofs as long again. */
const placeFor = (row: number, column: number) => places[(3 * row + column) % places.length]!;

describe.each(THICK.map((main, row) => [main, row] as const))('into %s', (main, row) => {
  const before = jobFor({ main, cross: ALL[0]!, at: 1800, how: 'tied' }).main;

  test('what is said to be bonded is proved', () => {
    let [bonded, seen] = [0, 0];
    for (const [column, cross] of ALL.entries()) {
      // Every third bond into this one, the next into the next: each is run in, and each run into, by several.
      if ((row + column) % 3) continue;
      seen++;
      const tee = { main, cross, at: placeFor(row, column) };
      const laid = jobFor(tee);
      expect([tee, planFaults(tee, laid.main, laid.cross)]).toEqual([tee, []]);
      if (!laid.bonded) continue;
      bonded++;
      expect([tee, faceFaults(tee, laid.main, laid.cross)]).toEqual([tee, []]);
      for (let course = 0; course < COURSES; course++)
        expect(front(laid.main, course)).toEqual(front(before, course));
    }
    // Third bond has no joint that laps those of a quarter brick, and some thick walls bond at every second quarter only.
    expect(seen).toBeGreaterThanOrEqual(4);
    expect(bonded).toBeGreaterThanOrEqual(seen / 2);
  });
});

/** Joints of the front face: where bricks begin. */
const front = (out: SettingOut, course: number) =>
  shownAt(placeCourse(out, course), 0).map((p) => [Math.round(p.from), Math.round(p.to)]);

describe('counts', () => {
  const english: Bond = ['english', '1 brick', 2];
  const tee: Tee = { main: english, cross: english, at: 900 };

  /*
   * By hand. The main wall is 20 bricks (4490 mm). In its six stretcher courses lie 2 x 20 = 40 bricks, in its six header courses
   * two queen closers and, of 80 quarter bricks, (80 - 2) / 2 = 39 headers: 6 x 40 + 6 x 39 = 474 bricks and 12 closers. The cross wall stands
   * over the fifth brick of the back, from 4 x 225 = 900 to 1115 mm. In every stretcher course that one brick is left out and the cross
   * wall, a stretcher course too, takes its place: 474 - 6 = 468.
   * The cross wall is 10 bricks and a joint. Its stretcher courses run in by half a brick: 10 1/2 bricks, 2 x 10 stretchers and a header,
   * 21 bricks. Its header courses stop at the face: 40 quarters, two of them closers, 19 headers. 6 x 21 + 6 x 19 = 240 and 12 closers.
   */
  test('by hand: a one-brick English tee', () => {
    const { main, cross, bonded } = jobFor(tee);
    expect(bonded).toBe(true);
    expect(tally(main)).toMatchObject({
      wholes: 468,
      closers: 12,
      halves: 0,
      threeQuarters: 0,
      cuts: [],
    });
    expect(tally(cross)).toMatchObject({
      wholes: 240,
      closers: 12,
      halves: 0,
      threeQuarters: 0,
      cuts: [],
    });
    const tied = jobFor({ ...tee, how: 'tied' });
    expect(tally(tied.main)).toMatchObject({ wholes: 474, closers: 12 });
  });

  test.each(THICK.flatMap((main) => [[main, ALL[0]!] as const, [main, english] as const]))(
    'of %s and %s: volumes are those of walls that only touch, and pieces counted are pieces placed',
    (main, cross) => {
      for (const at of [placeFor(THICK.indexOf(main), 0)]) {
        const laid = jobFor({ main, cross, at });
        const apart = jobFor({ main, cross, at, how: 'tied' });
        const gross = (of: typeof laid) => tally(of.main).grossVolume + tally(of.cross).grossVolume;
        expect(gross(laid)).toBeCloseTo(gross(apart), 2);
        for (const out of [laid.main, laid.cross]) {
          const placed = Array.from({ length: COURSES }, (_, course) =>
            placeCourse(out, course).reduce((sum, p) => sum + p.along * p.across * 65, 0),
          ).reduce((sum, v) => sum + v, 0);
          expect(tally(out).brickVolume / placed).toBeCloseTo(1, 6);
        }
      }
    },
  );

  test('a mirrored job takes the same pieces', () => {
    for (const [row, main] of THICK.entries())
      for (const at of [placeFor(row, 0)]) {
        const one = jobFor({ main, cross: english, at });
        const other = jobFor({ main, cross: english, at: MAIN - at - 215, side: 'right' });
        expect(one.bonded).toBe(other.bonded);
        const counts = ({ main: m, cross: c }: typeof one) =>
          [m, c].map((o) => {
            const { cuts: _, ...rest } = tally(o);
            return Object.values(rest).map((n) => Math.round(n));
          });
        expect([main, at, counts(other)]).toEqual([main, at, counts(one)]);
      }
  });
});

describe('where the ground steps', () => {
  const inner: Bond = ['english', '1 brick', 2];
  const half: Bond = ['stretcher', '1/2 brick', 1];

  /** Courses by their height: the main wall stands so many lower at its own lowest ground. */
  function faultsOnSteps(tee: Tee, lift: number) {
    const { main, cross, bonded } = jobFor(tee);
    expect(bonded).toBe(true);
    const y = thickness(tee.main);
    const at = standing(tee);
    return Array.from({ length: COURSES - lift - 1 }, (_, i) => {
      const course = lift + i;
      const boxes = [
        ...courseOnGround([{ out: main, at: ground }], course),
        ...courseOnGround([{ out: cross, at }], course - lift),
      ];
      const low = 1000;
      const clipped = boxes.flatMap((b) => {
        const [x, right] = [Math.max(b.x, low), Math.min(b.right, 4000)];
        return right > x ? [{ ...b, x, right }] : [];
      });
      const outline = [
        area(low, 0, 4000, y),
        area(tee.at, y, tee.at + thickness(tee.cross), y + CROSS),
      ];
      return provePlan(course, asPieces(clipped), outline, { least: 7, most: 13 });
    }).flat();
  }

  // The main wall's ground rises by courses at 600 mm, before the tee: its course 1 + lift lies level with course 1 of the cross wall.
  test.each([
    [half, half, 1],
    [half, half, 2],
    [inner, inner, 1],
    [inner, inner, 2],
    [inner, half, 3],
  ] as const)('%s and %s, %i courses: those that lie level run in', (main, cross, lift) => {
    const more = `  ground steps at 675 mm up ${lift} courses\n  top steps at 675 mm up ${lift} courses\n`;
    expect(faultsOnSteps({ main, cross, at: 1800, more }, lift)).toEqual([]);
  });

  test('no tie is counted in courses that are not there: nine of twelve, on the fourth and the eighth', () => {
    const more = '  ground steps at 675 mm up 3 courses\n';
    const { job } = jobFor({ main: inner, cross: half, at: 1800, how: 'tied', more });
    const [tie] = job.works.find((w) => w.name === 'cross')!.needs.pieces;
    expect(tie!.count.value.toNumber()).toBe(2);
  });

  test('under the wall that runs in itself: then it is tied, and the reason is told', () => {
    const more = '  ground steps at 1900 mm up 2 courses\n  top steps at 1900 mm up 2 courses\n';
    const { job } = jobFor({ main: inner, cross: inner, at: 1800, more });
    const told = job.findings.find((f) => f.code === 'tee-unbonded')!;
    expect(told.message).toContain('The ground under it steps there.');
  });
});
