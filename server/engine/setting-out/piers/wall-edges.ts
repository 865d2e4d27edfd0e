/** Where a wall stops beside a pier that is bonded into it, course by course. */
import { bricksOf } from '../place/face';
import type { Band, PierSpec, Segment, SettingOut, WallSpec } from '../types';
import type { Edges } from './attached-region';
import { quarterOf } from './place';

/** How far the wall stops short of a pier on its left and its right, in quarter bricks: none or half a brick. */
export interface Line {
  readonly left: number;
  readonly right: number;
}

/** Where the wall is told to stop, mm: at a free end of the wall or a reveal the pier’s own side. */
export function lineOf(pier: PierSpec, line: Line, spec: WallSpec, quarter: number) {
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

/**
 * Where the wall stops in each course, as it was set out; nothing where that is no number of quarter bricks, nor where
 * openings or steps make it stop elsewhere in some courses than in others: one plan of the pier is for them all.
 */
export function edgesOf(
  out: SettingOut,
  spec: WallSpec,
  pier: PierSpec,
  line: Line,
): Edges[] | undefined {
  const { base = 0, courses } = pier;
  const bands = out.bands.filter((b) => b.from < base + courses && b.to > base);
  const [first, ...others] = bands.map((band) => edgesIn(band, spec, pier, line));
  return first && others.every((each) => each && stopsAlike(first, each)) ? first : undefined;
}

function stopsAlike(a: readonly Edges[], b: readonly Edges[]): boolean {
  return a.every(({ left, right }, i) => b[i]?.left === left && b[i]?.right === right);
}

function edgesIn(band: Band, spec: WallSpec, pier: PierSpec, line: Line): Edges[] | undefined {
  const joint = spec.joints.perpend;
  const quarter = quarterOf(spec.unit, joint);
  const at = lineOf(pier, line, spec, quarter);
  const left = band.segments.find((s) => Math.abs(s.to - at.left) < MEETS);
  const right = band.segments.find((s) => Math.abs(s.from - at.right) < MEETS);
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
