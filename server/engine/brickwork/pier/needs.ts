/** What piers alike take: bricks, mortar, concrete, caps and hours. */
import { phrase } from '../../../../shared/phrase';
import type { Gang } from '../../labour/gang';
import { taskHours } from '../../labour/output';
import { laidIn } from '../../mortar/lays';
import type { Env } from '../../resolve/env';
import { type PierPlan, sumTallies, type Tally } from '../../setting-out';
import { named, product, sum, type Term, withGaps } from '../../working/term';
import { type Apart, apartNeeds, dampApart, ownMix } from '../apart';
import { type Counted, laidFrom, mortarOf } from '../count';
import { type Brick, brickOf } from '../goods';
import type { Masonry } from '../masonry';
import type { BrickNeed, MixNeed, Needs, TaskNeed } from '../needs';
import { capsOf } from '../tops/cap';
import { copingApart } from '../tops/coping-apart';
import { footingOf } from '../tops/footing';
import { coreConcrete } from './core';
import type { PierCounts } from './counts';

/** Of all piers alike, what is said of one. */
type Times = (label: string, of: Term) => Term;

export function needsOf(
  masonry: Masonry,
  counts: PierCounts,
  spec: PierPlan,
  alike: Term,
  gang: Gang,
): Needs {
  const { facts, env, mix } = masonry;
  const times: Times = (label, of) =>
    facts.line('number') ? product(label, of.unit, [alike, of]) : named(label, of);
  const kinds = [ownBricks, dampBricks, topBricks].flatMap(
    (of) => of(masonry, counts, times) ?? [],
  );
  const bricks = kinds.map(({ need }) => need);
  const laid = kinds.flatMap((kind) => kind.laid ?? []);
  const several = facts.line('number') && alike;
  const from = laidFrom(masonry, counts.inputs);
  const litres = times(phrase`Mortar`, mortarOf(phrase`mortar of one`, laid, env, from));
  const footing = footingOf(facts, env, undefined, several);
  const mortar = {
    mix: mix.name,
    block: mix.facts?.block,
    litres: withGaps(litres, mix.gaps),
    origin: mix.origin,
  };
  const pieces = capsOf(facts, several);
  const core = coreOf(coreConcrete(facts, env, spec, from), times);
  const caps = pieces.map((p) => p.count);
  const tasks = tasksOf(counts, times, footing?.litres, core?.litres, caps, env, gang);
  const laying = bricks.map((b) => b.bricks);
  const apart = apartNeeds(apartIn(masonry, counts, tasks, times), masonry, from, times);
  const lays = laidIn(litres, laying, tasks, masonry, apart);
  const mixes = [{ ...mortar, lays }, footing, core, ...apart].filter((m) => m !== undefined);
  return { bricks, mixes, pieces, tasks };
}

/** Bricks of one kind; `laid` what of them lies in the mortar of the pier. */
interface Kind {
  readonly need: BrickNeed;
  readonly laid?: { readonly tally: Tally; readonly brick: Brick };
}

/** Of the pier itself, and of a coping of the same brick. */
function ownBricks(masonry: Masonry, { pier, coping }: PierCounts, times: Times): Kind {
  const { brick } = masonry;
  const onTop = coping?.brick.name === brick.name ? coping.counted : undefined;
  const own = [pier, onTop]
    .filter((c): c is Counted => c !== undefined)
    .map((c) => withGaps(c.bricks, masonry.gaps));
  const inMix = coping?.mix ? undefined : onTop;
  return {
    need: {
      brick: brick.name,
      block: brick.facts?.block,
      bricks: times(phrase`Bricks`, sum(phrase`bricks of one`, 'bricks', own)),
      origin: brick.origin,
    },
    laid: { tally: sumTallies([pier, inMix].flatMap((c) => (c ? [c.tally] : []))), brick },
  };
}

function dampBricks(masonry: Masonry, { dpc }: PierCounts, times: Times): Kind | undefined {
  const damp = masonry.facts.line('dpc');
  if (!dpc || !damp) return undefined;
  const brick = brickOf(damp, masonry.env, damp.origin);
  return {
    need: {
      brick: brick.name,
      block: brick.facts?.block,
      bricks: times(phrase`Damp course`, withGaps(dpc.bricks, brick.gaps)),
      origin: damp.at('brick'),
    },
    laid: ownMix(damp, masonry) ? undefined : { tally: dpc.tally, brick },
  };
}

/** Of a coping of another brick. */
function topBricks(masonry: Masonry, { coping }: PierCounts, times: Times): Kind | undefined {
  if (!coping || coping.brick.name === masonry.brick.name) return undefined;
  const { brick, counted, mix } = coping;
  return {
    need: {
      brick: brick.name,
      block: brick.facts?.block,
      bricks: times(phrase`Coping`, withGaps(counted.bricks, brick.gaps)),
      origin: brick.origin,
    },
    laid: mix ? undefined : { tally: counted.tally, brick },
  };
}

/** In mixes of their own: the damp course and the coping, of all piers alike. */
function apartIn(
  masonry: Masonry,
  { pier, dpc, coping }: PierCounts,
  tasks: readonly TaskNeed[],
  times: Times,
): Apart[] {
  const damp = masonry.facts.line('dpc');
  const mix = dpc && ownMix(damp, masonry);
  const low = (): Apart[] => {
    if (!mix || !dpc) return [];
    const brick = brickOf(damp, masonry.env, damp!.origin);
    const [all, own] = [pier.bricks, dpc.bricks].map((of) => times('bricks', of));
    return [dampApart(mix, { tally: dpc.tally, brick }, own!, [all!, own!], tasks)];
  };
  const top = coping ? copingApart([coping], undefined, tasks, masonry) : [];
  const many = top.map((t) => ({ ...t, bricks: t.bricks.map((b) => times('bricks', b)) }));
  return [...low(), ...many];
}

/** Of all piers alike. */
function coreOf(one: MixNeed | undefined, times: Times): MixNeed | undefined {
  return one && { ...one, litres: times(phrase`Concrete in the core`, one.litres) };
}

function tasksOf(
  counts: PierCounts,
  times: Times,
  footing: Term | undefined,
  core: Term | undefined,
  caps: readonly Term[],
  env: Env,
  gang: Gang,
): TaskNeed[] {
  const laying = counts.dpc
    ? sum(phrase`bricks of one`, 'bricks', [counts.pier.bricks, counts.dpc.bricks])
    : counts.pier.bricks;
  const all: [string, string, Term | undefined][] = [
    ['pier-work', phrase`Laying the piers`, times(phrase`bricks laid in piers`, laying)],
    [
      'coping',
      phrase`Laying the coping`,
      counts.coping && times(phrase`bricks of the coping`, counts.coping.counted.bricks),
    ],
    ['core', phrase`Filling the core`, core],
    ['footing', phrase`Digging and concreting`, footing],
    ['cap', phrase`Bedding caps`, caps[0]],
  ];
  return all.flatMap(([task, label, amount]) =>
    amount ? [{ task, hours: taskHours(task, label, amount, env, gang) }] : [],
  );
}
