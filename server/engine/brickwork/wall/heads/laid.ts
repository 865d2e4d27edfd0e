/** What is laid over and under the openings of a wall, and how it is called. */
import type { Tally } from '../../../setting-out';
import type { Term } from '../../../working/term';
import type { Counted } from '../../count';
import type { Figure } from '../../needs';
import type { Head } from './head';

/** Work of one kind, by the word of its output. */
export interface Laid {
  readonly task: 'head' | 'subsill' | 'arch';
  readonly counted: Counted;
  readonly figures: readonly Figure[];
  /** Whether anything of it is cut. */
  readonly cuts: boolean;
}

/** Counts tallies under a label; `how` tells how they were laid. */
export type Count = (
  label: string,
  tallies: readonly Tally[],
  how: string[],
  cutOnEdge?: number,
) => Counted;

/** The facts of its lines that it is counted from. */
export function factsOf({ opening, lintel, arch }: Head): Term[] {
  const name = `opening ${opening.spec.name}`;
  const rise = arch?.line.values.rise;
  const bearing = lintel?.bearing.line;
  return [
    ...(rise ? [arch!.line.term('rise', `${name}, rise`)] : []),
    ...(bearing?.values.bearing ? [bearing.term('bearing', `${name}, bearing`)] : []),
  ];
}

export const called = ({ opening }: Head) => opening.facts.title || 'the opening';
export const keyOf = ({ opening }: Head, what: string) =>
  `${opening.spec.name || 'opening'}.${what}`;
