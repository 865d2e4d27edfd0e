/** By which rates jobs are taxed that have several: each is priced, and nothing is kept of it. */
import { agreedJob } from '../life/agreed';
import type { Job } from '../workspace/job';
import type { Workspace } from '../workspace/workspace';
import type { TaxPart } from './setting';
import { shareOfTotal, type TaxesOf } from './turnover';

/** How a job’s price is shared among its rates; nothing while it is not known. */
export function taxesIn(job: Job): readonly TaxPart[] | undefined {
  const { price } = agreedJob(job);
  if (price.total.gaps.length) return undefined;
  return shareOfTotal(
    price.taxes.map(({ base, rate }) => ({ base: base.value, rate: rate.value })),
  );
}

/** @param workspace of its own: what is opened and closed in it must be nobody else’s */
export function taxesBy(workspace: Workspace): TaxesOf {
  return ({ file }) => {
    const job = workspace.job(file);
    const found = job && taxesIn(job);
    workspace.closed(file);
    return found;
  };
}
