/** What the shortfall of a repair costs in one brick or another: as it is bought, in whole packs where it is sold so. */
import { buyBricks } from '../../price/buying';
import type { Env } from '../../resolve/env';
import { difference, raised, type Term, up } from '../../working/term';
import { type Brick, brickWaste } from '../goods';
import type { Bought } from './types';

export function boughtAs({ name, facts, origin }: Brick, short: Term, env: Env): Bought {
  const need = { brick: name, block: facts?.block, bricks: short, origin };
  const { bought, cost } = buyBricks(name, [need], env);
  const lost = raised('with breakage', 'bricks', short, brickWaste(facts, env));
  const used = up('laid or broken', 'bricks', lost, 'whole bricks');
  return { bought, cost, left: difference('Bricks left over', 'bricks', bought, used) };
}
