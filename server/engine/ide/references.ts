/**
 * Where a name is meant in all files of a workspace. What takes long is a generator, which yields where it may stop for
 * others.
 */
import type { Place } from '../../../shared/span';
import { meantAt } from './occurrences';
import { alone, type WideSight, type World } from './sight';
import { spreadOf } from './spread';
import type { Position } from './types';
import { filePlaces } from './used-file';

/** Where the thing at a position is meant; of a file that is named, where it is named. */
export function* referencesAround(
  job: WideSight,
  at: Position,
  world: World,
  withGiven = true,
): Generator<void, Place[]> {
  const meant = meantAt(job, at);
  if (!meant) return yield* filePlaces(job, at, world);
  const { sites } = yield* spreadOf(job, meant.thing, world);
  return sites.flatMap(({ occurrences }) =>
    occurrences.filter((o) => withGiven || !o.declares).map(({ block, span }) => block.place(span)),
  );
}

/** In the files of one job. */
export function references(job: WideSight, at: Position, withGiven: boolean): Place[] {
  const steps = referencesAround(job, at, alone(job), withGiven);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
