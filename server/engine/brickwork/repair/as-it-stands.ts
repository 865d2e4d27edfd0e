/** The topmost courses of a wall from end to end, taken down and built again as the wall is: its openings left out. */
import { BlockFacts } from '../../resolve/env';
import { type OpeningSpec, setOut, tally, type WallSpec } from '../../setting-out';
import type { Term } from '../../working/term';
import { countBricks, laidFrom, mortarOf } from '../count';
import type { Extent } from './extent';
import { hiddenOf } from './hidden';
import type { Rebuilt } from './rebuild';
import type { Site } from './site';

/** Less than this is how it was measured, mm. */
export const MEASURED = 10;

export const BEHIND = 'behind the face';

/** Whether so much of a wall with openings is the whole length of it, so that they lie in what comes down. */
export function isWhole({ length }: Extent, { withOpenings }: Site): boolean {
  if (!withOpenings || !length) return false;
  return Math.abs(length.value.toNumber() - withOpenings.length) <= MEASURED;
}

/** `own` is what the brick, joints, bond and thickness of the repair make of a wall. */
export function wholeRebuilt(extent: Extent, site: Site, own: WallSpec): Rebuilt {
  const { masonry, env } = site;
  const out = setOut(topmost(own, site.withOpenings!));
  const all = tally(out);
  const inputs = inputsOf(extent, site);
  const { bricks } = countBricks('Bricks to build again', [all], masonry, inputs);
  const laid = [{ tally: all, brick: masonry.brick }];
  const mortar = mortarOf('building again', laid, env, laidFrom(masonry, inputs));
  const halves = hiddenOf(bricks, site);
  const places = halves ? { places: { halves, where: BEHIND } } : {};
  return { bricks, mortar, ...places, drawn: { settingOut: out } };
}

function inputsOf({ length, courses }: Extent, { stands }: Site): Term[] {
  const widths = stands.lines('opening').flatMap((line) => {
    const opening = new BlockFacts(line.block, line.line, line.env);
    return opening.line('width')?.term('width', `opening ${opening.name}, width`) ?? [];
  });
  return [length!, courses!, ...widths];
}

/** So many courses from the top of the wall, in its bond as it comes there. */
function topmost(own: WallSpec, wall: WallSpec): WallSpec {
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
