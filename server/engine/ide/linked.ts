/**
 * Places that are written together: a name that only its own file knows, from where it is given. Not from where it is used:
 * who writes there may mean another thing from now on.
 */
import type { Span } from '../../../shared/span';
import { givenAt, type Sight } from './names';
import { type Occurrence, occurrencesIn } from './occurrences';
import { spotAt } from './spot';
import { isOwn } from './spread';
import type { Position } from './types';

/** The one that is given first. None where writing in all of them would not be a rename. */
export function linkedAt(job: Sight, at: Position): Span[] {
  const spot = spotAt(job.file, at);
  const thing = spot && givenAt(spot);
  if (!thing || !isOwn(thing)) return [];
  const { span } = thing;
  if (span.line !== spot.line || at.column < span.start || at.column > span.end) return [];
  const all = occurrencesIn(job.file, thing);
  const given = all.filter((each) => each.declares);
  const alike = all.every((each) => each.text === thing.name);
  if (given.length !== 1 || !alike) return [];
  return [...given, ...all.filter((each) => !each.declares)].map(inFile);
}

function inFile({ block, span }: Occurrence): Span {
  return { ...span, line: block.firstLine + span.line };
}
