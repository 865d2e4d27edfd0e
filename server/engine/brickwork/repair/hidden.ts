/** Bricks that neither show in the face of a wall nor run through from it: halves go in their place. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { type BondPattern, depthsOf, type Thickness } from '../../setting-out';
import { fact, product, type Term } from '../../working/term';
import { bondNamedIn } from '../wall/bond';
import type { Site } from './site';

/** Halves that so many bricks of the wall would leave room for; nothing where its bond is not known. */
export function hiddenOf(bricks: Term, { stands, thickness }: Site): Term | undefined {
  const line = stands.orDefault('bond');
  const bond = thickness && bondNamedIn(stands, thickness);
  if (!bond) return undefined;
  const share = hiddenShare(bond, thickness);
  const label = phrase`halves behind the face to a brick`;
  const note = phrase`of its bond: two for every brick of which no end or side shows`;
  const each = fact(label, exact((2 * share).toFixed(12)), '', line?.origin, note);
  return product(phrase`halves behind the face`, '', [bricks, each]);
}

/** 0 to 1. A wall has as many bricks to a brick of its length as it is half bricks thick. */
export function hiddenShare(bond: BondPattern, thickness: Thickness): number {
  const depths = depthsOf(bond, thickness);
  const courses = bond.courses.map(({ units }, i) => {
    const headers = units.filter((unit) => unit === 'header').length;
    const stretchers = units.length - headers;
    // A row half a brick deep has its headers snapped.
    const through = depths?.[0]?.[i] === 2 ? headers : headers / 2;
    const shows = (stretchers + through) / (stretchers + headers / 2);
    return Math.max(0, thickness - shows) / thickness;
  });
  return courses.reduce((sum, share) => sum + share, 0) / courses.length;
}
