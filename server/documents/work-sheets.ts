/** All drawings of a piece of work, on sheets, by what they show. */
import { phrase } from '../../shared/phrase';
import type { Work } from '../engine/brickwork/work';
import {
  type Drawing,
  type DrawingSet,
  elevation,
  type Paper,
  pierElevation,
  pierPlanSet,
  rodSet,
  type Sheet,
  topPlans,
  toSheet,
  toSheets,
  wallPlans,
  withReused,
} from '../engine/drawing';
import type { Env } from '../engine/resolve/env';
import { drawingOf, hasDrawing, titled, unitsOf } from './work-drawing';
import { levelsOf } from './work-levels';
import { behindOf, quoinsOf, teesOf } from './work-meets';
import { piersOf } from './work-piers';
import { toppingsOn } from './work-tops';

/** What can be drawn: its faces, its courses on plan, its coping from above, its gauge rod. */
export const VIEWS = ['front', 'back', 'plan', 'top', 'rod'] as const;

export type View = (typeof VIEWS)[number];

export interface SheetWishes {
  readonly paper: Paper;
  /** On plan: the lower of two courses, from 1. */
  readonly course?: number;
  /** All work of the job, in which other walls of its quoins are found. */
  readonly works: readonly Work[];
}

/** Whether there is anything to draw: of a repair, what it builds again. */
export function canDraw(work: Work): boolean {
  return hasDrawing(work) || work.facts.rebuilt !== undefined;
}

/** Work built again, old bricks told from new ones. */
function rebuiltSheets(work: Work, env: Env, paper: Paper): Sheet[] {
  const { rebuilt } = work.facts;
  const drawn = rebuilt && rebuiltFace(work, env);
  return drawn ? [toSheet(withReused(drawn.drawing, rebuilt.reused, drawn.what), paper)] : [];
}

function rebuiltFace(work: Work, env: Env): { drawing: Drawing; what: string } | undefined {
  const { settingOut, pier } = work.facts.rebuilt ?? {};
  const title = phrase`${work.title}: built again`;
  const units = unitsOf(env);
  if (settingOut) {
    const out = titled(settingOut, work);
    const { courses } = out.spec;
    const what = phrase`a part of a wall built again, ${courses} courses high`;
    return { drawing: elevation(out, { title, units }), what };
  }
  if (!pier) return undefined;
  const { plan, unit, joints, placed } = pier;
  const gauge = unit.height + joints.bed;
  const laid = placed && { unit, courses: placed };
  const drawing = pierElevation({ ...plan, name: '' }, gauge, title, [], { units, placed: laid });
  return { drawing, what: phrase`a pier built again, its topmost ${plan.courses} courses` };
}

/** None where there is nothing of that to draw. */
export function sheetsOf(work: Work, env: Env, view: View, wishes: SheetWishes): Sheet[] {
  if (view === 'front' || view === 'back') {
    const title = view === 'back' ? phrase`${work.title}: back` : work.title;
    if (view === 'front' && work.facts.rebuilt) return rebuiltSheets(work, env, wishes.paper);
    const drawing = drawingOf(work, env, { face: view, title });
    return drawing ? [toSheet(drawing, wishes.paper)] : [];
  }
  const set = setOf(work, env, view, wishes);
  return set ? toSheets(set, wishes.paper) : [];
}

/** The drawings of a view that has several, before they are put on paper; nothing where there are none. */
export function setOf(
  work: Work,
  env: Env,
  view: keyof typeof SETS,
  wishes: Omit<SheetWishes, 'paper'>,
): DrawingSet | undefined {
  const set = SETS[view](view === 'plan' ? asBuilt(work) : work, env, wishes);
  return set?.groups.length ? set : undefined;
}

/** The drawing of a face before it is put on paper; of a repair, what it builds again. */
export function faceOf(work: Work, env: Env, face: 'front' | 'back'): Drawing | undefined {
  const { rebuilt } = work.facts;
  if (face === 'back' || !rebuilt) return drawingOf(work, env, { face });
  const drawn = rebuiltFace(work, env);
  return drawn && withReused(drawn.drawing, rebuilt.reused, drawn.what);
}

/** What a repair builds again has plans like any work. Its rod would begin anywhere up what stands, and it has none. */
function asBuilt(work: Work): Work {
  const { rebuilt } = work.facts;
  if (!rebuilt) return work;
  const { settingOut, pier } = rebuilt;
  const title = phrase`${work.title}: built again`;
  return { ...work, title, facts: { ...work.facts, settingOut, pier } };
}

type SetOf = (work: Work, env: Env, wishes: Omit<SheetWishes, 'paper'>) => DrawingSet | undefined;

const SETS: Readonly<Record<Exclude<View, 'front' | 'back'>, SetOf>> = {
  plan: plansOf,
  top: topsOf,
  rod: rodOf,
};

function plansOf(
  work: Work,
  env: Env,
  { course, works }: Omit<SheetWishes, 'paper'>,
): DrawingSet | undefined {
  const { laid, settingOut, carved, pier } = work.facts;
  const title = phrase`${work.title}: plans`;
  const lower = course === undefined ? undefined : course - 1;
  const units = unitsOf(env);
  if (pier?.placed) {
    const { plan, unit, placed } = pier;
    const { width, depth } = plan;
    return pierPlanSet({ title, units, unit, width, depth, courses: placed, course: lower });
  }
  const own = laid ?? carved ?? settingOut;
  if (!own) return undefined;
  const out = titled(own, work);
  return wallPlans(out, {
    title,
    units,
    course: lower,
    piers: piersOf(work),
    behind: behindOf(work, out),
    plinth: work.facts.plinth,
    corbel: work.facts.corbel,
    quoins: quoinsOf(work, works),
    tees: teesOf(work, works, units),
  });
}

function topsOf(work: Work, env: Env): DrawingSet | undefined {
  const { settingOut, pier } = work.facts;
  const gauge = settingOut?.gauge ?? 0;
  const toppings = toppingsOn(work, gauge, 0).sort((a, b) => a.from - b.from || a.at - b.at);
  if (!toppings.length) return undefined;
  const thickness = settingOut?.thickness ?? pier?.plan.depth ?? 0;
  const title = phrase`${work.title}: coping from above`;
  return topPlans(toppings, { title, units: unitsOf(env), thickness });
}

function rodOf(work: Work, env: Env): DrawingSet | undefined {
  const { settingOut, pier } = work.facts;
  const unit = settingOut?.spec.unit ?? pier?.unit;
  const joints = settingOut?.spec.joints ?? pier?.joints;
  if (!unit || !joints) return undefined;
  const gauge = unit.height + joints.bed;
  const high = settingOut ? settingOut.spec.piers.map((p) => (p.base ?? 0) + p.courses) : [];
  const courses = Math.max(settingOut?.spec.courses ?? pier!.plan.courses, ...high);
  const levels = levelsOf(work, gauge, joints.bed);
  return rodSet({
    title: phrase`${work.title}: gauge rod`,
    units: unitsOf(env),
    gauge,
    courses,
    levels,
  });
}
