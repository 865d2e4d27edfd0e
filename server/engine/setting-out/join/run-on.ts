import type { Band, Decided, EndKind, Segment, SettingOut, WallSpec } from '../types';
import type { Side } from './corner';

/** How far courses of a wall run on past its end into other work, mm, and how they stop in there. */
export interface RunningOn {
  readonly by: number;
  readonly end: EndKind;
}

export type RunsOn = Readonly<Partial<Record<Side, RunningOn>>>;

/** Ends nearer than this are the same end, mm. */
const SAME_END = 0.5;

/**
 * The wall as long as its longest courses are: what stands in it keeps its place in the wall, and so moves along by what is
 * put before it. {@link backInPlace} undoes it.
 */
export function runOn(spec: WallSpec, on: RunsOn): WallSpec {
  const before = on.left?.by ?? 0;
  const length = spec.length + before + (on.right?.by ?? 0);
  const moved = <T extends { readonly from: number }>(thing: T): T => ({
    ...thing,
    from: thing.from + before,
  });
  const decided = (d: Decided): Decided => ({
    ...d,
    from: d.from < SAME_END ? 0 : d.from + before,
    to: d.to > spec.length - SAME_END ? length : d.to + before,
  });
  return {
    ...spec,
    length,
    left: on.left?.end ?? spec.left,
    right: on.right?.end ?? spec.right,
    openings: spec.openings.map(moved),
    piers: spec.piers.map(moved),
    ...(spec.movement ? { movement: spec.movement.map(moved) } : {}),
    ...(spec.steps ? { steps: spec.steps.map((s) => ({ ...moved(s), to: s.to + before })) } : {}),
    ...(spec.decided ? { decided: spec.decided.map(decided) } : {}),
  };
}

/** A wall laid so, measured from its own end again: the courses that run on reach out past it. */
export function backInPlace(out: SettingOut, spec: WallSpec, on: RunsOn): SettingOut {
  const by = on.left?.by ?? 0;
  const segment = (s: Segment): Segment => ({
    ...s,
    from: s.from - by,
    to: s.to - by,
    broken: s.broken.map((b) => ({ ...b, at: b.at - by })),
  });
  const band = (b: Band): Band => ({ ...b, segments: b.segments.map(segment) });
  const rows = out.rows.map((row) => ({ ...row, bands: row.bands.map(band) }));
  const { bond } = out.spec;
  return { ...out, spec: { ...spec, bond }, rows, bands: rows[0]?.bands ?? [] };
}
