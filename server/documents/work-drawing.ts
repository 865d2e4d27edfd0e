/** The drawing of a face of a piece of work, from what it says of itself. */

import type { Work } from '../engine/brickwork/work';
import {
  asBlocks,
  type Drawing,
  elevation,
  isBlock,
  type Projection,
  pierElevation,
} from '../engine/drawing';
import type { Env } from '../engine/resolve/env';
import type { SettingOut } from '../engine/setting-out';
import { bandsOf } from './work-levels';
import { piersOf } from './work-piers';
import { calledIn, dpcCourses, toppingsOn } from './work-tops';

export interface Wishes {
  readonly title?: string;
  /** Most bricks drawn one by one; past that, brickwork is a plain area. */
  readonly mostBricks?: number;
  /** `front` when left out. */
  readonly face?: 'front' | 'back';
}

/** Whether there is a face to draw: not of a repair, nor of work that cannot be laid yet. */
export function hasDrawing({ facts }: Work): boolean {
  return facts.settingOut !== undefined || facts.pier !== undefined;
}

/** @returns nothing where {@link hasDrawing} says there is nothing to draw, nor for the back of a pier */
export function drawingOf(work: Work, env: Env, more: Wishes = {}): Drawing | undefined {
  const { pier, settingOut } = work.facts;
  if (settingOut) return wallDrawing(work, env, more);
  if (!pier || more.face === 'back') return undefined;
  const { title = work.title } = more;
  const { plan, unit, joints, placed } = pier;
  const gauge = unit.height + joints.bed;
  const face = { ...plan, name: work.title === work.name ? '' : work.title };
  const tops = toppingsOn(work, gauge, joints.bed);
  return pierElevation(face, gauge, title, tops, {
    dpc: dpcCourses(work),
    units: unitsOf(env),
    placed: placed && { unit, courses: placed },
  });
}

export function unitsOf(env: Env): Drawing['units'] {
  return env.imperial ? 'feet' : 'millimetres';
}

/** The wall as its face shows, or the skin that stands behind it. */
function wallDrawing(work: Work, env: Env, more: Wishes): Drawing {
  const { facts } = work;
  const { title = work.title, mostBricks, face } = more;
  const front = facts.met?.settingOut ?? facts.carved ?? facts.settingOut!;
  const behind = face === 'back' ? facts.backing?.settingOut : undefined;
  const { gauge, spec } = front;
  const drawing = elevation(titled(behind ?? front, work), {
    title,
    face,
    toppings: toppingsOn(work, gauge, spec.joints.bed),
    shapes: behind
      ? undefined
      : facts.shapes?.filter((s) => s.face === undefined || s.face === (face ?? 'front')),
    piers: behind ? undefined : piersOf(work),
    ends: behind ? undefined : facts.met?.ends,
    bands: behind ? undefined : bandsOf(work),
    projections: behind ? undefined : projectionsOf(work, face),
    dpc: dpcCourses(work),
    mostBricks,
    units: unitsOf(env),
  });
  return behind && isBlock(behind, front) ? asBlocks(drawing) : drawing;
}

/** What stands out before the face that is seen. */
function projectionsOf({ facts }: Work, face: Wishes['face']): Projection[] {
  const { plinth, corbel } = facts;
  const all = [
    ...(plinth ? [{ ...plinth, name: 'plinth', seen: face }] : []),
    ...(corbel ? [{ ...corbel, name: 'corbel' }] : []),
  ];
  return all.filter(({ both }) => both || face !== 'back');
}

/** Openings and piers by their titles; those without one by their names, as words. */
export function titled(out: SettingOut, work: Work): SettingOut {
  const { spec } = out;
  const openings = spec.openings.map((o) => ({ ...o, name: calledIn(work, 'opening', o.name) }));
  const piers = spec.piers.map((p) => ({ ...p, name: calledIn(work, 'pier', p.name) }));
  const bond = { ...spec.bond, name: spec.bond.name.replaceAll('-', ' ') };
  return { ...out, spec: { ...spec, bond, openings, piers } };
}
