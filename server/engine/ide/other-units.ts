/** A measure in the other units people use: what a bricklayer says in inches, a drawing says in millimetres. */

import type { Value } from '../../../grammar/read/values';
import type { Exact } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import { type Dimension, fromBase, toBase, type Unit, unitNamed } from '../../../shared/units';
import { lengthText } from '../brickwork/lengths';
import type { Env } from '../resolve/env';
import { showValue } from '../views/show';

const OTHERS: Partial<Record<Dimension, readonly string[]>> = {
  length: ['mm', 'm', 'ft'],
  area: ['m2', 'ft2'],
  volume: ['l', 'm3', 'ft3', 'yd3'],
  mass: ['kg', 'lb'],
  density: ['kg/m3', 'lb/ft3'],
  time: ['min', 'h'],
};

/** Nothing for a value that has no other unit, such as a number of courses. */
export function otherUnits(value: Value, env: Env): string | undefined {
  if (value.kind === 'size') return sizes(value, env);
  if (value.kind !== 'quantity' || !value.unit) return undefined;
  const { unit } = value;
  const units = OTHERS[unit.dimension];
  if (!units) return undefined;
  const ends = value.high ? [value.low, value.high] : [value.low];
  const ways = units
    .filter((name) => name !== unit.name)
    .map((name) => inUnit(ends, unit, name, env));
  if (unit.dimension === 'length')
    ways.push(ends.map((e) => inches(e, unit, env)).join(phrase` to `));
  return ways.join(' · ');
}

function inUnit(ends: readonly Exact[], from: Unit, name: string, env: Env): string {
  const to = unitNamed(name)!;
  return ends.map((e) => showValue(fromBase(toBase(e, from), to), name, env)).join(phrase` to `);
}

function inches(value: Exact, from: Unit, env: Env): string {
  return lengthText({ ...env, imperial: true }, toBase(value, from).toNumber());
}

/** A size in the other system: as on the tape of the one who reads it. */
function sizes(value: Extract<Value, { kind: 'size' }>, env: Env): string | undefined {
  if (value.sides.some((s) => s.unit.dimension !== 'length')) return undefined;
  const imperial = value.sides[0]!.unit.system !== 'imperial';
  const text = (side: Exact, unit: Unit) =>
    lengthText({ ...env, imperial }, toBase(side, unit).toNumber());
  const sides = value.sides.map(({ value: low, high, unit }) =>
    [low, ...(high ? [high] : [])].map((end) => text(end, unit)).join(phrase` to `),
  );
  return sides.join(' × ');
}
