/** Concrete under a wall or a pier. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import type { BlockFacts, Env, LineFacts } from '../../resolve/env';
import { fact, product, type Term, withGaps } from '../../working/term';
import { mixOf } from '../goods';
import { inUnit, unitNames } from '../lengths';
import type { MixNeed } from '../needs';

/** Width times depth times length: of the wall for a strip, of the pad itself where the line gives three sides. */
export function footingOf(
  facts: BlockFacts,
  env: Env,
  length: Term | undefined,
  alike?: Term,
): MixNeed | undefined {
  const line = facts.line('footing');
  if (!line) return undefined;
  const sides = line.sides('size');
  const named = line.values.mix ? line : facts.orDefault('footing-mix');
  const mix = mixOf(named, env, line.origin);
  const volume = sides
    ? volumeOf(line, sides, length, alike, env)
    : line.term('size', phrase`footing`, unitNames(env).volume);
  return {
    mix: mix.name,
    block: mix.facts?.block,
    litres: withGaps(volume, mix.gaps),
    origin: mix.origin,
  };
}

function volumeOf(
  line: LineFacts,
  sides: readonly number[],
  length: Term | undefined,
  alike: Term | undefined,
  env: Env,
): Term {
  const unit = env.imperial ? 'ft' : 'm';
  const said = [phrase`width of the footing`, phrase`depth of the footing`];
  const order = sides.length === 3 ? [phrase`length of the footing`, ...said] : said;
  const terms = sides.map((mm, i) =>
    inUnit(fact(order[i]!, exact(mm), 'mm', line.at('size')), unit),
  );
  if (sides.length === 2 && length) terms.push(inUnit(length, unit));
  if (alike) terms.push(alike);
  const cubic = product(phrase`Concrete`, env.imperial ? 'ft3' : 'm3', terms);
  return inUnit(cubic, unitNames(env).volume);
}
