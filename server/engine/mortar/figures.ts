/** Figures of a job’s mortar beside what is bought: batches, what goes into one, and what is left over. */
import type { Figure } from '../brickwork/needs';
import type { Purchase } from '../price/buying/purchase';
import type { Env } from '../resolve/env';
import type { MixBatch } from './batch';
import { leftOf, type MixLeft } from './left';
import { type Mixing, mixingOf } from './mixing';
import { namesOf } from './named-twice';

/** One mix of a job. */
export interface MortarOf {
  readonly mix: MixBatch;
  readonly mixing?: Mixing;
  readonly left?: MixLeft;
}

interface Bought {
  readonly batches: readonly MixBatch[];
  readonly purchases: readonly Purchase[];
}

const known = new WeakMap<Bought, readonly MortarOf[]>();

/** Worked out when somebody asks, not at every keystroke. */
export function mortarIn(price: Bought, env: Env): readonly MortarOf[] {
  let all = known.get(price);
  if (!all) {
    const bought = new Map(
      price.purchases.filter((p) => p.kind === 'material').map((p) => [p.name, p]),
    );
    all = price.batches.map((mix) => ({
      mix,
      mixing: mixingOf(mix, env),
      left: leftOf(mix, bought, env),
    }));
    known.set(price, all);
  }
  return all;
}

/** `batches.general`, `batch.general.sand`, `left.sand`, `lays.general.bricks`. */
export function mortarFigures(price: Bought, env: Env): Figure[] {
  const left = price.purchases.flatMap(({ name, left }) =>
    left ? [{ key: `left.${name}`, term: left }] : [],
  );
  return [
    ...left,
    ...mortarIn(price, env).flatMap((m) => [...leftFigures(m), ...mixingFigures(m)]),
  ];
}

function leftFigures({ mix: { name, ready }, left }: MortarOf): Figure[] {
  if (!left) return [];
  const mortar = ready ? [] : [{ key: `lays.${name}`, term: left.mortar }];
  return [
    ...mortar,
    ...(left.bricks ? [{ key: `lays.${name}.bricks`, term: left.bricks }] : []),
    ...(left.pointing ? [{ key: `lays.${name}.pointing`, term: left.pointing }] : []),
    ...(left.joints ? [{ key: `lays.${name}.joints`, term: left.joints }] : []),
  ];
}

function mixingFigures({ mix: { name }, mixing }: MortarOf): Figure[] {
  if (!mixing) return [];
  return [
    { key: `batches.${name}`, term: mixing.count },
    { key: `batch.${name}`, term: mixing.size },
    ...namesOf(mixing.materials).map((part, i) => ({
      key: `batch.${name}.${part}`,
      term: mixing.materials[i]!.amount,
    })),
    { key: `last.${name}`, term: mixing.last },
    { key: `over.${name}`, term: mixing.over },
  ];
}
