/** What the things hold that mortar is measured with: trowels, shovels, buckets, and bags of a material. */
import { phrase, spoken } from '../../../shared/phrase';
import { unitNamed } from '../../../shared/units';
import { inUnit, unitNames } from '../brickwork/lengths';
import { densityOf } from '../price/buying/material';
import type { Setting } from '../resolve/book';
import { type BlockFacts, type Env, factsNamed, LineFacts } from '../resolve/env';
import { missing, type Origin, product, quotient, raised, type Term } from '../working/term';

/** What a material may be measured by: the packs it comes in, and the measures that there are. */
export function measuresFor(material: string, env: Env): string[] {
  const packs = factsNamed(env, 'material', material)?.lines('pack') ?? [];
  const measures = settings(env).map((s) => s.line.syntax.key!.text);
  return [...new Set([...packs.map((line) => line.word('pack')), ...measures])];
}

/** The measure that what goes into a batch is told in: the first of the nearest list. */
export function firstMeasure(env: Env): LineFacts | undefined {
  const [first] = settings(env);
  return first && new LineFacts(first.block, first.line, env);
}

function settings(env: Env): readonly Setting[] {
  return env.book.all('measures', 'measure');
}

/** `6 trowels` names the measure `trowel`. */
export function isMeasure(measure: string, said: string): boolean {
  return measure === said || `${measure}s` === said;
}

/**
 * How much of a material a measure holds, in loose volume: a pack of the material that is called so (the smallest),
 * else the measure of that name.
 */
export function measureOf(said: string, material: string, env: Env, at: Origin): Term {
  const facts = factsNamed(env, 'material', material);
  const own = packCalled(said, facts);
  if (own)
    return loose(
      own.term('content', phrase`a ${spoken(own.word('pack'))} of ${material}`),
      facts,
      material,
      env,
      at,
    );
  const known = settings(env).find((s) => isMeasure(s.line.syntax.key!.text, said));
  const unit = unitNames(env).volume;
  if (!known)
    return missing(phrase`a ${said}`, unit, phrase`no measures say what a ${said} holds`, at);
  const line = new LineFacts(known.block, known.line, env);
  const word = known.line.syntax.key!.text;
  return loose(
    line.term('content', phrase`a ${spoken(word)} of ${material}`),
    facts,
    material,
    env,
    at,
  );
}

function packCalled(said: string, facts: BlockFacts | undefined): LineFacts | undefined {
  const lines = facts?.lines('pack').filter((line) => isMeasure(line.word('pack'), said)) ?? [];
  return lines.reduce<LineFacts | undefined>((least, line) => {
    return least && (least.number('content') ?? 0) <= (line.number('content') ?? 0) ? least : line;
  }, undefined);
}

/** An amount of a material as loose volume, dry, in the reader’s unit: by weight, or as it is measured out. */
export function loose(
  amount: Term,
  facts: BlockFacts | undefined,
  material: string,
  env: Env,
  at: Origin,
): Term {
  const unit = unitNames(env).volume;
  if (unitNamed(amount.unit)?.dimension !== 'mass') return dry(inUnit(amount, unit), facts);
  const [mass, cubic, density] = env.imperial
    ? (['lb', 'ft3', 'lb/ft3'] as const)
    : (['kg', 'm3', 'kg/m3'] as const);
  const over = densityOf(facts?.title ?? material, facts, at, density);
  return inUnit(quotient(amount.label, cubic, inUnit(amount, mass), over), unit);
}

/** What is measured damp holds less than it seems, by as much as that much dry would take up more. */
function dry(volume: Term, facts: BlockFacts | undefined): Term {
  const line = facts?.line('bulking');
  if (!line) return volume;
  const { title } = facts!;
  const bulking = line.term('share', phrase`bulking`, '%');
  const bulked = raised(phrase`as much ${title} dry, bulked`, volume.unit, volume, bulking);
  const square = product(phrase`measured, by itself`, volume.unit, [volume, volume]);
  return quotient(phrase`${title}, dry`, volume.unit, square, bulked);
}
