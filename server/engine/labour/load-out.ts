/** Bricks that are bought, unloaded and stacked out where they are laid. */
import { phrase } from '../../../shared/phrase';
import type { Purchase } from '../price/buying';
import type { Env } from '../resolve/env';
import { quotient, sum, type Term } from '../working/term';
import type { Gang } from './gang';
import { byOne } from './output';

/** By all of the gang together; nothing where no `load-out` line says how much one does, or nothing is bought. */
export function loadingOut(purchases: readonly Purchase[], gang: Gang, env: Env): Term | undefined {
  const bricks = purchases.filter((p) => p.kind === 'brick').map((p) => p.bought);
  if (!bricks.length || !env.book.setting('output', 'load-out')) return undefined;
  const amount = sum(phrase`bricks bought`, 'bricks', bricks);
  const alone = byOne('output', phrase`Loading out, by one`, {
    task: 'load-out',
    amount,
    env,
    gang,
  });
  const hands = gang.serving ? sum(phrase`hands`, '', [gang.laying, gang.serving]) : gang.laying;
  return alone && quotient(phrase`Loading out`, 'h', alone, hands);
}
