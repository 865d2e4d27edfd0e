/** Tools for language models: they read, and change nothing. */
import type { FileParams } from '../protocol';

/** Asks for the findings of one file or of all jobs: {@link CheckParams} in, {@link Told} or {@link Refused} out. */
export const CHECK = 'perpend/check';

/** Asks for the figures of a job: {@link ToldParams} in, {@link Told} or {@link Refused} out. */
export const PRICE = 'perpend/price';

/** Asks how a figure came about: {@link ExplainParams} in, {@link Told} or {@link Refused} out. */
export const EXPLAIN = 'perpend/explain';

export interface CheckParams {
  /** Without it, every file in the notation in the open folders. */
  readonly uri?: string;
  readonly workDoneToken?: string | number;
}

export type ToldParams = FileParams;

export interface ExplainParams extends FileParams {
  /** An id such as `job.price`, or words of its name; without it the ids are listed. */
  readonly figure?: string;
}

/** For a reader that is a program: compact Markdown, and the same as data. */
export interface Told {
  readonly markdown: string;
  readonly json: string;
}
