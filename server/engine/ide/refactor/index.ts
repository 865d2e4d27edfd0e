/** Changes that mend nothing, and that whoever prices brickwork would want: each of the line under the cursor. */
import type { Job } from '../../workspace/job';
import { spotAt } from '../spot';
import type { Action, Position } from '../types';
import type { At } from './at';
import { intoDefaults } from './defaults';
import { heightOtherwise } from './height';
import { addMissing } from './missing';
import { asOption } from './option';
import { asRange } from './range';

const ALL: readonly ((at: At) => Action[])[] = [
  addMissing,
  heightOtherwise,
  asRange,
  intoDefaults,
  asOption,
];

export function refactorings(job: Job, position: Position, fills: boolean): Action[] {
  const spot = spotAt(job.file, position);
  if (!spot?.read) return [];
  const at: At = { job, spot, line: spot.read, fills };
  return ALL.flatMap((each) => each(at));
}
