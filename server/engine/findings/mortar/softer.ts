/** Mixes without cement as ways out, for new work on old lime. */
import { phrase } from '../../../../shared/phrase';
import type { Work } from '../../brickwork/work';
import { holdsCement } from '../../cautions/mixed';
import type { Rule } from '../../cautions/rules';
import { type Env, factsNamed, factsOf } from '../../resolve/env';
import { lineAfter, type RemarkWay, rewrite } from '../remark';
import { isAtHand } from './stronger';

/** As many as anyone chooses among. */
const MOST_WAYS = 3;

/** Cement and old lime together bring it up. */
function isOnLime({ when }: Rule): boolean {
  return when.some((all) => ['cement', 'old-lime'].every((w) => all.some((c) => c.what === w)));
}

/** Where all cement of the work is in the mix that its bricks are laid in: another then clears the caution. */
export function limeMixes({ block, needs }: Work, rule: Rule, env: Env): RemarkWay[] {
  const facts = isOnLime(rule) ? factsOf(block, env) : undefined;
  const line = facts?.orDefault('mix');
  const own = line?.word('mix');
  const held = needs.mixes.filter(({ mix }) => holdsCement(mix, env));
  if (!facts || !own || !held.length || held.some(({ mix }) => mix !== own)) return [];
  const at = facts.heading.syntax.span.line;
  const said = facts.line('mix');
  return limes(env).map(({ name, title }) => ({
    title: phrase`Lay it in ${title}`,
    edits: [said ? rewrite(said.at('mix'), name) : lineAfter(block, at, `  mix ${name}`)],
  }));
}

/** Bought ready, a mix holds what its bag says, and is none that this offers. */
function limes(env: Env): { name: string; title: string }[] {
  const all = env.book.names('mix').flatMap((name) => {
    const mix = factsNamed(env, 'mix', name);
    const fits = mix && !mix.line('ready') && !holdsCement(name, env) && isAtHand(mix, env);
    return fits ? [{ name, title: mix.title }] : [];
  });
  return all.slice(0, MOST_WAYS);
}
