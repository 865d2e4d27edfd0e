/** More of a wall built again than stands anywhere in it clear of its openings: what lies in them is counted as brick. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { isWhole } from '../../brickwork/repair/as-it-stands';
import { extentOf } from '../../brickwork/repair/extent';
import type { Site } from '../../brickwork/repair/site';
import type { OpeningSpec, WallSpec } from '../../setting-out';
import type { Remark } from '../remark';

/** Every place is held against every opening, and the work grows with the cube: of more it is told unasked. */
const MOST_COMPARED = 40;

export function rebuildOpenings(site: Site): Remark | undefined {
  const line = site.facts.line('rebuild');
  const { withOpenings: wall, called, env } = site;
  if (!line || !wall || line.values.bricks) return undefined;
  const extent = extentOf(line, site);
  const length = extent.length?.value.toNumber() ?? 0;
  const courses = Math.min(extent.courses?.value.toNumber() ?? 0, wall.courses);
  if (!length || !courses || length > wall.length || isWhole(extent, site)) return undefined;
  if (fitsClear(length, courses, wall)) return undefined;
  const message = phrase`${lengthText(env, length)} by ${courses} courses of ${called} is more than stands anywhere clear of its openings, and no line says where along it that is. It is counted as brick all through: write the parts beside the openings, each as a repair of its own, or how many bricks come down.`;
  return { code: 'rebuild-openings', severity: 'information', origin: line.origin, message };
}

/** Somewhere in the wall so much brick stands with no opening in it. */
function fitsClear(length: number, courses: number, { openings, ...wall }: WallSpec): boolean {
  if (openings.length > MOST_COMPARED) return false;
  const lefts = [0, ...openings.map((o) => o.from + o.width)];
  const lows = [0, ...openings.flatMap(({ top }) => (top === null ? [] : [top]))];
  return lefts.some(
    (x) =>
      x + length <= wall.length &&
      lows.some(
        (y) => y + courses <= wall.courses && !openings.some((o) => cuts(o, x, y, length, courses)),
      ),
  );
}

function cuts(o: OpeningSpec, x: number, y: number, length: number, courses: number): boolean {
  const across = o.from < x + length && x < o.from + o.width;
  return across && o.sill < y + courses && (o.top === null || y < o.top);
}
