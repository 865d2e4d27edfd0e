/** What was chosen where courses lay just so before: along a wall and up it, and at every keystroke, the same comes again. */
import type { SettingOut } from '../../types';
import type { Courses } from './choose';
import type { Laid, Way } from './types';
import type { Place } from './window';

/** Of each part, from the wall that runs through on; nothing where it stayed as it was. */
type Chosen = readonly (Way | undefined)[];

const shelf = new Map<string, Chosen>();
const MOST_KEPT = 2000;

const partsOf = ({ turns }: Courses) => [...turns.values()].flatMap((c) => c.parts);

/** All that decides how the courses at that place are laid, as seen from there: alike places have one key. */
export function keyOf({ turns, pairs, held }: Courses, { spec }: SettingOut, at: Place): string {
  const off = (x: number) => Math.round((x - at.from) * 1000);
  const all = (pieces: readonly Laid[]) => pieces.flatMap((p) => [off(p.from), off(p.to)]);
  const courses = [...turns].map(([turn, { parts, fixed }]) => [
    turn,
    fixed.map(off),
    parts.map((p) => [off(p.from), off(p.to), p.joint, p.fine, all(p.was.pieces)]),
  ]);
  const over = held.map((h) => [h.turn, h.joints.map(off)]);
  const { unit, joints, limits, bond } = spec;
  const wall = [unit.length, unit.width, joints.perpend, limits, bond.lap, off(at.to)];
  return JSON.stringify([wall, courses, pairs, over]);
}

const moved = (way: Way, by: number): Way => ({
  ...way,
  pieces: way.pieces.map((p) => ({ ...p, from: p.from + by, to: p.to + by })),
  joints: way.joints.map((x) => x + by),
});

/** Whether it was known. */
export function chosenAs(key: string, courses: Courses, at: Place): boolean {
  const known = shelf.get(key);
  if (!known) return false;
  for (const [i, part] of partsOf(courses).entries()) {
    const way = known[i];
    part.now = way ? moved(way, at.from) : part.was;
  }
  return true;
}

/** Remembers what was laid there, for the next place with that key. */
export function keep(key: string, courses: Courses, at: Place): void {
  if (shelf.size >= MOST_KEPT) shelf.clear();
  shelf.set(
    key,
    partsOf(courses).map(({ now, was }) => (now === was ? undefined : moved(now, -at.from))),
  );
}
