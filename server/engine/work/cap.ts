/** Caps on piers: bought by the piece, by the name the line gives, else by their size. */
import { exact } from '../../../shared/exact';
import type { BlockFacts } from '../resolve/env';
import { fact } from '../working/term';
import type { PieceNeed } from './needs';

/** `alike` piers that carry the same cap. */
export function capsOf(facts: BlockFacts, alike: number): PieceNeed[] {
  const line = facts.line('cap');
  if (!line) return [];
  const material = line.word('material') || 'cap';
  const origin = line.values.material ? line.at('material') : line.origin;
  return [{ material, count: fact('caps', exact(alike), 'pieces', line.origin), origin }];
}
