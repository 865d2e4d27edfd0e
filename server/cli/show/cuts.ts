/** The cut list at a terminal: for each piece of work what is cut, in which courses, where, and out of what. */
import type { CutPart } from '../../engine/brickwork/cuts/sheet';
import { cuttingsText, pieceText } from '../../engine/brickwork/cuts/text';
import { lengthText } from '../../engine/brickwork/lengths';
import type { Work } from '../../engine/brickwork/needs';
import type { Env } from '../../engine/resolve/env';
import { type CutPlace, piecesAt, type Spots } from '../../engine/setting-out';
import { type Row, table } from './table';

/** More places in one course than this are not told one by one. */
const MOST_SPOTS = 4;

export function cutsReport(work: Work, env: Env): string {
  const parts = work.facts.cuts?.() ?? [];
  const name = work.name || `the ${work.kind} without a name`;
  if (!parts.length) return `${name}: nothing is cut.`;
  return parts.map((part) => partText(name, part, env)).join('\n\n');
}

function partText(name: string, part: CutPart, env: Env): string {
  const { needed, alike, onEdge } = part;
  const each = alike > 1 ? `, each of ${alike} alike` : '';
  const head = `${name}, ${uncapped(part.label)} (${part.brick})${each}`;
  const rows = part.places.map((place) => rowOf(place, env));
  const heads: Row = ['courses', 'piece', 'each', 'in all', 'from the left'];
  const lines = rows.length
    ? table([heads, ...rows], ['left', 'left', 'right', 'right', 'left'])
    : [];
  const cut = cuttingsText(needed, env).map((line) => `  ${line}`);
  const edge = onEdge ? [`  ${onEdge} of these bricks cut on edge`] : [];
  const left = needed.bats.flatMap(({ count, length }) =>
    count ? [`  ${count} bats of ${lengthText(env, length)} at hand are left`] : [],
  );
  return [head, ...lines, ...cut, ...edge, ...left].join('\n');
}

/** Within a sentence; names of bricks in it stay as they are written. */
function uncapped(label: string): string {
  return label.charAt(0).toLowerCase() + label.slice(1);
}

function rowOf(place: CutPlace, env: Env): string[] {
  const { piece, length, high, each } = place;
  const low = high === undefined ? '' : `, ${lengthText(env, high)} high`;
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
  if (every === 1) return `${from + 1} to ${last + 1}`;
  if (count === 2) return `${from + 1}, ${last + 1}`;
  return `${from + 1}, ${from + every + 1} … ${last + 1}`;
}

function whereText(at: readonly Spots[], env: Env): string {
  if (at.length > MOST_SPOTS) return `${at.reduce((sum, s) => sum + s.count, 0)} places`;
  // A plinth goes on past the end of its wall.
  const mm = (x: number) => `${x < -0.05 ? '−' : ''}${lengthText(env, Math.abs(x))}`;
  return at
    .map(({ from, by, count }) =>
      count === 1 ? mm(from) : `${mm(from)} and every ${mm(by)} to ${mm(from + (count - 1) * by)}`,
    )
    .join('; ');
}
