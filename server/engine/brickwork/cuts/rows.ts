/** A cut list in words, a row for each piece: for a terminal and for papers. */

import { phrase } from '../../../../shared/phrase';
import type { Env } from '../../resolve/env';
import { type CutPlace, piecesAt, type Spots } from '../../setting-out';
import { lengthText } from '../lengths';
import { pieceText } from './text';

/** More places in one course than this are not told one by one. */
const MOST_SPOTS = 4;

/** Courses, piece, how many in each, how many in all, and where they lie from the left. */
export function cutRow(
  place: CutPlace,
  env: Env,
): readonly [string, string, string, string, string] {
  const { piece, length, high, each } = place;
  const low = high === undefined ? '' : phrase`, ${lengthText(env, high)} high`;
  const [, ...words] = pieceText({ piece, length, count: each }, env).split(' ');
  return [
    coursesText(place),
    words.join(' ') + low,
    String(each),
    String(piecesAt(place)),
    whereText(place.at, env),
  ];
}

/** Courses as a bricklayer counts them, from 1: “2, 4 to 16”. */
function coursesText({ from, to, every }: CutPlace): string {
  const count = Math.ceil((to - from) / every);
  const last = from + (count - 1) * every;
  if (count === 1) return `${from + 1}`;
  if (every === 1) return phrase`${from + 1} to ${last + 1}`;
  if (count === 2) return `${from + 1}, ${last + 1}`;
  return `${from + 1}, ${from + every + 1} … ${last + 1}`;
}

function whereText(at: readonly Spots[], env: Env): string {
  if (at.length > MOST_SPOTS) return phrase`${at.reduce((sum, s) => sum + s.count, 0)} places`;
  // A plinth goes on past the end of its wall.
  const mm = (x: number) => `${x < -0.05 ? '−' : ''}${lengthText(env, Math.abs(x))}`;
  return at
    .map(({ from, by, count }) =>
      count === 1
        ? mm(from)
        : phrase`${mm(from)} and every ${mm(by)} to ${mm(from + (count - 1) * by)}`,
    )
    .join('; ');
}
