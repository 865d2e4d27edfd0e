/** What the materials of a mix are in it: cement, lime or sand. */
import { type BlockFacts, type Env, factsNamed } from '../resolve/env';

export type Role = 'cement' | 'lime' | 'sand';

/** As its line `is` says, else by the end of its name; nothing for what says neither. */
export function roleOf(name: string, env: Env): Role | undefined {
  return saidRole(factsNamed(env, 'material', name)) ?? roleInName(name);
}

function saidRole(facts: BlockFacts | undefined): Role | undefined {
  const said = facts?.line('is')?.word('is');
  return said === 'cement' || said === 'lime' || said === 'sand' ? said : undefined;
}

function roleInName(name: string): Role | undefined {
  return (['cement', 'lime', 'sand'] as const).find((role) => name.endsWith(role));
}

/**
 * The part that is the sand, by its place in the list: the one that is said to be sand, else the last, as a mix
 * is written (common practice: cement, lime, sand). Nothing for a mix of one material.
 */
export function sandOf(names: readonly string[], env: Env): number | undefined {
  const said = names.findIndex((name) => roleOf(name, env) === 'sand');
  if (said >= 0) return said;
  const last = names.length - 1;
  return last > 0 && roleOf(names[last]!, env) === undefined ? last : undefined;
}
