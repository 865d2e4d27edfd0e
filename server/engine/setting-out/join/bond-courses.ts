import type { Band, Segment, SettingOut, WallRow } from '../types';

type CycleOf = <T>(cycle: readonly T[]) => T[];

/** The same wall with every cycle of its courses (of its bond, its rows, its runs) changed alike. */
function recycled(out: SettingOut, change: CycleOf): SettingOut {
  const segment = (s: Segment): Segment => ({ ...s, runs: change(s.runs) });
  const band = (b: Band): Band => ({ ...b, segments: b.segments.map(segment) });
  const row = (r: WallRow): WallRow => ({ bands: r.bands.map(band), depths: change(r.depths) });
  const rows = out.rows.map(row);
  const bond = { ...out.spec.bond, courses: change(out.spec.bond.courses) };
  return { ...out, spec: { ...out.spec, bond }, rows, bands: rows[0]?.bands ?? [] };
}

/** The wall begun with another course of its bond: what was course `by` is now the lowest. */
export function begunWith(out: SettingOut, by: number): SettingOut {
  if (by === 0) return out;
  return recycled(out, (cycle) => [...cycle.slice(by), ...cycle.slice(0, by)]);
}

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** The wall with its courses repeating over a multiple of `every`, so that those can be told apart and laid otherwise. */
export function repeatingOver(out: SettingOut, every: number): SettingOut {
  const times = every / gcd(every, out.spec.bond.courses.length);
  if (times === 1) return out;
  return recycled(out, (cycle) => Array.from({ length: times }, () => cycle).flat());
}
