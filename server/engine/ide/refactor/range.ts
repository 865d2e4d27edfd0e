/** A number that is a guess, as from how much to how much. */
import { type Exact, exact, writeNumber } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { valueAt } from '../spot';
import type { Action } from '../types';
import { type At, change, plainly } from './at';

/** A tenth to either side: common practice for a guess, and the reader writes his own. */
const PART = exact('0.1');

/** A number in figures, with the sign of a currency before it and whatever it is counted in behind it. */
const WRITTEN = /^(\p{Sc}?)(\d+(?:\.(\d+))?)(.*)$/u;

export function asRange({ spot, fills }: At): Action[] {
  const said = valueAt(spot);
  if (!said || !takesRange(said)) return [];
  const { span } = said.value;
  const [, sign = '', number, decimals = '', unit = ''] =
    WRITTEN.exec(spot.block.lines[spot.line]!.slice(span.start, span.end)) ?? [];
  // A fraction or a size is more than one number.
  if (number === undefined || /[\d/]/.test(unit.replace(/[23]\b/g, ''))) return [];
  const [low, high] = around(exact(number), decimals.length);
  const from = `${sign}${low}`;
  const text = fills
    ? `\${1:${plainly(from)}}..\${2:${plainly(`${sign}${high}`)}}${plainly(unit)}`
    : `${from}..${sign}${high}${unit}`;
  const title = phrase`Write a range: ${from}..${sign}${high}${unit}`;
  const edits = [{ place: spot.block.place(span), text }];
  return [{ ...change('refactor.rewrite', title, edits), ...(fills && { fills }) }];
}

function takesRange({ slot, value }: NonNullable<ReturnType<typeof valueAt>>): boolean {
  if (slot.slot !== 'quantity' && slot.slot !== 'money') return false;
  if (value.kind !== 'quantity' && value.kind !== 'money') return false;
  return slot.range !== undefined && slot.fixed === undefined && value.high === undefined;
}

/** As finely as it is written, and never the same number twice. */
function around(number: Exact, decimals: number): [string, string] {
  const least = exact(`1e-${decimals}`);
  const part = number.times(PART).toDecimalPlaces(decimals);
  const off = part.gt(least) ? part : least;
  const low = number.minus(off);
  return [writeNumber(low.isNegative() ? exact(0) : low), writeNumber(number.plus(off))];
}
