/** What is to be cut for a wall, its piers and its copings, course by course. */
import { type CutPlace, cutsInPier } from '../../setting-out';
import { type CutPart, cutPart } from '../cuts/sheet';
import type { Masonry } from '../masonry';
import type { WallCounts } from './counts';
import type { Part } from './parts/part';
import type { WallPlan } from './spec';
import { cutsInZones, type Zone, zonesOf } from './zones';

export function wallCuts(
  masonry: Masonry,
  plan: WallPlan,
  counts: WallCounts,
  parts: readonly Part[],
): readonly CutPart[] {
  const { laid: out, wall, piers, dpc, bands } = counts;
  const zones = zonesOf(masonry, plan);
  const own = masonry.brick.title;
  // A band is a part too, and is told with its courses.
  const listed = new Set(bands.map((b) => b.counted));
  const inAll = (some: readonly Zone[]) => [
    ...cutsInZones(out, some, plan),
    ...inPiers(some, plan),
  ];
  return [
    ...cutPart(own, wall, cutsInZones(out, zones.own, plan)),
    ...(piers ? cutPart(own, piers, inPiers(zones.own, plan)) : []),
    ...(dpc ? cutPart(dpc.brick.title, dpc.counted, inAll(zones.damp)) : []),
    ...bands.flatMap(({ line, brick, counted }) => {
      const found = zones.bands.find((b) => b.line === line || b.line.line === line.line);
      return cutPart(brick.title, counted, inAll(found?.zones ?? []));
    }),
    ...parts
      .flatMap((p) => p.bricks ?? [])
      .filter((b) => !listed.has(b.counted))
      .flatMap((b) => cutPart(b.brick.title, b.counted, b.places?.())),
  ];
}

function inPiers(zones: readonly Zone[], plan: WallPlan): CutPlace[] {
  return plan.piers.flatMap(({ spec }) => {
    const middle = spec.from + spec.width / 2;
    const base = spec.base ?? 0;
    const own = zones.filter(({ from, to }) => middle >= from && middle < to);
    return own.flatMap(({ courses: { from, to } }) => {
      const range = { from: from - base, to: to === null ? null : to - base };
      return cutsInPier(spec, range).map((place) => {
        return { ...place, from: place.from + base, to: place.to + base };
      });
    });
  });
}
