/** Going through a drawing with the keys: along a course, from course to course, on to things and figures. */
import type { Group, Stop } from './stops';

export interface Spot {
  readonly group: number;
  readonly stop: number;
}

export type Step = 'left' | 'right' | 'up' | 'down' | 'first' | 'last' | 'pageUp' | 'pageDown';

/** Groups that a page is. */
const PAGE = 5;

/** Where the keys lead from a spot; from nowhere, to the first brick of the lowest course. */
export function stepped(
  groups: readonly Group[],
  from: Spot | undefined,
  step: Step,
): Spot | undefined {
  if (!groups.length) return undefined;
  if (!from || !groups[from.group]) return begun(groups);
  const { group, stop } = from;
  const last = groups[group]!.stops.length - 1;
  switch (step) {
    case 'left':
      return { group, stop: Math.max(0, stop - 1) };
    case 'right':
      return { group, stop: Math.min(last, stop + 1) };
    case 'first':
      return { group, stop: 0 };
    case 'last':
      return { group, stop: last };
    case 'up':
      return across(groups, from, -1);
    case 'down':
      return across(groups, from, 1);
    case 'pageUp':
      return across(groups, from, -PAGE);
    case 'pageDown':
      return across(groups, from, PAGE);
  }
}

function begun(groups: readonly Group[]): Spot {
  const lowest = groups.findLastIndex(({ kind, course }) => kind === 'course' && course === 1);
  return { group: Math.max(0, lowest), stop: 0 };
}

/** To the piece that lies nearest, over or under. */
function across(groups: readonly Group[], { group, stop }: Spot, by: number): Spot {
  const to = Math.min(groups.length - 1, Math.max(0, group + by));
  if (to === group) return { group, stop };
  const middle = middleOf(groups[group]!.stops[stop]!);
  const { kind, stops } = groups[to]!;
  if (kind === 'figures' || kind === 'things') return { group: to, stop: 0 };
  let [best, least] = [0, Number.POSITIVE_INFINITY];
  for (const [i, each] of stops.entries()) {
    const away = Math.abs(middleOf(each) - middle);
    if (away < least) [best, least] = [i, away];
  }
  return { group: to, stop: best };
}

function middleOf({ x, width }: Stop): number {
  return x + width / 2;
}

/** Where a stop that was pointed at stands among the others. */
export function spotOf(groups: readonly Group[], wanted: Stop): Spot | undefined {
  for (const [group, { stops }] of groups.entries()) {
    const stop = stops.indexOf(wanted);
    if (stop >= 0) return { group, stop };
  }
  return undefined;
}
