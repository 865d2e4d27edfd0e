/** How bricks are cut, in words. */

import { exact } from '../../../../shared/exact';
import { later, phrase, spoken } from '../../../../shared/phrase';
import { showNumber } from '../../../../shared/show';
import type { Env } from '../../resolve/env';
import type { BrickCut, BricksNeeded, PieceOut, Tally } from '../../setting-out';
import { lengthText } from '../lengths';

/** More sorts of cutting than this are not told one by one. */
const MOST_TOLD = 40;

/** Whole bricks, bats, closers and cuts told apart, and what the bricks that are cut are cut into. */
export function piecesText(tally: Tally, needed: BricksNeeded, env: Env): string[] {
  const lines = [phrase`${number(tally.wholes)} whole bricks`];
  const some = (count: number, one: string, many: string) => {
    if (count) lines.push(`${number(count)} ${count === 1 ? one : many}`);
  };
  some(tally.halves, phrase`half bat`, phrase`half bats`);
  some(tally.threeQuarters, phrase`three-quarter bat`, phrase`three-quarter bats`);
  some(tally.closers, phrase`queen closer`, phrase`queen closers`);
  for (const { length, count } of tally.cuts) {
    const of = lengthText(env, length);
    some(count, phrase`cut of ${of}`, phrase`cuts of ${of}`);
  }
  return [...lines, ...cuttingsText(needed, env)];
}

/** Into what the bricks are cut, a line for each way of cutting. */
export function cuttingsText({ cut, cuttings }: BricksNeeded, env: Env): string[] {
  if (!cuttings.length) return [];
  const told = cuttings.slice(0, MOST_TOLD).map((c) => `  ${cuttingText(c, env)}`);
  const more = cuttings.length - told.length;
  const rest = more > 0 ? [phrase`  and ${number(more)} other ways of cutting`] : [];
  return [phrase`cut from ${bricks(cut)}${batsText(cuttings)}:`, ...told, ...rest];
}

function batsText(cuttings: readonly BrickCut[]): string {
  const used = cuttings.reduce((sum, c) => sum + (c.bat === undefined ? 0 : c.times), 0);
  return used
    ? phrase` and ${number(used)} ${used === 1 ? phrase`bat` : phrase`bats`} at hand`
    : '';
}

/** “8 bricks, each into 2 half bats”, “3 bats of 102.5 mm, each into 1 cut of 75 mm”. */
function cuttingText(cutting: BrickCut, env: Env): string {
  const { bat, times, pieces } = cutting;
  const of = bat === undefined ? '' : phrase` of ${lengthText(env, bat)}`;
  const from =
    bat === undefined
      ? bricks(times)
      : `${number(times)} ${times === 1 ? phrase`bat` : phrase`bats`}${of}`;
  return phrase`${from}${times === 1 ? '' : phrase`, each`} into ${pieces.map((p) => pieceText(p, env)).join(phrase` and `)}`;
}

function bricks(count: number): string {
  return `${number(count)} ${count === 1 ? phrase`brick` : phrase`bricks`}`;
}

const NAMES = {
  half: [later`half bat`, later`half bats`],
  'three-quarter': [later`three-quarter bat`, later`three-quarter bats`],
  closer: [later`queen closer`, later`queen closers`],
} as const;

export function pieceText({ piece, length, count }: PieceOut, env: Env): string {
  const of = lengthText(env, length);
  const one = count === 1;
  if (piece === 'cut')
    return `${number(count)} ${one ? phrase`cut of ${of}` : phrase`cuts of ${of}`}`;
  return `${number(count)} ${spoken(NAMES[piece][one ? 0 : 1])}`;
}

function number(n: number): string {
  return showNumber(exact(n), 0);
}
