/** One course on plan: nothing overlaps, nothing stands out, and pieces and their joints fill the outline. */
import type { Area, EndKind, PlacedPiece } from '../types';
import { areaOf, type Slab, slabsOf } from './cover';
import type { FaultKind, LayoutFault } from './types';

/** A rectangle that a course has to fill, and how its two ends along the work are. */
export interface PlanOutline extends Area {
  readonly left: EndKind;
  readonly right: EndKind;
}

/** Mm²: areas close to this. */
const CLOSES = 1;

/**
 * Everything wrong with the plan of one course. Pieces grown by half the least joint must not meet;
 * grown by half the greatest they must leave nothing of the outline bare. So each joint, whichever
 * way it runs, lies between the two.
 */
export function provePlan(
  course: number,
  pieces: readonly PlacedPiece[],
  outline: readonly PlanOutline[],
  joint: { readonly least: number; readonly most: number },
): LayoutFault[] {
  const areas = pieces.map((p) => ({ x: p.x, y: p.y, width: p.along, height: p.across }));
  const faults: LayoutFault[] = [];
  const tell = (kind: FaultKind, at: number | undefined, measured: number, wanted: number) => {
    if (at !== undefined) faults.push({ kind, course, at, measured, wanted });
  };
  const plain = slabsOf(areas);
  const { covered, sum } = areaOf(plain);
  if (areas.some(isNone)) tell('no-piece', areas.find(isNone)!.x, 0, 0);
  if (sum - covered > CLOSES) tell('overlap', firstDouble(plain), sum - covered, 0);
  const outside =
    areaOf(slabsOf([...areas, ...outline])).covered - areaOf(slabsOf(outline)).covered;
  if (outside > CLOSES) tell('outside', areas[0]?.x, outside, 0);
  const close = slabsOf(areas.map((a) => grown(a, joint.least / 2 - 1e-6)));
  const meet = areaOf(close).sum - areaOf(close).covered;
  if (meet > CLOSES && sum - covered <= CLOSES)
    tell('joint-out', firstDouble(close), meet, joint.least);
  const bare = bareOf(areas, outline, joint.most / 2 + 1e-6);
  if (bare.area > CLOSES) tell('gap', bare.at, bare.area, 0);
  return faults;
}

const isNone = ({ x, y, width, height }: Area) =>
  !(width > 0 && height > 0 && Number.isFinite(x + y + width + height));

function grown({ x, y, width, height }: Area, by: number): Area {
  return { x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by };
}

function firstDouble(slabs: readonly Slab[]): number | undefined {
  return slabs.find(({ covered, sum }) => sum - covered > 1e-6)?.from;
}

/** What stands against other work keeps a joint of its own, half of which the other side would cover. */
function bareOf(areas: readonly Area[], outline: readonly PlanOutline[], reach: number) {
  const wanted = outline.map((o) => {
    const left = o.left === 'butted' ? reach : 0;
    const right = o.right === 'butted' ? reach : 0;
    return { ...o, x: o.x + left, width: Math.max(0, o.width - left - right) };
  });
  const cover = areas.map((a) => grown(a, reach));
  const both = slabsOf([...cover, ...wanted]);
  const laid = slabsOf(cover);
  const area = areaOf(both).covered - areaOf(laid).covered;
  return { area, at: area > CLOSES ? firstBare(both, laid) : undefined };
}

/** Where the pieces alone first cover less than pieces and outline together. */
function firstBare(both: readonly Slab[], laid: readonly Slab[]): number | undefined {
  let i = 0;
  for (const slab of both) {
    while (i < laid.length && laid[i]!.to <= slab.from) i++;
    const here = laid[i];
    const covered = here && here.from <= slab.from ? here.covered : 0;
    if (slab.covered - covered > 1e-6) return slab.from;
  }
  return both[0]?.from;
}
