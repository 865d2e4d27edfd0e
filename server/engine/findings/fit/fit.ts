/** What the fit findings share: ways out as edits, and the sentences about a run. */

import { listed } from '../../../../grammar/read/numbers';
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { LaidCut } from '../../brickwork/wall/laid-cut';
import type { BlockFacts, Env } from '../../resolve/env';
import {
  type CutWay,
  type Fit,
  isPoor,
  type LengthWay,
  type Pieces,
  type Way,
} from '../../setting-out';
import { lineAfter, type RemarkWay } from '../remark';

/** How a run is named in a `fit` line, and how its ways out are written. */
export interface RunInText {
  readonly name: string;
  /** The heading whose lines hold its decisions. */
  readonly home: BlockFacts;
  /** The edit that gives the run another length, if one line can. */
  readonly move?: (way: LengthWay) => RemarkWay | undefined;
  /** Other sizes that work, where the run’s length is not said by itself. */
  readonly others?: () => RemarkWay[];
  /** The cut as its courses are laid with one, where they are laid otherwise than as wholes beside one cut. */
  readonly cutAs?: () => LaidCut | undefined;
  /** The edit that puts a cap in place of bricks on edge. */
  readonly cap?: () => RemarkWay | undefined;
  /** What its pieces are called: bricks, bricks on edge, courses. */
  readonly pieces: string;
}

export function waysOf(fit: Fit, run: RunInText, env: Env): RemarkWay[] {
  const found = (of: readonly Way[]) => of.flatMap((way) => wayOf(way, run, env) ?? []);
  const good = withOthers(
    fit.ways.filter((w) => !isPoor(w)),
    found,
    run,
  );
  const ways = [...good, ...found(fit.ways.filter(isPoor)).map((way) => ({ ...way, last: true }))];
  return ways.map((way, i) => ({ ...way, preferred: i === 0 }));
}

/** Other sizes stand where other lengths do. */
function withOthers(
  ways: readonly Way[],
  found: (of: readonly Way[]) => RemarkWay[],
  run: RunInText,
): RemarkWay[] {
  const at = ways.findIndex((w) => w.kind === 'length');
  const place = at < 0 ? ways.length : at;
  const others = run.others?.() ?? [];
  return [...found(ways.slice(0, place)), ...others, ...found(ways.slice(place))];
}

function wayOf(way: Way, run: RunInText, env: Env): RemarkWay | undefined {
  switch (way.kind) {
    case 'joints':
      return decide(
        run,
        'joints',
        phrase`${many(way.wholes, run)} with joints of ${lengthText(env, way.joint)}${judged(way.acceptable)}`,
      );
    case 'half-bond':
      return decide(
        run,
        'half-bond',
        phrase`${halvesText(way, run)} (half-bond) with joints of ${lengthText(env, way.joint)}${judged(way.acceptable)}`,
      );
    case 'cut':
      return run.cutAs
        ? laidCutWay(run.cutAs(), run, env)
        : decide(run, cutWords(way.cut, way.where, env), cutTitle(way, run, env));
    case 'length':
      return run.move?.(way);
    case 'cap':
      return run.cap?.();
  }
}

/** One of its pieces: a brick, a brick on edge, a course. */
function one(run: Pick<RunInText, 'pieces'>): string {
  return run.pieces.replace(/^(\w+)s\b/, '$1');
}

function many(count: number, run: Pick<RunInText, 'pieces'>): string {
  return `${count} ${count === 1 ? one(run) : run.pieces}`;
}

function judged(acceptable: boolean): string {
  return acceptable ? '' : phrase`, wider or tighter than anyone would accept`;
}

function cutWords(cut: number, where: CutWay['where'] | undefined, env: Env): string {
  return `cut ${lengthText(env, cut)}${where ? phrase` at ${where}` : ''}`;
}

/** What the courses are laid with already: once this is decided, nothing of it changes. */
function laidCutWay(laid: LaidCut | undefined, run: RunInText, env: Env): RemarkWay | undefined {
  if (!laid) return undefined;
  const title = phrase`${cutText(laid, env)}, joints of ${lengthText(env, laid.joint)}`;
  const where = decisionFor(run.home, run.name)?.where;
  return decide(run, cutWords(laid.lengths[0]!, where, env), title);
}

/** More lengths than this are not told one by one. */
const MOST_LENGTHS = 4;

/** “A cut of 175.5 mm in each course at the middle”, “cuts of 142.3 mm and 198.5 mm by turns at the left”. */
export function cutText({ lengths, each, at }: LaidCut, env: Env): string {
  const place = at === 'both' ? phrase`at either end` : phrase`at the ${at}`;
  const told = lengths.slice(0, MOST_LENGTHS).map((mm) => lengthText(env, mm));
  const more = lengths.length > told.length ? [phrase`${lengths.length - told.length} others`] : [];
  const of = listed([...told, ...more], 'and');
  if (lengths.length > 1) return phrase`Cuts of ${of} by turns ${place}`;
  return each > 1
    ? phrase`${each} cuts of ${of} in a course ${place}`
    : phrase`A cut of ${of} in each course ${place}`;
}

function cutTitle(way: CutWay, run: RunInText, env: Env): string {
  const cuts = way.cuts === 1 ? phrase`one cut` : phrase`${way.cuts} cuts`;
  const wholes = way.wholes
    ? phrase`${way.wholes} whole ${way.wholes === 1 ? one(run) : run.pieces} and `
    : '';
  return phrase`${wholes}${cuts} of ${lengthText(env, way.cut)} at the ${way.where}, joints of ${lengthText(env, way.joint)}${way.short ? phrase`, shorter than anyone would lay` : ''}`;
}

/** Writes the decision under the last line of its heading, or in place of an older one. */
export function decide(
  run: Pick<RunInText, 'name' | 'home'>,
  words: string,
  title: string,
): RemarkWay {
  const text = `fit ${run.name} ${words}`;
  const old = run.home.lines('fit').find((l) => l.word('run') === run.name);
  if (old) return { title, edits: [{ block: old.block, span: old.line.syntax.span, text }] };
  const { block, heading } = run.home;
  const last = lastOwnLine(run.home);
  const indent = ' '.repeat(heading.syntax.indent + 2);
  return { title, edits: [lineAfter(block, last, indent + text)] };
}

/** The last line of a heading that belongs to it alone, so that a new one stands before headings within it. */
export function lastOwnLine(facts: BlockFacts): number {
  const own = facts.heading.body.filter((l) => !l.kind.body).map((l) => l.syntax.span.line);
  return Math.max(facts.heading.syntax.span.line, ...own);
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

/** What a `fit` line decided for a run. */
export interface Decision {
  readonly how: 'joints' | 'half-bond' | 'cut';
  /** Mm. */
  readonly cut?: number;
  readonly where?: 'left' | 'right' | 'middle';
}

export function decisionFor(home: BlockFacts, name: string): Decision | undefined {
  const line = home.lines('fit').find((l) => l.word('run') === name);
  if (!line) return undefined;
  return {
    how: line.word('how') as Decision['how'],
    cut: line.number('cut'),
    where: (line.word('where') || undefined) as Decision['where'],
  };
}

/** Whether what was decided still answers the run as it is now. `laid` is the cut as it lies in courses. */
export function settled(
  fit: Fit,
  decision: Decision | undefined,
  laid?: LaidCut | undefined,
): boolean {
  if (!decision) return false;
  if (laid && decision.how === 'cut')
    return decision.cut === undefined || laid.lengths.some((mm) => agree(mm, decision.cut!));
  if (decision.how !== 'cut') return fit.ways.some((w) => w.kind === decision.how);
  const cuts = fit.ways.filter((w): w is CutWay => w.kind === 'cut');
  if (decision.cut === undefined) return cuts.length > 0;
  return cuts.some((w) => agree(w.cut, decision.cut!));
}

function agree(a: number, b: number): boolean {
  return Math.abs(a - b) <= CUT_AGREES;
}

/** A cut is marked by hand to the millimetre; sixteenths of an inch are rounded by up to 0.8 mm. */
const CUT_AGREES = 1;
