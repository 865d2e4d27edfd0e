/** How much a coping adds to the height of what it covers, its bed included. */
import type { BlockFacts } from '../../../resolve/env';
import type { Masonry } from '../../masonry';
import { bricksMade, type CopingMade } from '../../tops/coping-made';
import { creasingHeight } from '../../tops/creasing';
import type { WallPlan } from '../spec';
import { creasingIn, madeFor } from './copings';

/** Of a wall, mm; 0 without a coping, and for one that no line says the height of. */
export function highOf(masonry: Masonry, plan: WallPlan): number {
  const line = masonry.facts.line('coping');
  const made = line && madeFor(line, masonry, plan);
  const creasing = creasingIn(masonry, plan);
  const { bed } = plan.spec.joints;
  return (creasing ? creasingHeight(creasing, bed) : 0) + onBed(made, bed);
}

/** Of a pier, mm: its bricks on edge or on end. */
export function pierHigh(facts: BlockFacts, masonry: Masonry, bed: number): number {
  const line = facts.line('coping');
  const kind = line?.word('kind');
  if (!line || (kind !== 'brick-on-edge' && kind !== 'brick-on-end')) return 0;
  return onBed(bricksMade(line, 1, masonry, kind === 'brick-on-end' ? 'end' : 'edge'), bed);
}

function onBed(made: CopingMade | undefined, bed: number): number {
  return made && made.high > 0 ? made.high + bed : 0;
}
