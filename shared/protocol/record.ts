/** What is written into the record of a job. */
import type { FileParams } from '../protocol';
import type { Edits } from './edits';

/** Asks what a record can hold: {@link FileParams} in, {@link RecordKind}s or {@link Refused} out. */
export const RECORD_KINDS = 'perpend/recordKinds';

/** Asks for lines of the record: {@link RecordParams} in, {@link RecordEdits} or {@link Refused} out. */
export const RECORD = 'perpend/record';

export interface RecordKind {
  /** `worked` */
  readonly what: string;
  /** What the line means. */
  readonly about: string;
  /** The words after the date, as an example: `2 people 7.5 h facework 410 bricks`. */
  readonly example: string;
  /** It can be left without words: `sent` takes the price that the job comes to. */
  readonly alone: boolean;
  /** Options of this job that it can name: of `accepted`. */
  readonly options: readonly { readonly name: string; readonly title: string }[];
}

export interface RecordParams extends FileParams {
  /** One of {@link RecordKind.what}. */
  readonly what: string;
  /** The day it happened, `2026-03-02`. */
  readonly date: string;
  /** As they would be written; a text of several words in quotation marks, or a word by itself. */
  readonly words?: readonly string[];
}

export interface RecordEdits {
  readonly edit: Edits;
  /** Where the first line stands then, from 0. */
  readonly line: number;
  /** As they stand there. */
  readonly lines: readonly string[];
  /** What the firm should know about it. */
  readonly asides: readonly string[];
}
