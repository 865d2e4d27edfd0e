/** A wall with its courses opened for a wall that is bonded into it, and its bricks laid again round what runs in. */
import type { Band, Patch, SettingOut } from '../../types';
import { repeatingOver } from '../bond-courses';
import { openedAt } from '../let-in';
import type { OpenedCourses, Tie, Window } from './types';

/** The wall with its courses opened where others are bonded into it. */
export function bondIn(out: SettingOut, ties: readonly Tie[]): SettingOut {
  let wall = out;
  for (const tie of ties) wall = bondOne(wall, tie);
  return wall;
}

function bondOne(out: SettingOut, tie: Tie): SettingOut {
  const even = tie.opened.reduce(
    (wall, { every }) => repeatingOver(wall, every),
    repeatingOver(out, 2),
  );
  const levels = [...new Set(tie.opened.flatMap(({ from, to }) => [from, to]))].sort(
    (a, b) => a - b,
  );
  const rows = even.rows.map((row, i) => ({
    ...row,
    bands: row.bands.flatMap((band) => parted(band, levels).map((b) => inBand(b, i, even, tie))),
  }));
  const patches = [...(out.patches ?? []), ...tie.opened.map((each) => patchOf(each, tie, out))];
  return { ...even, rows, bands: rows[0]?.bands ?? [], patches };
}

/** So that through each of them the same courses are opened alike. */
function parted(band: Band, levels: readonly number[]): Band[] {
  const inside = levels.filter((level) => level > band.from && level < band.to);
  const cuts = [band.from, ...inside, band.to];
  return cuts.slice(1).map((to, i) => ({ ...band, from: cuts[i]!, to }));
}

function inBand(band: Band, row: number, out: SettingOut, { opened }: Tie): Band {
  const here = opened.filter((o) => o.from < band.to && o.to > band.from);
  if (!here.length) return band;
  const roomIn = (cycle: number) => (turn: number) => windowAt(here, row, band, turn, cycle);
  const segments = band.segments.flatMap((s) => openedAt(s, out, roomIn(s.runs.length)));
  return { ...band, segments };
}

/** Of the course of the band that has this place in the cycle. */
function windowAt(
  opened: readonly OpenedCourses[],
  row: number,
  band: Band,
  turn: number,
  cycle: number,
): Window | undefined {
  const course = band.from + ((((turn - band.from) % cycle) + cycle) % cycle);
  const found = opened.find((o) => {
    const first = o.from <= course && (course - o.from) % o.every === 0;
    return first && course < Math.min(o.to, band.to);
  });
  return found?.opened.windows[row];
}

function patchOf({ from, to, every, opened }: OpenedCourses, { box }: Tie, out: SettingOut): Patch {
  const [front] = opened.windows;
  const lost = front ? (front.to - front.from) * out.thickness : 0;
  const area = lost - box.width * box.height;
  return { from, to, every, pieces: opened.pieces, area, middle: box.x + box.width / 2 };
}
