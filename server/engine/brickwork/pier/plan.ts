/** The plan of a pier: its size over the faces, and what each of two alternate courses takes. */

import type { Value } from '../../../../grammar/read/values';
import { bondsThrough, brickShape } from '../../findings/brick-shape';
import { coreIdle, coreUnreckoned } from '../../findings/piers/core-idle';
import { pierPlanMissing } from '../../findings/piers/pier-plan-missing';
import { pierNotHalves, pierSize } from '../../findings/piers/pier-size';
import type { Remark } from '../../findings/remark';
import { wordOf } from '../../resolve/book';
import { type BlockFacts, type Env, factsOf } from '../../resolve/env';
import {
  type CoreFill,
  hasCore,
  type PieceCount,
  type PierLaid,
  type PierPlan,
  pierPlans,
} from '../../setting-out';
import type { Placed } from '../faces';
import { halvesOf, jointsIn, type Masonry, thicknessOf } from '../masonry';
import { countsOf } from './core';

export interface Plan extends Omit<PierPlan, 'courses'> {
  /** Half bricks across. */
  readonly halves: number;
  readonly widthHalves: number;
  /** Every piece in its place, where that is known. */
  readonly laid?: PierLaid;
  /** What its core is filled with, where a line says so and there is one. */
  readonly core?: CoreFill;
}

/** A size in bricks, or in lengths that are taken for the nearest number of half bricks on plan. */
export function planOf(facts: BlockFacts, masonry: Masonry, remarks: Remark[]): Plan | undefined {
  const line = facts.line('size');
  const value = line?.values.size;
  const joints = jointsIn(masonry);
  const unit = masonry.brick.size;
  if (!line || value?.kind !== 'size' || !joints || !unit) return undefined;
  const inBricks = value.sides[0]!.unit.dimension === 'bricks';
  const said = line.sides('size')!;
  const half = (unit.length + joints.perpend) / 2;
  const halves = said.map((side) =>
    inBricks ? halvesOf(side) : Math.round((side + joints.perpend) / half),
  );
  const [along, across] = halves as [number, number];
  if (along < 1 || across < 1) return undefined;
  if (!bondsThrough(unit, joints.perpend, masonry.env)) {
    remarks.push(brickShape(masonry));
    return undefined;
  }
  const made = halves.map((n) => thicknessOf(n, unit, joints.perpend));
  if (inBricks && said.some((side) => !Number.isInteger(side * 2))) {
    remarks.push(pierNotHalves(facts));
    return undefined;
  }
  const bricks = halves.map((n) => n / 2);
  const off = inBricks ? undefined : pierSize(facts, said, made, bricks, masonry.env);
  if (off) remarks.push(off);
  // Far from what its bricks make, a size is no size of a pier: what is laid is what is counted.
  const sides = inBricks || off?.severity === 'warning' ? made : said;
  const told = plansFor(along, across, masonry);
  const core = coreTold(facts, along, across, remarks);
  const laid = pierPlans({
    width: along,
    depth: across,
    unit,
    joint: joints.perpend,
    core,
    counts: told,
  });
  if (core && !laid && core !== 'bricks' && core !== 'halves')
    remarks.push(coreUnreckoned(facts.line('core')!, facts.name, along / 2, across / 2));
  const counted = laid?.courses.map((course) => countsOf(course, core));
  const plans = (core && counted) ?? told ?? counted ?? byArea(along, across, facts, remarks);
  return {
    name: facts.name,
    width: sides[0]!,
    depth: sides[1]!,
    plans,
    halves: across,
    widthHalves: along,
    ...(laid ? { laid } : {}),
    ...(core ? { core } : {}),
  };
}

/** What drawings and repairs ask of a plan: its pieces in their places, and the halves that so many courses hide. */
export function placedOf({ laid }: Plan, courses: number): Partial<Placed> {
  return laid ? { placed: laid.courses, coreHalves: laid.coreHalves * courses } : {};
}

/** The fill a line names; nothing, with a remark, where every brick of the pier shows. */
function coreTold(
  facts: BlockFacts,
  along: number,
  across: number,
  remarks: Remark[],
): CoreFill | undefined {
  const line = facts.line('core');
  const fill = line?.word('fill');
  if (!line || !fill) return undefined;
  if (hasCore(along, across)) return fill as CoreFill;
  remarks.push(coreIdle(line, along / 2, across / 2));
  return undefined;
}

/** The library’s plan of that size; one turned a quarter serves as well. Looked for once in an environment. */
function plansFor(along: number, across: number, { env }: Masonry): Courses | undefined {
  const plans = known.get(env) ?? new Map<string, Courses | undefined>();
  known.set(env, plans);
  const size = `${along} ${across}`;
  if (!plans.has(size)) plans.set(size, planIn(along, across, env));
  return plans.get(size);
}

type Courses = readonly (readonly PieceCount[])[];
const known = new WeakMap<Env, Map<string, Courses | undefined>>();

function planIn(along: number, across: number, env: Env): Courses | undefined {
  for (const block of env.book.blocksOf('pier-plan')) {
    const size = block.read.heading!.values.size;
    if (size?.kind !== 'size') continue;
    const [a, b] = size.sides.map((s) => halvesOf(s.value.toNumber()));
    if (!((a === along && b === across) || (a === across && b === along))) continue;
    const courses = factsOf(block, env)!
      .lines('course')
      .map((l) => piecesOf(l.values.pieces));
    if (courses.length) return courses;
  }
  return undefined;
}

function piecesOf(list: Value | undefined): PieceCount[] {
  if (list?.kind !== 'list') return [];
  return list.of.map(({ piece, count }) => ({
    piece: wordOf(piece) as PieceCount['piece'],
    count: count?.kind === 'quantity' ? count.low.toNumber() : 0,
  }));
}

/** No plan is known: bricks by area, which is right in number and says nothing of the bond. */
function byArea(
  along: number,
  across: number,
  facts: BlockFacts,
  remarks: Remark[],
): PieceCount[][] {
  remarks.push(pierPlanMissing(facts, along / 2, across / 2));
  const halfBricks = along * across;
  const whole: PieceCount = { piece: 'whole', count: Math.floor(halfBricks / 2) };
  return [halfBricks % 2 ? [whole, { piece: 'half', count: 1 }] : [whole]];
}
