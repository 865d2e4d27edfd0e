import type {
  Decided,
  EndKind,
  LaidRun,
  PieceGroup,
  PoorLap,
  Segment,
  WallRow,
  WallSpec,
} from '../types';
import { carried } from './carried';

/** Which end a wall is rather set out from: a free one, then one that butts, then one that is toothed. */
const ORDER: Readonly<Record<EndKind, number>> = { stopped: 0, butted: 1, toothed: 2 };
/** Places nearer than this are one place, mm. */
const SAME = 1e-6;

interface Extent {
  readonly from: number;
  readonly width: number;
}

/** Everything that interrupts a wall, by how far from its left end it begins and how wide it is. */
function interruptions(spec: WallSpec): Extent[] {
  const steps = (spec.steps ?? []).map(({ from, to }) => ({ from, width: to - from }));
  return [...spec.openings, ...spec.piers, ...(spec.movement ?? []), ...steps];
}

/** How far from one end each begins and stops, the nearest first. */
function seenFrom(side: 'left' | 'right', all: readonly Extent[], length: number): number[] {
  const near = ({ from, width }: Extent) => (side === 'left' ? from : length - from - width);
  const seen = all.map((each) => [near(each), near(each) + each.width] as const);
  return seen.sort((a, b) => a[0] - b[0] || a[1] - b[1]).flat();
}

/** How far from either end the first of them begins: in most walls that tells. */
function nearestOf(all: readonly Extent[], length: number): { left: number; right: number } {
  let [left, right] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const { from, width } of all) {
    left = Math.min(left, from);
    right = Math.min(right, length - from - width);
  }
  return { left, right };
}

/**
 * Whether a wall is set out from its right end: from a free end before another, else from the end with the
 * longer clear stretch beside it, else from the left. So a wall and its mirror image are laid alike.
 */
export function fromTheRight(spec: WallSpec): boolean {
  const ends = ORDER[spec.left] - ORDER[spec.right];
  if (ends !== 0) return ends > 0;
  const all = interruptions(spec);
  const nearest = nearestOf(all, spec.length);
  if (Math.abs(nearest.left - nearest.right) > SAME) return nearest.right > nearest.left;
  const left = seenFrom('left', all, spec.length);
  const right = seenFrom('right', all, spec.length);
  const at = left.findIndex((near, i) => Math.abs(near - right[i]!) > SAME);
  return at >= 0 && right[at]! > left[at]!;
}

/** The same wall seen from behind. */
export function mirrorSpec(spec: WallSpec): WallSpec {
  const over = <T extends Extent>(each: T): T => ({
    ...each,
    from: spec.length - each.from - each.width,
  });
  const between = <T extends { from: number; to: number }>(each: T): T => ({
    ...each,
    from: spec.length - each.to,
    to: spec.length - each.from,
  });
  return {
    ...spec,
    left: spec.right,
    right: spec.left,
    openings: spec.openings.map(over),
    piers: spec.piers.map(over),
    movement: spec.movement?.map(over),
    steps: spec.steps?.map(between),
    decided: spec.decided?.map((each) => ({ ...between(each), cutAt: otherSide(each.cutAt) })),
  };
}

function otherSide(side: Decided['cutAt']): Decided['cutAt'] {
  if (side === 'left') return 'right';
  return side === 'right' ? 'left' : side;
}

/** Laid work of the mirror image turned back; what is one object in several bands stays one. */
export class Turning {
  private readonly segments = new Map<Segment, Segment>();
  private readonly places = new Map<number, number>();
  /** Stretches alike share their runs, and go on sharing them: they are counted once. */
  private readonly turnedRuns = new Map<Segment['runs'], Segment['runs']>();

  constructor(private readonly spec: WallSpec) {
    const all = interruptions(spec).flatMap(({ from, width }) => [from, from + width]);
    for (const place of [0, spec.length, ...all]) this.places.set(Math.round(place / SAME), place);
  }

  row({ bands, depths }: WallRow): WallRow {
    const turned = carried((segment: Segment) => this.segment(segment));
    return {
      bands: bands.map(({ from, to, segments }) => ({
        from,
        to,
        segments: turned(segments).toReversed(),
      })),
      depths,
    };
  }

  private segment(segment: Segment): Segment {
    let turned = this.segments.get(segment);
    if (!turned) {
      turned = this.turn(segment);
      this.segments.set(segment, turned);
    }
    return turned;
  }

  private turn(segment: Segment): Segment {
    const { from, to, left, right, broken, runs } = segment;
    return {
      ...segment,
      from: this.at(to),
      to: this.at(from),
      left: right,
      right: left,
      broken: broken.map((each) => ({ ...each, at: this.at(each.at) })).reverse(),
      runs: this.runsOf(runs, to - from),
    };
  }

  private runsOf(runs: Segment['runs'], width: number): Segment['runs'] {
    const turned = this.turnedRuns.get(runs) ?? runs.map((run) => turnRun(run, width));
    this.turnedRuns.set(runs, turned);
    return turned;
  }

  poorLap(each: PoorLap): PoorLap {
    return { ...each, at: this.at(each.at) };
  }

  /** A place in the wall itself, just where the wall has it: turning twice leaves a trace in the last digit. */
  private at(mirrored: number): number {
    const place = this.spec.length - mirrored;
    const near = Math.round(place / SAME);
    const { places } = this;
    return places.get(near) ?? places.get(near - 1) ?? places.get(near + 1) ?? place;
  }
}

function turnRun(run: LaidRun, width: number): LaidRun {
  const { left, right } = run.endJoints;
  return {
    ...run,
    from: width - run.from - run.length || 0, // never -0
    endJoints: { left: right, right: left },
    groups: run.groups.map(turnGroup).reverse(),
  };
}

function turnGroup({ pieces, times }: PieceGroup): PieceGroup {
  return { pieces: [...pieces].reverse(), times };
}
