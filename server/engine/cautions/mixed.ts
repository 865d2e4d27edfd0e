/** What is in the mortar and concrete of a piece of work, what the standing mortar is, and the bags it comes in. */
import { phrase, spoken } from '../../../shared/phrase';
import type { MixNeed } from '../brickwork/needs';
import { partsOf } from '../mortar/parts';
import { endsOf } from '../resolve/ends';
import { type BlockFacts, type Env, factsNamed, factsOf, type LineFacts } from '../resolve/env';
import type { Origin } from '../working/term';
import { type Gathered, inWords, type Limit, type Standing, type What } from './holding';
import { massText } from './mass-text';

export function mixed({ work, facts, wall, env }: Standing, into: Gathered): void {
  const seen = new Set<string>();
  for (const need of mixesOf({ work, facts, env }))
    for (const material of materialsOf(need, env)) {
      if (seen.has(material)) continue;
      seen.add(material);
      contents(material, need, env, into);
    }
  for (const need of mixesOf({ work, facts, env })) readyMixed(need, env, into);
  standing({ work, facts, wall, env }, into);
}

/** Of what is laid, or is to be as soon as it can be. */
function mixesOf({ work, facts }: Standing): readonly Pick<MixNeed, 'mix' | 'origin'>[] {
  if (work.needs.mixes.length || work.kind === 'repair') return work.needs.mixes;
  const line = facts.orDefault('mix');
  return line ? [{ mix: line.word('mix'), origin: line.at('mix') }] : [];
}

function contents(
  name: string,
  { origin, mix }: Pick<MixNeed, 'mix' | 'origin'>,
  env: Env,
  into: Gathered,
): void {
  const material = factsNamed(env, 'material', name);
  const title = material?.title ?? name;
  const from = factsNamed(env, 'mix', mix)?.title ?? mix;
  const held = { origin, why: () => (from === title ? title : phrase`${title} in ${from}`) };
  into.named(name, held);
  const is = whatIs(name, material);
  if (is && is !== name) into.add(is, held);
  for (const pack of material?.lines('pack') ?? []) bag(pack, title, origin, into);
}

/** Every way it is sold by weight: which of them is bought is the price’s to say, and may change. */
function bag(pack: LineFacts, title: string, origin: Origin, into: Gathered): void {
  const { content } = pack.values;
  const kg = endsOf(pack, 'content');
  if (kg === undefined || content?.kind !== 'quantity' || content.unit?.dimension !== 'mass')
    return;
  const comes = (up: string) => (mass: number) =>
    phrase`${title} comes by the ${up}${massText(pack.env, mass)} ${spoken(pack.word('pack'))}`;
  const words = {
    one: comes(''),
    most: comes(phrase`up to `),
    least: comes(phrase`no less than `),
  };
  const why = (limit?: Limit) => inWords(kg, words, limit);
  into.add('bag', { origin, amount: kg, why, goods: true });
}

const KINDS: readonly What[] = ['cement', 'lime', 'ready-mixed'];

/** By its `is` line, else by the last word of its name: portland-cement is cement. */
function whatIs(name: string, material: BlockFacts | undefined): What | undefined {
  const said = material?.line('is')?.word('is') ?? name.split('-').at(-1);
  return KINDS.find((kind) => kind === said);
}

function materialsOf({ mix }: Pick<MixNeed, 'mix'>, env: Env): string[] {
  const facts = factsNamed(env, 'mix', mix);
  const doses = facts?.lines('dose').map((line) => line.word('material')) ?? [];
  return [...partsOf(facts, env).map((part) => part.material), ...doses];
}

/** Bought ready: what is in it the bag says, and it comes by the bag. */
function readyMixed(
  { mix, origin }: Pick<MixNeed, 'mix' | 'origin'>,
  env: Env,
  into: Gathered,
): void {
  const facts = factsNamed(env, 'mix', mix);
  const lines = facts?.lines('ready') ?? [];
  if (lines.length) into.add('ready-mixed', { origin, why: () => facts!.title });
  for (const line of lines) bag(line, facts!.title, origin, into);
}

/** By a word of the line, by the mix it names, else by the mix of the wall; a mix without cement is old lime. */
function standing({ facts, wall, env }: Standing, into: Gathered): void {
  const line = facts.line('stands-in') ?? (wall && factsOf(wall.block, env)?.line('mix'));
  if (!line) return;
  into.said.add('old-lime');
  const mortar = line.word('mortar');
  const mix = line.word('mix');
  const old = mortar ? mortar !== 'cement' : mix !== '' && !holdsCement(mix, env);
  const name = mortar || (factsNamed(env, 'mix', mix)?.title ?? mix);
  if (old)
    into.add('old-lime', {
      origin: line.origin,
      why: () => phrase`it stands in ${name}`,
      own: true,
    });
}

/** What is bought ready is taken to hold some, where no parts say otherwise. */
export function holdsCement(mix: string, env: Env): boolean {
  const facts = factsNamed(env, 'mix', mix);
  if (facts?.line('ready') && !partsOf(facts, env).length) return true;
  return materialsOf({ mix }, env).some(
    (name) => whatIs(name, factsNamed(env, 'material', name)) === 'cement',
  );
}
