/** Perpends that stand over one another where two stretches of a wall meet, and no way of laying them mends it. */
import { lengthText } from '../brickwork/lengths';
import type { Masonry } from '../brickwork/masonry';
import type { PoorLap, SettingOut } from '../setting-out';
import type { Remark } from './remark';
import { nameOrigin } from './remark';

/** As many as anyone would read. */
const MOST_TOLD = 3;

export function perpendsAligned(out: SettingOut, { facts, env }: Masonry): Remark | undefined {
  const { perpend } = out.spec.joints;
  const aligned = out.poorLaps.filter(({ lap }) => lap < perpend);
  if (!aligned.length) return undefined;
  const told = aligned
    .slice(0, MOST_TOLD)
    .map((each) => placeOf(each, (mm) => lengthText(env, mm)));
  const more = aligned.length - told.length;
  const places = `${told.join('; ')}${more > 0 ? `; and at ${more} more ${more === 1 ? 'place' : 'places'}` : ''}`;
  const message = `Perpends stand over one another where a stretch begins or ends over another: ${places}. No way was found to lay those stretches that laps there, cut at the reveals or not; one that a fit line speaks of is laid as that says. Keep them plumb by hand there, opening a joint here and closing one there; or bring the openings and piers to brickwork sizes.`;
  return {
    code: 'perpends-aligned',
    severity: 'information',
    origin: nameOrigin(facts.block),
    message,
  };
}

function placeOf({ course, at }: PoorLap, shown: (mm: number) => string): string {
  return `between courses ${course} and ${course + 1}, ${shown(at)} from the left end`;
}
