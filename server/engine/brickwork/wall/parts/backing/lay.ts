/** The skin behind a wall's face: another unit, laid by itself in its own gauge over the same length and height. */
import { phrase } from '../../../../../../shared/phrase';
import { type BlockFacts, defaultLine, factsNamed, type LineFacts } from '../../../../resolve/env';
import { type OpeningSpec, type SettingOut, setOut, type WallSpec } from '../../../../setting-out';
import { brickOf } from '../../../goods';
import { jointsIn, limitsOf, type Masonry, withJoints } from '../../../masonry';
import { bondOf } from '../../bond';
import type { WallPlan } from '../../spec';

export interface Backing {
  readonly line: LineFacts;
  readonly masonry: Masonry;
  readonly out: SettingOut;
  /** Mm from the back of the face to its own face. */
  readonly cavity: number;
  /** Mm by which a level (the top, a sill, a head) lies off its courses, by what it is. */
  readonly off: readonly { readonly what: string; readonly by: number }[];
}

/** Levels nearer than this are one level, mm. */
const SAME = 0.5;

const kept = new WeakMap<WallPlan, Backing | undefined>();

/** The skin behind the face, set out by itself; nothing where the wall has none, or its size is not known. */
export function layBacking(masonry: Masonry, plan: WallPlan): Backing | undefined {
  if (!kept.has(plan)) kept.set(plan, newBacking(masonry, plan));
  return kept.get(plan);
}

function newBacking(masonry: Masonry, plan: WallPlan): Backing | undefined {
  const line = masonry.facts.line('backing');
  if (!line) return undefined;
  const own = unitOf(line, masonry);
  const unit = own.brick.size;
  const joints = jointsIn(own);
  const bond = bondBehind(masonry);
  if (!unit || !joints || !bond) return undefined;
  const { spec } = plan;
  const face = spec.unit.height + spec.joints.bed;
  const gauge = unit.height + joints.bed;
  const levels = new Levels(face, gauge);
  const courses = levels.up(phrase`the top of the wall`, spec.courses);
  const openings = spec.openings.map(
    (o): OpeningSpec => ({
      ...o,
      sill: levels.up(phrase`the sill of ${o.name}`, o.sill),
      top: o.top === null ? null : levels.down(phrase`the head of ${o.name}`, o.top),
    }),
  );
  const limits = limitsOf(masonry.env, 'joints-accepted', own.jointTerms.perpend);
  const { length, left, right } = spec;
  const behind: WallSpec = {
    ...{ unit, joints, bond, limits, length, left, right, courses },
    thickness: 1,
    openings: openings.filter((o) => (o.top ?? courses) > o.sill),
    piers: [],
    // A movement joint that stopped at the face would let nothing move: it goes through both skins.
    ...(spec.movement ? { movement: spec.movement } : {}),
    steps: (spec.steps ?? []).map((step) => ({
      ...step,
      bottom: step.bottom === 0 ? 0 : levels.up(phrase`a step of the top`, step.bottom),
      top: step.bottom === 0 ? levels.up(phrase`a step of the ground`, step.top) : courses,
    })),
  };
  const cavity = cavityOf(line, spec.joints.perpend);
  return { line, masonry: own, out: setOut(behind), cavity, off: levels.off };
}

/** Without a cavity there is a joint between the two. */
function cavityOf(line: LineFacts, perpend: number): number {
  return line.number('cavity') ?? perpend;
}

/** Mm from the back of the face to the back of the skin behind it; 0 where there is none, or none whose unit is known. */
export function deepBehind(masonry: Masonry, perpend: number): number {
  const line = masonry.facts.line('backing');
  const unit = line && brickOf(line, masonry.env, line.origin).size;
  return unit ? cavityOf(line, perpend) + unit.width : 0;
}

/** Its brick or block, its own joints, the wall's mix. */
function unitOf(line: LineFacts, { env, mix, facts }: Masonry): Masonry {
  const brick = brickOf(line, env, line.origin);
  return withJoints(brick.facts ?? facts, env, brick, mix);
}

/** Half-lapped, as the library's walls are where nothing else is said. */
function bondBehind({ env }: Masonry) {
  const line = defaultLine(env, 'bond');
  const bond: BlockFacts | undefined = line && factsNamed(env, 'bond', line.word('bond'));
  return bond && bondOf(bond, line?.number('n'), 1);
}

/** Courses of the face as courses of the backing: up to the next whole one, or down, and how far off. */
class Levels {
  readonly off: { what: string; by: number }[] = [];

  constructor(
    private readonly face: number,
    private readonly gauge: number,
  ) {}

  up(what: string, courses: number): number {
    return this.whole(what, courses, Math.ceil);
  }

  down(what: string, courses: number): number {
    return this.whole(what, courses, Math.floor);
  }

  private whole(what: string, courses: number, round: (n: number) => number): number {
    const exact = (courses * this.face) / this.gauge;
    const near = Math.round(exact);
    if (Math.abs(exact - near) * this.gauge < SAME) return near;
    const whole = round(exact);
    this.off.push({ what, by: Math.abs(whole - exact) * this.gauge });
    return whole;
  }
}
