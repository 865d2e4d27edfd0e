/** A line that cannot be read as it stands, or that names what is not there: most lines are so while they are written. */
import type { Job } from '../../workspace/job';
import { thingsNamed } from '../names';
import { saidOf } from '../said';
import { spotAt, textOf } from '../spot';

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
