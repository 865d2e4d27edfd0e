/**
 * A wall bonded into the back of another by search: in every second course it runs in, and the bricks of the other that make
 * room are laid again so that its front stays as it was and its back laps. Whether it does is judged, not looked up.
 */
import type { Area, SettingOut } from '../../types';
import type { Courses, Parity } from '../corner';
import { crossCost } from './cross';
import { backJoints, standsClear } from './judge';
import { roomIn } from './open';
import { RoomToFill } from './shelf';
import type { Opened, OpenedCourses, Tie, TieQuestion } from './types';

/** Pieces on the left and on the right that are laid otherwise too; the fewest come first. */
const WIDER: readonly (readonly [number, number])[] = [
  ...([
    [0, 0],
    [0, 1],
    [1, 0],
    [1, 1],
  ] as const),
  ...([
    [0, 2],
    [2, 0],
    [1, 2],
    [2, 1],
    [2, 2],
  ] as const),
];

/** Dearer than any way that is taken. */
const MOST_COST = 1000;
/** So little cutting that nobody looks for less: a pair of bats. */
export const GOOD_TIE = 4;
/** Courses of one wall that lie unlike one another: past this many nobody follows them. */
const MOST_UNLIKE = 400;
const MOST_REPEAT = 64;

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** Nothing where it cannot be bonded so. */
export function tieOf(question: TieQuestion): Tie | undefined {
  const ways = ([0, 1] as const).flatMap((parity) => tieIn(question, parity) ?? []);
  return ways.reduce<Tie | undefined>((a, b) => (a && a.cost <= b.cost ? a : b), undefined);
}

function boxOf({ main, cross, entry, at }: TieQuestion): Area {
  const y = main.thickness - entry.by;
  return { x: at, y, width: cross.thickness, height: entry.by };
}

function tieIn(q: TieQuestion, parity: Parity): Tie | undefined {
  const own = ((parity + q.lift) & 1) as Parity;
  const across = crossCost(q, own);
  if (across === undefined) return undefined;
  const box = boxOf(q);
  const opened: OpenedCourses[] = [];
  for (const courses of alike(q.main, q.courses, parity)) {
    const each = openedAt(q.main, courses.from, box, q.most ?? MOST_COST);
    if (!each || opened.length >= MOST_UNLIKE) return undefined;
    opened.push({ ...courses, opened: each });
  }
  if (!opened.length) return undefined;
  const cost = opened.reduce((sum, o) => sum + o.opened.cost, 0) / opened.length;
  return { parity, opened, box, cost: cost + across };
}

/** Courses of the parity that lie alike, with those over and under them alike too. */
function alike(main: SettingOut, { from, to }: Courses, parity: Parity) {
  const cycle = main.spec.bond.courses.length;
  const every = (2 * cycle) / gcd(2, cycle);
  const found: { from: number; to: number; every: number }[] = [];
  if (every > MOST_REPEAT) return found;
  for (const band of main.bands) {
    const [low, high] = [Math.max(from, band.from), Math.min(to, band.to)];
    const single = [...new Set([low, high - 1])].filter(
      (c) => isIn(c, low, high) && c % 2 === parity,
    );
    found.push(...single.map((c) => ({ from: c, to: c + 1, every: 1 })));
    for (let course = low + 1; course < Math.min(low + 1 + every, high - 1); course++)
      if (course % 2 === parity) found.push({ from: course, to: high - 1, every });
  }
  return found;
}

const isIn = (course: number, from: number, to: number) => course >= from && course < to;

/** What a course may cost, a little at a time: cheap ways are few and soon looked through. */
const COSTS = [3, 8, 14, 28];

function openedAt(main: SettingOut, course: number, box: Area, most: number): Opened | undefined {
  const over = overAndUnder(main, course, box);
  if (!standsClear(main, box, backJoints(main, course, box), over)) return undefined;
  const rooms = WIDER.flatMap((wider) => {
    const room = roomIn(main, course, box, wider);
    return room ? new RoomToFill(main, room, box, over) : [];
  });
  for (const cost of COSTS) {
    if (cost >= 2 * most + COSTS[0]!) break;
    const found = rooms.flatMap((room) => room.laidFor(cost) ?? []);
    if (found.length) return found.reduce((a, b) => (b.cost < a.cost ? b : a));
  }
  return undefined;
}

function overAndUnder(main: SettingOut, course: number, box: Area): number[] {
  const beside = [course - 1, course + 1].filter((c) => c >= 0 && c < main.spec.courses);
  return beside.flatMap((c) => backJoints(main, c, box));
}
