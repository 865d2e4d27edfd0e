/** A footing narrower than what stands on it. */
import { phrase } from '../../../../shared/phrase';
import { lengthText, sizeText } from '../../brickwork/lengths';
import type { BlockFacts, Env } from '../../resolve/env';
import type { Remark } from '../remark';

/** Footings are dug to the next 25 mm. */
const TO = 25;

/**
 * `carries` is what stands on it on plan, mm: a wall through all its skins, or both sides of a pier. Of a footing with
 * three sides the first two are held against both sides of a pier, whichever way it lies.
 */
export function footingNarrow(
  facts: BlockFacts,
  carries: readonly number[],
  env: Env,
): Remark | undefined {
  const line = facts.line('footing');
  const sides = line?.sides('size');
  if (!line || !sides) return undefined;
  const own = sides.slice(0, sides.length - 1);
  const needed = neededOf(own, sides.length === 3 ? carries : carries.slice(-1));
  if (own.every((side, i) => side >= needed[i]! - 1e-6)) return undefined;
  const text = (mm: readonly number[]) => sizeText(env, mm);
  const what =
    carries.length > 1
      ? phrase`a pier of ${text(carries)}`
      : phrase`a wall ${lengthText(env, carries[0]!)} thick`;
  const enough = own.map((side, i) => Math.max(side, Math.ceil(needed[i]! / TO) * TO));
  const size = text([...enough, sides.at(-1)!]);
  const message = phrase`This footing is narrower than what stands on it: ${what}. It has to carry the whole of it, and to spread its load: how wide it must be goes with the ground and the load, and is for the drawings, the local code or an engineer to say.`;
  return {
    code: 'footing-narrow',
    severity: 'warning',
    origin: line.at('size'),
    message,
    ways: [
      {
        title: phrase`At least ${size}, as wide as what it carries`,
        edits: [{ ...line.at('size'), text: size }],
      },
    ],
  };
}

/** Each side against the one it lies along: the longer of both against the longer. */
function neededOf(own: readonly number[], carries: readonly number[]): readonly number[] {
  if (own.length < 2) return [Math.max(...carries)];
  const [less, more] = [Math.min(...carries), Math.max(...carries)];
  // A wall runs on along its pad: only its thickness is held against it.
  if (carries.length < 2) return own.map((side) => (side === Math.min(...own) ? less : 0));
  return own[0]! >= own[1]! ? [more, less] : [less, more];
}
