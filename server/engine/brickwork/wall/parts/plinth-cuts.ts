/** Where the cuts of a plinth lie, course by course. */
import type { CutPlace } from '../../../setting-out';
import type { WallPlan } from '../spec';
import { cutsInZones } from '../zones';
import type { TurnedRow } from './plinth-corners';
import { type PlinthRows, plainRow, plinthZones } from './plinth-rows';

/** From the lowest course. Rows laid alike lie behind one another, and their pieces are told together. */
export function plinthCuts(
  { rows, courses }: PlinthRows,
  plan: WallPlan,
  turned: readonly TurnedRow[],
): CutPlace[] {
  const straight = { laid: plainRow(plan), zones: plinthZones(courses, plan) };
  const runs = turned.length ? turned : Array<typeof straight>(rows).fill(straight);
  const known = new Map<string, CutPlace>();
  for (const place of runs.flatMap(({ laid, zones }) => cutsInZones(laid, zones, plan))) {
    const key = JSON.stringify({ ...place, each: 0 });
    const like = known.get(key);
    known.set(key, like ? { ...like, each: like.each + place.each } : place);
  }
  const left = ({ at }: CutPlace) => at[0]?.from ?? 0;
  return [...known.values()].sort((a, b) => a.from - b.from || left(a) - left(b));
}
