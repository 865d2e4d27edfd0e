/** Bricks and mortar of a wall and the piers in it, the damp course apart. */

import { exact } from '../../../../shared/exact';
import { later, phrase, spoken } from '../../../../shared/phrase';
import type { WallRun } from '../../findings/fit/fit-run';
import type { LineFacts } from '../../resolve/env';
import { type Bats, type SettingOut, sumTallies, type Tally } from '../../setting-out';
import { fact, type Term } from '../../working/term';
import { ownMix } from '../apart';
import { type Counted, countBricks, heightTerms } from '../count';
import { batsOf } from '../cuts/bats';
import { type Brick, brickOf, type Mix } from '../goods';
import type { Masonry } from '../masonry';
import { sideTerms } from '../pier/plan-terms';
import { coursesText } from './courses-text';
import { withoutWedges } from './heads/let-in';
import type { LaidAlone } from './meet/alone';
import { cornerTerms, movementTerms } from './meet/inputs';
import type { Cornered, Quoin } from './meet/quoins';
import { quoinText } from './meet/told';
import { piersText } from './piers/piers-text';
import type { WallPlan } from './spec';
import { type BandZones, dpcCourses, tallyPiers, tallyZones, type Zone, zonesOf } from './zones';

export interface Dpc {
  readonly line: LineFacts;
  readonly brick: Brick;
  readonly courses: Term;
  readonly counted: Counted;
  /** What it is laid in, where that is another mix than the wall’s. */
  readonly mix?: Mix;
}

/** A band of courses: see `PartBricks`. */
export interface Banded {
  readonly line: LineFacts;
  readonly brick: Brick;
  readonly counted: Counted;
}

export interface WallCounts {
  /** Its face, which at a quoin looks like a stopped end. */
  readonly out: SettingOut;
  /** As it lies on plan: in the courses that give way at a quoin, without what is the other wall’s. */
  readonly laid: SettingOut;
  readonly quoins: readonly Quoin[];
  readonly corbel: Cornered['corbel'];
  readonly tees: Cornered['tees'];
  readonly arms: Cornered['arms'];
  readonly blocks: Cornered['blocks'];
  /** Its stretches between fixed points, from the left. */
  readonly runs: readonly WallRun[];
  /** Stretches of wall between fixed points, above the damp course. */
  readonly wall: Counted;
  readonly piers: Counted | undefined;
  readonly dpc: Dpc | undefined;
  /** Courses in another brick, those in the wall’s own too where a line names it. */
  readonly bands: readonly Banded[];
  /** Everything, for the mortar. */
  readonly all: Tally;
}

/** Bricks of a wall, its piers, bands and damp course, its heads let in. */
export function countWall(
  masonry: Masonry,
  { plan, runs }: LaidAlone,
  { face, laid, quoins, corbel, tees, arms, blocks }: Cornered,
): WallCounts {
  renewInputs(masonry, plan, quoins);
  const zones = zonesOf(masonry, plan);
  const wall = counted(
    masonry,
    plan,
    phrase`Bricks in the wall`,
    [...tallyZones(laid, zones.own, plan), ...lostToArches(plan, face)],
    () => [...coursesText(laid, masonry), ...quoins.flatMap(quoinText)],
    () => batsOf(masonry),
  );
  // Those that the wall leaves.
  const bats = () => wall.needed.bats;
  const inPiers = tallyPiers(zones.own, plan);
  const piers = plan.piers.length
    ? counted(masonry, plan, phrase`Bricks in its piers`, inPiers, () => piersText(plan), bats)
    : undefined;
  const dpc = zones.damp.length ? countDpc(masonry, plan, laid, zones.damp) : undefined;
  const bands = countBands(masonry, plan, laid, zones.bands);
  const others = [
    ...(piers ? [piers] : []),
    ...(dpc ? [dpc.counted] : []),
    ...bands.map((b) => b.counted),
  ];
  const all = sumTallies([wall.tally, ...others.map((c) => c.tally)]);
  const meets = { quoins, corbel, tees, arms, blocks };
  return { out: face, laid, ...meets, runs, wall, piers, dpc, bands, all };
}

/** What arches cut off the bricks beside them is counted with the wall, and taken off again. */
function lostToArches({ heads }: WallPlan, face: SettingOut): Tally[] {
  return heads.some(({ arch }) => arch) ? [withoutWedges(heads, face)] : [];
}

/** Bands in another brick, its piers included, one count for each line. */
function countBands(
  masonry: Masonry,
  plan: WallPlan,
  out: SettingOut,
  bands: readonly BandZones[],
): Banded[] {
  return bands.flatMap(({ line, zones }) => {
    if (!zones.length) return [];
    const tallies = [...tallyZones(out, zones, plan), ...tallyPiers(zones, plan)];
    const brick = brickOf(line, masonry.env, line.origin);
    const label = phrase`Bricks in the band of ${brick.title}`;
    return [{ line, brick, counted: counted(masonry, plan, label, tallies) }];
  });
}

function counted(
  masonry: Masonry,
  plan: WallPlan,
  label: string,
  tallies: readonly Tally[],
  how?: () => string[],
  bats?: () => readonly Bats[],
): Counted {
  return countBricks(label, tallies, masonry, inputsOf(masonry, plan), how, 0, bats);
}

/** The facts that a wall is laid from, each with its line; made once for all counts of it. */
export function inputsOf(masonry: Masonry, plan: WallPlan): readonly Term[] {
  let inputs = made.get(plan);
  if (!inputs) {
    inputs = newInputs(masonry, plan);
    made.set(plan, inputs);
  }
  return inputs;
}

const made = new WeakMap<WallPlan, readonly Term[]>();

/** Among its facts are those of the walls it meets: they may have changed while its own plan is as it was. */
function renewInputs(masonry: Masonry, plan: WallPlan, quoins: readonly Quoin[]): void {
  const met = cornerTerms(quoins, masonry.env);
  if (met.length || made.has(plan)) made.set(plan, [...newInputs(masonry, plan), ...met]);
}

function newInputs(masonry: Masonry, plan: WallPlan): Term[] {
  const { facts } = masonry;
  const length = facts.line('length')!.term('length', phrase`length of the wall`);
  const thick = facts.orDefault('thick')?.term('thick', phrase`thickness`);
  const openings = plan.openings.flatMap(({ facts: o }) => [
    o.line('from')!.term('distance', phrase`opening ${o.name}, from`),
    o.line('width')!.term('width', phrase`opening ${o.name}, width`),
  ]);
  const piers = plan.piers.flatMap((p) => [
    { ...p.height.term, label: phrase`pier ${p.spec.name}, courses` },
    ...sideTerms(p.facts, phrase`pier ${p.spec.name}, `),
  ]);
  return [
    length,
    ...stepTerms(masonry),
    ...heightTerms(plan.height, masonry),
    ...(thick ? [thick] : []),
    ...openings,
    ...piers,
    ...movementTerms(plan.movement),
  ];
}

/** Where it steps, as its lines say. */
const STEPS = {
  ground: {
    falls: later`the ground falls`,
    at: later`the ground steps at`,
    up: later`the ground steps up`,
    down: later`the ground steps down`,
  },
  top: {
    falls: later`the top falls`,
    at: later`the top steps at`,
    up: later`the top steps up`,
    down: later`the top steps down`,
  },
} as const;

function stepTerms({ facts }: Masonry): Term[] {
  return (['ground', 'top'] as const).flatMap((key) => {
    const says = STEPS[key];
    return facts.lines(key).flatMap((line) => {
      if (line.word('how') === 'falls') return [line.term('fall', spoken(says.falls))];
      const way = line.word('way') === 'up' ? says.up : says.down;
      return [line.term('at', spoken(says.at)), line.term('courses', spoken(way), 'courses')];
    });
  });
}

function countDpc(masonry: Masonry, plan: WallPlan, out: SettingOut, zones: readonly Zone[]): Dpc {
  const line = masonry.facts.line('dpc')!;
  const courses = dpcCourses(masonry);
  const tallies = [...tallyZones(out, zones, plan), ...tallyPiers(zones, plan)];
  const brick = brickOf(line, masonry.env, line.origin);
  const counts = counted(masonry, plan, phrase`Bricks in the damp course`, tallies);
  return {
    line,
    brick,
    courses: fact(phrase`courses`, exact(courses), 'courses', line.at('courses')),
    counted: counts,
    mix: ownMix(line, masonry),
  };
}
