/** Two alternate courses of a wall on plan, at every end, quoin, tee, reveal and pier. */
import { phrase } from '../../../../shared/phrase';
import type { FaceProjection } from '../../brickwork/faces';
import { placeCourse, type SettingOut } from '../../setting-out';
import type { Units } from '../lengths';
import type { PlacedPier } from '../pier-bricks';
import type { DrawingSet, Group } from '../sheet/set';
import { corbelArea } from './corbel-plan';
import { courseAt, OVER, type PlanWork, upperOf } from './course-plan';
import { type PlanPlace, planPlaces } from './plan-places';
import { hasRows } from './plinth-plan';
import { type Quoin, quoinGroups } from './quoin-plan';
import { type Tee, teeGroups } from './tee-plan';

export interface WallPlanOptions {
  title: string;
  units?: Units;
  /** The lower of the two courses, from 0; where left out, one that differs most from that above it. */
  course?: number;
  piers?: readonly PlacedPier[];
  /** A skin behind it: `y` is its front, mm from the wall's own. */
  behind?: { out: SettingOut; y: number };
  plinth?: FaceProjection;
  corbel?: FaceProjection;
  quoins?: readonly Quoin[];
  /** Where it runs into another wall, and others into it. */
  tees?: readonly Tee[];
}

/** More places than this are not drawn. */
const MOST_PLACES = 60;

/** How many pieces of a course go through the wall: what tells a header course from a stretcher course. */
function headers(out: SettingOut, course: number, place: PlanPlace): number {
  const pieces = placeCourse(out, course, place.left + OVER, place.right - OVER);
  return pieces.filter(({ across }) => across > out.spec.unit.width + OVER).length;
}

/** The lower of two courses, one on the other, that differ most of those at the place; the lowest such. */
function pairAt(out: SettingOut, place: PlanPlace): number {
  const { from, to } = place.courses;
  const cycle = Math.min(to - from - 1, out.spec.bond.courses.length);
  let [best, most] = [from, -1];
  for (let course = from; course < from + cycle; course++) {
    const differ = Math.abs(headers(out, course, place) - headers(out, course + 1, place));
    if (differ > most) [best, most] = [course, differ];
  }
  return best;
}

/** The courses that have brickwork at a place: ground and top may step. */
function builtAt({ bands }: SettingOut, { left, right, courses }: PlanPlace): PlanPlace['courses'] {
  const there = bands.filter(({ segments }) =>
    segments.some((s) => s.from < right - OVER && s.to > left + OVER),
  );
  const from = Math.max(courses.from, Math.min(...there.map((band) => band.from)));
  const to = Math.min(courses.to, Math.max(...there.map((band) => band.to)));
  return { from, to };
}

function groupAt(work: PlanWork, at: PlanPlace, course: number | undefined): Group[] {
  const place = { ...at, courses: builtAt(work.out, at) };
  const { from, to } = place.courses;
  if (!(to > from)) return [];
  const lower = Math.max(from, Math.min(course ?? pairAt(work.out, place), to - 2));
  const courses = [upperOf(work, lower, to), lower].filter((c) => c < to);
  const drawings = courses.flatMap((c) => courseAt(work, c, place));
  return drawings.length ? [{ title: place.title, drawings }] : [];
}

/** Two courses of a pier above its wall, the lowest where none are asked for. */
function groupAbove(
  work: PlanWork,
  { name, x, base, high, above }: PlacedPier,
  course: number | undefined,
): Group[] {
  if (!above?.courses.length) return [];
  const foot = base + above.from;
  const lower = Math.max(foot, Math.min(course ?? foot, base + high - 2));
  const { length, width } = work.out.spec.unit;
  const wide = Math.max(...above.courses[0]!.pieces.map((p) => p.x + p.along));
  const place: PlanPlace = {
    title: phrase`${name}, above the wall`,
    left: x - width,
    right: x + wide + length,
    courses: { from: lower, to: base + high },
    goesOn: { left: false, right: false },
  };
  const courses = [lower + 1, lower].filter((c) => c < base + high);
  return [{ title: place.title, drawings: courses.flatMap((c) => courseAt(work, c, place)) }];
}

/** The uppermost courses of a corbel, which two that differ in their bond hardly ever are. */
function groupInCorbel(work: PlanWork): Group[] {
  const area = corbelArea(work.corbel);
  if (!area) return [];
  const { from, to, courses } = area;
  const brick = work.out.spec.unit.length + work.out.spec.joints.perpend;
  const right = Math.min(to, from + 3 * brick);
  const goesOn = { left: false, right: right < to - OVER };
  const place: PlanPlace = { title: phrase`Corbel`, left: from, right, courses, goesOn };
  return groupAt(work, place, courses.to - 2);
}

/** At each quoin too, where one of its walls has a corbel there. */
function quoinsInCorbel(work: PlanWork, quoin: Quoin): Group[] {
  const { ground = 0, otherGround = 0 } = quoin;
  const tops = [
    { corbel: work.corbel, side: quoin.side, lift: 0 },
    { corbel: quoin.corbel, side: quoin.otherSide, lift: ground - otherGround },
  ].flatMap(({ corbel, side, lift }) => {
    const area = corbelArea(corbel, side);
    return area ? [area.courses.to + lift] : [];
  });
  if (!tops.length) return [];
  const groups = quoinGroups(work, quoin, Math.max(...tops) - 2);
  return groups.map((group) => ({ ...group, title: phrase`${group.title}, corbel` }));
}

/** The same courses at a quoin as at any other end. */
function quoinsOf(work: PlanWork, { quoins = [], course }: WallPlanOptions): Group[] {
  const { out } = work;
  const end: PlanPlace = {
    title: '',
    left: 0,
    right: out.spec.length,
    courses: { from: 0, to: out.spec.courses },
    goesOn: { left: false, right: false },
  };
  return quoins.flatMap((quoin) => {
    const brick = out.spec.unit.length * 3;
    const side = quoin.side === 'left' ? { right: brick } : { left: out.spec.length - brick };
    const groups = quoinGroups(work, quoin, course ?? pairAt(out, { ...end, ...side }));
    return course === undefined ? [...groups, ...quoinsInCorbel(work, quoin)] : groups;
  });
}

/** What is not drawn of what stands out before it. */
function notDrawn({ plinth, corbel, tees = [] }: WallPlanOptions): string[] {
  return [
    ...(plinth && !hasRows(plinth) ? [phrase`The plinth is not drawn.`] : []),
    ...(corbel && tees.length ? [phrase`The corbel is not drawn at tees.`] : []),
  ];
}

/** Only the bricks at the places are made, however long the wall is. */
export function wallPlans(out: SettingOut, options: WallPlanOptions): DrawingSet {
  const {
    title,
    units = 'millimetres',
    piers = [],
    behind,
    plinth,
    corbel,
    quoins = [],
    tees = [],
  } = options;
  const work: PlanWork = { out, piers, behind, plinth, corbel, units };
  const met = [...quoins, ...tees.filter(({ own }) => own)];
  const corners = new Set(met.map(({ side }) => side));
  const places = planPlaces(out, corners);
  const drawn = places.slice(0, MOST_PLACES);
  const more = places.length - drawn.length;
  const names = [...quoins, ...tees, ...drawn].map((place) => place.title).join(', ');
  const which = behind ? phrase`that differ in both skins` : phrase`one on the other`;
  return {
    title,
    description: phrase`Two courses on plan, ${which}, of each place: ${names}.`,
    units,
    scale: units === 'feet' ? 8 : 10,
    groups: [
      ...quoinsOf(work, options),
      ...tees.slice(0, MOST_PLACES).flatMap((tee) => teeGroups(tee, options.course ?? 0)),
      ...drawn.flatMap((place) => groupAt(work, place, options.course)),
      ...groupInCorbel(work),
      ...piers.slice(0, MOST_PLACES).flatMap((pier) => groupAbove(work, pier, options.course)),
    ],
    notes: [
      phrase`Seen from above, the front face below. Courses are numbered from the ground.`,
      ...notDrawn(options),
      ...(more ? [phrase`${more} more places are not drawn.`] : []),
    ],
  };
}
