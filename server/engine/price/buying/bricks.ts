/** Bricks: added up, breakage with them, singly or in whole packs. */
import { phrase } from '../../../../shared/phrase';
import { brickWaste } from '../../brickwork/goods';
import type { BrickNeed } from '../../brickwork/needs';
import { type BlockFacts, type Env, factsNamed, type LineFacts } from '../../resolve/env';
import { missing, product, quotient, raised, type Term, up } from '../../working/term';
import { noPrice, type Purchase, paid, total, unknown } from './purchase';

export function buyBricks(name: string, needs: readonly BrickNeed[], env: Env): Purchase {
  const facts = factsNamed(env, 'brick', name);
  const title = facts?.title ?? name;
  const all = needs.map((n) => n.bricks);
  const needed = total(phrase`${title}, laid`, 'bricks', all);
  const withLoss = raised(phrase`with breakage`, 'bricks', needed, brickWaste(facts, env));
  const bricks = up(phrase`${title}, to buy`, 'bricks', withLoss, phrase`whole bricks`);
  const common = { kind: 'brick' as const, name, title, needed };
  if (!facts) return { ...common, bought: bricks, cost: unknown(title, bricks, env) };
  const line = facts.line('price');
  if (!line) return { ...common, bought: bricks, cost: noPrice(title, env, needs[0]!.origin) };
  return { ...common, ...bricksAt(title, bricks, line, facts, env) };
}

/** Priced each or per 1000 singly; priced per pack in whole packs. */
function bricksAt(title: string, bricks: Term, line: LineFacts, facts: BlockFacts, env: Env) {
  const price = line.term('money', phrase`price`);
  const costs = (of: readonly Term[]) =>
    paid(phrase`${title}, cost`, product(title, env.money.code, of), env);
  if (line.values.pack) {
    const size = packSize(line, facts);
    const count = quotient(phrase`packs`, 'packs', bricks, size);
    const packs = up(phrase`${title}, packs`, 'packs', count, phrase`whole packs`);
    const bought = product(phrase`${title}, to buy`, 'bricks', [packs, size]);
    return { bought, cost: costs([packs, price]) };
  }
  if (!line.values.per) return { bought: bricks, cost: costs([bricks, price]) };
  const each = quotient(phrase`price of one`, env.money.code, price, line.term('per', phrase`per`));
  return { bought: bricks, cost: costs([bricks, each]) };
}

function packSize(price: LineFacts, facts: BlockFacts): Term {
  const said = facts.line('pack')?.term('pack', phrase`bricks in a pack`, 'bricks');
  const what = phrase`no line says how many ${facts.name} come in a pack`;
  return said ?? missing(phrase`bricks in a pack`, 'bricks', what, price.origin);
}
