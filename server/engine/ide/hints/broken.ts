/** A line that cannot be read as it stands, or that names what is not there: most lines are so while they are written. */
import { unitNamed, unitsOf } from '../../../../shared/units';
import type { Job } from '../../workspace/job';
import { thingsNamed } from '../names';
import { saidOf } from '../said';
import { spotAt, textOf } from '../spot';

/** It ends with a unit with which another of its kind begins: `10 m`, on the way to `10 mm`. */
export function mayGoOn({ file }: Job, line: number): boolean {
  const last = spotAt(file, { line, column: 0 })?.syntax?.items.at(-1);
  const said = last?.kind === 'measure' ? last.unit?.text : undefined;
  const unit = said === undefined ? undefined : unitNamed(said);
  if (said === undefined || !unit) return false;
  return unitsOf(unit.dimension).some(({ name }) => name !== said && name.startsWith(said));
}

export function isBroken(job: Job, line: number): boolean {
  const spot = spotAt(job.file, { line, column: 0 });
  if (!spot?.syntax) return false;
  const { faults } = spot.block.read;
  if (!spot.read || faults.some((f) => f.severity === 'error' && f.span.line === spot.line))
    return true;
  return saidOf(spot.read).some(({ names, value }) => {
    const name = textOf(value);
    return (
      names.length > 0 && name !== undefined && !thingsNamed(job, names, name, spot.block).length
    );
  });
}
