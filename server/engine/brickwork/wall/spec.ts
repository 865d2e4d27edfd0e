/** From the lines of a wall to what setting-out takes: plain numbers in mm, with a remark for what cannot stand. */

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
import type { EndKind, OpeningSpec, PierSpec, WallSpec } from '../../setting-out';
import type { Gap } from '../../working/term';
import { jointsIn, limitsOf, type Masonry } from '../masonry';
import { planOf } from '../plan';
import { bondOf, MOST_COURSES } from './bond';
import { type Height, heightIn } from './height';

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
}

export interface WallPlan {
  readonly spec: WallSpec;
  readonly height: Height;
  readonly openings: readonly OpeningFacts[];
  readonly piers: readonly PierFacts[];
}

/** Everything the wall needs before a brick is laid. Gaps say what is not known; then there is no plan. */
export function planWall(masonry: Masonry, remarks: Remark[], gaps: Gap[]): WallPlan | undefined {
  const { facts, env } = masonry;
  const known = {
    unit: masonry.brick.size,
    joints: jointsIn(masonry),
    length: facts.line('length')?.number('length'),
    height: heightIn(masonry, facts, remarks),
    bond: namedBond(facts, env),
    halves: halvesSetOut(facts.orDefault('thick')?.number('thick')),
  };
  gaps.push(...unknown(known, facts, env));
  const { unit, joints, length, height, bond, halves } = known;
  if (!unit || !joints || !length || !height || !bond || !halves) return undefined;
  if (halves > 1 && !bondsThrough(unit, joints.perpend)) {
    remarks.push(brickShape(masonry));
    gaps.push({
      what: `${facts.name || 'this wall'} cannot be laid in its brick`,
      origin: facts.origin,
      told: true,
    });
    return undefined;
  }
  remarks.push(...bondRemarks(facts, halves, env));
  const limits = limitsOf(env, 'joints-accepted', masonry.jointTerms.perpend);
  const ends = { left: endOf(facts, 'left'), right: endOf(facts, 'right') };
  const openings = openingsOf(masonry, length, height.courses, remarks);
  const piers = piersOf(masonry, length, height, openings, remarks);
  const spec: WallSpec = {
    unit,
    joints: { bed: height.bed, perpend: joints.perpend },
    bond,
    thickness: halves,
    length,
    courses: height.courses,
    ...ends,
    openings: openings.map((o) => o.spec),
    piers: piers.map((p) => p.spec),
    limits,
  };
  return { spec, height, openings, piers };
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
  readonly halves: unknown;
}

/** What of it is not known, each where it would be said. Height and joints hang on the brick, which has its own gap. */
function unknown(known: Known, facts: BlockFacts, env: Env): Gap[] {
  const name = facts.name || 'this wall';
  const gap = (key: string, what: string): Gap => ({
    what,
    origin: facts.orDefault(key)?.origin ?? facts.origin,
  });
  const { unit, length } = known;
  return [
    ...(length
      ? []
      : [gap('length', `the length of ${name} is ${length === 0 ? 'nothing' : 'not known'}`)]),
    ...(known.height || !unit ? [] : [gap('height', `the height of ${name} is not known`)]),
    ...(known.bond ? [] : [gap('bond', whyNoBond(facts, env))]),
    ...(known.joints || !unit
      ? []
      : [gap('joint', `the joints of ${name} are not known, or no joints at all`)]),
    ...(known.halves
      ? []
      : [
          gap(
            'thick',
            `${name} has a thickness that is not set out: it can be half a brick or one brick`,
          ),
        ]),
  ];
}

/** Half bricks through the wall, for a thickness that is set out. */
function halvesSetOut(thick: number | undefined): 1 | 2 | undefined {
  const halves = (thick ?? 0) * 2;
  return halves === 1 || halves === 2 ? halves : undefined;
}

function namedBond(facts: BlockFacts, env: Env) {
  const line = facts.orDefault('bond');
  const bond = line && factsNamed(env, 'bond', line.word('bond'));
  return bond && bondOf(bond, line.number('n'));
}

function whyNoBond(facts: BlockFacts, env: Env): string {
  const name = facts.name || 'this wall';
  const known = factsNamed(env, 'bond', facts.orDefault('bond')?.word('bond') ?? '');
  if (!known) return `the bond of ${name} is not known`;
  return `the bond of ${name} has no course, or more than ${MOST_COURSES} before it repeats`;
}

function endOf(facts: BlockFacts, side: 'left' | 'right'): EndKind {
  return (facts.orDefault(side)?.word('end') || 'stopped') as EndKind;
}

/** More than any wall has: every one is held against every other, and the work grows with the square. */
const MOST_OPENINGS = 1000;

/** Openings that lie inside the wall and clear of each other; others are left out, with a remark. */
function openingsOf(
  masonry: Masonry,
  length: number,
  courses: number,
  remarks: Remark[],
): OpeningFacts[] {
  const found: OpeningFacts[] = [];
  const lines = masonry.facts.lines('opening');
  if (lines.length > MOST_OPENINGS) remarks.push(tooMany(masonry.facts, 'openings', MOST_OPENINGS));
  for (const line of lines.slice(0, MOST_OPENINGS)) {
    const facts = new BlockFacts(line.block, line.line, masonry.env);
    const spec = openingSpec(facts, length, courses, remarks);
    if (!spec) continue;
    const other = found.find((o) => overlaps(o.spec, spec, courses));
    if (other) remarks.push(openingsClash(facts, other.facts));
    else found.push({ facts, spec });
  }
  return found;
}

function openingSpec(
  facts: BlockFacts,
  length: number,
  courses: number,
  remarks: Remark[],
): OpeningSpec | undefined {
  const from = facts.line('from');
  const distance = from?.number('distance');
  const width = facts.line('width')?.number('width');
  if (!from || distance === undefined || width === undefined) {
    remarks.push(
      openingOutside(
        facts,
        'It is not known where it begins or how wide it is: it needs from and width.',
      ),
    );
    return undefined;
  }
  const start = from.word('side') === 'right' ? length - distance - width : distance;
  if (start < 0 || start + width > length) {
    remarks.push(openingOutside(facts, 'It reaches beyond the wall.'));
    return undefined;
  }
  const sill = facts.line('sill')?.number('courses') ?? 0;
  const high = facts.line('height')?.number('courses');
  const top = high === undefined || sill + high >= courses ? null : Math.floor(sill + high);
  if (sill >= courses) {
    remarks.push(openingOutside(facts, 'Its sill is above the top of the wall.'));
    return undefined;
  }
  if (high !== undefined && sill + high > courses)
    remarks.push(openingClipped(facts, courses, sill));
  return { name: facts.name, from: start, width, sill: Math.floor(sill), top };
}

function overlaps(a: OpeningSpec, b: OpeningSpec, courses: number): boolean {
  const across = a.from < b.from + b.width && b.from < a.from + a.width;
  return across && a.sill < (b.top ?? courses) && b.sill < (a.top ?? courses);
}

function piersOf(
  masonry: Masonry,
  length: number,
  wall: Height,
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
    const height = facts.line('height') ? heightIn(masonry, facts, remarks) : wall;
    if (!height) continue;
    const { name, width, depth, plans, halves } = plan;
    found.push({
      facts,
      height,
      halves,
      spec: { name, width, depth, plans, courses: height.courses, from },
    });
  }
  return found;
}

/** Beside an opening on one side, or at one end of the wall. */
function pierFrom(
  facts: BlockFacts,
  width: number,
  length: number,
  openings: readonly OpeningFacts[],
): number | undefined {
  const at = facts.line('at');
  if (!at) return undefined;
  const end = at.word('end');
  if (end) return end === 'left' ? 0 : length - width;
  const opening = openings.find((o) => o.facts.name === at.word('opening'))?.spec;
  if (!opening) return undefined;
  return at.word('side') === 'left' ? opening.from - width : opening.from + opening.width;
}
