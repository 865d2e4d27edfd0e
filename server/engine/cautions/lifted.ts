/** What is lifted by hand, and what each of it weighs: bricks, blocks, lintels, caps, copings, and what is taken down. */

import { fromGeometry } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import { showNumber } from '../../../shared/show';
import { sizeText } from '../brickwork/lengths';
import { masonryOf } from '../brickwork/masonry';
import type { BrickNeed, PieceNeed } from '../brickwork/needs';
import { type Ends, endsOf, isRange, only, sideEndsOf } from '../resolve/ends';
import { type BlockFacts, defaultLine, type Env, factsNamed, type LineFacts } from '../resolve/env';
import { type Gathered, inWords, type Limit, lineIn, type Standing } from './holding';
import { massText } from './mass-text';

export function lifted(standing: Standing, into: Gathered): void {
  const { work, env } = standing;
  for (const need of work.needs.bricks) brick(need, env, into);
  for (const need of work.needs.pieces) piece(need, env, into);
  for (const line of standing.facts.lines('rebed')) bedded(line, standing, into);
  lumps(standing, into);
}

function brick({ brick: name, origin }: BrickNeed, env: Env, into: Gathered): void {
  const facts = factsNamed(env, 'brick', name);
  const sides = facts?.line('size')?.sides('size');
  const kg = facts && weighed(facts, sideEndsOf(facts.line('size'), 'size'), 'brick-density', env);
  if (!facts || !sides || kg === undefined) return;
  const why = (limit?: Limit) => weighs(oneOf(facts, name, sides, env), kg, env, limit);
  into.add('mass', { origin, amount: kg, why, goods: true });
}

/** An old one, by its material, else as large as what lies there. */
function bedded(line: LineFacts, { facts, env }: Standing, into: Gathered): void {
  const material = line.word('material');
  const top = material ? undefined : (facts.line('cap') ?? facts.line('coping'));
  const named = material || top?.word('material') || 'piece';
  const [size, ends] = [top?.sides('size'), sideEndsOf(top, 'size')];
  piece({ material: named, origin: line.origin, size, ends }, env, into);
}

type Piece = Pick<PieceNeed, 'material' | 'origin' | 'size' | 'ends'>;

/** One whose thickness no line gives may be any weight: it is told of too, and says so. */
function piece({ material, origin, size, ends: said }: Piece, env: Env, into: Gathered): void {
  const facts = factsNamed(env, 'material', material);
  const own = facts?.line('size')?.sides('size');
  const sides = size?.length === 3 ? size : (own ?? size);
  if (!sides) return;
  const ends = sides === size ? (said ?? sides.map(only)) : sideEndsOf(facts?.line('size'), 'size');
  const kg = weighed(facts, ends, 'precast-density', env);
  const why = (limit?: Limit) => {
    const one = oneOf(facts, material, sides, env);
    return kg ? weighs(one, kg, env, limit) : phrase`no line says how thick ${one} is`;
  };
  into.add('mass', { origin, amount: kg, why, goods: true });
}

function weighs(one: string, kg: Ends, env: Env, limit?: Limit): string {
  const words = {
    one: (mass: number) => phrase`${one} is ${massText(env, mass)}`,
    most: (mass: number) => phrase`${one} may be up to ${massText(env, mass)}`,
    least: (mass: number) => phrase`${one} may be as little as ${massText(env, mass)}`,
  };
  return inWords(kg, words, limit);
}

/** `each cap 400 x 400 x 75 mm`, or by the title that a file gives it. */
function oneOf(
  facts: BlockFacts | undefined,
  name: string,
  sides: readonly number[],
  env: Env,
): string {
  const titled = facts && facts.title !== facts.name;
  const what = titled ? phrase`one of “${facts.title}”,` : phrase`each ${name}`;
  return `${what} ${sizeText(env, sides)}${titled ? ',' : ''}`;
}

/** By what it is said to weigh, else by its sides and its density; kg. */
function weighed(
  facts: BlockFacts | undefined,
  sides: readonly Ends[] | undefined,
  density: 'brick-density' | 'precast-density',
  env: Env,
): Ends | undefined {
  const said = endsOf(facts?.line('mass'), 'mass');
  if (said !== undefined) return said;
  const [length, width, height] = sides ?? [];
  const heavy = endsOf(facts?.line('density') ?? defaultLine(env, density), 'density');
  if (!length?.most || !width?.most || !height?.most || heavy === undefined) return undefined;
  const of = (end: 'least' | 'most') =>
    [length, width, height].reduce((product, side) => product * side[end], heavy[end] * 1e-9);
  return { least: of('least'), most: of('most') };
}

/** Brickwork that comes down: what it weighs in all, and how few bricks in their mortar are more than a limit. */
function lumps({ work, facts, env }: Standing, into: Gathered): void {
  const down = work.figures.find((f) => f.key === 'down')?.term.value.toNumber() ?? 0;
  const each = down > 0 ? inItsMortar(facts, env) : undefined;
  if (!each) return;
  const all = { least: each.least * down, most: each.most * down * moreDown(facts) };
  const why = (limit?: Limit) => {
    const weight = weighs(phrase`what comes down`, all, env, limit);
    return phrase`${weight} in all${limit ? fewest(each.most, limit) : ''}`;
  };
  const origin = lineIn(facts, ['rebuild']) ?? into.home;
  into.add('lump', { origin, amount: all, why, saysLimit: true });
}

/** How many times as many bricks come down where a `rebuild` line with ranges turns out at their high ends. */
function moreDown(facts: BlockFacts): number {
  const times = facts.lines('rebuild').map((line) =>
    Object.keys(line.values).reduce((by, key) => {
      const ends = endsOf(line, key);
      return ends && isRange(ends) ? (by * ends.most) / line.number(key)! : by;
    }, 1),
  );
  return Math.max(1, ...times);
}

function fewest(each: number, limit: Limit): string {
  const bricks = Math.floor(limit.amount / each) + 1;
  const shown = showNumber(fromGeometry(bricks), 0);
  return phrase`; ${shown} bricks in a lump with their mortar are more than ${limit.text}`;
}

/** A brick with half the joint all round, kg: brickwork is taken to be as dense as its bricks. */
function inItsMortar(facts: BlockFacts, env: Env): Ends | undefined {
  const { brick: of, jointTerms } = masonryOf(facts, env);
  const density = of.facts?.line('density') ?? defaultLine(env, 'brick-density');
  const heavy = endsOf(density, 'density');
  if (!of.size || heavy === undefined) return undefined;
  const { length, width, height } = of.size;
  const joint = jointTerms.perpend.value.toNumber();
  const bed = jointTerms.bed.value.toNumber();
  const m3 = (length + joint) * (width + joint) * (height + bed) * 1e-9;
  return { least: m3 * heavy.least, most: m3 * heavy.most };
}
