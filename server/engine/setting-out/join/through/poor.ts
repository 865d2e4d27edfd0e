/** What laps too little beside a wall that runs through another of half a brick, for want of any way to lay it. */
import { carvedLap } from '../../openings/laps';
import { lapOver } from '../../openings/near';
import { bricksOf } from '../../place/face';
import type { PoorLap, SettingOut } from '../../types';
import type { LetIn } from '../let-in';
import { mayLay, perpendsNear } from './lay';

/** Courses looked at beside one wall: nobody reads further. */
const MOST_COURSES = 200;
const SAME = 0.01;

/** Only what came about with the wall, the lowest first. `wall` has room for it, `before` had none. */
export function poorBeside(wall: SettingOut, before: SettingOut, gap: LetIn): PoorLap[] {
  const least = carvedLap(wall.spec);
  if (least <= 0 || !mayLay(wall, gap)) return [];
  const found: PoorLap[] = [];
  const { from, to } = gap.courses;
  let under = perpendsIn(wall, from - 1, gap);
  for (let course = from; course <= Math.min(to, from + MOST_COURSES); course++) {
    const perpends = perpendsIn(wall, course, gap);
    for (const at of perpends) {
      const lap = lapOver(at, under);
      if (lap < least - SAME && !wasThere(before, course, at, lap, gap))
        found.push({ course, at, lap, beside: gap.from });
    }
    under = perpends;
  }
  return found;
}

/** Those on either side of the wall that runs through, and in it, with them. */
function perpendsIn(wall: SettingOut, course: number, gap: LetIn): readonly number[] {
  const own = perpendsNear(wall, course, gap);
  const { from, to } = gap.courses;
  if (course < from || course >= to || course % 2 !== gap.parity) return own;
  return [...own, ...edgesIn(wall, course, gap), ...(gap.joints ?? [])];
}

/** Middles of the joints on either side of the wall that runs through, as wide as they are laid. */
function edgesIn({ bands, spec }: SettingOut, course: number, { from, to }: LetIn): number[] {
  const brick = spec.unit.length + spec.joints.perpend;
  const band = bands.find((b) => course >= b.from && course < b.to);
  const near = (band?.segments ?? []).flatMap((s) => [
    ...bricksOf(s, course, from - brick, to + brick),
  ]);
  const left = near.filter((p) => p.to <= from + SAME).map((p) => p.to);
  const right = near.filter((p) => p.from >= to - SAME).map((p) => p.from);
  return [
    ...(left.length ? [(Math.max(...left) + from) / 2] : []),
    ...(right.length ? [(Math.min(...right) + to) / 2] : []),
  ];
}

function wasThere(before: SettingOut, course: number, at: number, lap: number, gap: LetIn) {
  const was = perpendsNear(before, course, gap);
  if (lapOver(at, was) > SAME) return false;
  return Math.abs(lapOver(at, perpendsNear(before, course - 1, gap)) - lap) < SAME;
}
