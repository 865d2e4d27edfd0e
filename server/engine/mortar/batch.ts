/** What each mix of a job takes: mortar laid, what is lost with it, and the materials that go into it. */
import { phrase } from '../../../shared/phrase';
import { unitNamed } from '../../../shared/units';
import { mixWaste } from '../brickwork/goods';
import { inUnit, unitNames } from '../brickwork/lengths';
import type { MixNeed } from '../brickwork/needs';
import { densityOf } from '../price/buying/material';
import { total } from '../price/buying/purchase';
import { type BlockFacts, type Env, factsNamed, type LineFacts } from '../resolve/env';
import { missing, type Origin, product, quotient, raised, sum, type Term } from '../working/term';
import { type MixPart, partsOf } from './parts';
import { comparedIn, looseFor } from './yields';

/** One material of a mix. */
export interface BatchPart {
  readonly material: string;
  /** Loose volume, dry; of an admixture its volume or its weight. */
  readonly volume: Term;
  readonly origin: Origin;
  readonly dose?: boolean;
}

export interface MixBatch {
  readonly name: string;
  readonly title: string;
  /** As laid, nothing lost. */
  readonly laid: Term;
  /** As mixed, losses included. */
  readonly wet: Term;
  /** Empty for a mix that is bought ready. */
  readonly parts: readonly BatchPart[];
  readonly facts?: BlockFacts;
  /** Whether it is bought ready, in packs of its own. */
  readonly ready: boolean;
  readonly needs: readonly MixNeed[];
}

/** The loose materials of a mix: laid volume with losses, turned into loose volume, shared by its parts. */
export function batch(name: string, needs: readonly MixNeed[], env: Env): MixBatch {
  const facts = factsNamed(env, 'mix', name);
  const unit = unitNames(env).volume;
  const title = facts?.title ?? name;
  const litres = needs.map((n) => n.litres);
  const laid = total(phrase`${title}, laid`, unit, litres);
  const wet = raised(phrase`${title}, mixed`, unit, laid, mixWaste(facts, env));
  const ready = facts?.line('ready') !== undefined;
  const common = { name, title, laid, wet, facts, ready, needs };
  if (!facts || ready) return { ...common, parts: [] };
  const list = partsOf(facts, env);
  const parts = shared(list, wet, facts, env);
  // Told of the mix itself: what it is reckoned by stands in the working of each material.
  const told = { ...wet, detail: () => comparedIn(list, facts, env) };
  return { ...common, wet: told, parts: [...parts, ...dosesOf(facts, wet, parts, env)] };
}

function shared(parts: readonly MixPart[], wet: Term, facts: BlockFacts, env: Env): BatchPart[] {
  if (!parts.length) return [];
  const all = sum(
    phrase`all parts`,
    parts[0]!.part.unit,
    parts.map((p) => p.part),
  );
  const dry = looseFor(wet, parts, all, facts, env);
  return parts.map(({ material, origin, part }) => {
    const over = product('', wet.unit, [dry, part]);
    return { material, origin, volume: quotient(phrase`${material}, loose`, wet.unit, over, all) };
  });
}

function dosesOf(facts: BlockFacts, wet: Term, parts: readonly BatchPart[], env: Env): BatchPart[] {
  return facts.lines('dose').map((line) => {
    const material = line.word('material');
    const units = unitNames(env);
    const said = line.term('amount', phrase`a dose of ${material}`);
    const amount = inUnit(
      said,
      unitNamed(said.unit)?.dimension === 'mass' ? units.mass : units.volume,
    );
    const per = line.term('per', phrase`to so much`);
    const of = inUnit(dosed(line, wet, parts, per, env), per.unit);
    const over = product('', amount.unit, [amount, of]);
    const volume = quotient(phrase`${material}, dose`, amount.unit, over, per);
    return { material, origin: line.at('material'), volume, dose: true };
  });
}

/** What a dose goes by: the mortar, or one of its materials, by volume or by weight as the dose has it. */
function dosed(line: LineFacts, wet: Term, parts: readonly BatchPart[], per: Term, env: Env): Term {
  const byWeight = unitNamed(per.unit)?.dimension === 'mass';
  const name = line.word('of');
  const part = parts.find((p) => p.material === name);
  const lacks = (what: string) =>
    missing(phrase`to be dosed`, per.unit, what, line.at(name ? 'of' : 'per'));
  if (!name)
    return byWeight ? lacks(phrase`a dose by weight has to name a material of the mix`) : wet;
  if (!part) return lacks(phrase`${name} is dosed, but is none of the materials of the mix`);
  if (!byWeight) return part.volume;
  const facts = factsNamed(env, 'material', name);
  const [cubic, density, mass] = env.imperial ? ['ft3', 'lb/ft3', 'lb'] : ['m3', 'kg/m3', 'kg'];
  const over = densityOf(facts?.title ?? name, facts, part.origin, density!);
  return product(phrase`${name} in it`, mass!, [inUnit(part.volume, cubic!), over]);
}
