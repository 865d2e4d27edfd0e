/** Where a wall is drawn on plan: its ends, the reveals of its openings, its piers. */
import { phrase } from '../../../../shared/phrase';
import type { MovementGap, OpeningSpec, SettingOut } from '../../setting-out';

/** One place, mm along the wall, and the courses it goes through. */
export interface PlanPlace {
  title: string;
  left: number;
  right: number;
  courses: { from: number; to: number };
  /** The wall goes on past that side. */
  goesOn: { left: boolean; right: boolean };
}

/** Bricks drawn from an end or a reveal on into the wall, and on each side of a pier. */
const INTO = 3;
const BESIDE = 2;
/** Points nearer than this are the same, mm. */
const SAME = 1;

type Side = 'left' | 'right';

/** Ends but those that are corners, reveals and piers from left to right; what would show the same brickwork once. */
export function planPlaces(out: SettingOut, corners: ReadonlySet<Side> = new Set()): PlanPlace[] {
  const { spec } = out;
  const brick = spec.unit.length + spec.joints.perpend;
  const whole = spec.length <= 2 * INTO * brick && !corners.size;
  if (whole && !spec.openings.length && !spec.piers.length) return [wholeOf(out)];
  const piers = spec.piers.map(({ name, from, width, base = 0, courses }): PlanPlace => {
    const [left, right] = [from - BESIDE * brick, from + width + BESIDE * brick];
    const goesOn = { left: true, right: true };
    return {
      title: name,
      left,
      right,
      courses: { from: base, to: Math.floor(base + courses) },
      goesOn,
    };
  });
  const ends = (['left', 'right'] as const).filter((side) => !corners.has(side));
  const edges = [
    ...ends.map((side) => endAt(out, side, INTO * brick)),
    ...spec.openings.flatMap((opening) => revealsOf(opening, out, INTO * brick)),
    ...(spec.movement ?? []).map((joint, i, all) => movementAt(joint, i, all, out, BESIDE * brick)),
  ];
  const shown = edges.filter((place) => !piers.some((pier) => isAt(place, pier)));
  return [...shown, ...piers].sort((a, b) => a.left - b.left);
}

/** The place is about a free edge that the pier’s own place shows already. */
function isAt({ left, right, goesOn }: PlanPlace, pier: PlanPlace): boolean {
  const edge = goesOn.right ? left : right;
  return edge > pier.left - SAME && edge < pier.right + SAME;
}

/** Both lengths that a movement joint parts. */
function movementAt(
  { from, width }: MovementGap,
  index: number,
  all: readonly MovementGap[],
  { spec }: SettingOut,
  into: number,
): PlanPlace {
  return {
    title: all.length > 1 ? phrase`Movement joint ${index + 1}` : phrase`Movement joint`,
    left: Math.max(0, from - into),
    right: Math.min(spec.length, from + width + into),
    courses: { from: 0, to: Math.floor(spec.courses) },
    goesOn: { left: true, right: true },
  };
}

function wholeOf({ spec }: SettingOut): PlanPlace {
  const courses = { from: 0, to: Math.floor(spec.courses) };
  const goesOn = { left: false, right: false };
  return { title: phrase`The whole length`, left: 0, right: spec.length, courses, goesOn };
}

/** `into` mm of the wall on the side of an edge where there is any. */
function edgeAt(
  title: string,
  at: number,
  side: Side,
  into: number,
  courses: PlanPlace['courses'],
) {
  const [left, right] = side === 'left' ? [at, at + into] : [at - into, at];
  const goesOn = { left: side === 'right', right: side === 'left' };
  return { title, left, right, courses, goesOn };
}

function endAt({ spec }: SettingOut, side: Side, into: number): PlanPlace {
  const courses = { from: 0, to: Math.floor(spec.courses) };
  const at = side === 'left' ? 0 : spec.length;
  return edgeAt(side === 'left' ? phrase`Left end` : phrase`Right end`, at, side, into, courses);
}

/** The left reveal of an opening is the right end of the brickwork beside it. */
function revealsOf(opening: OpeningSpec, { spec }: SettingOut, into: number): PlanPlace[] {
  const { name, from, width, sill, top } = opening;
  const courses = { from: Math.max(0, Math.floor(sill)), to: Math.floor(top ?? spec.courses) };
  const places = [
    edgeAt(phrase`${name}, left reveal`, from, 'right', into, courses),
    edgeAt(phrase`${name}, right reveal`, from + width, 'left', into, courses),
  ];
  return places.filter(({ left, right }) => right > SAME && left < spec.length - SAME);
}
