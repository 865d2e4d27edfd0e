import { groundOf, type Level, type SettingOut, topOf } from '../setting-out';
import type { Box, Chain } from './model';

/** Positions nearer than this are one stop, mm. */
const SAME = 0.5;

function rising(positions: readonly number[], low: number, high: number): number[] {
  const inside = positions.filter((at) => at > low + SAME && at < high - SAME);
  const sorted = [low, ...inside.sort((a, b) => a - b), high];
  return sorted.filter((at, i) => i === 0 || at - sorted[i - 1]! > SAME);
}

/** Where along the wall a level changes. */
function changes(levels: readonly Level[]): number[] {
  return levels.slice(1).map(({ from }) => from);
}

interface Span {
  readonly left: number;
  readonly right: number;
}

/** From the end of one tooth to that of another, where the wall has toothed ends: what a length built again reaches over. */
export function toothedSpan(out: SettingOut, bricks: readonly Box[], { left, right }: Span): Span {
  const { spec } = out;
  const least = () => bricks.reduce((far, { x }) => Math.min(far, x), left);
  const most = () => bricks.reduce((far, { x, width }) => Math.max(far, x + width), right);
  return {
    left: spec.left === 'toothed' ? least() : left,
    right: spec.right === 'toothed' ? most() : right,
  };
}

/**
 * Below the wall: each run, opening, pier and step, the same from the left end on, and over all; under it how long what
 * stands out goes on past the ends of the wall, from end to end.
 */
export function lengthChains(
  out: SettingOut,
  left: number,
  right: number,
  past: Span = { left, right },
): Chain[] {
  const goesPast = past.left < left - SAME || past.right > right + SAME;
  const stops = [past.left, past.right];
  const over: Chain[] = goesPast ? [{ side: 'below', form: 'between', stops }] : [];
  return [...alongWall(out, left, right), ...over];
}

function alongWall(out: SettingOut, left: number, right: number): Chain[] {
  const { openings, piers, movement = [] } = out.spec;
  const fixed = [...openings, ...piers, ...movement].flatMap(({ from, width }) => [
    from,
    from + width,
  ]);
  const steps = [...changes(groundOf(out.spec)), ...changes(topOf(out.spec))];
  const stops = rising([...fixed, ...steps], left, right);
  const overAll: Chain = { side: 'below', form: 'between', stops: [left, right] };
  if (stops.length === 2) return [overAll];
  return [
    { side: 'below', form: 'between', stops },
    { side: 'below', form: 'running', stops },
    overAll,
  ];
}

/**
 * Beside the wall: sills, heads, its ground and its top where they step, and the top of all. `above` are the tops of what stands on it;
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
  const steps = [...groundOf(out.spec), ...topOf(out.spec)].map(({ level }) => level);
  const high = [...levels, ...piers.map((p) => p.courses), ...steps, courses];
  const all = high.map((course) => course * out.gauge);
  const stops = rising([...all, ...above], bottom, Math.max(top, ...above));
  return { side: 'right', form: 'running', stops };
}
