/** The walls that a wall is worked out from beside its own lines. */
import type { SourceBlock } from '../../../workspace/source';
import { type Claim, claimsOf } from './ends';
import type { Neighbours } from './neighbours';

const NOBODY: readonly SourceBlock[] = [];

/**
 * The walls that a wall is worked out from beside its own lines; nothing for one that meets none. Which course a wall is begun
 * with may hang on every wall that it is bonded to, and on theirs. One that only stands against another asks no more of it.
 */
export function besideOf(block: SourceBlock, neighbours: Neighbours): readonly SourceBlock[] {
  if (!claimsOf(block).length && !neighbours.into(block).length) return NOBODY;
  return neighbours.kept(block, (walls) => outward(walls, neighbours));
}

/** From walls that are bonded together outward, each once: those bonded to them too, and those that these only stand against. */
function outward(from: readonly SourceBlock[], neighbours: Neighbours): SourceBlock[] {
  const bonded = new Set(from);
  const against: SourceBlock[] = [];
  for (const wall of bonded) {
    const met = metBy(wall, neighbours);
    against.push(...met.against);
    for (const other of met.bonded) {
      bonded.add(other);
      for (const { block } of neighbours.chainOf(other)?.walls ?? []) bonded.add(block);
    }
  }
  return [...bonded, ...against];
}

function metBy(block: SourceBlock, neighbours: Neighbours) {
  const claims = claimsOf(block);
  const named = (some: readonly Claim[]) => some.flatMap((c) => neighbours.named(c.wall) ?? []);
  const into = neighbours.into(block).filter((wall) => bondsInto(wall, block));
  const before = hasPlinth(block) ? neighbours.into(block) : [];
  return {
    bonded: [...named(claims.filter((c) => c.bonded)), ...into],
    against: [...named(claims.filter((c) => !c.bonded)), ...before],
  };
}

/** It stops at walls that are only tied to it too. */
function hasPlinth({ read }: SourceBlock): boolean {
  return read.heading?.body.some((line) => line.kind.key === 'plinth') ?? false;
}

function bondsInto(wall: SourceBlock, { name }: SourceBlock): boolean {
  return claimsOf(wall).some((c) => c.bonded && c.wall === name);
}
