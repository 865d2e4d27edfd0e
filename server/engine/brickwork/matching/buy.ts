/** What the shortfall of a repair costs in one brick or another: as it is bought, in whole packs where it is sold so. */
import { phrase } from '../../../../shared/phrase';
import { buyBricks } from '../../price/buying';
import type { Env } from '../../resolve/env';
import { difference, raised, type Term, up } from '../../working/term';
import { type Brick, brickWaste } from '../goods';
import type { Bought } from './types';

/** What is bought if this brick is taken for all that is short, and what that costs. */
export function boughtAs({ name, facts, origin }: Brick, short: Term, env: Env): Bought {
  const need = { brick: name, block: facts?.block, bricks: short, origin };
  const { bought, cost } = buyBricks(name, [need], env);
  const lost = raised(phrase`with breakage`, 'bricks', short, brickWaste(facts, env));
  const used = up(phrase`laid or broken`, 'bricks', lost, phrase`whole bricks`);
  return { bought, cost, left: difference(phrase`Bricks left over`, 'bricks', bought, used) };
}
