/** One brick beside what stands: sides, bed joint and gauge, upright joint and bond, price. */
import { phrase } from '../../../../shared/phrase';
import type { Env } from '../../resolve/env';
import { difference, product, quotient, sum, type Term } from '../../working/term';
import { type Brick, brickWaste, type Mix, usualBed } from '../goods';
import { inMm } from '../lengths';
import { bedsOf, isAccepted } from '../standing/gauge';
import { boughtAs } from './buy';
import { nearOf } from './near';
import { sidesAt } from './stood';
import type { Bed, Compared, Perpend, Sides, Stood } from './types';

/** What every candidate of a repair is compared by. */
export interface Beside {
  readonly stood: Stood;
  readonly mix: Mix;
  readonly short: Term;
  readonly env: Env;
}

/** A brick beside what stands there; what cannot be told of it is left out. */
export function comparedWith(brick: Brick, chosen: boolean, beside: Beside): Compared {
  const { stood, short, env } = beside;
  const size =
    brick.size && sidesAt(brick.size, brick.facts?.line('size')?.at('size'), phrase`work size`);
  const larger = size && stood.size && largerThan(size, stood.size);
  return {
    brick,
    chosen,
    larger,
    near: size && larger && nearOf(brick, size, larger, env),
    bed: size && bedOf(brick, beside),
    perpend: size && perpendOf(brick, size, beside),
    waste: brickWaste(brick.facts, env),
    buy: boughtAs(brick, short, env),
  };
}

function largerThan(size: Sides<Term>, old: Sides<Term>): Sides<Term> {
  return {
    length: difference(phrase`Longer than what stands`, 'mm', size.length, old.length),
    width: difference(phrase`Wider than what stands`, 'mm', size.width, old.width),
    height: difference(phrase`Higher than what stands`, 'mm', size.height, old.height),
  };
}

function bedOf(brick: Brick, { stood, mix, env }: Beside): Bed | undefined {
  const { course, courses, beds } = stood;
  if (!course || course.gaps.length) return undefined;
  const usual = usualBed(brick, mix);
  const found = bedsOf(course, brick, brick.size!.height, usual, courses, env);
  return { ...found, accepted: isAccepted(found.joint.value.toNumber(), beds) };
}

function perpendOf(brick: Brick, size: Sides<Term>, { stood, mix }: Beside): Perpend | undefined {
  if (!stood.size || stood.perpend.gaps.length) return undefined;
  const module = sum(phrase`a brick and a joint of what stands`, 'mm', [
    stood.size.length,
    stood.perpend,
  ]);
  const joint = difference(phrase`Upright joint the new brick needs`, 'mm', module, size.length);
  const accepted = isAccepted(joint.value.toNumber(), stood.perpends);
  return { joint, accepted, creep: creepOf(brick, size.length, module, stood, mix) };
}

/** Over a length of stretchers: a wall of another bond creeps no more than that. */
function creepOf(brick: Brick, long: Term, module: Term, { length, perpend }: Stood, mix: Mix) {
  if (!length || length.gaps.length || module.value.lte(0)) return undefined;
  const line = brick.facts?.line('joint') ?? mix.facts?.line('joint');
  const usual = line ? inMm(line.term('joint', phrase`joint`)) : perpend;
  const own = sum(phrase`a brick and a joint of the new`, 'mm', [long, usual]);
  const each = difference(phrase`out in a brick`, 'mm', own, module);
  const count = quotient(phrase`stretchers in the length`, '', length, module);
  return product(
    phrase`Out over the length`,
    'mm',
    [each, count],
    phrase`in stretchers at its usual joint`,
  );
}
