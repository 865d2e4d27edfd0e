/** Faults in the files that a job uses: they are told where they stand, and the job rests on them all the same. */
import type { Job } from '../engine/workspace/job';

export interface UsedFile {
  /** As the host calls it. */
  readonly file: string;
  readonly errors: number;
}

/** The files the job uses that have lines which cannot be read, and so are left out. */
export function usedWithErrors(job: Job): UsedFile[] {
  return job.scope.files.slice(1).flatMap(({ name, blocks, shipped }) => {
    // Libraries that ship are tested to have none, and reading all of one takes longer than pricing a job.
    if (shipped) return [];
    const faults = blocks.flatMap((block) => block.read.faults);
    const errors = faults.filter((fault) => fault.severity === 'error').length;
    return errors ? [{ file: name, errors }] : [];
  });
}

/** In the file, or in one that it uses. */
export function hasErrors(job: Job): boolean {
  return job.findings.some((f) => f.severity === 'error') || usedWithErrors(job).length > 0;
}
