/** Sizes and amounts in sentences that a client can hold the firm to. */

import { exact } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import { showNumber } from '../../../shared/show';
import { toBase } from '../../../shared/units';
import type { BlockFacts, Env, LineFacts } from '../resolve/env';
import type { Origin } from '../working/term';
import { feetText } from './lengths';

/** A sentence, and the lines that it tells of: the one that it most depends on first. */
export interface Said {
  readonly text: string;
  readonly from: readonly Origin[];
}

/** Sentences of the same lines. */
export function saidFrom(
  texts: readonly string[],
  ...lines: readonly (LineFacts | undefined)[]
): Said[] {
  const from = lines.flatMap((line) => line?.origin ?? []);
  return texts.map((text) => ({ text, from }));
}

/** A length as it is spoken of: metres to a hundredth, or feet and inches to a sixteenth. */
export function lengthSaid(mm: number, env: Env): string {
  if (env.imperial) return feetText(mm);
  return `${showNumber(exact(mm.toFixed(3)).div(1000), 2, env.style)} m`;
}

/** A size as it is measured: whole millimetres, and `about` where that is not the whole of it. */
export function sizeSaid(mm: number, env: Env): string {
  if (env.imperial) return feetText(mm);
  const whole = Math.round(mm);
  return `${Math.abs(mm - whole) > 0.01 ? phrase`about ` : ''}${whole} mm`;
}

/** Both sides of a plan: `about 328 mm square`. */
export function planSaid(width: number, depth: number, env: Env): string {
  const sides = [sizeSaid(width, env), sizeSaid(depth, env)];
  return sides[0] === sides[1]
    ? phrase`${sides[0]} square`
    : phrase`${sides.join(phrase` by `)} on plan`;
}

/** `coping` is what the bricks on edge and their bed add, mm; nought without them. */
export function highSaid(courses: number, coping: number, env: Env): string {
  const high = phrase`${lengthSaid(courses + coping, env)} high`;
  return coping > 0 ? phrase`${high} over its coping` : high;
}

/** The damp course of a wall, or `of each` of several piers, where there is one. */
export function dampSaid(facts: BlockFacts, each = ''): Said[] {
  const line = facts.line('dpc');
  const courses = line?.number('courses');
  const lowest = courses === 1 ? phrase`lowest course` : phrase`lowest ${courses} courses`;
  return saidFrom(courses ? [phrase`Lay the ${lowest}${each} in damp-proof bricks.`] : [], line);
}

/** Sentences on the footing, for the client; none where no line says one. */
export function footingSaid(facts: BlockFacts, env: Env, each = ''): Said[] {
  const line = facts.line('footing');
  if (!line) return [];
  const sides = (line.sides('size') ?? []).map((side) => sizeSaid(side, env));
  if (!sides.length) return saidFrom([phrase`Dig and concrete the footing${each}.`], line);
  const deep = phrase`${sides.at(-1)} deep`;
  const size =
    sides.length === 2
      ? phrase`${sides[0]} wide and ${deep}`
      : phrase`${sides[0]} by ${sides[1]}, ${deep}`;
  return saidFrom([phrase`Dig and concrete the footing${each}, ${size}.`], line);
}

/** An amount of a line, both ends of it where it is a range. `show` takes base units (mm, m2, or a count). */
export function amountSaid(line: LineFacts, key: string, show: (base: number) => string): string {
  const value = line.values[key];
  if (value?.kind !== 'quantity') return '';
  const ends = value.high ? [value.low, value.high] : [value.low];
  const texts = ends.map((end) => show((value.unit ? toBase(end, value.unit) : end).toNumber()));
  return texts.join(phrase` to `);
}
