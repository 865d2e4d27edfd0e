/** Piers of a wall beside their bricks: concrete in their cores, where their pieces lie, and how they ought to stand. */
import { phrase } from '../../../../../shared/phrase';
import { pierLow, pierSlight, piersApart } from '../../../findings/piers/pier-stands';
import type { Remark } from '../../../findings/remark';
import { taskHours } from '../../../labour/output';
import type { PierPlan } from '../../../setting-out';
import { named, sum } from '../../../working/term';
import { laidFrom } from '../../count';
import type { WallPierFace } from '../../faces';
import type { Masonry } from '../../masonry';
import type { MixNeed } from '../../needs';
import { coreConcrete } from '../../pier/core';
import { inputsOf } from '../counts';
import type { PierFacts } from '../piers/placed';
import type { WallPlan } from '../spec';
import type { PartOf } from './part';

export const piers: PartOf = (masonry, plan, _counts, gang) => {
  if (!plan.piers.length) return undefined;
  const from = laidFrom(masonry, inputsOf(masonry, plan));
  const mixes = plan.piers.flatMap(
    (p) => coreConcrete(p.facts, masonry.env, coredIn(p), from) ?? [],
  );
  const litres = concreteIn(mixes);
  return {
    mixes,
    tasks: litres
      ? [
          {
            task: 'core',
            hours: taskHours('core', phrase`Filling the cores`, litres, masonry.env, gang),
          },
        ]
      : [],
    figures: litres ? [{ key: 'core', term: named(phrase`Concrete in the cores`, litres) }] : [],
    remarks: remarksOn(masonry, plan),
    facts: { piers: plan.piers.flatMap((pier) => faceIn(pier, plan) ?? []) },
  };
};

/** What of it has a core: of a pier that is bonded into its wall, what stands above that. */
function coredIn({ spec, attached }: PierFacts): PierPlan {
  if (!attached) return spec;
  const { apart: _, above, ...rest } = spec;
  return above
    ? { ...rest, plans: above.plans, apart: above.apart, courses: spec.courses - above.from }
    : rest;
}

function concreteIn(mixes: readonly MixNeed[]) {
  const [first] = mixes;
  return (
    first &&
    sum(
      phrase`concrete in the cores`,
      first.litres.unit,
      mixes.map((m) => m.litres),
    )
  );
}

/** Mm from the wall’s front face to the pier’s, when nothing tells: as far out before it as behind. */
function faceIn(pier: PierFacts, { spec }: WallPlan): WallPierFace | undefined {
  const { attached, plan } = pier;
  const { name, from, width, depth, courses, base = 0 } = pier.spec;
  const laid = attached ?? plan.laid;
  if (!laid) return undefined;
  const half = (spec.unit.length + spec.joints.perpend) / 2;
  const through = spec.thickness * half - spec.joints.perpend;
  const y = attached ? 0 - attached.front * half : (through - depth) / 2;
  const coreHalves = attached ? 0 : (plan.laid?.coreHalves ?? 0) * courses;
  const at = { name, from, y, width, depth, base, courses };
  const { above } = pier.spec;
  const free = above && { above: { from: above.from, placed: pier.above ?? [] } };
  return { ...at, attached: attached !== undefined, placed: laid.courses, coreHalves, ...free };
}

function remarksOn(masonry: Masonry, plan: WallPlan): Remark[] {
  const attached = plan.piers.filter((p) => p.attached);
  const { env, facts } = masonry;
  const found = [
    ...attached.flatMap((p) => [pierSlight(p, plan, env), pierLow(p, plan, env)]),
    piersApart(facts, attached, plan, env),
  ];
  return found.filter((r): r is Remark => r !== undefined);
}
