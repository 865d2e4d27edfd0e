/** Why a wall cannot be bonded into another, before anybody looks for a way to lay it. */
import { later, phrase, spoken } from '../../../../../shared/phrase';
import { type Env, factsOf } from '../../../resolve/env';
import type { SourceBlock } from '../../../workspace/source';
import { gapsOf } from '../heads/head';
import type { LaidAlone } from './alone';
import { claimsOf, SIDES } from './ends';
import { levelCourses } from './level';
import type { Neighbours } from './neighbours';
import type { Tee } from './tees';

/** A wall among others. */
export interface Among {
  readonly block: SourceBlock;
  readonly alone: LaidAlone;
  readonly neighbours: Neighbours;
  readonly env: Env;
}

export type TeePlace = Pick<Tee, 'side' | 'other' | 'with' | 'distance' | 'levels'>;

export function whyNot(tee: TeePlace, at: Among): string | undefined {
  const { with: other, levels } = tee;
  if (hasBacking(tee.other, at.env)) return spoken(BEHIND);
  if (hasBacking(at.block, at.env)) return phrase`This wall has a backing.`;
  if (!levelCourses(at.alone.out, other.out)) return phrase`The courses of the two are not level.`;
  if (levels.steps) return levels.steps;
  if (levels.higher) return phrase`This wall is the higher one.`;
  if (other.plan.spec.piers.length) return phrase`The other wall has piers.`;
  return other.plan.spec.thickness > 1 ? whyNotThick(tee, at) : undefined;
}

/** It stands behind the other wall, so that the skin it comes against is the backing. */
const BEHIND = later`The other wall has a backing. This wall stands against that, not against its face.`;

export const hasBacking = (block: SourceBlock, env: Env): boolean =>
  factsOf(block, env)?.line('backing') !== undefined;

/** What is looked for goes so far on either side of the wall that runs in, in bricks. */
const REACH = 3;

function whyNotThick(tee: TeePlace, { block, alone, neighbours, env }: Among): string | undefined {
  const { other, distance, with: laid } = tee;
  const { spec, heads } = laid.plan;
  const reach = REACH * (spec.unit.length + spec.joints.perpend);
  const [low, high] = [distance - reach, distance + alone.out.thickness + reach];
  if (runsOnItself(other, env))
    return phrase`The other wall is bonded into other work at its own end.`;
  if (gapsOf(heads).some((gap) => gap.from < high && gap.to > low))
    return phrase`A head or a lintel of that wall is too near.`;
  if (nearCorner(tee, low, high, neighbours)) return phrase`A corner of that wall is too near.`;
  if (isAfterOther(tee, block, 2 * reach, neighbours, env))
    return phrase`Another wall that is bonded into it is too near.`;
  return undefined;
}

/** Its courses are then set out otherwise than they are known here. */
function runsOnItself(other: SourceBlock, env: Env): boolean {
  const bonded = claimsOf(other).some((c) => c.kind === 'tee' && c.bonded);
  return bonded || SIDES.some((s) => factsOf(other, env)!.line(s)?.word('end') === 'block-bonded');
}

/** So far from a corner its courses may be cut otherwise, in bricks. */
const ROUND_CORNER = 2;

function nearCorner(
  { other, with: { plan } }: TeePlace,
  low: number,
  high: number,
  neighbours: Neighbours,
): boolean {
  const deep = ROUND_CORNER * (plan.spec.unit.length + plan.spec.joints.perpend);
  return claimsOf(other).some(({ kind, side }) => {
    if (kind !== 'quoin' || !neighbours.answering({ block: other, side })) return false;
    return side === 'left' ? low < deep : high > plan.spec.length - deep;
  });
}

/** Of walls that run in near one another the first in the file is bonded. */
function isAfterOther(
  { other, distance }: TeePlace,
  block: SourceBlock,
  near: number,
  neighbours: Neighbours,
  env: Env,
): boolean {
  for (const wall of neighbours.into(other)) {
    if (wall === block) return false;
    const claim = claimsOf(wall).find((c) => c.bonded && c.wall === other.name);
    const at = claim && (factsOf(wall, env)!.line(claim.side)?.number('distance') ?? 0);
    if (at !== undefined && Math.abs(at - distance) < near) return true;
  }
  return false;
}
