/**
 * How near the size of one brick is to that of another, told by the classes of tolerance that a standard has for bricks
 * of one make: a difference that a class allows is one that bricks of one delivery might show as well.
 */

import { exact } from '../../../../shared/exact';
import { later, phrase, spoken } from '../../../../shared/phrase';
import { type Env, factsNamed } from '../../resolve/env';
import { difference, fact, sum, type Term } from '../../working/term';
import type { Brick } from '../goods';
import { classTerm } from '../standing/tolerance';
import { type Near, SIDES, type Sides } from './types';

const TOLERANCE = {
  length: later`size tolerance, length`,
  width: later`size tolerance, width`,
  height: later`size tolerance, height`,
} as const;

/** More classes than these are not looked at: a guard, no standard has so many. */
const MOST_CLASSES = 50;

interface Class {
  readonly title: string;
  readonly allowed: Sides<Term>;
}

/** `size` is that of the new brick, which the classes go by; `larger` how much larger it is than what stands. */
export function nearOf(
  brick: Brick,
  size: Sides<Term>,
  larger: Sides<Term>,
  env: Env,
): Near | undefined {
  const known = classesOf(brick, size, env);
  const place = known.findIndex(({ allowed }) => SIDES.every((s) => within(larger[s], allowed[s])));
  const found = known[place];
  if (found) return { ...found, place };
  const widest = known.at(-1);
  return widest && { ...widest, place: known.length, out: outOf(larger, widest.allowed) };
}

function within(off: Term, allowed: Term): boolean {
  return off.value.abs().lte(allowed.value.add(1e-6));
}

/** Tightest first: the classes of the files, and what the maker of this brick declares. */
function classesOf(brick: Brick, size: Sides<Term>, env: Env): Class[] {
  const names = env.book.names('tolerance').slice(0, MOST_CLASSES);
  const known = names.flatMap((name) => {
    const facts = factsNamed(env, 'tolerance', name);
    const [length, width, height] = SIDES.map(
      (s) => facts && classTerm(facts, size[s], spoken(TOLERANCE[s])),
    );
    return length && width && height ? [{ title: name, allowed: { length, width, height } }] : [];
  });
  const all = [...known, ...declared(brick)];
  return all.sort((a, b) => allOf(a).cmp(allOf(b)));
}

function declared({ facts }: Brick): Class[] {
  const line = facts?.line('tolerance');
  const [length, width, height] = line?.sides('size') ?? [];
  if (!line || length === undefined || width === undefined || height === undefined) return [];
  const side = (label: keyof typeof TOLERANCE, mm: number) =>
    fact(spoken(TOLERANCE[label]), exact(mm), 'mm', line.at('size'));
  const allowed = {
    length: side('length', length),
    width: side('width', width),
    height: side('height', height),
  };
  return [{ title: phrase`what its maker declares`, allowed }];
}

function allOf({ allowed }: Class) {
  return SIDES.reduce((all, s) => all.add(allowed[s].value), exact(0));
}

/** The side that is furthest out of what a class allows. */
function outOf(larger: Sides<Term>, allowed: Sides<Term>): Near['out'] {
  const outs = SIDES.map((side) => ({ side, term: beyond(larger[side], allowed[side]) }));
  const by = ({ side }: (typeof outs)[number]) => larger[side].value.abs().sub(allowed[side].value);
  return outs.reduce((worst, each) => (by(each).gt(by(worst)) ? each : worst));
}

function beyond(off: Term, allowed: Term): Term {
  const label = phrase`beyond what it allows`;
  return off.value.lt(0) ? sum(label, 'mm', [off, allowed]) : difference(label, 'mm', off, allowed);
}
