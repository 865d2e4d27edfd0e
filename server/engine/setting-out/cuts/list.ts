import { cutLength, patchedIn } from '../count/patch';
import { pierParts } from '../count/pier-parts';
import { coursesOfTurn } from '../count/tally';
import { through } from '../count/through';
import type { LaidRun, Patch, PierPlan, Segment, SettingOut } from '../types';
import type { CutPiece } from './bricks';

/** Like pieces in a line: the first begins `from` mm from the left of the work, the others `by` mm further each. */
export interface Spots {
  readonly from: number;
  readonly by: number;
  readonly count: number;
}

/** Pieces of one sort that are to be cut, in courses laid alike. */
export interface CutPlace {
  readonly piece: CutPiece;
  /** Mm over the face. */
  readonly length: number;
  /** Mm, where it is cut along its height too. */
  readonly high?: number;
  /** The first course (0 is the lowest), and every so many after it to before `to`. */
  readonly from: number;
  readonly to: number;
  readonly every: number;
  /** In each of these courses, those behind one another included. */
  readonly each: number;
  /** In each of these courses. None for a pier, whose plan does not say. */
  readonly at: readonly Spots[];
}

interface Range {
  readonly from: number;
  readonly to: number | null;
}

type Laid = Pick<CutPlace, 'piece' | 'length' | 'each' | 'at'>;

/** How many pieces a place stands for. */
export function piecesAt({ from, to, every, each }: CutPlace): number {
  return each * Math.max(0, Math.ceil((to - from) / every));
}

/** Everything that is to be cut for a wall, its piers left out, from the lowest course. The cost goes with its runs. */
export function cutList(out: SettingOut, range: Range): CutPlace[] {
  const found: CutPlace[] = [];
  for (const { bands, depths } of out.rows)
    for (const band of bands) {
      const from = Math.max(band.from, range.from);
      const to = Math.min(band.to, range.to ?? band.to);
      for (const segment of band.segments) found.push(...cutsInSegment(segment, depths, from, to));
    }
  for (const patch of out.patches ?? []) found.push(...cutsInPatch(patch, out.spec, range));
  return merged(found).sort((a, b) => a.from - b.from || leftOf(a) - leftOf(b));
}

/** Where the rows are opened for a wall that is bonded in. */
function cutsInPatch(patch: Patch, { unit }: SettingOut['spec'], range: Range): CutPlace[] {
  const courses = patchedIn(patch, range);
  if (!courses) return [];
  const cut = patch.pieces.flatMap((piece): Laid[] => {
    if (piece.piece === 'whole') return [];
    const at = [{ from: piece.x, by: 0, count: 1 }];
    return [{ piece: piece.piece, length: cutLength(piece, unit), each: 1, at }];
  });
  const { from, to } = courses;
  return together(cut).map((laid) => ({ ...laid, from, to, every: patch.every }));
}

const leftOf = ({ at }: CutPlace) => at[0]?.from ?? 0;

function cutsInSegment(
  { from: left, runs }: Segment,
  depths: readonly (0 | 1 | 2)[],
  from: number,
  to: number,
): CutPlace[] {
  const cycle = runs.length;
  return [...runs.entries()].flatMap(([turn, run]) => {
    const deep = depths[turn] ?? 0;
    if (deep === 0 || coursesOfTurn(from, to, turn, cycle) < 1) return [];
    const first = firstOfTurn(from, turn, cycle);
    return cutsInRun(run, left, deep).map((laid) => ({ ...laid, from: first, to, every: cycle }));
  });
}

/** The first course from `from` on that is course `turn` of its cycle. */
function firstOfTurn(from: number, turn: number, cycle: number): number {
  return turn + cycle * Math.max(0, Math.ceil((from - turn) / cycle));
}

function cutsInRun(run: LaidRun, left: number, deep: 1 | 2): Laid[] {
  const found: Laid[] = [];
  let x = left + run.from + run.endJoints.left * run.joint;
  for (const { pieces, times } of run.groups) {
    const period = pieces.reduce((sum, p) => sum + p.count * (p.length + run.joint), 0);
    for (const { piece, length, count } of pieces) {
      const behind = through(piece, length, deep);
      const by = length + run.joint;
      if (behind.piece !== 'whole') {
        const at = spots(x, by, count, period, times);
        const each = behind.count * count * times;
        found.push({ piece: behind.piece, length: behind.length ?? length, each, at });
      }
      x += count * by;
    }
    x += (times - 1) * period;
  }
  return together(found);
}

function spots(from: number, by: number, count: number, period: number, times: number): Spots[] {
  if (times === 1) return [{ from, by, count }];
  if (count === 1) return [{ from, by: period, count: times }];
  return Array.from({ length: count }, (_, i) => ({
    from: from + i * by,
    by: period,
    count: times,
  }));
}

/** Lengths nearer than this are one cut, mm. */
const SAME = 0.05;

/** Like pieces of one course as one entry. */
function together(pieces: readonly Laid[]): Laid[] {
  const found: Laid[] = [];
  for (const one of pieces) {
    const like = (p: Laid) => p.piece === one.piece && Math.abs(p.length - one.length) < SAME;
    const at = found.findIndex(like);
    const known = found[at];
    if (!known) found.push(one);
    else found[at] = { ...known, each: known.each + one.each, at: [...known.at, ...one.at] };
  }
  return found;
}

/** Bands and turns laid alike as one entry where one goes on where the other ends. */
function merged(places: readonly CutPlace[]): CutPlace[] {
  const byKey = new Map<string, CutPlace[]>();
  for (const place of places) {
    const { piece, length, each, at } = place;
    const key = `${piece} ${length.toFixed(1)} ${each} ${at.map((s) => `${s.from.toFixed(1)} ${s.by.toFixed(1)} ${s.count}`).join()}`;
    const known = byKey.get(key) ?? byKey.set(key, []).get(key)!;
    const before = known.findIndex((k) => follows(k, place));
    if (before < 0) known.push(place);
    else known[before] = { ...known[before]!, to: place.to };
  }
  return [...byKey.values()].flatMap(asOneTurn);
}

function follows(a: CutPlace, b: CutPlace): boolean {
  const next = a.from + a.every * Math.ceil((a.to - a.from) / a.every);
  return a.every === b.every && b.from === next;
}

/** Every turn of the cycle cut alike: then every course is. */
function asOneTurn(places: readonly CutPlace[]): readonly CutPlace[] {
  const [first] = places;
  if (!first || first.every < 2 || places.length !== first.every) return places;
  const starts = places.map((p) => p.from).sort((a, b) => a - b);
  const even = starts.every((from, i) => from === starts[0]! + i);
  const to = first.to;
  if (!even || places.some((p) => p.to !== to)) return places;
  return [{ ...first, from: starts[0]!, every: 1 }];
}

/** Those of a list whose middles lie from `low` to before `high`, mm along the wall. */
export function cutsWithin(list: readonly CutPlace[], low: number, high: number): CutPlace[] {
  return list.flatMap((place) => {
    const at = place.at.flatMap((spots) => spotsWithin(spots, place.length / 2, low, high));
    const share = countIn(at) / countIn(place.at);
    return at.length ? [{ ...place, at, each: Math.round(place.each * share) }] : [];
  });
}

const countIn = (at: readonly Spots[]) => at.reduce((sum, s) => sum + s.count, 0);

function spotsWithin({ from, by, count }: Spots, half: number, low: number, high: number): Spots[] {
  const before = (x: number) =>
    Math.min(count, Math.max(0, Math.ceil((x - SAME - from - half) / by)));
  const first = before(low);
  const some = before(high) - first;
  return some > 0 ? [{ from: from + first * by, by, count: some }] : [];
}

/** What is to be cut for a pier, by its plans: they say how many, and not where. */
export function cutsInPier(pier: PierPlan, range: Range): CutPlace[] {
  if (pier.above)
    return pierParts(pier, range).flatMap((part) =>
      cutsInPier(part.pier, part.range).map((place) => {
        return { ...place, from: place.from + part.base, to: place.to + part.base };
      }),
    );
  const { plans, courses } = pier;
  const from = Math.max(0, range.from);
  const to = Math.min(courses, range.to ?? courses);
  const cycle = plans.length;
  const found = [...plans.entries()].flatMap(([turn, plan]) => {
    if (coursesOfTurn(from, to, turn, cycle) < 1) return [];
    const first = firstOfTurn(from, turn, cycle);
    return plan.flatMap(({ piece, count, length = 0 }): CutPlace[] =>
      piece === 'whole'
        ? []
        : [{ piece, length, from: first, to, every: cycle, each: count, at: [] }],
    );
  });
  return merged(found);
}
