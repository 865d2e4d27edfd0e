/** Other costs: hire, a skip, a permit. */
import { phrase } from '../../../shared/phrase';
import type { WasteNeed } from '../brickwork/needs';
import { type Env, LineFacts } from '../resolve/env';
import { perTime } from '../resolve/per';
import { cents, product, type Term } from '../working/term';
import type { SourceBlock } from '../workspace/source';
import { perNothing } from './settings';
import { wasteCost } from './waste';

export interface OtherCost {
  readonly block: SourceBlock;
  readonly title: string;
  readonly cost: Term;
}

export function otherCosts(days: Term, waste: WasteNeed | undefined, env: Env): OtherCost[] {
  // A heading that could not be read says nothing here: that its line is lost is told already.
  const read = env.book.blocksOf('cost').filter((b) => b.read.heading?.values.each);
  return read.map((block) => {
    const line = new LineFacts(block, block.read.heading!, env);
    const title = line.word('title') || line.word('name');
    return { block, title, cost: costOf(title, line, { days, waste, env }) };
  });
}

interface By {
  readonly days: Term;
  readonly waste: WasteNeed | undefined;
  readonly env: Env;
}

function costOf(title: string, line: LineFacts, { days, waste, env }: By): Term {
  if (line.values.of) return wasteCosts(title, line, waste, env);
  const parts = [line.term('count', phrase`number`), line.term('each', phrase`${title}, each`)];
  if (!line.values.per) return toThePenny(title, parts, env);
  if (perTime(line.word('per')) !== 'day') return perNothing(title, line, env, 'per');
  return toThePenny(title, [...parts, days], env);
}

function wasteCosts(title: string, line: LineFacts, waste: WasteNeed | undefined, env: Env): Term {
  const cost = wasteCost(title, line, waste, env);
  return cost ? cents(title, cost, env.money.digits) : perNothing(title, line, env);
}

/** Rounded where it arises, like every cost: what is printed adds up. */
function toThePenny(title: string, parts: readonly Term[], env: Env): Term {
  return cents(title, product(title, env.money.code, parts), env.money.digits);
}
