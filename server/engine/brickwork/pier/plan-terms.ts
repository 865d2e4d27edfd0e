/** The size of a pier as its line says it, for the workings of what is counted from it. */
import { later, spoken } from '../../../../shared/phrase';
import type { BlockFacts } from '../../resolve/env';
import { fact, type Term } from '../../working/term';

const SIDES = [later`along the face`, later`deep`];

/** One fact for each side, in the unit it is written in; none without a size. `which` begins the labels. */
export function sideTerms(facts: BlockFacts, which = ''): Term[] {
  const line = facts.line('size');
  const value = line?.values.size;
  if (!line || value?.kind !== 'size') return [];
  return value.sides.map(({ value: side, unit }, i) =>
    fact(`${which}${spoken(SIDES[i] ?? later`high`)}`, side, unit.name, line.at('size')),
  );
}
