/** What the whole job buys: parts of the work added up first, then lost and broken, then whole packs. */
import { exact } from '../../../shared/exact';
import { unitNamed } from '../../../shared/units';
import { brickWaste, mixWaste } from '../brickwork/goods';
import { inUnit, unitNames } from '../brickwork/lengths';
import type { BrickNeed, MixNeed, PieceNeed } from '../brickwork/needs';
import { type BlockFacts, defaultTerm, type Env, factsNamed, type LineFacts } from '../resolve/env';
import {
  cents,
  convert,
  counted,
  fact,
  missing,
  named,
  type Origin,
  product,
  quotient,
  raised,
  sum,
  type Term,
  up,
} from '../working/term';

/** One line of what is bought. */
export interface Purchase {
  readonly kind: 'brick' | 'material' | 'piece';
  readonly name: string;
  readonly title: string;
  /** What the work takes, before losses. */
  readonly needed: Term;
  /** What is bought: bricks, or packs of a material. */
  readonly bought: Term;
  readonly cost: Term;
}

export function pooled<T extends { origin: Origin }>(
  needs: readonly T[],
  key: (need: T) => string,
): Map<string, T[]> {
  const pools = new Map<string, T[]>();
  for (const need of needs) {
    const pool = pools.get(key(need));
    if (pool) pool.push(need);
    else pools.set(key(need), [need]);
  }
  return pools;
}

export function buyBricks(name: string, needs: readonly BrickNeed[], env: Env): Purchase {
  const facts = factsNamed(env, 'brick', name);
  const title = facts?.title ?? name;
  const needed = total(
    `${title}, laid`,
    'bricks',
    needs.map((n) => n.bricks),
  );
  const withLoss = raised('with breakage', 'bricks', needed, brickWaste(facts, env));
  const bricks = up(`${title}, to buy`, 'bricks', withLoss, 'whole bricks');
  if (!facts)
    return {
      kind: 'brick',
      name,
      title,
      needed,
      bought: bricks,
      cost: unknown(title, bricks, env),
    };
  const line = facts?.line('price');
  if (!line)
    return {
      kind: 'brick',
      name,
      title,
      needed,
      bought: bricks,
      cost: noPrice(title, env, needs[0]!.origin),
    };
  return { kind: 'brick', name, title, needed, ...bricksAt(title, bricks, line, facts!, env) };
}

/** Priced each or per 1000 singly; priced per pack in whole packs. */
function bricksAt(title: string, bricks: Term, line: LineFacts, facts: BlockFacts, env: Env) {
  const price = line.term('money', 'price');
  const costs = (of: readonly Term[]) =>
    paid(`${title}, cost`, product(title, env.money.code, of), env);
  if (line.values.pack) {
    const pack = facts.line('pack')?.term('pack', 'bricks in a pack', 'bricks');
    const size =
      pack ??
      missing(
        'bricks in a pack',
        'bricks',
        `no line says how many ${facts.name} come in a pack`,
        line.origin,
      );
    const packs = up(
      `${title}, packs`,
      'packs',
      quotient('packs', 'packs', bricks, size),
      'whole packs',
    );
    const bought = product(`${title}, to buy`, 'bricks', [packs, size]);
    return { bought, cost: costs([packs, price]) };
  }
  if (!line.values.per) return { bought: bricks, cost: costs([bricks, price]) };
  const each = quotient('price of one', env.money.code, price, line.term('per', 'per'));
  return { bought: bricks, cost: costs([bricks, each]) };
}

/** What is not known at all costs nothing and says why: the reason is the same as for its count. */
function unknown(title: string, of: Term, env: Env): Term {
  return product(`${title}, cost`, env.money.code, [
    of,
    counted('price', 0, env.money.code, { note: 'not known' }),
  ]);
}

function noPrice(title: string, env: Env, origin: Origin): Term {
  return missing(`${title}, cost`, env.money.code, `no price is given for ${title}`, origin);
}

function total(label: string, unit: string, terms: readonly Term[]): Term {
  return terms.length === 1 ? named(label, terms[0]!) : sum(label, unit, terms);
}

/** Every cost is rounded to the currency where it arises: the reader can add up what is printed. */
function paid(label: string, of: Term, env: Env): Term {
  return cents(label, of, env.money.digits);
}

export interface MixBatch {
  readonly name: string;
  readonly title: string;
  /** As laid, nothing lost. */
  readonly laid: Term;
  /** As mixed, losses included. */
  readonly wet: Term;
  readonly parts: readonly {
    readonly material: string;
    readonly volume: Term;
    readonly origin: Origin;
  }[];
}

/**
 * The loose materials of a mix: laid volume with losses, times the volume of loose dry materials that make
 * one of mortar, shared by its parts.
 */
export function batch(name: string, needs: readonly MixNeed[], env: Env): MixBatch {
  const facts = factsNamed(env, 'mix', name);
  const unit = unitNames(env).volume;
  const title = facts?.title ?? name;
  const laid = total(
    `${title}, laid`,
    unit,
    needs.map((n) => n.litres),
  );
  const wet = raised(`${title}, mixed`, unit, laid, mixWaste(facts, env));
  const line = facts?.line('parts');
  if (!line) return { name, title, laid, wet, parts: [] };
  const factor =
    facts?.line('dry-volume')?.term('factor', 'dry volume') ??
    defaultTerm(env, 'dry-volume', 'factor', 'dry volume');
  const dry = product('loose materials', unit, [wet, factor]);
  return { name, title, laid, wet, parts: shared(line, dry, unit) };
}

function shared(line: LineFacts, dry: Term, unit: string): MixBatch['parts'] {
  const list = line.values.parts;
  if (list?.kind !== 'list') return [];
  const all = list.of.map((values) => {
    const { material, parts } = values;
    const amount = parts?.kind === 'quantity' ? parts.low : exact(0);
    const origin = { block: line.block, span: (parts ?? list).span };
    const name = material && 'text' in material ? material.text : '';
    return { material: name, origin, part: fact(`parts of ${name}`, amount, '', origin) };
  });
  const parts = sum(
    'all parts',
    '',
    all.map((a) => a.part),
  );
  return all.map(({ material, origin, part }) => {
    const volume = quotient(`${material}, loose`, unit, product('', unit, [dry, part]), parts);
    return { material, origin, volume };
  });
}

export function buyMaterial(
  name: string,
  volumes: readonly Term[],
  env: Env,
  home: Origin,
): Purchase {
  const facts = factsNamed(env, 'material', name);
  const title = facts?.title ?? name;
  const loose = total(`${title}, loose`, unitNames(env).volume, volumes);
  const pack = facts?.line('pack');
  const needed = massOf(loose, pack, facts, env, home);
  if (!pack)
    return {
      kind: 'material',
      name,
      title,
      needed,
      ...loosely(title, loose, needed, facts, env, home),
    };
  const unit = pack.word('pack');
  const content = inUnit(pack.term('content', `a ${unit} of ${title}`), needed.unit);
  const bought = up(
    `${title}, to buy`,
    unit,
    quotient(`${title}`, unit, needed, content),
    `whole ${unit}s`,
  );
  const price = pack.values.price ? pack.term('price', 'price') : noPrice(title, env, pack.origin);
  return {
    kind: 'material',
    name,
    title,
    needed,
    bought,
    cost: paid(`${title}, cost`, product(title, env.money.code, [bought, price]), env),
  };
}

/** Bought loose, at a price per kg, t, l or m3; without one the price is missing. */
function loosely(
  title: string,
  loose: Term,
  weighed: Term,
  facts: BlockFacts | undefined,
  env: Env,
  home: Origin,
) {
  const line = facts?.line('price');
  const unit = line && unitNamed(line.word('pack'));
  if (!line || (unit?.dimension !== 'mass' && unit?.dimension !== 'volume'))
    return { bought: weighed, cost: noPrice(title, env, home) };
  const bought = {
    ...inUnit(unit.dimension === 'mass' ? weighed : loose, unit.name),
    label: `${title}, to buy`,
  };
  const all = product(title, env.money.code, [
    bought,
    line.term('money', `price of 1 ${unit.name}`),
  ]);
  return { bought, cost: paid(`${title}, cost`, all, env) };
}

/** By weight where it is sold by weight: loose volume times bulk density. */
function massOf(
  loose: Term,
  pack: LineFacts | undefined,
  facts: BlockFacts | undefined,
  env: Env,
  home: Origin,
): Term {
  const content = pack?.values.content;
  if (content?.kind === 'quantity' && content.unit?.dimension === 'volume')
    return inUnit(loose, content.unit.name);
  const title = facts?.title ?? loose.label;
  const line = facts?.line('loose');
  const said =
    line?.term('density', 'bulk density') ??
    missing('bulk density', 'kg/m3', `no bulk density is given for ${title}`, home);
  const density =
    said.value.isZero() && !said.gaps.length
      ? missing('bulk density', said.unit, `the bulk density of ${title} is nothing`, said.origin)
      : said;
  if (env.imperial) return product(title, 'lb', [loose, inUnit(density, 'lb/ft3')]);
  const cubic = convert(`${title}, loose`, 'm3', loose, exact('0.001'));
  return product(title, 'kg', [cubic, inUnit(density, 'kg/m3')]);
}

export function buyPieces(name: string, needs: readonly PieceNeed[], env: Env): Purchase {
  const facts = factsNamed(env, 'material', name);
  const title = facts?.title ?? name;
  const needed = total(
    title,
    'pieces',
    needs.map((n) => n.count),
  );
  const line = facts?.line('price');
  const bought = up(`${title}, to buy`, 'pieces', needed);
  if (!line)
    return {
      kind: 'piece',
      name,
      title,
      needed,
      bought,
      cost: noPrice(title, env, needs[0]!.origin),
    };
  const cost = product(title, env.money.code, [bought, line.term('money', 'price')]);
  return { kind: 'piece', name, title, needed, bought, cost: paid(`${title}, cost`, cost, env) };
}
