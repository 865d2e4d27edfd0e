/** The rows of stretchers of a plinth, as they go round the corners of their wall or stop in them. */
import {
  backInPlace,
  begunWith,
  type EndKind,
  type GivingWay,
  layCorners,
  runOn,
  type SettingOut,
  type Side,
  setOut,
  type Tally,
  tally,
} from '../../../setting-out';
import type { ProjectingRow } from '../../faces';
import type { Masonry } from '../../masonry';
import type { WallCounts } from '../counts';
import { wallAlone } from '../meet/alone';
import type { Quoin } from '../meet/quoins';
import { areasIn } from '../piers/projecting';
import type { WallPlan } from '../spec';
import { tallyZones, type Zone } from '../zones';
import { type Face, type PlinthRows, plainRow, plinthIn, plinthZones } from './plinth-rows';
import { plinthStops } from './plinth-stops';

/** Farther than any plinth goes on past the end of its wall, mm. */
const FAR = 1e4;

/** All of it. Where no wall meets it, or its rows do not lie whole before the faces, each is as long as the wall. */
export function plinthTallies(
  plinth: PlinthRows,
  plan: WallPlan,
  turned: readonly TurnedRow[],
): Tally[] {
  const { rows, courses } = plinth;
  if (turned.length) return turned.flatMap(({ laid, zones }) => tallyZones(laid, zones, plan));
  const plain = tallyZones(plainRow(plan), plinthZones(courses, plan), plan);
  return Array<Tally[]>(rows).fill(plain).flat();
}

/** A row as it goes round the corners of its wall, in the courses of its zones. */
export interface TurnedRow extends ProjectingRow {
  readonly zones: readonly Zone[];
}

/** None where no wall meets it, or its rows do not lie whole before the faces. */
export function turnedRows(
  own: PlinthRows,
  masonry: Masonry,
  plan: WallPlan,
  meeting: Pick<WallCounts, 'quoins' | 'arms' | 'tees'>,
): TurnedRow[] {
  const { sides, courses } = own;
  const { quoins } = meeting;
  if (!sides) return [];
  const stops = plinthStops(own, masonry, plan, meeting);
  if (quoins.length + stops.front.length + stops.back.length === 0) return [];
  const zones = plinthZones(courses, plan);
  const meets = quoins.map((quoin) => meetingOf(quoin, own, masonry));
  return (['front', 'back'] as const).flatMap((face) => {
    const plain = plainRow(plan, stops[face]);
    const areas = stops[face].length ? { areas: areasIn(plain, zones) } : {};
    return Array.from({ length: sides[face] }, (_, i) => i + 1).flatMap((row) =>
      layersOf(meets).flatMap((layer) => {
        const here = inLayer(zones, layer, plan);
        if (!here.length) return [];
        const laid = turnedRow(plain, meets, { face, row }, layer.from);
        return [{ face, row, zones: here, ...areas, ...laid }];
      }),
    );
  });
}

interface Meeting {
  readonly quoin: Quoin;
  readonly inside: boolean;
  readonly theirs: PlinthRows | undefined;
  /** The first course over the lower plinth of the two: there the other one ends, or this one does. */
  readonly over: number;
}

function meetingOf(quoin: Quoin, own: PlinthRows, { env, facts }: Masonry): Meeting {
  const theirs = plinthIn(wallAlone(quoin.other, env).masonry);
  const inside = facts.line(quoin.side)?.word('faces') === 'inside';
  const over = quoin.ground + Math.min(own.courses, theirs?.courses ?? 0);
  return { quoin, inside, theirs, over };
}

interface Layer {
  readonly from: number;
  readonly to: number;
}

/** Courses through which the same walls have a plinth at the corners. */
function layersOf(meets: readonly Meeting[]): Layer[] {
  const levels = [...new Set([0, ...meets.map((m) => m.over)])].sort((a, b) => a - b);
  return levels.map((from, i) => ({ from, to: levels[i + 1] ?? Number.POSITIVE_INFINITY }));
}

/** What lies in a layer, the ends left open for what goes on past them. */
function inLayer(zones: ReturnType<typeof plinthZones>, layer: Layer, { spec }: WallPlan): Zone[] {
  return zones.flatMap(({ from, to, courses }) => {
    const low = Math.max(courses.from, layer.from);
    const high = Math.min(courses.to, layer.to);
    if (!(high > low)) return [];
    const left = from <= 0 ? -FAR : from;
    const right = to >= spec.length ? to + FAR : to;
    return [{ from: left, to: right, courses: { from: low, to: high } }];
  });
}

interface Row {
  readonly face: Face;
  /** 1 against the wall. */
  readonly row: number;
}

interface RowEnd {
  /** Mm that it stops short of the end of the wall; negative where it goes on past it. */
  readonly inset: number;
  readonly end: EndKind;
  readonly way?: GivingWay;
}

function turnedRow(plain: SettingOut, meets: readonly Meeting[], row: Row, course: number) {
  const on: Partial<Record<Side, { by: number; end: EndKind }>> = {};
  const ways: Partial<Record<Side, GivingWay>> = {};
  for (const meeting of meets) {
    const at = rowEnd(plain, meeting, row, course);
    on[meeting.quoin.side] = { by: 0 - at.inset, end: at.end };
    if (at.way) ways[meeting.quoin.side] = at.way;
  }
  const whole = setOut(runOn(plain.spec, on));
  const begun = ([0, 1] as const).map((course) => layCorners(begunWith(whole, course), ways));
  const past = { left: on.left?.by ?? 0, right: on.right?.by ?? 0 };
  return { laid: backInPlace(leastCut(begun), plain.spec, on), past };
}

/** Begun with the course that leaves the fewest halves and cuts at the corners. */
function leastCut(tries: readonly SettingOut[]): SettingOut {
  const pieces = tries.map((out) => {
    const { halves, cuts } = tally(out);
    return { out, cut: cuts.reduce((sum, { count }) => sum + count, halves) };
  });
  return pieces.reduce((a, b) => (b.cut < a.cut ? b : a)).out;
}

/** Rows of two plinths meet like walls half a brick thick, each with the one as far from its wall. */
function rowEnd(plain: SettingOut, meeting: Meeting, { face, row }: Row, course: number): RowEnd {
  const { quoin, inside, over } = meeting;
  const { spec, out } = quoin.with;
  const pitch = (spec.unit.length + spec.joints.perpend) / 2;
  const theirs = course < over ? rowsThere(meeting, face) : 0;
  const outer = (face === 'front') !== inside;
  const beyond = outer ? 0 - pitch * Math.min(row, theirs) : out.thickness + pitch * theirs;
  if (row > theirs) return { inset: beyond, end: outer ? 'stopped' : 'butted' };
  const wide = spec.unit.width;
  const inset = outer ? beyond : out.thickness + pitch * row - wide;
  if (quoin.way) return { inset, end: 'stopped', way: wayOf(plain, quoin, wide) };
  return quoin.comesIn ? { inset: inset + wide, end: 'butted' } : { inset, end: 'stopped' };
}

/** Of the other plinth, those that lie on the same side of the corner. */
function rowsThere({ quoin: { side, otherSide }, theirs }: Meeting, face: Face): number {
  const facing = face === 'front' ? 'back' : 'front';
  // Fronts are on the same side of a corner where a right end meets a left one.
  return theirs?.sides?.[side === otherSide ? facing : face] ?? 0;
}

/** They run through in the courses in which their wall does. */
function wayOf({ spec }: SettingOut, { ground, way }: Quoin, by: number): GivingWay {
  return { parity: way!.parity, by, courses: [{ from: ground, to: spec.courses }] };
}
