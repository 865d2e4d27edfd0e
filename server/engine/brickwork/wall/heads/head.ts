/** What spans each opening of a wall, and what of the wall's courses it takes. */
import type { Remark } from '../../../findings/remark';
import type { LineFacts } from '../../../resolve/env';
import { archGaps, type Gap, type LengthWay } from '../../../setting-out';
import type { Masonry } from '../../masonry';
import type { OpeningFacts } from '../openings';
import { archIn, archSaid, type HeadArch } from './arch';
import { type Lintel, lintelOf } from './lintel';
import { movedBearing, movedWidth } from './moved';
import { placed } from './placed';
import { headRemarks } from './remarks';
import { acrossRow, rowOf, type Upright, type UprightRow } from './row';
import {
  type Coursing,
  coursing,
  MOST_COURSES,
  type Site,
  siteOf,
  type WallSoFar,
  type Zone,
} from './site';

/** Soldiers or bricks on edge over an opening, and the courses they take. */
export interface HeadRow extends UprightRow {
  readonly coursing: Coursing;
  readonly zone: Zone;
}

export interface Head {
  readonly opening: OpeningFacts;
  readonly lintel?: Lintel;
  readonly row?: HeadRow;
  readonly arch?: HeadArch;
  readonly subsill?: UprightRow;
  /** Courses that it would take over an opening that runs to the top. */
  readonly takes?: number;
  /** The line of a lintel or an arch larger than any that is laid. */
  readonly large?: LineFacts;
}

/** Heads that have room, with what there is to say of all of them. */
export function headsOf(masonry: Masonry, wall: WallSoFar, remarks: Remark[]): Head[] {
  const site = siteOf(masonry, wall);
  const heads = wall.openings.map((opening) => headOf(opening, site));
  const kept = placed(heads, site, remarks);
  remarks.push(...kept.flatMap((head) => headRemarks(head, site)));
  return kept.filter(({ lintel, row, arch, subsill }) => lintel ?? row ?? arch ?? subsill);
}

function headOf(opening: OpeningFacts, site: Site): Head {
  if (opening.spec.top === null) return toTheTop(opening, site);
  const arch = archIn(opening, site);
  const lintel = arch ? undefined : lintelOf(opening, site);
  const row = rowOver(opening, lintel, site);
  const subsill = sillOf(opening, site);
  return { opening, arch, lintel, row, subsill, large: largeIn(opening, site) };
}

/** Nothing can span it; what would is found as if it ended somewhere. */
function toTheTop(opening: OpeningFacts, site: Site): Head {
  const { facts, spec } = opening;
  const top = spec.sill + 1;
  const { lintel, row, arch } = headOf({ facts, spec: { ...spec, top } }, site);
  const highs = [lintel, row, arch].flatMap((each) => (each ? [each.zone.high] : []));
  const takes = highs.length ? Math.max(...highs) - top : undefined;
  return { opening, subsill: sillOf(opening, site), takes };
}

/** What cannot be laid for its size alone. */
function largeIn(opening: OpeningFacts, site: Site): LineFacts | undefined {
  const arch = archSaid(opening);
  const lintel = opening.facts.line('lintel');
  if (opening.spec.top === null) return undefined;
  if (arch?.rise !== undefined && arch.rise > 0 && arch.rise <= opening.spec.width / 2)
    return archIn(opening, site) ? undefined : arch.line;
  const high = lintel?.sides('size')?.[1] ?? 0;
  return !arch && high > MOST_COURSES * site.gauge ? lintel : undefined;
}

/** As long as the lintel under it, else as wide as the opening. */
function rowOver(
  opening: OpeningFacts,
  lintel: Lintel | undefined,
  site: Site,
): HeadRow | undefined {
  const { facts, spec } = opening;
  const line = facts.line('head');
  const kind = line?.word('kind') as Upright | undefined;
  if (!line || spec.top === null || (kind !== 'soldier' && kind !== 'brick-on-edge'))
    return undefined;
  const { from, to } = lintel ?? { from: spec.from, to: spec.from + spec.width };
  const across = acrossRow(kind, site.spec.thickness);
  const move = (way: LengthWay) =>
    lintel ? movedBearing(opening, lintel, way) : movedWidth(opening, way);
  const endJoints = lintel ? 0 : 2;
  const asked = { name: 'head', line, kind, from, to, across, move, endJoints } as const;
  const row = rowOf(asked, opening, site);
  const low = lintel?.zone.high ?? spec.top;
  const laid = coursing(row.high, site);
  // Between reveals the courses end at them: what is beside it keeps no second joint of its own.
  const inset = lintel ? 0 : Math.min(site.spec.joints.perpend, (to - from) / 2);
  const zone = { from: from + inset, to: to - inset, low, high: low + laid.courses };
  return { ...row, coursing: laid, zone };
}

/** A brick on edge of a sill reaches over the whole of a wall up to a brick thick, as a coping does. */
function sillOf(opening: OpeningFacts, site: Site): UprightRow | undefined {
  const { facts, spec } = opening;
  const line = facts.line('subsill');
  if (line?.word('kind') !== 'brick-on-edge') return undefined;
  const across = acrossRow('brick-on-edge', Math.max(2, site.spec.thickness));
  const { from, width } = spec;
  const move = (way: LengthWay) => movedWidth(opening, way);
  const asked = { name: 'subsill', line, kind: 'brick-on-edge', across, move } as const;
  return rowOf({ ...asked, from, to: from + width, endJoints: 2 }, opening, site);
}

/** All that is let into the courses of the wall. */
export function gapsOf(heads: readonly Head[]): Gap[] {
  return heads.flatMap(({ lintel, row, arch }) => [
    ...[lintel?.zone, row?.zone].flatMap((zone) => (zone ? coursesOf(zone) : [])),
    ...(arch ? archGaps(arch.courses, arch.at) : []),
  ]);
}

function coursesOf({ from, to, low, high }: Zone): Gap[] {
  return Array.from({ length: high - low }, (_, i) => ({
    course: low + i,
    from,
    to,
    upright: true,
  }));
}
