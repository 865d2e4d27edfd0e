/** Bricks and mortar of what spans the openings of a wall and lies at their feet. */
import {
  NOTHING_COUNTED,
  type Ring,
  ringArea,
  ringBricks,
  type SettingOut,
  type Tally,
} from '../../../setting-out';
import type { HeadArch } from './arch';
import type { Head } from './head';
import type { Lintel } from './lintel';
import { lowPieces, type Splitable } from './low-row';
import type { UprightRow } from './row';
import type { Site, Zone } from './site';

/** Bricks, mm through the wall, of one place of an upright row or a ring. */
function solidThrough(
  { wholes, halves }: UprightRow['across'],
  kind: UprightRow['kind'],
  site: Laying,
) {
  const { unit } = site.spec;
  return kind === 'soldier' ? wholes * unit.width : wholes * unit.length + halves * unit.width;
}

/** A site, how deep its wall is, mm, and how it is laid. */
export interface Laying extends Site {
  readonly deep: number;
  readonly wall: SettingOut;
}

/** Rows are counted by places along the wall; each takes so many bricks through it. Of a head, what it takes of the courses. */
export function rowTally(
  row: UprightRow & { readonly zone?: Zone },
  site: Laying,
  deep = site.deep,
): Tally {
  const { way, across, high, kind } = row;
  const { from, to } = row.zone ?? row;
  const cut = way?.kind === 'cut' ? way : undefined;
  const places = (way?.wholes ?? 0) + (cut?.cuts ?? 0);
  const along = (way?.wholes ?? 0) * site.spec.unit.height + (cut ? cut.cuts * cut.cut : 0);
  return {
    ...NOTHING_COUNTED,
    wholes: places * across.wholes,
    halves: places * across.halves,
    brickVolume: along * high * solidThrough(across, kind, site),
    grossVolume: (to - from) * (high + site.spec.joints.bed) * deep,
  };
}

/** A sill's bricks reach as far through as they are long, also over a wall of half a brick. */
export function sillTally(row: UprightRow, site: Laying): Tally {
  return rowTally(row, site, solidThrough(row.across, row.kind, site));
}

/** Bricks cut along to lie on what is not whole courses high, and the mortar round them. */
export function splitsOver({ coursing, zone }: Splitable, site: Laying): Tally {
  const { over, split, works } = coursing;
  const long = zone.to - zone.from;
  const gross = long * over * site.deep;
  if (works || split <= 0) return { ...NOTHING_COUNTED, grossVolume: gross };
  const pieces = lowPieces({ coursing, zone }, site);
  const solid = pieces.reduce((sum, { along, across }) => sum + along * across, 0);
  return {
    ...NOTHING_COUNTED,
    wholes: pieces.length,
    brickVolume: solid * split,
    grossVolume: gross,
  };
}

/** The bed of a lintel on its bearings. */
export function beddingOf({ from, to, coursing }: Lintel, head: Head, site: Laying): Tally {
  if (coursing.courses === 0) return NOTHING_COUNTED;
  const bears = Math.max(0, to - from - head.opening.spec.width);
  return { ...NOTHING_COUNTED, grossVolume: bears * site.spec.joints.bed * site.deep };
}

/** Bricks on edge that go through a wall, for one place of a ring. */
function archThrough({ spec }: Laying): UprightRow['across'] {
  return { wholes: Math.floor(spec.thickness / 2), halves: spec.thickness % 2 };
}

/** Bricks of an arch, all rings, and its volume, mm³. */
export function archTally({ arch, rings, how }: HeadArch, site: Laying): Tally {
  const { unit } = site.spec;
  const across = archThrough(site);
  const count = rings.reduce((sum, ring) => sum + ring.count, 0);
  const face = rings.reduce(
    (sum, ring: Ring) => sum + ringBricks(ring, arch.lean, unit.height, how),
    0,
  );
  return {
    ...NOTHING_COUNTED,
    wholes: count * across.wholes,
    halves: count * across.halves,
    brickVolume: face * solidThrough(across, 'brick-on-edge', site),
    grossVolume: ringArea(arch) * site.deep,
  };
}
