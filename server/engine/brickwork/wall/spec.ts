/** From the lines of a wall to what setting-out takes: plain numbers in mm, with a remark for what cannot stand. */

import { phrase } from '../../../../shared/phrase';
import { bondThick } from '../../findings/bond-thick';
import { bondsThrough, brickShape } from '../../findings/brick-shape';
import { bondNumber } from '../../findings/idle';
import type { Remark } from '../../findings/remark';
import {
  openingClipped,
  openingOutside,
  openingsClash,
  pierHomeless,
  tooMany,
} from '../../findings/wall';
import { BlockFacts, type Env, factsNamed } from '../../resolve/env';
import {
  type AttachedLaid,
  type CoursePlan,
  type Level,
  levelAt,
  type OpeningSpec,
  type PierSpec,
  type Thickness,
  type WallSpec,
} from '../../setting-out';
import { fact, type Gap } from '../../working/term';
import { jointsIn, limitsOf, type Masonry } from '../masonry';
import { asHigh } from '../pier/core';
import { type Plan, planOf } from '../pier/plan';
import { bondNamedIn, halvesSetOut, whyNoBond } from './bond';
import { type Head, headsOf } from './heads/head';
import { type Height, heightIn } from './height';
import { endKind } from './meet/ends';
import { type MovementJoint, movementIn } from './meet/movement';
import { type Stepped, steppedIn } from './tops/steps';

export interface OpeningFacts {
  readonly facts: BlockFacts;
  readonly spec: OpeningSpec;
}

export interface PierFacts {
  readonly facts: BlockFacts;
  readonly spec: PierSpec;
  readonly height: Height;
  /** Depth in half bricks. */
  readonly halves: number;
  /** Its plan where it stands by itself; nothing where its counts cannot be laid. */
  readonly plan: Plan;
  /** Where it is bonded into the wall. */
  readonly attached?: AttachedLaid;
  /** Its courses above that wall, where it is higher: see `PierPlan.above`. */
  readonly above?: readonly CoursePlan[];
}

export interface WallPlan {
  readonly spec: WallSpec;
  readonly movement: readonly MovementJoint[];
  readonly height: Height;
  readonly openings: readonly OpeningFacts[];
  readonly piers: readonly PierFacts[];
  /** Its ground and its top, in courses above its lowest ground. */
  readonly ground: readonly Level[];
  readonly top: readonly Level[];
  /** What spans its openings, and lies at their feet. */
  readonly heads: readonly Head[];
}

/** Everything the wall needs before a brick is laid. Gaps say what is not known; then there is no plan. */
export function planWall(masonry: Masonry, remarks: Remark[], gaps: Gap[]): WallPlan | undefined {
  const { facts, env } = masonry;
  const halves = halvesSetOut(facts.orDefault('thick')?.number('thick'));
  const known = {
    unit: masonry.brick.size,
    joints: jointsIn(masonry),
    length: facts.line('length')?.number('length'),
    height: heightIn(masonry, facts, remarks),
    halves,
    bond: halves && bondNamedIn(facts, halves),
  };
  gaps.push(...unknown(known, facts));
  if (halves) remarks.push(...bondRemarks(facts, halves, env));
  const { unit, joints, length, height, bond } = known;
  if (!unit || !joints || !length || !height || !bond || !halves) return undefined;
  if (halves > 1 && !bondsThrough(unit, joints.perpend, env)) {
    remarks.push(brickShape(masonry));
    gaps.push({
      what: phrase`${facts.name || phrase`this wall`} cannot be laid in its brick`,
      origin: facts.origin,
      told: true,
    });
    return undefined;
  }
  const limits = limitsOf(env, 'joints-accepted', masonry.jointTerms.perpend);
  const ends = { left: endKind(facts, 'left'), right: endKind(facts, 'right') };
  const stepped = steppedIn(masonry, length, height.courses, remarks);
  const { ground, top, courses, steps } = stepped;
  const openings = openingsOf(masonry, length, stepped, remarks);
  const piers = piersOf(masonry, length, { height, ...stepped }, openings, remarks);
  const inTheWay = { openings: openings.map((o) => o.spec), piers: piers.map((p) => p.spec) };
  const movement = movementIn(masonry, length, inTheWay, remarks);
  const spec: WallSpec = {
    unit,
    joints: { bed: height.bed, perpend: joints.perpend },
    bond,
    thickness: halves,
    length,
    courses,
    ...ends,
    openings: openings.map((o) => o.spec),
    piers: piers.map((p) => p.spec),
    ...(steps.length ? { steps } : {}),
    ...(movement.length ? { movement: movement.map(({ from, width }) => ({ from, width })) } : {}),
    limits,
  };
  const heads = headsOf(masonry, { spec, openings, piers, top }, remarks);
  return { spec, height, openings, piers, ground, top, heads, movement };
}

function bondRemarks(facts: BlockFacts, halves: number, env: Env): Remark[] {
  const line = facts.orDefault('bond');
  const bond = line && factsNamed(env, 'bond', line.word('bond'));
  const number = line && bond && bondNumber(line, bond);
  const thick = bondThick(facts, halves, env);
  return [number, thick].filter((r): r is Remark => r !== undefined);
}

interface Known {
  readonly unit: unknown;
  readonly joints: unknown;
  readonly length: number | undefined;
  readonly height: unknown;
  readonly bond: unknown;
  readonly halves: Thickness | undefined;
}

function whyNoJoints(facts: BlockFacts, name: string): string {
  const gauge = facts.line('gauge');
  return gauge
    ? phrase`the gauge of ${name} leaves no bed joint: its courses are no higher than its brick, or its joints are not known`
    : phrase`the joints of ${name} are not known, or no joints at all`;
}

/** What of it is not known, each where it would be said. Height and joints hang on the brick, which has its own gap. */
function unknown(known: Known, facts: BlockFacts): Gap[] {
  const name = facts.name || phrase`this wall`;
  const gap = (key: string, what: string): Gap => ({
    what,
    origin: facts.orDefault(key)?.origin ?? facts.origin,
  });
  const { unit, length } = known;
  return [
    ...(length
      ? []
      : [
          gap(
            'length',
            phrase`the length of ${name} is ${length === 0 ? phrase`nothing` : phrase`not known`}`,
          ),
        ]),
    ...(known.height || !unit || !known.joints
      ? []
      : [gap('height', phrase`the height of ${name} is not known`)]),
    ...(known.bond || !known.halves
      ? []
      : [gap(facts.line('bond') ? 'bond' : 'thick', whyNoBond(facts, known.halves))]),
    ...(known.joints || !unit
      ? []
      : [
          gap(
            facts.line('gauge') && !facts.line('joint') ? 'gauge' : 'joint',
            whyNoJoints(facts, name),
          ),
        ]),
    ...(known.halves
      ? []
      : [
          gap(
            'thick',
            phrase`${name} has a thickness that is not set out: it can be half a brick, one, one and a half or two bricks`,
          ),
        ]),
  ];
}

/** More than any wall has: every one is held against every other, and the work grows with the square. */
const MOST_OPENINGS = 1000;

/** Openings that lie inside the wall and clear of each other; others are left out, with a remark. */
function openingsOf(
  masonry: Masonry,
  length: number,
  stepped: Stepped,
  remarks: Remark[],
): OpeningFacts[] {
  const found: OpeningFacts[] = [];
  const lines = masonry.facts.lines('opening');
  if (lines.length > MOST_OPENINGS) remarks.push(tooMany(masonry.facts, 'openings', MOST_OPENINGS));
  for (const line of lines.slice(0, MOST_OPENINGS)) {
    const facts = new BlockFacts(line.block, line.line, masonry.env);
    const spec = openingSpec(facts, length, stepped, remarks);
    if (!spec) continue;
    const other = found.find((o) => overlaps(o.spec, spec, stepped.courses));
    if (other) remarks.push(openingsClash(facts, other.facts));
    else found.push({ facts, spec });
  }
  return found;
}

function openingSpec(
  facts: BlockFacts,
  length: number,
  stepped: Stepped,
  remarks: Remark[],
): OpeningSpec | undefined {
  const from = facts.line('from');
  const distance = from?.number('distance');
  const width = facts.line('width')?.number('width');
  if (!from || distance === undefined || width === undefined) {
    remarks.push(
      openingOutside(
        facts,
        phrase`It is not known where it begins or how wide it is: it needs from and width.`,
      ),
    );
    return undefined;
  }
  const start = from.word('side') === 'right' ? length - distance - width : distance;
  if (start < 0 || start + width > length) {
    remarks.push(openingOutside(facts, phrase`It reaches beyond the wall.`));
    return undefined;
  }
  const sill = facts.line('sill')?.number('courses') ?? 0;
  const high = facts.line('height')?.number('courses');
  const { base, courses } = standingAt(start, stepped);
  const top = high === undefined || sill + high >= courses ? null : base + Math.floor(sill + high);
  if (sill >= courses) {
    remarks.push(openingOutside(facts, phrase`Its sill is above the top of the wall.`));
    return undefined;
  }
  if (high !== undefined && sill + high > courses)
    remarks.push(openingClipped(facts, courses, sill));
  return { name: facts.name, from: start, width, sill: base + Math.floor(sill), top };
}

/** Where the ground is at a place along the wall, and how many courses stand on it there. */
function standingAt(x: number, { ground, top }: Pick<Stepped, 'ground' | 'top'>) {
  const base = levelAt(ground, x);
  return { base, courses: levelAt(top, x) - base };
}

function overlaps(a: OpeningSpec, b: OpeningSpec, courses: number): boolean {
  const across = a.from < b.from + b.width && b.from < a.from + a.width;
  return across && a.sill < (b.top ?? courses) && b.sill < (a.top ?? courses);
}

function piersOf(
  masonry: Masonry,
  length: number,
  wall: Stepped & { readonly height: Height },
  openings: readonly OpeningFacts[],
  remarks: Remark[],
): PierFacts[] {
  const found: PierFacts[] = [];
  const lines = masonry.facts.lines('pier');
  if (lines.length > MOST_OPENINGS) remarks.push(tooMany(masonry.facts, 'piers', MOST_OPENINGS));
  for (const line of lines.slice(0, MOST_OPENINGS)) {
    const facts = new BlockFacts(line.block, line.line, masonry.env);
    const plan = planOf(facts, masonry, remarks);
    if (!plan) continue;
    const from = pierFrom(facts, plan.width, length, openings);
    if (from === undefined || from < 0 || from + plan.width > length) {
      remarks.push(
        pierHomeless(
          facts,
          openings.map((o) => o.facts.name),
        ),
      );
      continue;
    }
    const { base, courses } = standingAt(from + plan.width / 2, wall);
    const height = facts.line('height')
      ? heightIn(masonry, facts, remarks)
      : asHighAs(wall.height, courses);
    if (!height) continue;
    const own = asHigh(plan, masonry.brick.size!, height.courses, height.bed);
    const spec = { ...own, from, ...(base ? { base } : {}) };
    found.push({ facts, height, halves: plan.halves, plan, spec });
  }
  return found;
}

/** The height of a wall where it has so many courses: not those of its left end, if it steps. */
function asHighAs(wall: Height, courses: number): Height | undefined {
  if (courses === wall.courses) return wall;
  const term = fact(
    phrase`courses`,
    courses,
    'courses',
    wall.term.origin,
    phrase`as the wall steps`,
  );
  return courses < 1 ? undefined : { ...wall, courses, term };
}

/** Beside an opening on one side, at one end of the wall, or so far from it. */
function pierFrom(
  facts: BlockFacts,
  width: number,
  length: number,
  openings: readonly OpeningFacts[],
): number | undefined {
  const at = facts.line('at');
  if (!at) return undefined;
  const end = at.word('end');
  const distance = at.number('distance') ?? 0;
  if (end) return end === 'left' ? distance : length - distance - width;
  const opening = openings.find((o) => o.facts.name === at.word('opening'))?.spec;
  if (!opening) return undefined;
  return at.word('side') === 'left' ? opening.from - width : opening.from + opening.width;
}
