/** Bats at hand: salvaged halves, offcuts. What is cut is cut from them first. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import type { BlockFacts, LineFacts } from '../../resolve/env';
import { type Bats, lengthsOf } from '../../setting-out';
import { fact, type Term } from '../../working/term';
import type { Masonry } from '../masonry';

/** More lines of them than anyone writes. */
const MOST_LINES = 50;

function linesOf(facts: BlockFacts): readonly LineFacts[] {
  return facts.lines('bats').slice(0, MOST_LINES);
}

/** Of the lines of some work; `alike` pieces of work share them. A bat that says no length is half a brick at the joint. */
export function batsOf({ facts, brick, jointTerms }: Masonry, alike = 1): Bats[] {
  const unit = brick.size;
  if (!unit) return [];
  const { half } = lengthsOf(unit, jointTerms.perpend.value.toNumber());
  return linesOf(facts).map((line) => {
    const count = Math.floor((line.number('count') ?? 0) / Math.max(1, alike));
    return { length: Math.min(line.number('length') ?? half, unit.length), count };
  });
}

/** What a reader sees of them in a working. */
export function batTerms({ facts }: Masonry): Term[] {
  return linesOf(facts).map((line) => {
    return fact(phrase`bats at hand`, exact(line.number('count') ?? 0), 'pieces', line.at('count'));
  });
}
