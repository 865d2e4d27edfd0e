import type { SettingOut } from '../setting-out';
import type { Chain } from './model';

/** Positions nearer than this are one stop, mm. */
const SAME = 0.5;

function rising(positions: readonly number[], low: number, high: number): number[] {
  const inside = positions.filter((at) => at > low + SAME && at < high - SAME);
  const sorted = [low, ...inside.sort((a, b) => a - b), high];
  return sorted.filter((at, i) => i === 0 || at - sorted[i - 1]! > SAME);
}

/** Below the wall: each run, opening and pier, the same from the left end on, and over all. */
export function lengthChains(out: SettingOut, left: number, right: number): Chain[] {
  const { openings, piers, movement = [] } = out.spec;
  const fixed = [...openings, ...piers, ...movement].flatMap(({ from, width }) => [
    from,
    from + width,
  ]);
  const stops = rising(fixed, left, right);
  const overAll: Chain = { side: 'below', form: 'between', stops: [left, right] };
  if (stops.length === 2) return [overAll];
  return [
    { side: 'below', form: 'between', stops },
    { side: 'below', form: 'running', stops },
    overAll,
  ];
}

/**
 * Beside the wall: sills, heads, the wall's top and the top of all. `above` are the tops of what stands on it;
 * `top` is how far up the wall itself is drawn.
 */
export function heightChain(
  out: SettingOut,
  bottom: number,
  top: number,
  above: readonly number[],
): Chain {
  const { openings, piers, courses } = out.spec;
  const levels = openings.flatMap((o) => [o.sill, o.top ?? courses]);
  const all = [...levels, ...piers.map((p) => p.courses), courses].map((c) => c * out.gauge);
  const stops = rising([...all, ...above], bottom, Math.max(top, ...above));
  return { side: 'right', form: 'running', stops };
}
