/** What is left in the last packs, and what it would still lay. */

import { phrase } from '../../../shared/phrase';
import { mixWaste } from '../brickwork/goods';
import { asBought } from '../price/buying/material';
import type { Purchase } from '../price/buying/purchase';
import { type Env, factsNamed } from '../resolve/env';
import { showValue } from '../views/show';
import { down, least, named, product, quotient, raised, type Term } from '../working/term';
import type { BatchPart, MixBatch } from './batch';
import { laysOf } from './lays';

/** Mortar that could be mixed of what is left of the materials of a mix. */
export interface MixLeft {
  readonly mortar: Term;
  readonly bricks?: Term;
  /** Of face, raked and pointed. */
  readonly pointing?: Term;
  /** The same by length of joint. */
  readonly joints?: Term;
}

/** Nothing for a mix with a material that is not bought in packs: of that nothing is left over. */
export function leftOf(
  mix: MixBatch,
  purchases: ReadonlyMap<string, Purchase>,
  env: Env,
): MixLeft | undefined {
  const mortar = mix.ready ? readyLeft(mix, purchases) : mixedOfLeft(mix, purchases, env);
  if (!mortar) return undefined;
  const lays = laysOf(mix.needs.map((n) => n.lays));
  const waste = mixWaste(mix.facts, env);
  const taken = (of: Term) => raised(phrase`what it takes mixed`, of.unit, of, waste);
  const bricks = lays?.bricks && bricksOf(mix, mortar, lays.bricks, taken(lays.litres));
  const pointing = lays?.pointing && pointedBy(mix, mortar, taken(lays.pointing), env);
  const joints = pointing && lays?.joints && jointed(mix, pointing, lays.joints);
  return { mortar, bricks, pointing, joints };
}

function bricksOf(mix: MixBatch, mortar: Term, bricks: Term, litres: Term): Term {
  const over = product(phrase`bricks, times what is left`, 'bricks', [mortar, bricks]);
  const label = phrase`${mix.title}, bricks that what is left would lay`;
  return down(
    label,
    'bricks',
    quotient(phrase`bricks`, 'bricks', over, litres),
    phrase`at the litres a brick of this work`,
  );
}

function pointedBy(mix: MixBatch, mortar: Term, each: Term, env: Env): Term {
  const unit = env.imperial ? 'ft2' : 'm2';
  const label = phrase`${mix.title}, pointing that what is left would do`;
  return quotient(
    label,
    unit,
    mortar,
    each,
    phrase`face of this brick, raked as deep as the defaults have it`,
  );
}

function jointed(mix: MixBatch, pointing: Term, joints: Term): Term {
  const label = phrase`${mix.title}, joints that what is left would point`;
  return product(
    label,
    joints.unit,
    [pointing, joints],
    phrase`as long as the joints of that face are`,
  );
}

function readyLeft(mix: MixBatch, purchases: ReadonlyMap<string, Purchase>): Term | undefined {
  const left = purchases.get(mix.name)?.left;
  return left && named(leftLabel(mix), left);
}

const leftLabel = (mix: MixBatch) => phrase`${mix.title}, mortar that what is left would make`;

/** As much as the material allows of which there is least; admixtures are left out. */
function mixedOfLeft(
  mix: MixBatch,
  purchases: ReadonlyMap<string, Purchase>,
  env: Env,
): Term | undefined {
  const each: { title: string; makes: Term }[] = [];
  for (const part of mix.parts) {
    if (part.dose) continue;
    const bought = purchases.get(part.material);
    if (!bought?.left) return undefined;
    each.push({ title: bought.title, makes: madeBy(part, bought.left, mix, env) });
  }
  const [first, ...rest] = each.map((e) => e.makes);
  if (!first) return undefined;
  const unit = mix.wet.unit;
  const most = rest.reduce((a, b) => least(phrase`the least of them`, unit, a, b), first);
  const detail = () => [limitedBy(each, env)];
  const note = phrase`as much as the scarcest of its materials allows`;
  return { ...most, label: leftLabel(mix), detail, note };
}

function madeBy(part: BatchPart, left: Term, mix: MixBatch, env: Env): Term {
  const title = factsNamed(env, 'material', part.material)?.title ?? part.material;
  const takes = asBought(part.material, part.volume, env, part.origin);
  const over = product(phrase`left, times what is mixed`, mix.wet.unit, [left, mix.wet]);
  return quotient(phrase`by the ${title} left`, mix.wet.unit, over, takes);
}

function limitedBy(each: readonly { title: string; makes: Term }[], env: Env): string {
  const first = each.reduce((a, b) => (b.makes.value.lt(a.makes.value) ? b : a));
  const { value, unit } = first.makes;
  return phrase`${first.title} runs out first, after ${showValue(value, unit, env)}`;
}
