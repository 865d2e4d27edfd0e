/** How long the strip under a wall is where it meets those under other walls: what they share is counted once. */

import { exact } from '../../../../../shared/exact';
import { phrase } from '../../../../../shared/phrase';
import { type Env, factsOf, type LineFacts } from '../../../resolve/env';
import { type Side, type Strip, stripAtCorner, stripInFace } from '../../../setting-out';
import { difference, fact, sum, type Term } from '../../../working/term';
import type { SourceBlock } from '../../../workspace/source';
import { inUnit, lengthShown, unitNames } from '../../lengths';
import { type Masonry, thicknessOf } from '../../masonry';
import { wallAlone } from '../meet/alone';
import type { Cornered, Quoin } from '../meet/quoins';
import type { Tee } from '../meet/tees';
import { deepBehind } from '../parts/backing/lay';
import type { WallPlan } from '../spec';

export type Meets = Pick<Cornered, 'quoins' | 'tees'>;

/** What of a strip lies in that of another wall, mm along it. */
interface Shared {
  readonly other: SourceBlock;
  readonly strip: Strip;
  readonly by: number;
  readonly note: string;
}

/** @param length of the wall itself */
export function stripLength(masonry: Masonry, plan: WallPlan, length: Term, meets: Meets): Term {
  const own = stripOf(masonry, plan);
  if (!own) return length;
  const { env } = masonry;
  const shared = [
    ...meets.quoins.flatMap((quoin) => atQuoin(own, quoin, masonry) ?? []),
    ...meets.tees.flatMap((tee) => atTee(own, tee, env) ?? []),
  ];
  const less = within(plan.spec.length, shared).map((each) => termOf(each, env));
  if (!less.length) return length;
  const unit = unitNames(env).length;
  const all = less.length > 1 ? sum(phrase`in the footings that it meets`, unit, less) : less[0]!;
  return difference(phrase`length of the footing`, unit, inUnit(length, unit), all);
}

/** No more than there is of the wall. */
function within(length: number, shared: readonly Shared[]): Shared[] {
  let left = length;
  return shared.map((each) => {
    const by = Math.min(each.by, left);
    left -= by;
    return { ...each, by };
  });
}

/** A footing whose width and depth are said; of one that is a volume nothing is known. */
function stripOf(masonry: Masonry, { spec }: WallPlan): Strip | undefined {
  const sides = masonry.facts.line('footing')?.sides('size');
  if (sides?.length !== 2) return undefined;
  const { thickness, unit, joints } = spec;
  const face = thicknessOf(thickness, unit, joints.perpend);
  const wall = face + deepBehind(masonry, joints.perpend);
  return { width: sides[0]!, depth: sides[1]!, wall };
}

function atQuoin(own: Strip, quoin: Quoin, { env, facts }: Masonry): Shared | undefined {
  const { other, with: theirs, side } = quoin;
  const strip = stripOf(wallAlone(other, env).masonry, theirs.plan);
  if (!strip) return undefined;
  const inside = facts.line(side)?.word('faces') === 'inside';
  const past = skinIsOutside(quoin, inside) ? strip.wall - theirs.out.thickness : 0;
  const by = stripAtCorner(own, strip);
  const note =
    by === strip.wall / 2
      ? phrase`each footing is measured to the middle line of the other, so that their corner is counted once`
      : phrase`the deeper footing goes through and the other stops at its side, so that their corner is counted once`;
  return { other, strip, by: by - past, note };
}

/** The other wall’s skin behind its face lies past the end of this wall. */
function skinIsOutside({ side, otherSide }: { side: Side; otherSide: Side }, inside: boolean) {
  return side === otherSide ? !inside : inside;
}

function atTee(own: Strip, tee: Tee, env: Env): Shared | undefined {
  const { other, with: theirs, off } = tee;
  const strip = off ? undefined : stripOf(wallAlone(other, env).masonry, theirs.plan);
  const by = strip ? stripInFace(own, strip) : 0;
  if (!strip || !by) return undefined;
  const note =
    strip.depth < own.depth
      ? phrase`what that footing stands out before its wall, as far as it is as deep as this one`
      : phrase`what that footing stands out before its wall`;
  return { other, strip, by, note };
}

/** The measures of the other strip go with it, each with its line. */
function termOf({ other, strip, by, note }: Shared, env: Env): Term {
  const facts = factsOf(other, env)!;
  const { name } = other;
  const measure = (label: string, mm: number, line: LineFacts | undefined, key: string) =>
    fact(label, exact(mm), 'mm', line?.at(key));
  const footing = facts.line('footing');
  const args = [
    measure(phrase`through ${name}`, strip.wall, facts.orDefault('thick'), 'thick'),
    measure(phrase`width of the footing of ${name}`, strip.width, footing, 'size'),
    measure(phrase`depth of the footing of ${name}`, strip.depth, footing, 'size'),
  ];
  return lengthShown(env, phrase`in the footing of ${name}`, by, { note, args });
}
