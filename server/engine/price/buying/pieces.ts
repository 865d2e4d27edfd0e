/** Things bought by the piece. */
import { phrase } from '../../../../shared/phrase';
import type { PieceNeed } from '../../brickwork/needs';
import { type Env, factsNamed } from '../../resolve/env';
import { product, up } from '../../working/term';
import { noPrice, type Purchase, paid, total } from './purchase';

export function buyPieces(name: string, needs: readonly PieceNeed[], env: Env): Purchase {
  const facts = factsNamed(env, 'material', name);
  const title = facts?.title ?? name;
  const counts = needs.map((n) => n.count);
  const needed = total(title, 'pieces', counts);
  const bought = up(phrase`${title}, to buy`, 'pieces', needed);
  const common = { kind: 'piece' as const, name, title, needed, bought };
  const line = facts?.line('price');
  if (!line) return { ...common, cost: noPrice(title, env, needs[0]!.origin) };
  const cost = product(title, env.money.code, [bought, line.term('money', phrase`price`)]);
  return { ...common, cost: paid(phrase`${title}, cost`, cost, env) };
}
