/**
 * Cautions of a job: those of its libraries and its own files that its work brings up. What a piece of work brings
 * up is kept with it, for as long as the same cautions stand; after a keystroke one piece of work is looked at.
 */
import type { Work } from '../brickwork/work';
import { nameOrigin } from '../findings/remark';
import { BlockFacts, type Env } from '../resolve/env';
import type { SourceBlock } from '../workspace/source';
import { doing } from './doing';
import { Gathered, type Holding, type Standing } from './holding';
import { lifted } from './lifted';
import { type Asked, askedFor, type BroughtUp, broughtUp } from './match';
import { mixed } from './mixed';
import { place } from './place';
import { type Rule, rulesOf } from './rules';

export interface Told extends BroughtUp {
  readonly work: Work;
}

/** What to find out on site for a piece of work, since a caution hangs on it. */
export interface ToAsk extends Asked {
  readonly work: Work;
}

interface Kept {
  readonly rules: readonly Rule[];
  /** Of this very work. */
  readonly own: readonly Told[];
  /** What is told once for all work that brings it up. */
  readonly shared: readonly Told[];
  /** The same for all work that shares the same of it. */
  readonly sign: string;
  readonly asks: readonly ToAsk[];
}

const kept = new WeakMap<Work, Kept>();
const lists = new WeakMap<Env, readonly Rule[]>();

/** In the order of the work. */
export function cautionsOf(
  works: readonly Work[],
  env: Env,
  wallOf: (work: Work) => SourceBlock | undefined,
): Told[] {
  const rules = rulesIn(env);
  const before = new Before();
  const told: Told[] = [];
  for (const work of works) {
    const { own, shared, sign } = toldOf(work, rules, env, works, wallOf);
    if (own.length) told.push(...own);
    if (before.isNew(sign)) told.push(...shared.filter((each) => before.isNews(each)));
  }
  return told;
}

/** What no line says and a caution hangs on, in the order of the work: each word once for each piece of work. */
export function askedOf(
  works: readonly Work[],
  env: Env,
  wallOf: (work: Work) => SourceBlock | undefined,
): ToAsk[] {
  const rules = rulesIn(env);
  return works.flatMap((work) => toldOf(work, rules, env, works, wallOf).asks);
}

/** What has been told already, when work after work is gone through. */
class Before {
  private readonly signs = new Set<string>();
  private readonly reasons = new Map<Rule, Set<string>>();

  isNew(sign: string): boolean {
    return !this.signs.has(sign) && !!this.signs.add(sign);
  }

  /** Whether it is told for the first time, or for another reason. */
  isNews({ rule, news }: Told): boolean {
    const known = this.reasons.get(rule);
    if (!known) this.reasons.set(rule, new Set(news));
    const other = news.filter((reason) => known && !known.has(reason));
    for (const reason of other) known!.add(reason);
    return !known || other.length > 0;
  }
}

function rulesIn(env: Env): readonly Rule[] {
  let rules = lists.get(env);
  if (!rules) {
    rules = rulesOf(env.book.blocksOf('caution'));
    lists.set(env, rules);
  }
  return rules;
}

function toldOf(
  work: Work,
  rules: readonly Rule[],
  env: Env,
  works: readonly Work[],
  wallOf: (work: Work) => SourceBlock | undefined,
): Kept {
  const known = kept.get(work);
  if (known && same(known.rules, rules)) return known;
  const wall = wallOf(work);
  const standing = standingOf(work, env, wall, works);
  const holding = holdingOf(standing);
  const told = rules.flatMap((rule) => {
    const up = broughtUp(rule, holding);
    return up ? [{ ...up, work }] : [];
  });
  const shared = told.filter((each) => !each.eachTime);
  const sign = shared.map(({ rule, news }) => [rule.name, ...news].join('\n')).join('\n\n');
  const asks = rules.flatMap((rule) => askedFor(rule, holding).map((ask) => ({ ...ask, work })));
  const fresh = { rules, own: told.filter((each) => each.eachTime), shared, sign, asks };
  kept.set(work, fresh);
  return fresh;
}

function standingOf(
  work: Work,
  env: Env,
  wall: SourceBlock | undefined,
  works: readonly Work[],
): Standing {
  const { block } = work;
  const facts = new BlockFacts(block, block.read.heading!, env, wall ? [wall] : []);
  return { work, facts, env, wall: wall && works.find((w) => w.block === wall) };
}

function holdingOf(standing: Standing): Holding {
  const into = new Gathered(nameOrigin(standing.work.block));
  doing(standing, into);
  place(standing, into);
  mixed(standing, into);
  lifted(standing, into);
  return into;
}

function same(a: readonly Rule[], b: readonly Rule[]): boolean {
  return a === b || (a.length === b.length && a.every((rule, i) => rule === b[i]));
}
