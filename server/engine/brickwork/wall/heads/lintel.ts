/** A lintel over an opening: where it lies, and what courses it takes the place of. */
import type { LineFacts } from '../../../resolve/env';
import type { OpeningFacts } from '../openings';
import { type Bearing, bearingOf } from './bearing';
import { type Coursing, coursing, MOST_COURSES, type Site, type Zone } from './site';

export interface Lintel {
  readonly line: LineFacts;
  readonly bearing: Bearing;
  /** Mm along the wall. */
  readonly from: number;
  readonly to: number;
  /** Mm; nought for an angle, whose leg lies in a bed joint. */
  readonly high: number;
  /** How many lie side by side through the wall. */
  readonly across: number;
  readonly coursing: Coursing;
  readonly zone: Zone;
}

const IN_THE_BED: Coursing = { courses: 0, over: 0, works: true, split: 0 };

/** Nothing where there is no line for it, or its size makes no sense. The opening ends below the wall's top. */
export function lintelOf(opening: OpeningFacts, site: Site): Lintel | undefined {
  const { facts, spec } = opening;
  const line = facts.line('lintel');
  const sides = line?.sides('size');
  const angle = line?.word('kind') === 'angle';
  if (!line || spec.top === null || (!angle && !sides?.every((side) => side > 0))) return undefined;
  const [wide = 0, high = 0, long] = sides ?? [];
  if (high > MOST_COURSES * site.gauge) return undefined;
  const bearing = bearingOf(opening, long);
  const from = spec.from - bearing.mm;
  const to = spec.from + spec.width + bearing.mm;
  const laid = angle ? IN_THE_BED : coursing(high, site);
  return {
    line,
    bearing,
    from,
    to,
    high,
    across: angle ? site.spec.thickness : acrossOf(wide, site),
    coursing: laid,
    zone: { from, to, low: spec.top, high: spec.top + laid.courses },
  };
}

/** As many side by side as go into the wall, a joint between each two; at least one. */
function acrossOf(wide: number, { spec }: Site): number {
  const { unit, joints, thickness } = spec;
  const half = (unit.length + joints.perpend) / 2;
  return Math.max(1, Math.floor((thickness * half) / (wide + joints.perpend) + 1e-6));
}
