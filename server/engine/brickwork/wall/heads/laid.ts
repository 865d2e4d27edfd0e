/** What is laid over and under the openings of a wall, and how it is called. */
import { phrase } from '../../../../../shared/phrase';
import type { LineFacts } from '../../../resolve/env';
import type { CutPlace, Tally } from '../../../setting-out';
import type { Term } from '../../../working/term';
import type { Counted } from '../../count';
import { type Brick, brickOf } from '../../goods';
import type { Masonry } from '../../masonry';
import type { Figure } from '../../needs';
import type { Head } from './head';

/** Work of one kind, by the word of its output. */
export interface Laid {
  readonly task: 'head' | 'subsill' | 'arch';
  readonly brick: Brick;
  readonly counted: Counted;
  readonly figures: readonly Figure[];
  /** Where what is cut for it lies, for the cut list. */
  readonly places?: () => readonly CutPlace[];
  /** Whether anything of it is cut. */
  readonly cuts: boolean;
}

/** Counts tallies of a brick under a label; `how` tells how they were laid. */
export type Count = (
  label: string,
  tallies: readonly Tally[],
  brick: Brick,
  how: string[],
  cutOnEdge?: number,
) => Counted;

/** The brick that a line names, else the wall’s own. */
export function brickIn(line: LineFacts, { brick, env }: Masonry): Brick {
  return line.values.brick ? brickOf(line, env, line.origin) : brick;
}

/** The facts of its lines that it is counted from. */
export function factsOf({ opening, lintel, arch }: Head): Term[] {
  const name = phrase`opening ${opening.spec.name}`;
  const rise = arch?.line.values.rise;
  const bearing = lintel?.bearing.line;
  return [
    ...(rise ? [arch!.line.term('rise', phrase`${name}, rise`)] : []),
    ...(bearing?.values.bearing ? [bearing.term('bearing', phrase`${name}, bearing`)] : []),
  ];
}

export const called = ({ opening }: Head) => opening.facts.title || phrase`the opening`;
export const keyOf = ({ opening }: Head, what: string) =>
  `${opening.spec.name || 'opening'}.${what}`;
