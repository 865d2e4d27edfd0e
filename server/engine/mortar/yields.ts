/** How much mortar loose materials make, and how far the yield models lie from one another. */

import { ONE } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import { showNumber } from '../../../shared/show';
import { type BlockFacts, defaultTerm, type Env, factsNamed, factsOf } from '../resolve/env';
import { product, quotient, sum, type Term } from '../working/term';
import type { MixPart } from './parts';
import { sandOf } from './roles';

/**
 * Loose volume of all materials together for so much mortar: by the model that the mix names, else by the dry volume,
 * which is that of the mix or of the defaults.
 */
export function looseFor(
  wet: Term,
  parts: readonly MixPart[],
  all: Term,
  facts: BlockFacts,
  env: Env,
): Term {
  const model = modelOf(facts, env);
  const other = model && looseBy(model, wet, parts, all, env);
  if (other) return other;
  const factor =
    facts.line('dry-volume')?.term('factor', phrase`dry volume`) ??
    defaultTerm(env, 'dry-volume', 'factor', phrase`dry volume`);
  return product(phrase`loose materials`, wet.unit, [wet, factor]);
}

function modelOf(facts: BlockFacts, env: Env): BlockFacts | undefined {
  const line = facts.line('yield');
  return line && factsNamed(env, 'yield-model', line.word('model'));
}

/** By the sand alone, or by all that goes in; nothing where the model counts by sand and there is none. */
function looseBy(
  model: BlockFacts,
  wet: Term,
  parts: readonly MixPart[],
  all: Term,
  env: Env,
): Term | undefined {
  const whole = model.line('all');
  if (whole)
    return product(phrase`loose materials`, wet.unit, [wet, whole.term('factor', model.title)]);
  const line = model.line('sand');
  const at = sandOf(
    parts.map((p) => p.material),
    env,
  );
  if (!line || at === undefined) return undefined;
  const sand = product(phrase`loose sand`, wet.unit, [wet, line.term('factor', model.title)]);
  const over = product('', wet.unit, [sand, all]);
  return quotient(phrase`loose materials`, wet.unit, over, parts[at]!.part, model.title);
}

/** In words, how far each other model of the library lies from what is reckoned here. */
export function comparedIn(parts: readonly MixPart[], facts: BlockFacts, env: Env): string[] {
  const one = { ...product(phrase`one`, '', []), value: ONE };
  const all = sum(
    phrase`all parts`,
    '',
    parts.map((p) => p.part),
  );
  const own = modelOf(facts, env);
  const ours = looseFor(one, parts, all, facts, env).value;
  if (ours.isZero() || !ours.isFinite()) return [];
  const seen = new Set(own ? [own.name] : []);
  return env.book.blocksOf('yield-model').flatMap((block) => {
    const model = factsOf(block, env);
    if (!model || seen.has(model.name)) return [];
    seen.add(model.name);
    const theirs = looseBy(model, one, parts, all, env)?.value;
    return theirs ? [farText(model.title, theirs.div(ours).toNumber() - 1, env)] : [];
  });
}

function farText(title: string, by: number, env: Env): string {
  const percent = showNumber(ONE.mul(Math.abs(by) * 100), 0, env.style);
  if (percent === '0') return phrase`by ${title}: as much of each material`;
  return phrase`by ${title}: ${percent}% ${by > 0 ? phrase`more` : phrase`less`} of each material`;
}
