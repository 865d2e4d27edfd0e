/** What there is to tell of the record of a job. */
import type { Job } from '../../workspace/job';
import type { Remark } from '../remark';
import { acceptedBoth } from './accepted';
import { lostAccepted } from './lost-accepted';
import { invoiceNumberTwice } from './number-twice';
import { recordOrder } from './order';
import { recordOver } from './over';
import { releasedOver } from './released-over';
import { sentMoved } from './sent-moved';
import { taskUnknown } from './task';
import { taxNumberMissing } from './tax-number-missing';

/** Of the job’s own file; nothing is worked out where it has no record. */
export function recordRemarks(job: Job): Remark[] {
  const [block] = job.book.blocksOf('record');
  if (!block || block.file.name !== job.file.name) return [];
  return [
    ...sentMoved(job),
    ...acceptedBoth(job),
    ...recordOrder(job),
    ...lostAccepted(job),
    ...recordOver(job),
    ...releasedOver(job),
    ...invoiceNumberTwice(job),
    ...taxNumberMissing(job),
    ...taskUnknown(job),
  ];
}
