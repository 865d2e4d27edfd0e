/** What there is to tell of the record of a job. */
import type { Job } from '../../workspace/job';
import type { Remark } from '../remark';
import { acceptedBoth } from './accepted';
import { recordOrder } from './order';
import { recordOver } from './over';
import { sentMoved } from './sent-moved';
import { taskUnknown } from './task';

/** Of the job’s own file; nothing is worked out where it has no record. */
export function recordRemarks(job: Job): Remark[] {
  const [block] = job.book.blocksOf('record');
  if (!block || block.file.name !== job.file.name) return [];
  return [
    ...sentMoved(job),
    ...acceptedBoth(job),
    ...recordOrder(job),
    ...recordOver(job),
    ...taskUnknown(job),
  ];
}
