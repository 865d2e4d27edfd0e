/** The drawing of a piece of work, from what it says of itself. */

import type { TopRun, Work } from '../engine/brickwork/needs';
import { type Drawing, elevation, pierElevation, type Topping } from '../engine/drawing';
import { wordOf } from '../engine/resolve/book';
import type { Env } from '../engine/resolve/env';
import type { SettingOut } from '../engine/setting-out';

export interface Wishes {
  readonly title?: string;
  /** Most bricks drawn one by one; past that, brickwork is a plain area. */
  readonly mostBricks?: number;
}

/** Whether there is a face to draw: not of a repair, nor of work that cannot be laid yet. */
export function hasDrawing({ facts }: Work): boolean {
  return facts.settingOut !== undefined || facts.pier !== undefined;
}

/** @returns nothing where {@link hasDrawing} says there is nothing to draw */
export function drawingOf(work: Work, env: Env, more: Wishes = {}): Drawing | undefined {
  const { settingOut, pier } = work.facts;
  const { title = work.title, mostBricks } = more;
  const units = env.imperial ? 'feet' : 'millimetres';
  const dpc = dpcCourses(work);
  if (settingOut) {
    const { gauge, spec } = settingOut;
    const toppings = toppingsOn(work, gauge, spec.joints.bed);
    return elevation(titled(settingOut, work), { title, toppings, dpc, mostBricks, units });
  }
  if (!pier) return undefined;
  const { plan, unit, joints } = pier;
  const gauge = unit.height + joints.bed;
  const face = { ...plan, name: work.title === work.name ? '' : work.title };
  return pierElevation(face, gauge, title, toppingsOn(work, gauge, joints.bed), { dpc, units });
}

/** Openings and piers by their titles; those without one by their names, as words. */
function titled(out: SettingOut, work: Work): SettingOut {
  const { spec } = out;
  const called = <T extends { readonly name: string }>(kind: string, thing: T): T => {
    const line = work.block.read.heading?.body.find(
      (l) => l.kind.key === kind && wordOf(l.values.name) === thing.name,
    );
    return {
      ...thing,
      name: wordOf(line?.values.title) || thing.name.replaceAll('-', ' ') || kind,
    };
  };
  const openings = spec.openings.map((o) => called('opening', o));
  const piers = spec.piers.map((p) => called('pier', p));
  const bond = { ...spec.bond, name: spec.bond.name.replaceAll('-', ' ') };
  return { ...out, spec: { ...spec, bond, openings, piers } };
}

/** What stands on top lies on a bed of mortar like any course. */
function toppingsOn({ facts }: Work, gauge: number, bed: number): Topping[] {
  return (facts.tops ?? []).flatMap((top) => topping(top, top.on * gauge + bed));
}

function topping(top: TopRun, at: number): Topping[] {
  const { from, to, height, joint } = top;
  if (top.kind === 'cap') return [{ kind: 'cap', name: 'cap', from, to, at, height }];
  const wholes = top.pieces.filter((p) => !p.cut);
  const cuts = top.pieces.filter((p) => p.cut);
  const piece = wholes[0]?.length;
  if (piece === undefined) return [];
  const cut = cuts[0] && { length: cuts[0].length, count: cuts.length };
  return [
    { kind: 'brick-on-edge', from, to, at, height, piece, wholes: wholes.length, joint, cut },
  ];
}

/** How many courses the damp-proof course takes up, from the ground. */
function dpcCourses(work: Work): number | undefined {
  const line = work.block.read.heading?.body.find((l) => l.kind.key === 'dpc');
  const courses = line?.values.courses;
  return courses?.kind === 'quantity' ? courses.low.toNumber() : undefined;
}
