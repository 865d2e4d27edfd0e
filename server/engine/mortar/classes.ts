/** The class of a mix: as its line says, else the strongest of the library whose mixes have no less sand for their cement. */

import type { Values } from '../../../grammar/read/values';
import { Decimal, type Exact, ZERO } from '../../../shared/exact';
import { toBase } from '../../../shared/units';
import { type BlockFacts, type Env, factsNamed, factsOf, type LineFacts } from '../resolve/env';
import { type MixPart, partsOf } from './parts';
import { roleOf, sandOf } from './roles';

/** A class, designation or type of mortar. */
export interface MortarClass {
  readonly name: string;
  readonly title: string;
  /** N/mm²; nothing for one that is weaker than any with a strength. */
  readonly strength: number;
  readonly facts: BlockFacts;
}

/** Cement of one kind or lime, to which the others are so many parts. */
interface Ratio {
  readonly base: 'cement' | 'masonry-cement' | 'lime';
  readonly lime: Exact;
  readonly sand: Exact;
}

export interface Graded {
  readonly of?: MortarClass;
  /** Parts of sand to one of its cement, where they are more than any mix of the library has. */
  readonly sandier?: { readonly sand: Exact; readonly most: Exact; readonly weakest: MortarClass };
}

/** Strongest first. */
export function classesIn(env: Env): MortarClass[] {
  const seen = new Set<string>();
  const all = env.book.blocksOf('mortar-class').flatMap((block) => {
    const facts = factsOf(block, env);
    if (!facts || seen.has(facts.name)) return [];
    seen.add(facts.name);
    return [asClass(facts)];
  });
  return all.sort((a, b) => b.strength - a.strength);
}

export function classNamed(name: string, env: Env): MortarClass | undefined {
  const facts = factsNamed(env, 'mortar-class', name);
  return facts && asClass(facts);
}

function asClass(facts: BlockFacts): MortarClass {
  const strength = facts.line('strength')?.number('strength') ?? 0;
  return { name: facts.name, title: facts.title, strength, facts };
}

const graded = new WeakMap<BlockFacts, Graded>();

/** Nothing known of a mix whose binder no class of the library has. Kept with the mix: every piece of work asks. */
export function gradeOf(mix: BlockFacts, env: Env): Graded {
  const known = graded.get(mix) ?? newGrade(mix, env);
  graded.set(mix, known);
  return known;
}

function newGrade(mix: BlockFacts, env: Env): Graded {
  const said = mix.line('class');
  if (said) return { of: classNamed(said.word('class'), env) };
  const ratio = ratioOf(partsOf(mix, env), env);
  if (!ratio) return {};
  const classes = classesIn(env);
  const of = classes.find((each) => mixesOf(each).some((line) => reaches(ratio, line)));
  return of ? { of } : { sandier: sandierThan(ratio, classes) };
}

function ratioOf(parts: readonly MixPart[], env: Env): Ratio | undefined {
  const names = parts.map((p) => p.material);
  const at = sandOf(names, env);
  if (at === undefined || parts.some((p) => p.part.gaps.length)) return undefined;
  const of = (is: (name: string) => boolean) =>
    parts.reduce((sum, p) => (is(p.material) ? sum.add(p.part.value) : sum), ZERO);
  const masonry = of(isMasonry);
  const cement = of((name) => !isMasonry(name) && roleOf(name, env) === 'cement');
  const lime = of((name) => roleOf(name, env) === 'lime');
  const base = cement.gt(0) ? 'cement' : masonry.gt(0) ? 'masonry-cement' : 'lime';
  const one = base === 'cement' ? cement : base === 'lime' ? lime : masonry;
  if (one.lte(0)) return undefined;
  const sand = parts[at]!.part.value.div(one);
  return { base, sand, lime: base === 'lime' ? ZERO : lime.div(one) };
}

const isMasonry = (name: string) => name.endsWith('masonry-cement');

/** One mix that reaches a class, by the most it may hold of each to one part of its binder. */
interface Reach {
  readonly base: Ratio['base'];
  readonly lime: Exact;
  readonly sand: Exact;
}

function mixesOf({ facts }: MortarClass): Reach[] {
  return facts.lines('mix').flatMap((line) => reachOf(line) ?? []);
}

function reachOf(line: LineFacts): Reach | undefined {
  const list = line.values.parts;
  if (list?.kind !== 'list') return undefined;
  const most = (key: string) => list.of.reduce((a, v) => Decimal.max(a, mostOf(v, key)), ZERO);
  const base = (['cement', 'masonry-cement', 'lime'] as const).find((key) => most(key).gt(0));
  if (!base) return undefined;
  const to = (key: string) => most(key).div(most(base));
  return { base, lime: base === 'lime' ? ZERO : to('lime'), sand: to('sand') };
}

function mostOf({ of, parts }: Values, key: string): Exact {
  if (!of || !('text' in of) || of.text !== key || parts?.kind !== 'quantity') return ZERO;
  const value = parts.high ?? parts.low;
  return parts.unit ? toBase(value, parts.unit) : value;
}

/** As much binder to the sand as the mix of the class, or more: what is a hundredth over is the measuring’s. */
const WITHIN = 1.01;

function reaches(ratio: Ratio, mix: Reach): boolean {
  if (ratio.base !== mix.base) return false;
  const lime = ratio.lime.lte(mix.lime.mul(WITHIN));
  return lime && ratio.sand.lte(mix.sand.mul(WITHIN));
}

function sandierThan(ratio: Ratio, classes: readonly MortarClass[]): Graded['sandier'] {
  const alike = classes.flatMap((each) =>
    mixesOf(each)
      .filter((mix) => mix.base === ratio.base)
      .map((mix) => ({ each, sand: mix.sand })),
  );
  const [first, ...rest] = alike;
  if (!first) return undefined;
  const weakest = rest.reduce((a, b) => (b.sand.gt(a.sand) ? b : a), first);
  if (ratio.sand.lte(weakest.sand.mul(WITHIN))) return undefined;
  return { sand: ratio.sand, most: weakest.sand, weakest: weakest.each };
}
