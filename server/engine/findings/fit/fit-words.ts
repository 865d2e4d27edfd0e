/** What a reader is told of a run: its pieces, its cuts, and by how much it is off. */
import { listed } from '../../../../grammar/read/numbers';
import { later, phrase, spoken } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { LaidCut } from '../../brickwork/wall/laid-cut';
import type { Env } from '../../resolve/env';
import type { CutWay, Fit, Pieces } from '../../setting-out';
import type { RunInText } from './fit';

const PIECES = [
  [later`bricks`, later`brick`],
  [later`bricks on edge`, later`brick on edge`],
  [later`bricks on end`, later`brick on end`],
  [later`soldiers`, later`soldier`],
  [later`lengths of coping`, later`length of coping`],
  [later`courses`, later`course`],
] as const;

/** One of its pieces: a brick, a brick on edge, a course. */
function one(run: Pick<RunInText, 'pieces'>): string {
  const known = PIECES.find(([many]) => spoken(many) === run.pieces);
  return known ? spoken(known[1]) : run.pieces;
}

export function many(count: number, run: Pick<RunInText, 'pieces'>): string {
  return `${count} ${count === 1 ? one(run) : run.pieces}`;
}

export function judged(acceptable: boolean): string {
  return acceptable ? '' : phrase`, wider or tighter than anyone would accept`;
}

export function cutWords(cut: number, where: CutWay['where'] | undefined, env: Env): string {
  return `cut ${lengthText(env, cut)}${where ? ` at ${where}` : ''}`;
}

/** More lengths than this are not told one by one. */
const MOST_LENGTHS = 4;

/** “A cut of 175.5 mm in each course at the middle”, “cuts of 142.3 mm and 198.5 mm by turns at the left”. */
export function cutText({ lengths, each, at }: LaidCut, env: Env): string {
  const place = at === 'both' ? phrase`at either end` : placeSaid(at);
  const told = lengths.slice(0, MOST_LENGTHS).map((mm) => lengthText(env, mm));
  const more = lengths.length > told.length ? [phrase`${lengths.length - told.length} others`] : [];
  const of = listed([...told, ...more], 'and');
  if (lengths.length > 1) return phrase`Cuts of ${of} by turns ${place}`;
  return each > 1
    ? phrase`${each} cuts of ${of} in a course ${place}`
    : phrase`A cut of ${of} in each course ${place}`;
}

function placeSaid(at: 'left' | 'right' | 'middle'): string {
  if (at === 'middle') return phrase`at the middle`;
  return at === 'left' ? phrase`at the left` : phrase`at the right`;
}

export function cutTitle(way: CutWay, run: RunInText, env: Env): string {
  const cuts = way.cuts === 1 ? phrase`one cut` : phrase`${way.cuts} cuts`;
  const wholes = way.wholes
    ? phrase`${way.wholes} whole ${way.wholes === 1 ? one(run) : run.pieces} and `
    : '';
  return phrase`${wholes}${cuts} of ${lengthText(env, way.cut)} ${placeSaid(way.where)}, joints of ${lengthText(env, way.joint)}${way.short ? phrase`, shorter than anyone would lay` : ''}`;
}

/** What the figures count as long as nothing is decided. `what` has its verb: “A cut is”. */
export function reckonedText(what: string): string {
  return phrase`${what} reckoned with until one of the ways is chosen.`;
}

/** “4½ bricks are 5 mm too long”: the nearest that its half bricks come to, said before all else. */
function nearestText({ numbers: { nearest } }: Fit, run: RunInText, env: Env): string {
  if (!nearest || Math.abs(nearest.over) < 0.05) return '';
  const off = lengthText(env, Math.abs(nearest.over));
  const what = `${halvesText(nearest, run)} ${nearest.wholes ? phrase`are` : phrase`is`}`;
  return phrase`${what} ${off} too ${nearest.over > 0 ? phrase`long` : phrase`short`}, `;
}

/** “1 brick”, “½ brick”, “8½ bricks”. */
export function halvesText({ wholes, half }: Pieces, run: Pick<RunInText, 'pieces'>): string {
  if (!half) return many(wholes, run);
  return wholes ? `${wholes}½ ${run.pieces}` : `½ ${one(run)}`;
}

/** “4 go in and leave 30 mm, 5 do not go in, and 4 spread out have joints of 23.3 mm.” */
export function numbersText(fit: Fit, run: RunInText, env: Env): string {
  return nearestText(fit, run, env) + wholesText(fit, run, env);
}

function wholesText(fit: Fit, run: RunInText, env: Env): string {
  const { goIn, gap, left, spread, over } = fit.numbers;
  if (goIn === 0) return noneText(run, over, env);
  const verb = goIn === 1 ? phrase`leaves` : phrase`leave`;
  const what =
    gap > 0
      ? phrase`a gap of ${lengthText(env, gap)}`
      : phrase`${lengthText(env, left)}, no more than a joint`;
  const leave = `${many(goIn, run)} ${verb} ${what}`;
  const more = phrase`${goIn + 1} are ${lengthText(env, over)} too long`;
  const spreadOut =
    spread === null
      ? ''
      : phrase`, and ${goIn} spread out have joints of ${lengthText(env, spread)}`;
  return `${leave}, ${more}${spreadOut}`;
}

function noneText(run: RunInText, over: number, env: Env): string {
  const long = over > 0 ? phrase`: it is ${lengthText(env, over)} too long` : '';
  return phrase`not even one ${one(run)} goes in${long}`;
}
