/** Why no way was found to bond a wall into a thick one, as far as it can be told from where it is put. */
import { later, phrase, spoken } from '../../../../../shared/phrase';
import { placeCourse } from '../../../setting-out';
import type { LaidAlone } from './alone';
import type { Tee } from './tees';

/** Bricks between it and what may be too near. */
const NEAR = 2;
/** Mm that it may be off a quarter brick. */
const OFF = 0.5;

const WHAT = later`No way was found to lay the bricks of that wall round it so that they lap`;

/** In sentences. */
export function noWay(tee: Tee, { out }: LaidAlone): string {
  if (!isOnQuarter(tee))
    return phrase`${spoken(WHAT)}: its side is not on a quarter brick of the bond there.`;
  const near = whatIsNear(tee, out.thickness);
  return near ? phrase`${spoken(WHAT)}: ${near} is near.` : `${spoken(WHAT)}.`;
}

/** Bricks there begin so many quarter bricks from its side, in the lowest course that it stands against. */
function isOnQuarter({ distance, levels, with: { out } }: Tee): boolean {
  const brick = out.spec.unit.length + out.spec.joints.perpend;
  const quarter = brick / 4;
  const front = placeCourse(out, levels.courses.from, distance - brick, distance + brick);
  return front.some(({ x }) => {
    const off = (((distance - x) % quarter) + quarter) % quarter;
    return Math.min(off, quarter - off) < OFF;
  });
}

function whatIsNear({ distance, with: { out, plan } }: Tee, thickness: number): string | undefined {
  const { unit, joints, length, openings } = out.spec;
  const reach = NEAR * (unit.length + joints.perpend);
  const [low, high] = [distance - reach, distance + thickness + reach];
  const opening = openings.find((o) => o.from < high && o.from + o.width > low);
  if (opening) return phrase`the opening ${opening.name}`;
  if (plan.movement.some((j) => j.from < high && j.from + j.width > low))
    return phrase`a movement joint`;
  if (low < 0 || high > length) return phrase`an end of it`;
  return undefined;
}
