/** Stronger mixes as ways out: for the whole of a piece of work, or for the lines of some of its courses. */

import { listed } from '../../../../grammar/read/numbers';
import { later, phrase, spoken } from '../../../../shared/phrase';
import { gradeOf, type MortarClass } from '../../mortar/classes';
import { partsOf } from '../../mortar/parts';
import type { Place, Wanted } from '../../mortar/wanted';
import { type BlockFacts, type Env, factsNamed, type LineFacts } from '../../resolve/env';
import { lineAfter, type RemarkWay, rewrite } from '../remark';
import type { About } from './mix-weak';

/** As many as anyone chooses among. */
const MOST_WAYS = 3;

/** Whether it is a mortar, laid at a joint, and the firm has a price for all that goes into it: others are no way out. */
export function isAtHand(mix: BlockFacts, env: Env): boolean {
  const bought = (line: LineFacts) => line.values.price !== undefined;
  if (!mix.line('joint')) return false;
  if (mix.line('ready')) return mix.lines('ready').some(bought);
  const doses = mix.lines('dose').map((line) => line.word('material'));
  return [...partsOf(mix, env).map((p) => p.material), ...doses].every((material) => {
    const facts = factsNamed(env, 'material', material);
    return facts?.line('price') !== undefined || (facts?.lines('pack') ?? []).some(bought);
  });
}

/** The lines of all those places, each with a mix that is strong enough for every one. */
export function ownMixes({ env }: About, wanted: readonly Wanted[]): RemarkWay[] {
  const most = Math.max(...wanted.map((w) => w.of.strength));
  const lines = wanted.map((w) => w.own!);
  const what = listed(
    wanted.map((w) => spoken(PLACES[w.place] ?? w.place)),
    'and',
  );
  return strongEnough(most, env).map(({ name, mix, of }, i) => ({
    title: phrase`Lay ${what} in ${mix.title}, ${of.name}`,
    preferred: i === 0,
    edits: lines.map((line) => withMix(line, name)),
  }));
}

const PLACES: Readonly<Partial<Record<Place, string>>> = {
  dpc: later`the damp course`,
  coping: later`the coping`,
};

function withMix(line: LineFacts, name: string) {
  if (line.values.mix) return rewrite(line.at('mix'), name);
  const { block, line: said } = line;
  const last = said.syntax.items.at(-1)!.span;
  return rewrite({ block, span: { ...last, start: last.end } }, ` mix ${name}`);
}

interface Strong {
  readonly name: string;
  readonly mix: BlockFacts;
  readonly of: MortarClass;
}

/** Mixes that are strong enough, the weakest of them first. */
function strongEnough(strength: number, env: Env): Strong[] {
  const mixes = env.book.names('mix').flatMap((name) => {
    const mix = factsNamed(env, 'mix', name);
    const of = mix && gradeOf(mix, env).of;
    const fits = mix && of && of.strength >= strength && isAtHand(mix, env);
    return fits ? [{ name, mix, of }] : [];
  });
  return mixes.sort((a, b) => a.of.strength - b.of.strength).slice(0, MOST_WAYS);
}

export function strongerMixes({ work, facts, env }: About, wanted: Wanted): RemarkWay[] {
  const line = facts.line('mix');
  return strongEnough(wanted.of.strength, env).map(({ name, mix, of }, i) => ({
    title: phrase`Lay it in ${mix.title}, ${of.name}`,
    preferred: i === 0,
    edits: [
      line
        ? rewrite(line.at('mix'), name)
        : lineAfter(work.block, headLine(facts), `  mix ${name}`),
    ],
  }));
}

function headLine(facts: BlockFacts): number {
  return facts.heading.syntax.span.line;
}
