/**
 * What is kept of a job’s file, so that thousands can be looked over: its record and its heading as they are written, and
 * the lines that say in which currency and at which tax. Plain data, by the file’s own text alone: what other files add is
 * in its {@link Setting}.
 */

/** Of a record. Dates and texts as written, amounts as exact decimals. */
export interface JobEntry {
  readonly kind: EntryKind;
  readonly date: string;
  /** With the currency as written: a sign or a code. */
  readonly money?: Written;
  /** Of `paid`: kept back by the client as the firm’s tax. */
  readonly deducted?: Written;
  /** Of `accepted`. */
  readonly options?: readonly string[];
  /** Of `worked`: hours of all of them together. */
  readonly hours?: string;
  /** Of `worked`: a word of the output block; empty where none is said. */
  readonly task?: string;
  /** Of `worked`: in bricks, m2, m or pieces. */
  readonly amount?: Written;
}

export const ENTRY_KINDS = [
  'sent',
  'accepted',
  'lost',
  'worked',
  'spent',
  'invoiced',
  'paid',
  'retained',
  'released',
] as const;
export type EntryKind = (typeof ENTRY_KINDS)[number];

/** A value and its unit, or its currency. */
export type Written = readonly [value: string, unit: string];

export interface JobSummary {
  /** Whether the file holds a job, and not a firm’s goods. */
  readonly isJob: boolean;
  readonly ref: string;
  readonly title: string;
  readonly client: string;
  /** The day of the quote. */
  readonly date: string;
  /** In the order of the file. */
  readonly entries: readonly JobEntry[];
  /** Lines of the record that cannot be read. */
  readonly unread: number;
  /** The lines that its currency, its tax and its gang hang on, as a text in the notation. */
  readonly own: string;
  /** Whether a piece of work, a cost or an option has a tax line of its own. */
  readonly taxes: boolean;
}

/** A job of a folder, by the name the host gives its file. */
export interface FiledJob {
  readonly file: string;
  readonly summary: JobSummary;
}
