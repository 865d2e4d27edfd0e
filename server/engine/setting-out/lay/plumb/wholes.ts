import type { Segment, WallSpec } from '../../types';
import { type Clear, clearBetween, wholeCourses } from '../bands';
import { decidedFor, layAlone, type Site } from '../site';

/**
 * The wall as if it had no openings: stretches between what interrupts it from the ground to its top, each laid when
 * first asked for. What somebody has decided otherwise is cut off from none.
 */
export function wholesOf(site: Site): (now: Clear) => Segment | null {
  const top = wholeCourses(site.spec);
  const through = site.fixed.filter((f) => !f.opening && f.sill <= 0 && f.top >= top);
  const clear = clearBetween(site.spec, through);
  const laid = new Map<Clear, Segment>();
  return (now) => {
    const around = clear.find(({ from, to }) => from <= now.from && to >= now.to);
    if (!around || isDecided(site.spec, now)) return null;
    const known = laid.get(around) ?? layAlone(site, around);
    laid.set(around, known);
    return known;
  };
}

/** A cut that may lie anywhere is no decision against the reveals. */
function isDecided(spec: WallSpec, now: Clear): boolean {
  const decided = decidedFor(spec, now);
  if (!decided) return false;
  const { least, most } = decided.limits;
  return !!decided.cutAt || least !== spec.limits.least || most !== spec.limits.most;
}
