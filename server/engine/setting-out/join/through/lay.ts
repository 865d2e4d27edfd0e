/**
 * A half-brick wall with another that runs right through it in every second course: what is beside that is laid again with
 * bats so that perpends lap there, as far as any way does.
 */
import { perpendsAt } from '../../openings/near';
import type { Band, Segment, SettingOut } from '../../types';
import type { LetIn } from '../let-in';
import { allLap, type Courses, choose, type Held } from './choose';
import { acrossParts, jointsOf, throughParts } from './course';
import { type Rules, rulesFor } from './laps';
import { chosenAs, keep, keyOf } from './shelf';
import { laidAgain } from './splice';
import type { CourseParts, Parted } from './types';
import { reachOf } from './window';

/** A band that the other wall runs through; nothing is `parted` where no stretch of it reaches past both its sides. */
export interface Opened {
  readonly band: Band;
  readonly parted?: Parted;
}

interface Standing extends Opened {
  /** Its courses by their place in the cycle; none where nothing may be laid otherwise. */
  readonly turns: ReadonlyMap<number, CourseParts>;
  chosen: boolean;
}

/** Times that bands are gone through, up and down, until all of them lap. */
const SWEEPS = 4;

/** Bands from the lowest up, as they lie on one another: for each the stretches that take the place of its parted one. */
export function lapped(
  bands: readonly Opened[],
  out: SettingOut,
  gap: LetIn,
): (readonly Segment[])[] {
  const rules = rulesFor(out.spec);
  const asTheyAre = bands.map(({ parted }) => parted?.parts ?? []);
  if (!mayLay(out, gap) || rules.still <= 0) return asTheyAre;
  let wall = new Beside(bands, out, gap, rules, false);
  if (wall.laps()) return asTheyAre;
  wall.lay();
  if (!wall.laps()) {
    wall = new Beside(bands, out, gap, rules, true);
    wall.lay();
  }
  return wall.stretches();
}

/** A wall of half a brick, in numbers that mean something. */
export function mayLay({ rows, thickness, spec }: SettingOut, { courses }: LetIn): boolean {
  const whole = Number.isInteger(courses.from) && Number.isInteger(courses.to);
  return rows.length === 1 && thickness <= spec.unit.width && whole;
}

class Beside {
  private readonly all: readonly Standing[];

  constructor(
    bands: readonly Opened[],
    private readonly out: SettingOut,
    private readonly gap: LetIn,
    private readonly rules: Rules,
    fine: boolean,
  ) {
    this.all = bands.map((opened) => ({
      ...opened,
      turns: turnsOf(opened, out, gap, fine),
      chosen: false,
    }));
  }

  laps(): boolean {
    return this.all.every((s, i) => !s.turns.size || allLap(this.coursesOf(i, true), this.rules));
  }

  /** From the lowest up, then down and up again where bands do not lap one another yet. */
  lay(): void {
    for (let sweep = 0; sweep < SWEEPS; sweep++) {
      const order = [...this.all.keys()];
      for (const i of sweep % 2 ? order.reverse() : order) this.layOne(i);
      if (this.laps()) return;
    }
  }

  private layOne(i: number): void {
    const standing = this.all[i]!;
    if (!standing.turns.size) return;
    const courses = this.coursesOf(i, false);
    const key = keyOf(courses, this.out, this.gap);
    if (!chosenAs(key, courses, this.gap)) {
      choose(courses, this.rules);
      keep(key, courses, this.gap);
    }
    standing.chosen = true;
  }

  stretches(): (readonly Segment[])[] {
    return this.all.map(({ parted, turns }) =>
      parted ? (turns.size ? laidAgain(parted, turns, this.gap) : parted.parts) : [],
    );
  }

  /** `whole`: those over and under it that are not laid yet count as they are. */
  private coursesOf(i: number, whole: boolean): Courses {
    const { turns, band, parted } = this.all[i]!;
    const cycle = parted!.whole.runs.length;
    const { from, to } = band;
    const pairs: [number, number][] = [];
    for (let course = from; course < Math.min(to - 1, from + cycle); course++)
      pairs.push([course % cycle, (course + 1) % cycle]);
    const held: Held[] = [
      { turn: from % cycle, joints: this.joints(i - 1, from - 1, whole) },
      { turn: (to - 1) % cycle, joints: this.joints(i + 1, to, whole) },
    ];
    return { turns, pairs, held };
  }

  /** Of a course of another band, or of one that the other wall does not reach. */
  private joints(i: number, course: number, whole: boolean): readonly number[] {
    const other = this.all[i];
    if (!other?.turns.size) return perpendsNear(this.out, course, this.gap);
    if (!other.chosen && !whole) return [];
    return jointsOf(other.turns.get(course % other.parted!.whole.runs.length)!);
  }
}

function turnsOf(
  { band: { from, to }, parted }: Opened,
  out: SettingOut,
  gap: LetIn,
  fine: boolean,
): ReadonlyMap<number, CourseParts> {
  const found = new Map<number, CourseParts>();
  if (!parted) return found;
  const { whole } = parted;
  const cycle = whole.runs.length;
  for (let course = from; course < Math.min(to, from + cycle); course++) {
    const turn = course % cycle;
    const through = course % 2 === gap.parity;
    const parts = through
      ? throughParts(parted, turn, out, { ...gap, fine })
      : acrossParts(whole, turn, out, { ...gap, fine });
    if (!parts) return new Map();
    const shown = through ? (gap.joints ?? []) : [];
    found.set(turn, { ...parts, fixed: [...parts.fixed, ...shown] });
  }
  return found;
}

/** Perpends of a course of a wall near another. */
export function perpendsNear(out: SettingOut, course: number, gap: LetIn): readonly number[] {
  if (course < 0 || course >= out.spec.courses) return [];
  const { from: low, to: high } = reachOf(out, gap);
  const brick = out.spec.unit.length + out.spec.joints.perpend;
  return perpendsAt(out.bands, course, { low, high, brick });
}
