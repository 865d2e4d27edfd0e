/** The drawing of a piece of work, from what it says of itself. */
import { type Drawing, elevation, type Topping } from '../engine/drawing';
import type { SettingOut } from '../engine/setting-out';
import type { TopRun, Work } from '../engine/work/needs';

/** What a drawing calls the openings and piers of a wall: their names in the file, unless told otherwise. */
export type Naming = (kind: 'opening' | 'pier', name: string) => string;

export interface Wishes {
  readonly title?: string;
  readonly naming?: Naming;
  /** Most bricks drawn one by one; past that, brickwork is a plain area. */
  readonly mostBricks?: number;
}

/** @returns nothing for work that has no face to draw: a repair, or a wall that cannot be laid yet */
export function drawingOf(work: Work, more: Wishes = {}): Drawing | undefined {
  const { settingOut, tops = [] } = work.facts;
  if (!settingOut) return undefined;
  const { title = work.title, naming, mostBricks } = more;
  const out = naming ? renamed(settingOut, naming) : settingOut;
  const toppings = tops.flatMap((top) => topping(top, out.gauge));
  return elevation(out, { title, toppings, dpc: dpcCourses(work), mostBricks });
}

function renamed(out: SettingOut, naming: Naming): SettingOut {
  const { spec } = out;
  const openings = spec.openings.map((o) => ({ ...o, name: naming('opening', o.name) }));
  const piers = spec.piers.map((p) => ({ ...p, name: naming('pier', p.name) }));
  const bond = { ...spec.bond, name: spec.bond.name.replaceAll('-', ' ') };
  return { ...out, spec: { ...spec, bond, openings, piers } };
}

function topping(top: TopRun, gauge: number): Topping[] {
  const { from, to, height, joint } = top;
  const at = top.on * gauge;
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
