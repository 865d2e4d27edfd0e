/** The topmost courses of a wall from end to end, taken down and built again as the wall is: its openings left out. */
import { later, phrase } from '../../../../shared/phrase';
import { BlockFacts, defaultLine, type Env } from '../../resolve/env';
import type { OpeningSpec, WallSpec } from '../../setting-out';
import type { Term } from '../../working/term';
import type { Extent } from './extent';
import type { Site } from './site';

/** No more than this is how it was measured, mm. */
export function measuredWithin(env: Env): number {
  return defaultLine(env, 'measured-within')?.number('length') ?? 0;
}

export const BEHIND = later`behind the face`;

/** Whether so much of a wall with openings is the whole length of it, so that they lie in what comes down. */
export function isWhole({ length }: Extent, { withOpenings, env }: Site): boolean {
  if (!withOpenings || !length) return false;
  return Math.abs(length.value.toNumber() - withOpenings.length) <= measuredWithin(env);
}

/** The facts that what is built again is laid from. */
export function inputsOf({ length, courses }: Extent, { stands }: Site): Term[] {
  const widths = stands.lines('opening').flatMap((line) => {
    const opening = new BlockFacts(line.block, line.line, line.env);
    return opening.line('width')?.term('width', phrase`opening ${opening.name}, width`) ?? [];
  });
  const thick = stands.orDefault('thick')?.term('thick', phrase`thickness`);
  return [length!, courses!, ...(thick ? [thick] : []), ...widths];
}

/** So many courses from the top of the wall, in its bond as it comes there. `own` is what the repair’s own lines make of a wall. */
export function topmost(own: WallSpec, wall: WallSpec): WallSpec {
  const { length, left, right } = wall;
  const low = Math.max(0, wall.courses - own.courses);
  const openings = wall.openings.flatMap((o) => raised(o, low));
  return {
    ...own,
    length,
    left,
    right,
    openings,
    bond: { ...own.bond, courses: turned(own, low) },
  };
}

/** What of an opening lies above so many courses. */
function raised(opening: OpeningSpec, low: number): OpeningSpec[] {
  const { sill, top } = opening;
  if (top !== null && top <= low) return [];
  return [{ ...opening, sill: Math.max(0, sill - low), top: top === null ? null : top - low }];
}

function turned({ bond: { courses } }: WallSpec, from: number): WallSpec['bond']['courses'] {
  return courses.map((_, i) => courses[(i + from) % courses.length]!);
}
