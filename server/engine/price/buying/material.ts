/** Materials of mixes: by weight or by volume as they are sold, in the cheapest packs, or loose. */

import { exact, ONE } from '../../../../shared/exact';
import { phrase, spoken } from '../../../../shared/phrase';
import { unitNamed } from '../../../../shared/units';
import { inUnit, unitNames } from '../../brickwork/lengths';
import { type BlockFacts, type Env, factsNamed, type LineFacts } from '../../resolve/env';
import {
  convert,
  fact,
  missing,
  type Origin,
  product,
  quotient,
  raised,
  type Term,
} from '../../working/term';
import { buyPacked, differing, type Pack } from './packs';
import { noPrice, type Purchase, paid, total } from './purchase';

/** @param amounts what goes into each mix: loose volumes, dry; of an admixture its volume or its weight */
export function buyMaterial(
  name: string,
  amounts: readonly Term[],
  env: Env,
  home: Origin,
): Purchase {
  return new Buying(name, amounts, env, home).done();
}

/** So much of a material, in the unit that it is bought by. */
export function asBought(name: string, amount: Term, env: Env, home: Origin): Term {
  return new Buying(name, [amount], env, home).needed();
}

class Buying {
  private readonly facts: BlockFacts | undefined;
  private readonly title: string;
  private readonly lines: readonly LineFacts[];

  constructor(
    private readonly name: string,
    private readonly amounts: readonly Term[],
    private readonly env: Env,
    private readonly home: Origin,
  ) {
    this.facts = factsNamed(env, 'material', name);
    this.title = this.facts?.title ?? name;
    this.lines = this.facts?.lines('pack') ?? [];
  }

  done(): Purchase {
    const needed = this.needed();
    const common = { kind: 'material' as const, name: this.name, title: this.title, needed };
    if (!this.lines.length) return { ...common, ...this.loosely(needed) };
    const priced = this.priced(needed);
    if (priced.length) {
      const each = this.each(needed);
      return { ...common, ...buyPacked(this.title, needed, priced, this.env, each) };
    }
    const price = noPrice(this.title, this.env, this.lines[0]!.origin);
    const unpriced = { ...this.pack(this.lines[0]!, needed.unit), price };
    return { ...common, ...buyPacked(this.title, needed, [unpriced], this.env) };
  }

  /** In the unit of its first pack: by weight where it is sold by weight. */
  needed(): Term {
    const content = this.lines[0]?.values.content;
    const unit = content?.kind === 'quantity' ? content.unit : undefined;
    const terms = this.added().map((amount) =>
      unit?.dimension === 'volume' ? this.room(amount, unit.name) : this.weight(amount),
    );
    return total(this.title, terms[0]?.unit ?? '', terms);
  }

  /** What all mixes take of it together: its volumes as one, its weights as one. */
  private added(): Term[] {
    const kind = (amount: Term) => unitNamed(amount.unit)?.dimension;
    const of = (label: string, unit: string, dimension: string) => {
      const some = this.amounts.filter((a) => kind(a) === dimension).map((a) => inUnit(a, unit));
      return some.length ? [total(label, unit, some)] : [];
    };
    const units = unitNames(this.env);
    return [
      ...of(phrase`${this.title}, loose`, units.volume, 'volume'),
      ...of(phrase`${this.title}, weighed`, units.mass, 'mass'),
    ];
  }

  /** As it is measured out and sold, damp where it bulks. */
  private room(amount: Term, unit: string): Term {
    if (unitNamed(amount.unit)?.dimension === 'mass')
      return inUnit(quotient(this.title, 'm3', inUnit(amount, 'kg'), this.density('kg/m3')), unit);
    return inUnit(dampOf(amount, this.facts), unit);
  }

  private weight(amount: Term): Term {
    const unit = unitNames(this.env).mass;
    if (unitNamed(amount.unit)?.dimension === 'mass') return inUnit(amount, unit);
    if (this.env.imperial) return product(this.title, unit, [amount, this.density('lb/ft3')]);
    const cubic = convert(phrase`${this.title}, loose`, 'm3', amount, exact('0.001'));
    return product(this.title, unit, [cubic, this.density('kg/m3')]);
  }

  private density(unit: string): Term {
    return densityOf(this.title, this.facts, this.home, unit);
  }

  /** Packs with a price that can be reckoned with; of two alike the first. */
  private priced(needed: Term): Pack[] {
    const all = this.lines.flatMap((line) => {
      const price = line.values.price ? line.term('price', phrase`price`) : undefined;
      return price && !price.gaps.length ? [{ ...this.pack(line, needed.unit), price }] : [];
    });
    return all.length === 1 ? all : differing(all.filter((p) => p.content.value.gt(0)));
  }

  private pack(line: LineFacts, unit: string): Omit<Pack, 'price'> {
    const word = line.word('pack');
    const content = line.term('content', phrase`a ${spoken(word)} of ${this.title}`);
    const kind = (name: string) => unitNamed(name)?.dimension;
    const held =
      kind(content.unit) === kind(unit) ? inUnit(content, unit) : this.across(content, unit);
    return { unit: word, content: held, holds: content };
  }

  /** A pack sold by volume where the others are sold by weight, and the other way round. */
  private across(content: Term, unit: string): Term {
    return unitNamed(unit)?.dimension === 'volume'
      ? this.room(content, unit)
      : inUnit(this.weight(inUnit(content, unitNames(this.env).volume)), unit);
  }

  /** What one of the unit it is needed in costs loose, where it is sold so. */
  private each(needed: Term): Term | undefined {
    const line = this.facts?.line('price');
    const sold = line && unitNamed(line.word('pack'));
    const unit = unitNamed(needed.unit);
    if (!line || !sold || !unit || sold.dimension !== unit.dimension) return undefined;
    const price = line.term('money', phrase`price of 1 ${sold.name}`);
    if (price.gaps.length) return undefined;
    const one = inUnit(fact(`1 ${sold.name}`, ONE, sold.name), unit.name);
    return quotient(phrase`price of 1 ${unit.name} loose`, this.env.money.code, price, one);
  }

  /** Bought loose, at a price per kg, t, l or m3; without one the price is missing. */
  private loosely(needed: Term) {
    const { env, title } = this;
    const line = this.facts?.line('price');
    const unit = line && unitNamed(line.word('pack'));
    if (!line || (unit?.dimension !== 'mass' && unit?.dimension !== 'volume'))
      return { bought: needed, cost: noPrice(title, env, this.home) };
    const volume = unitNames(env).volume;
    const rooms = () => this.added().map((amount) => this.room(amount, volume));
    const amount =
      unit.dimension === 'mass' ? needed : total(phrase`${title}, loose`, volume, rooms());
    const bought = { ...inUnit(amount, unit.name), label: phrase`${title}, to buy` };
    const price = line.term('money', phrase`price of 1 ${unit.name}`);
    const all = product(title, env.money.code, [bought, price]);
    return { bought, cost: paid(phrase`${title}, cost`, all, env) };
  }
}

/** The room that a dry volume takes up damp. */
export function dampOf(volume: Term, facts: BlockFacts | undefined): Term {
  const line = facts?.line('bulking');
  if (!line) return volume;
  return raised(
    phrase`${facts!.title}, damp`,
    volume.unit,
    volume,
    line.term('share', phrase`bulking`, '%'),
  );
}

/** Bulk density, dry; a gap where no line gives it, or it is nothing. */
export function densityOf(
  title: string,
  facts: BlockFacts | undefined,
  home: Origin,
  unit: string,
): Term {
  const what = phrase`no bulk density is given for ${title}`;
  const said =
    facts?.line('loose')?.term('density', phrase`bulk density`) ??
    missing(phrase`bulk density`, unit, what, home);
  if (!said.value.isZero() || said.gaps.length) return inUnit(said, unit);
  return missing(
    phrase`bulk density`,
    unit,
    phrase`the bulk density of ${title} is nothing`,
    said.origin,
  );
}
