/** Batches of a mix: none larger than the mixer takes, nor than the gang lays while it can still be worked. */
import { phrase, spoken } from '../../../shared/phrase';
import { mixWaste } from '../brickwork/goods';
import { inUnit, unitNames } from '../brickwork/lengths';
import { dampOf } from '../price/buying/material';
import { defaultLine, type Env, factsNamed, LineFacts } from '../resolve/env';
import {
  counted,
  difference,
  least,
  type Origin,
  product,
  quotient,
  raised,
  type Term,
  up,
} from '../working/term';
import type { MixBatch } from './batch';
import { laysOf, pacesOf } from './lays';
import { oneByOne, type Spell } from './spells';

/** One material in a whole batch. */
export interface InBatch {
  readonly material: string;
  /** As it is measured out: loose volume, damp where it bulks; packs of a ready mix. */
  readonly amount: Term;
  /** The same dry, and where the mix names it; left out for packs. */
  readonly dry?: Term;
  readonly origin?: Origin;
}

export interface Mixing {
  /** A whole batch, mixed; the largest, where they differ. */
  readonly size: Term;
  /** Some are smaller, since they go into slower work. */
  readonly differ?: boolean;
  readonly count: Term;
  /** The last, which may be part-size. */
  readonly last: Term;
  /** What would be over if the last were mixed whole. */
  readonly over: Term;
  readonly materials: readonly InBatch[];
}

/** Nothing where no line says how much is mixed at once, nor how fast it goes. */
export function mixingOf(mix: MixBatch, env: Env): Mixing | undefined {
  return atPaces(mix, env) ?? atOnePace(mix, env);
}

function atOnePace(mix: MixBatch, env: Env): Mixing | undefined {
  const size = sizeOf(mix, env);
  if (!size) return undefined;
  const { title, wet } = mix;
  const count = up(
    phrase`${title}, batches`,
    'batches',
    quotient(phrase`batches`, 'batches', wet, size),
    phrase`the last part-size`,
  );
  const all = product(phrase`mixed in whole batches`, wet.unit, [count, size]);
  const over = difference(
    phrase`${title}, over if the last batch is a whole one`,
    wet.unit,
    all,
    wet,
  );
  const last = difference(phrase`${title}, the last batch`, wet.unit, size, over);
  return { size, count, last, over, materials: materialsOf(mix, size, env) };
}

/**
 * Work that goes faster and slower: batch after batch, each no more than the mixer takes, nor than is laid within its
 * working life from where the one before ends. Nothing where all of it goes at one pace.
 */
function atPaces(mix: MixBatch, env: Env): Mixing | undefined {
  const { title, wet } = mix;
  const lays = laysOf(mix.needs.map((n) => n.lays));
  const paces = lays ? pacesOf(lays) : [];
  const life = paces.length > 1 ? lifeOf(mix, env) : undefined;
  if (!life) return undefined;
  const mixer = mixerOf(env);
  const taken = paces.map(({ litres }) =>
    raised(phrase`mixed for it`, wet.unit, litres, mixWaste(mix.facts, env)),
  );
  const spells = paces.map(({ hours }, i): Spell => {
    return { amount: taken[i]!.value.toNumber(), hours: hours.value.toNumber() };
  });
  const most = { amount: mixer?.value.toNumber(), hours: life.value.toNumber() };
  const found = oneByOne(spells, most);
  if (!found) return undefined;
  const args = [...(mixer ? [mixer] : []), life, ...paces.flatMap((p, i) => [taken[i]!, p.hours])];
  const note = phrase`one after the other, none larger than the mixer takes or is laid in its working life`;
  const term = (label: string, value: number, unit: string) =>
    counted(`${title}, ${label}`, value, unit, { args, note });
  const size = term(phrase`a batch, the largest`, found.largest, wet.unit);
  const last = term(phrase`the last batch`, found.last, wet.unit);
  return {
    size,
    differ: found.differ,
    count: term(phrase`batches`, found.count, 'batches'),
    last,
    over: difference(phrase`${title}, over if the last batch is a whole one`, wet.unit, size, last),
    materials: materialsOf(mix, size, env),
  };
}

function sizeOf(mix: MixBatch, env: Env): Term | undefined {
  const label = phrase`${mix.title}, a batch`;
  const within = withinLife(mix, env);
  const mixer = mixerOf(env);
  if (!within || !mixer) return mixer ? { ...mixer, label } : within && { ...within, label };
  return least(
    label,
    mix.wet.unit,
    mixer,
    within,
    phrase`no more than the mixer takes, nor than is laid within its working life`,
  );
}

/** The labour block’s, else the defaults’. */
function mixerOf(env: Env): Term | undefined {
  const own = env.book.setting('labour', 'mixer');
  const line = own ? new LineFacts(own.block, own.line, env) : defaultLine(env, 'mixer');
  return line && inUnit(line.term('volume', phrase`the mixer takes`), unitNames(env).volume);
}

/** What the gang lays of it while it can be worked; nothing where no hours are known for it. */
function withinLife(mix: MixBatch, env: Env): Term | undefined {
  const lays = laysOf(mix.needs.map((n) => n.lays));
  const life = lifeOf(mix, env);
  if (!lays?.hours || !life) return undefined;
  const unit = mix.wet.unit;
  const used = raised(phrase`mixed for it`, unit, lays.litres, mixWaste(mix.facts, env));
  const rate = quotient(phrase`the gang lays in an hour`, `${unit}/h`, used, lays.hours);
  return product(phrase`laid within its working life`, unit, [rate, life]);
}

/** The mix’s, else the defaults’. */
function lifeOf({ facts }: MixBatch, env: Env): Term | undefined {
  const line = facts?.line('life') ?? defaultLine(env, 'working-life');
  return line && inUnit(line.term('time', phrase`working life`), 'h');
}

function materialsOf(mix: MixBatch, size: Term, env: Env): InBatch[] {
  const ready = mix.ready ? mix.facts?.line('ready') : undefined;
  if (ready) {
    const unit = ready.word('pack');
    const makes = inUnit(ready.term('yield', phrase`a ${spoken(unit)} makes`), size.unit);
    return [
      {
        material: unit,
        amount: quotient(phrase`${mix.title}, ${spoken(unit)}s in a batch`, unit, size, makes),
      },
    ];
  }
  return mix.parts.map(({ material, volume, dose, origin }) => {
    const facts = factsNamed(env, 'material', material);
    const label = phrase`${facts?.title ?? material}, in a batch`;
    const over = product(phrase`for a batch`, volume.unit, [volume, size]);
    const dry = quotient(label, volume.unit, over, mix.wet);
    const amount = dose ? dry : { ...dampOf(dry, facts), label };
    return { material, amount, dry, origin };
  });
}
