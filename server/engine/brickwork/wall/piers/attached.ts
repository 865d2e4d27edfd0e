/** Piers that stand out of their wall and are bonded into it course by course. */
import { coreInWall } from '../../../findings/piers/core-idle';
import {
  pierAtStep,
  pierButted,
  pierFlush,
  pierUnbonded,
} from '../../../findings/piers/pier-attached';
import type { Remark } from '../../../findings/remark';
import type { Env } from '../../../resolve/env';
import {
  type AttachedLaid,
  type AttachedShape,
  attachPiers,
  levelAt,
  type PierSpec,
  setOut,
  type WallSpec,
} from '../../../setting-out';
import { countsOf } from '../../pier/core';
import { aboveWall } from '../above';
import type { WallPlan } from '../spec';
import type { PierFacts } from './placed';

/** Mm from its sides that the top of the wall is looked at. */
const BESIDE = 1;

export interface Attached {
  readonly plan: WallPlan;
  /** The wall as it is laid beside its piers: they are wider or narrower there by what runs from one into the other. */
  readonly spec: WallSpec;
}

/** Bonds the attached piers of a wall into it; one that no plan bonds is left in its line, with a remark. */
export function attachedIn(plan: WallPlan, env: Env, remarks: Remark[]): Attached {
  remarks.push(...plan.piers.flatMap((pier) => butted(pier, plan)));
  const all = plan.piers.flatMap((pier, index) => {
    const shape = shapeOf(pier, plan, remarks);
    return shape ? [{ index, shape }] : [];
  });
  if (!all.length) return { plan, spec: plan.spec };
  const { spec, laid } = attachPiers(plan.spec, all, setOut);
  const without = all.filter(({ index }) => !laid.has(index));
  const { unit, joints } = plan.spec;
  const half = (unit.length + joints.perpend) / 2;
  remarks.push(...without.map(({ index }) => whyUnbonded(plan.piers[index]!, plan, half, env)));
  const piers = plan.piers.map((pier, i) => bonded(pier, laid.get(i), plan));
  remarks.push(...piers.flatMap(coreOff));
  return {
    plan: { ...plan, piers, spec: { ...plan.spec, piers: piers.map((p) => p.spec) } },
    spec,
  };
}

function butted({ facts, halves }: PierFacts, { spec }: WallPlan): Remark[] {
  return facts.line('projects') ? [] : [pierButted(facts, halves > spec.thickness)];
}

function whyUnbonded({ facts, spec }: PierFacts, wall: WallPlan, half: number, env: Env): Remark {
  const { from, width, base = 0, courses } = spec;
  const beside = [from - BESIDE, from + width + BESIDE].filter(
    (x) => x > 0 && x < wall.spec.length,
  );
  const high = beside.map((x) => levelAt(wall.top, x) - base);
  const lower = Math.min(...high);
  const stepped = lower < Math.max(...high) && lower < courses;
  return stepped ? pierAtStep(facts, lower) : pierUnbonded(facts, half, env);
}

/** How it stands out, in half bricks; nothing for one in the line of its wall. */
function shapeOf(
  { facts, plan, halves }: PierFacts,
  { spec }: WallPlan,
  remarks: Remark[],
): AttachedShape | undefined {
  const side = facts.line('projects')?.word('side');
  if (!side) return undefined;
  const out = halves - spec.thickness;
  if (out < 1 || (side === 'both' && out % 2)) {
    remarks.push(pierFlush(facts, spec.thickness, plan.widthHalves, side));
    return undefined;
  }
  const half = side === 'both' ? out / 2 : out;
  return {
    width: plan.widthHalves,
    wall: spec.thickness,
    front: side === 'back' ? 0 : half,
    back: side === 'front' ? 0 : half,
  };
}

function bonded(pier: PierFacts, laid: AttachedLaid | undefined, wall: WallPlan): PierFacts {
  if (!laid) return pier;
  const { spec } = wall;
  const gauge = spec.unit.height + spec.joints.bed;
  const turned = inTurn(laid, pier.spec);
  const free = aboveWall(pier, turned, wall);
  const own: PierSpec = {
    ...pier.spec,
    joins: 'toothed',
    plans: turned.courses.map((course) => countsOf(course)),
    apart: turned.beyond.map((area) => -area * gauge),
    ...(free ? { above: free.spec } : {}),
  };
  return { ...pier, spec: own, attached: turned, ...(free ? { above: free.courses } : {}) };
}

/** A core told of one that is bricks all through. Above its wall it may have one. */
function coreOff({ facts, attached, spec, plan }: PierFacts): Remark[] {
  const line = facts.line('core');
  return line && plan.core && attached && !spec.above ? [coreInWall(line, facts.name)] : [];
}

/** A pier counts its courses from its own foot, the bond from that of the wall. */
function inTurn(laid: AttachedLaid, { base = 0 }: PierSpec): AttachedLaid {
  const turn = <T>(of: readonly T[]) => of.map((_, i) => of[(i + base) % of.length]!);
  return { ...laid, courses: turn(laid.courses), beyond: turn(laid.beyond) };
}
