/** Where so little is left beside a lintel, a row or an arch that no brick can be cut to it. */
import { archGaps } from '../../../setting-out';
import type { Head } from './head';
import type { Obstacle } from './placed';
import type { Site, Zone } from './site';

/** What a head nearly reaches, and the masonry between, mm. */
export interface Near {
  readonly other: Obstacle;
  readonly side: 'left' | 'right';
  readonly left: number;
  /** The least that a cut brick and its joints take up there. */
  readonly needs: number;
  /** What one joint takes up, where the two may stand against one another. */
  readonly joint: number;
}

const TOUCH = 1e-6;

/** Course by course for an arch, which is as wide as its courses are. */
function zonesIn({ lintel, row, arch }: Head): Zone[] {
  const square = [lintel?.zone, row?.zone].filter((zone) => zone !== undefined);
  if (!arch) return square;
  const rings = archGaps(arch.courses, arch.at);
  return [...square, ...rings.map((g) => ({ ...g, low: g.course, high: g.course + 1 }))];
}

const beside = (a: Zone, b: Zone) => a.low < b.high && b.low < a.high;

/** Joints that a piece between has: an opening and the end of a wall have none. */
const jointsOf = ({ against }: Obstacle) => (against === 'air' ? 1 : 2);

function nearOn(zone: Zone, other: Obstacle, { spec, joints }: Site): Near | undefined {
  if (!beside(zone, other.zone)) return undefined;
  const onRight = other.zone.from - zone.to;
  const onLeft = zone.from - other.zone.to;
  const [side, left] =
    onRight > onLeft ? (['right', onRight] as const) : (['left', onLeft] as const);
  const { perpend: joint } = spec.joints;
  const needs = spec.limits.leastCut + jointsOf(other) * joint;
  const closed = other.against === 'air' ? TOUCH : joints.most + TOUCH;
  return left > closed && left < needs - TOUCH ? { other, side, left, needs, joint } : undefined;
}

/** The narrowest of those that are too narrow. */
export function nearest(head: Head, others: readonly Obstacle[], site: Site): Near | undefined {
  const { arch } = head;
  const reach = site.spec.limits.leastCut + 2 * site.spec.joints.perpend;
  const close = (zone: Zone) =>
    !arch || (zone.from < arch.zone.to + reach && zone.to > arch.zone.from - reach);
  const zones = zonesIn(head);
  const found = others
    .filter(({ zone }) => close(zone))
    .flatMap((other) => zones.flatMap((zone) => nearOn(zone, other, site) ?? []));
  return found.sort((a, b) => a.left - b.left)[0];
}
