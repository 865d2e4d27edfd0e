/**
 * Attached piers in the wall they stand in. The wall is set out toothed on both sides of each, its line a half brick
 * further off or not, and of all these ways the one is taken whose courses take least cutting.
 */
import type { PierSpec, SettingOut, WallSpec } from '../types';
import { type AttachedLaid, attachedPlans } from './attached';
import type { AttachedShape } from './attached-region';
import { quarterOf } from './place';
import { edgesOf, type Line, lineOf } from './wall-edges';

/** A pier that stands out of its wall. */
export interface AttachedPier {
  /** Which of the wall’s piers. */
  readonly index: number;
  readonly shape: AttachedShape;
}

const LINES: readonly Line[] = [
  { left: 2, right: 2 },
  { left: 0, right: 0 },
  { left: 2, right: 0 },
  { left: 0, right: 2 },
];

/** Half bricks: in thicker walls each row stops elsewhere, and no plan is looked for. */
const MOST_THICK = 2;

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
