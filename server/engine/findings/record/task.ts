/** A task of the record that no output block knows. */

import { phrase } from '../../../../shared/phrase';
import { recordOf } from '../../life/record';
import { taskWords } from '../../life/task-words';
import type { Job } from '../../workspace/job';
import { meantBy } from '../names';
import { type Remark, rewrite } from '../remark';

export function taskUnknown(job: Job): Remark[] {
  const known = taskWords();
  return recordOf(job).worked.flatMap(({ task, line }): Remark[] => {
    if (!task || known.includes(task)) return [];
    const meant = meantBy(task, known);
    const origin = line.at('task');
    const hint = meant
      ? phrase`Did you mean “${meant}”?`
      : phrase`Its hours are counted, but stand beside no estimate.`;
    return [
      {
        code: 'task-unknown',
        severity: 'warning',
        origin,
        message: phrase`“${task}” is no task of the output block. ${hint}`,
        ways: meant
          ? [{ title: phrase`Write ${meant}`, edits: [rewrite(origin, meant)], preferred: true }]
          : [],
      },
    ];
  });
}
