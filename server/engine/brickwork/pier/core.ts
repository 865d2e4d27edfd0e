/** The core of a pier: what of its courses is counted as bricks, what is apart from bricks and mortar, and its concrete. */
import { phrase } from '../../../../shared/phrase';
import { type BlockFacts, defaultLine, type Env } from '../../resolve/env';
import type {
  CoreFill,
  CoursePlan,
  PieceCount,
  PierLaid,
  PierPlan,
  UnitSize,
} from '../../setting-out';
import { type Term, withGaps } from '../../working/term';
import { mixOf } from '../goods';
import { volumeShown } from '../lengths';
import type { MixNeed } from '../needs';
import type { Plan } from './plan';

/** The pieces of a course that bricks are bought for: bats to hand are not. */
export function countsOf(course: CoursePlan, core?: CoreFill): PieceCount[] {
  const counts = new Map<PieceCount['piece'], number>();
  const free = new Set(core === 'bats' ? course.hidden : []);
  for (const piece of course.pieces)
    if (!free.has(piece)) counts.set(piece.piece, (counts.get(piece.piece) ?? 0) + 1);
  return [...counts].map(([piece, count]) => ({ piece, count }));
}

/** A pier’s plan as high as it is built: mm³ of a course apart from bricks and mortar depend on its bed, in mm. */
export function asHigh(plan: Plan, unit: UnitSize, courses: number, bed: number): PierPlan {
  const { name, width, depth, plans, laid, core } = plan;
  const spec = { name, width, depth, plans, courses };
  if (!laid || !core) return spec;
  const apart = inCore(laid, core, unit.height, bed);
  return apart ? { ...spec, apart: plans.map(() => apart) } : spec;
}

function inCore(laid: PierLaid, core: CoreFill, height: number, bed: number): number {
  const course = laid.courses[0]!;
  if (core === 'bats')
    return course.hidden.reduce((sum, p) => sum + p.along * p.across * height, 0);
  return course.core.reduce((sum, area) => sum + area.width * area.height * (height + bed), 0);
}

/** Concrete in the core of a pier, in the mix its line names or that of footings. */
export function coreConcrete(
  facts: BlockFacts,
  env: Env,
  spec: PierPlan,
  from: readonly Term[],
): MixNeed | undefined {
  const line = facts.line('core');
  const [apart] = spec.apart ?? [];
  if (line?.word('fill') !== 'concrete' || !apart) return undefined;
  const named = line.values.mix ? line : defaultLine(env, 'footing-mix');
  const mix = mixOf(named, env, line.origin);
  const note = phrase`the core between the faces, bed joints with it, as high as the courses`;
  const litres = volumeShown(env, phrase`Concrete in the core`, apart * spec.courses, {
    note,
    args: from,
  });
  return {
    mix: mix.name,
    block: mix.facts?.block,
    litres: withGaps(litres, mix.gaps),
    origin: mix.origin,
  };
}
