/**
 * Attached piers in the wall they stand in. The wall is set out toothed on both sides of each, its line a half brick
 * further off or not, and of all these ways the one is taken whose courses take least cutting.
 */
import { bricksOf } from '../place/face';
import type { PierSpec, Segment, SettingOut, WallSpec } from '../types';
import { type AttachedLaid, attachedPlans } from './attached';
import type { AttachedShape, Edges } from './attached-region';
import { quarterOf } from './place';

/** A pier that stands out of its wall. */
export interface AttachedPier {
  /** Which of the wall’s piers. */
  readonly index: number;
  readonly shape: AttachedShape;
}

/** How far the wall stops short of a pier on its left and its right, in quarter bricks: none or half a brick. */
interface Line {
  readonly left: number;
  readonly right: number;
}

const LINES: readonly Line[] = [
  { left: 2, right: 2 },
  { left: 0, right: 0 },
  { left: 2, right: 0 },
  { left: 0, right: 2 },
];

/** Half bricks: in thicker walls each row stops elsewhere, and no plan is looked for. */
export const MOST_THICK = 2;

export interface AttachedOut {
  /** The wall’s lines beside each pier, to set it out with. */
  readonly spec: WallSpec;
  /** By the pier’s place among the wall’s; nothing for one that no course plan bonds. */
  readonly laid: ReadonlyMap<number, AttachedLaid>;
}

/** Chooses the lines of the wall at its attached piers. `lay` sets a wall out. */
export function attachPiers(
  spec: WallSpec,
  piers: readonly AttachedPier[],
  lay: (spec: WallSpec) => SettingOut,
): AttachedOut {
  const best = new Map<number, Way>();
  const asked = new Set<string>();
  if (spec.thickness > MOST_THICK) return { spec, laid: new Map() };
  for (const line of LINES) {
    const open = piers.filter(({ index }) => !isGood(best.get(index)));
    if (!open.length) break;
    const out = lay(withLines(spec, new Map(open.map((p) => [p.index, line]))));
    for (const pier of open) keepBetter(best, pier.index, wayOf(out, spec, pier, { line, asked }));
  }
  const lines = new Map([...best].map(([index, way]) => [index, way.line]));
  return { spec: withLines(spec, lines), laid: laidIn(best) };
}

interface Way {
  readonly line: Line;
  readonly laid: AttachedLaid;
}

/** So little cutting to a course that no other line is looked at: a three-quarter bat and a half. */
const GOOD = 7;

function isGood(way: Way | undefined): boolean {
  return way !== undefined && way.laid.cost <= GOOD * way.laid.courses.length;
}

function keepBetter(best: Map<number, Way>, index: number, way: Way | undefined): void {
  const known = best.get(index);
  if (way && (!known || way.laid.cost < known.laid.cost)) best.set(index, way);
}

function laidIn(best: ReadonlyMap<number, Way>): Map<number, AttachedLaid> {
  return new Map([...best].map(([index, way]) => [index, way.laid]));
}

/** The wall’s piers as its own bond sees them: those that stand out of it toothed, at the lines told. */
function withLines(spec: WallSpec, lines: ReadonlyMap<number, Line>): WallSpec {
  const quarter = quarterOf(spec.unit, spec.joints.perpend);
  const piers = spec.piers.map((pier, i) => {
    const line = lines.get(i);
    return line ? atLine(pier, line, spec, quarter) : pier;
  });
  return { ...spec, piers };
}

function atLine(pier: PierSpec, line: Line, spec: WallSpec, quarter: number): PierSpec {
  const { left, right } = lineOf(pier, line, spec, quarter);
  return { ...pier, from: left, width: right - left, joins: 'toothed' };
}

/** Where the wall is told to stop, mm: at a free end of the wall or a reveal the pier’s own side. */
function lineOf(pier: PierSpec, line: Line, spec: WallSpec, quarter: number) {
  const to = pier.from + pier.width;
  const left = hasWall(spec, pier.from, -1) ? pier.from - line.left * quarter : pier.from;
  const right = hasWall(spec, to, 1) ? to + line.right * quarter : to;
  return { left: Math.max(0, left), right: Math.min(spec.length, right) };
}

/** Sides nearer than this meet, mm. */
const MEETS = 1;

/** Whether there is wall beside a pier’s side: `way` is -1 to its left, 1 to its right. */
function hasWall(spec: WallSpec, side: number, way: -1 | 1): boolean {
  const end = way < 0 ? 0 : spec.length;
  if (Math.abs(side - end) < MEETS) return false;
  return !spec.openings.some((o) => {
    const reveal = way < 0 ? o.from + o.width : o.from;
    return Math.abs(reveal - side) < MEETS;
  });
}

function wayOf(
  out: SettingOut,
  spec: WallSpec,
  { index, shape }: AttachedPier,
  { line, asked }: { readonly line: Line; readonly asked: Set<string> },
): Way | undefined {
  const pier = spec.piers[index]!;
  const edges = edgesOf(out, spec, pier, line);
  const { unit, joints } = spec;
  const laid = edges && attachedPlans({ shape, edges, unit, joint: joints.perpend, asked });
  return laid && { line, laid };
}

/** Where the wall stops in each course, as it was set out; nothing where that is no number of quarter bricks. */
function edgesOf(out: SettingOut, spec: WallSpec, pier: PierSpec, line: Line): Edges[] | undefined {
  const joint = spec.joints.perpend;
  const quarter = quarterOf(spec.unit, joint);
  const at = lineOf(pier, line, spec, quarter);
  const band = out.bands.find((b) => b.from <= (pier.base ?? 0) && b.to > (pier.base ?? 0));
  const left = band?.segments.find((s) => Math.abs(s.to - at.left) < MEETS);
  const right = band?.segments.find((s) => Math.abs(s.from - at.right) < MEETS);
  const wanted = { left: hasWall(spec, pier.from, -1), right: hasWall(spec, sideOf(pier), 1) };
  if (wanted.left !== !!left || wanted.right !== !!right) return undefined;
  const cycle = left?.runs.length ?? right?.runs.length ?? 0;
  const inQuarters = (mm: number) => (mm - pier.from) / quarter;
  const edges = [...Array(cycle).keys()].map((turn) => {
    const before = left && jointsOf(left, turn, joint, [at.left - NEAR * quarter, at.right]);
    const after = right && jointsOf(right, turn, joint, [at.left, at.right + NEAR * quarter]);
    return {
      left: before && inQuarters(Math.max(...before)),
      right: after && inQuarters(Math.min(...after)),
      joints: [...(before ?? []), ...(after ?? [])].map(inQuarters),
    };
  });
  return onGrid(edges);
}

const sideOf = ({ from, width }: PierSpec) => from + width;

/** So far beside a pier its wall’s joints are looked at, in quarter bricks. */
const NEAR = 8;

/** Where a course of a stretch has its joints, mm along the wall, those at its toothed ends with them. */
function jointsOf(
  segment: Segment,
  turn: number,
  joint: number,
  [low, high]: readonly [number, number],
): number[] {
  const { from: start, length } = segment.runs[turn]!;
  const from = segment.from + start;
  const ends = [
    ...(segment.left === 'toothed' ? [from + joint] : []),
    ...(segment.right === 'toothed' ? [from + length] : []),
  ];
  const pieces = [...bricksOf(segment, turn, low, high)].map((piece) => piece.from);
  return [...pieces.filter((x) => x > from + joint + MEETS), ...ends];
}

/** As far from a quarter brick as is lost in the joints, in quarters. */
const OFF = 0.2;

function onGrid(edges: readonly Edges[]): Edges[] | undefined {
  const whole = edges.map(({ left, right, joints = [] }) => ({
    left: left === undefined ? undefined : Math.round(left) + 0,
    right: right === undefined ? undefined : Math.round(right) + 0,
    joints: joints.map((x) => Math.round(x) + 0).sort((a, b) => a - b),
  }));
  const off = (a: number | undefined, b: number | undefined) => Math.abs((a ?? 0) - (b ?? 0)) > OFF;
  const bad = edges.some((e, i) => off(e.left, whole[i]!.left) || off(e.right, whole[i]!.right));
  return bad || !edges.length ? undefined : whole;
}
