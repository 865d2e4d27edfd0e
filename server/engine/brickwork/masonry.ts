/** What every piece of brickwork stands on: its brick, its mix, its joints, and what joints anyone would accept. */
import { phrase } from '../../../shared/phrase';
import { wordOf } from '../resolve/book';
import { type BlockFacts, defaultLine, defaultTerm, type Env } from '../resolve/env';
import type { JointLimits, Joints, UnitSize, WayKind } from '../setting-out';
import type { Gap, Term } from '../working/term';
import { type Brick, brickOf, type JointTerms, jointsOf, type Mix, mixOf } from './goods';
import { unsaidIn } from './unsaid';

export interface Masonry {
  readonly facts: BlockFacts;
  readonly env: Env;
  readonly brick: Brick;
  readonly mix: Mix;
  readonly jointTerms: JointTerms;
  readonly gaps: readonly Gap[];
}

/** Brick, mix and joints of a piece of work, by its own lines and the defaults; its gaps say what is not known. */
export function masonryOf(facts: BlockFacts, env: Env): Masonry {
  const brick = brickOf(facts.orDefault('brick'), env, facts.origin);
  const mix = mixOf(facts.orDefault('mix'), env, facts.origin);
  const masonry = withJoints(facts, env, brick, mix);
  return { ...masonry, gaps: [...masonry.gaps, ...unsaidIn(facts)] };
}

/** The same of a brick and a mix that are known already. */
export function withJoints(facts: BlockFacts, env: Env, brick: Brick, mix: Mix): Masonry {
  const jointTerms = jointsOf(facts, brick, mix);
  const gaps = [...brick.gaps, ...mix.gaps, ...jointTerms.perpend.gaps, ...jointTerms.bed.gaps];
  return { facts, env, brick, mix, jointTerms, gaps };
}

/** Joints in mm, when they are known and a joint at all. */
export function jointsIn(masonry: Masonry): Joints | undefined {
  const bed = masonry.jointTerms.bed.value.toNumber();
  const perpend = masonry.jointTerms.perpend.value.toNumber();
  return bed > 0 && perpend > 0 && perpend < (masonry.brick.size?.width ?? 0)
    ? { bed, perpend }
    : undefined;
}

/** Joints within which nobody looks twice, about the one that is meant. */
export function limitsOf(
  env: Env,
  key: 'joints-accepted' | 'beds-accepted',
  best: Term,
): JointLimits {
  const line = defaultLine(env, key);
  const value = line?.values.joints;
  const meant = best.value.toNumber();
  const factor = value?.kind === 'quantity' ? (value.unit?.factor.toNumber() ?? 1) : 1;
  const low = value?.kind === 'quantity' ? value.low.toNumber() * factor : meant;
  const high = value?.kind === 'quantity' ? (value.high ?? value.low).toNumber() * factor : meant;
  const mm = (line: string) => defaultLine(env, line)?.number('length') ?? 0;
  const least = Math.min(low, meant);
  const most = Math.max(high, meant);
  const cuts = { leastCut: mm('least-cut'), kerf: kerfOf(env) };
  return { least, most, best: meant, ...cuts, wholeWorth: mm('whole-worth') };
}

/** Kinds of way out, most welcome first, as a library ranks them; nothing where none does. */
export function waysIn(env: Env, key: 'ways' | 'pier-ways'): readonly WayKind[] | undefined {
  const value = defaultLine(env, key)?.values.ways;
  if (value?.kind !== 'list') return undefined;
  return value.of.map((each) => wordOf(each.way) as WayKind);
}

/** What the saw takes of a cut, mm; 0 where no defaults say. */
export function kerfOf(env: Env): number {
  return defaultLine(env, 'kerf')?.number('width') ?? 0;
}

/** What the saw takes, as a fact. */
export function kerfTerm(env: Env): Term {
  return defaultTerm(env, 'kerf', 'width', phrase`saw cut`);
}

/** Halves of a brick that a thickness in bricks has. */
export function halvesOf(bricks: number): number {
  return Math.round(bricks * 2);
}

/** Through a wall or pier of so many half bricks, mm: as many widths, a joint between each two. */
export function thicknessOf(halves: number, unit: UnitSize, joint: number): number {
  return (halves * (unit.length + joint)) / 2 - joint;
}
