/** Every paper and page that can be made of a job, under its name. */
import type { Form, PageKind, PageOptions, Reader } from '../../../shared/protocol/pages';
import type { Work } from '../../engine/brickwork/work';
import type { Comparison } from '../../engine/compare';
import type { Job } from '../../engine/workspace/job';
import type { Letterhead, Paper } from '../paper/model';

/** What a page is made of. */
export interface Making {
  /** As its file has it; most papers are of what was agreed. */
  readonly job: Job;
  readonly agreed: Job;
  readonly head: Letterhead | undefined;
  /** Of the tool, for the small print. */
  readonly version: string;
  readonly options: PageOptions;
  /** What it will be written as, where that makes a difference. */
  readonly form: Form;
  /** Of a note of changes: the job as it was sent beside what is agreed now; nothing where nobody holds it. */
  readonly between?: Comparison;
}

/** A paper, and what the firm should know beside it. */
export interface Made {
  readonly paper: Paper;
  readonly asides: readonly string[];
  /** Bytes of another document of the same values, such as an electronic invoice. */
  readonly xml?: string;
}

export interface Kind {
  readonly kind: PageKind;
  readonly reader: Reader;
  readonly forms: readonly Form[];
  /** In the language of the editor. */
  title(): string;
  about(): string;
  /** Why there is none of this job; nothing where there is one. */
  why?(job: Job): string | undefined;
  /** Pieces of work that it can be of alone. */
  works?(job: Job): readonly Work[];
  /** The page, or a sentence that says why there is none. */
  make(making: Making): Made | string;
}

/** What is read from top to bottom; and what are lists as well. */
export const READ: readonly Form[] = ['pdf', 'html', 'md', 'json'];
export const LISTS: readonly Form[] = ['pdf', 'html', 'md', 'csv', 'xlsx', 'json'];

export function alone(paper: Paper): Made {
  return { paper, asides: [] };
}
