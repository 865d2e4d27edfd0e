/** A job as a tree of its parts: what a job view shows beside the text. */
import type { FileParams } from '../protocol';

/** Asks for the parts of a job: {@link FileParams} in, {@link JobParts} or null for a file that is no job out. */
export const PARTS = 'perpend/parts';

/** Asks how the figure of a part came about, in a few lines: {@link PartToldParams} in, {@link PartTold} or null out. */
export const PART_TOLD = 'perpend/parts/told';

/** What a part is: an editor shows its picture. */
export type PartKind =
  | 'work'
  | 'wall'
  | 'pier'
  | 'repair'
  | 'figure'
  | 'costs'
  | 'goods'
  | 'labour'
  | 'travel'
  | 'other'
  | 'price'
  | 'step'
  | 'total'
  | 'find-out'
  | 'unmeasured'
  | 'range'
  | 'stops'
  | 'error'
  | 'missing';

/** Lines and columns count from 0; columns are UTF-16 units. */
export interface PartPlace {
  readonly uri: string;
  readonly line: number;
  readonly start: number;
  readonly end: number;
}

export interface Part {
  /** Made of names, and so the same after an edit elsewhere: `work/north/bricks`. */
  readonly id: string;
  readonly kind: PartKind;
  readonly label: string;
  /** Money, quantity and hours, ready for a reader: "£3,375.00 · 1,050 bricks · 23.89 h". */
  readonly text: string;
  /** The same as a sentence, for a reader who hears it. */
  readonly heard: string;
  /** Id of the figure it shows: its working can be asked for. */
  readonly figure?: string;
  /** Name of the piece of work that can be drawn. */
  readonly draws?: string;
  /** The line it comes from. */
  readonly at?: PartPlace;
  /** What it lacks, so that it is not complete. */
  readonly lacks?: readonly string[];
  /** More to say of it, where no working says it. */
  readonly more?: string;
  readonly children: readonly Part[];
}

export interface JobParts {
  /** The job’s own title; empty where it has none. */
  readonly title: string;
  /** What the client pays. */
  readonly price: string;
  readonly complete: boolean;
  readonly parts: readonly Part[];
}

export interface PartToldParams extends FileParams {
  /** A figure’s id. */
  readonly figure: string;
}

export interface PartTold {
  /** Markdown without links. */
  readonly markdown: string;
}
