/** From the lines of a wall to what setting-out takes: plain numbers in mm, with a remark for what cannot stand. */
import { phrase } from '../../../../shared/phrase';
import { bondThick } from '../../findings/bond-thick';
import { bondsThrough, brickShape } from '../../findings/brick-shape';
import { bondNumber } from '../../findings/idle';
import type { Remark } from '../../findings/remark';
import { type BlockFacts, type Env, factsNamed } from '../../resolve/env';
import type { Level, WallSpec } from '../../setting-out';
import type { Gap } from '../../working/term';
import { jointsIn, limitsOf, type Masonry } from '../masonry';
import { bondNamedIn, halvesSetOut } from './bond';
import { type Head, headsOf } from './heads/head';
import { type Height, heightIn } from './height';
import { endKind } from './meet/ends';
import { type MovementJoint, movementIn } from './meet/movement';
import { type OpeningFacts, openingsOf } from './openings';
import { type PierFacts, piersOf } from './piers/placed';
import { steppedIn } from './tops/steps';
import { unknown } from './unknown';

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
