/** Where the rows of a plinth are left out for another wall: one stands before them, or has a plinth of its own there. */
import type { OpeningSpec } from '../../../setting-out';
import type { Masonry } from '../../masonry';
import type { WallCounts } from '../counts';
import { wallAlone } from '../meet/alone';
import type { Tee } from '../meet/tees';
import { hasBacking } from '../meet/unbonded';
import type { WallPlan } from '../spec';
import { type Face, type PlinthRows, plinthIn } from './plinth-rows';

export type PlinthStops = Readonly<Record<Face, readonly OpeningSpec[]>>;

type Meets = Pick<WallCounts, 'arms' | 'tees'>;

/** For its rows before either face, each like an opening that the rows have a joint beside. */
export function plinthStops(
  own: PlinthRows,
  masonry: Masonry,
  plan: WallPlan,
  { arms, tees }: Meets,
): PlinthStops {
  const joint = plan.spec.joints.perpend;
  const behind = hasBacking(masonry.facts.block, masonry.env) ? [] : arms;
  const back = behind.map(({ from, to, courses }) => {
    const over = courses.to >= courses.from + own.courses;
    return stop(from - joint, to + joint, over ? null : courses.to, plan);
  });
  const ends = tees.flatMap((tee) => atEnd(tee, own, masonry, plan) ?? []);
  return { front: apart(ends, plan), back: apart([...back, ...ends], plan) };
}

/** Behind the rows of the wall that it runs into: those go on to its faces. */
function atEnd(
  { side, off, other, levels }: Tee,
  own: PlinthRows,
  { env }: Masonry,
  plan: WallPlan,
): OpeningSpec | undefined {
  const { masonry, laid } = wallAlone(other, env);
  const theirs = plinthIn(masonry);
  const rows = theirs?.sides?.back ?? 0;
  if (off || !laid || !theirs || !rows || hasBacking(other, env)) return undefined;
  const { unit, joints } = laid.out.spec;
  const deep = (rows * (unit.length + joints.perpend)) / 2 + plan.spec.joints.perpend;
  const over = theirs.courses >= own.courses ? null : levels.ground + theirs.courses;
  const { length } = plan.spec;
  return side === 'left' ? stop(0, deep, over, plan) : stop(length - deep, length, over, plan);
}

function stop(low: number, high: number, top: number | null, { spec }: WallPlan): OpeningSpec {
  const from = Math.max(0, low);
  return { name: '', from, width: Math.min(spec.length, high) - from, sill: 0, top };
}

/** In order; without those that lie in one another, in an opening or in a pier, which cannot be built so. */
function apart(stops: readonly OpeningSpec[], { spec }: WallPlan): OpeningSpec[] {
  const others: { from: number; width: number }[] = [...spec.openings, ...spec.piers];
  const left: OpeningSpec[] = [];
  for (const each of stops.toSorted((a, b) => a.from - b.from)) {
    const meets = (o: { from: number; width: number }) =>
      o.from < each.from + each.width && each.from < o.from + o.width;
    if (each.width > 0 && ![...others, ...left].some(meets)) left.push(each);
  }
  return left;
}
