/**
 * Where perpends still stand over one another, stretches are laid as a good bricklayer sets them out who meets openings
 * off the module: in the perpends of the work that runs past them, cut at the reveals.
 */
import type { Segment } from '../../types';
import type { Laying } from '../agree';
import type { Clear } from '../bands';
import { jointsOf } from '../joints';
import { Answers, nameOf } from '../shelf';
import { type Cropped, cutOff } from './cut-off';
import { REACH } from './near-end';

/** A stretch cut off from one that runs past it, with an eye to what it lies on and bears as that stands; null where it cannot be. */
export function keptPlumb(
  laying: Laying,
  key: string,
  now: Segment,
  whole: Segment,
): Segment | null {
  const beware = bewareOf(laying, key, now, whole);
  const { craft, limits } = laying;
  const all = hangsOn({ now, whole, beware, limits });
  const cropped = kept.of(craft, all, () => cutOff({ craft, whole, clear: now, beware, limits }));
  return cropped && asSegment(now, whole, cropped);
}

const kept = new Answers<Cropped | null>();

interface HangsOn {
  readonly now: Clear;
  readonly whole: Segment;
  readonly beware: readonly (readonly number[])[];
  readonly limits: Laying['limits'];
}

function hangsOn({ now, whole, beware, limits }: HangsOn): string {
  const { from, to, left, right } = now;
  const near = beware.map((all) => all.join(' ')).join('/');
  return `${from} ${to} ${left} ${right}|${near}|${limits.least} ${limits.most}|${nameOf(whole)}`;
}

/** Perpends above and below near its ends, for each course, mm along the wall and in order. */
function bewareOf({ craft, placed, meetings }: Laying, key: string, now: Clear, whole: Segment) {
  const beware: number[][] = whole.runs.map(() => []);
  const reach = (REACH + 1) * craft.grid.module;
  const short = now.to - now.from < 2 * reach;
  const windows = short
    ? [[now.from, now.to] as const]
    : [[now.from, now.from + reach] as const, [now.to - reach, now.to] as const];
  for (const { key: other, mine, theirs } of meetings.get(key) ?? [])
    for (const [low, high] of windows)
      beware[mine]!.push(...jointsOf(placed.get(other)!, theirs, low, high));
  for (const perpends of beware) perpends.sort((a, b) => a - b);
  return beware;
}

function asSegment(now: Segment, whole: Segment, { runs, cut }: Cropped): Segment {
  const { from, to, left, right, halves } = now;
  const inside = whole.broken.filter(({ at }) => at > from && at < to);
  const at = (place: number) => ({ at: place, where: 'middle' as const, why: 'cut' as const });
  const broken = [...(cut.left ? [at(from)] : []), ...inside, ...(cut.right ? [at(to)] : [])];
  const plain = broken.length === 0;
  const fits = plain && whole.fits;
  return { from, to, left, right, halves, fits, broken, runs, plumb: true };
}
