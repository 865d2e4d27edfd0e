/** All jobs of the open folders. */
import type { PageShown } from './pages';

/** Asks for the jobs of the open folders: {@link JobsParams} in, {@link JobsMade} out. Tells of its progress, and can be cancelled. */
export const JOBS = 'perpend/jobs';

export interface JobsParams {
  /** As of that day, `2026-03-02`. */
  readonly day: string;
  /** Only jobs in it; without it, of all open folders. */
  readonly folder?: string;
  /** Every job, and not the first few of each list. */
  readonly all?: boolean;
  /** Progress is told under it. */
  readonly workDoneToken?: string | number;
}

export interface JobsMade {
  readonly page: PageShown;
  readonly jobs: readonly JobItem[];
}

export interface JobItem {
  readonly uri: string;
  readonly ref: string;
  readonly title: string;
  readonly client: string;
  /** `not-sent`, `out`, `lost`, `in-hand`, `done`, `paid`; and in words. */
  readonly state: string;
  readonly standing: string;
  /** The day since when it stands so; empty where no line says. */
  readonly since: string;
  readonly price?: string;
  readonly owed: string;
}
