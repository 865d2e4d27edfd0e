/**
 * A paper before it has a form: what stands on it, in the order it is read. Quotes, invoices and lists are made as
 * these, and written out as PDF, HTML, Markdown, CSV or XLSX by writers that know nothing of a job. So whatever a paper
 * does not hold, no form of it can let out.
 */
import type { PageKind } from '../../../shared/protocol/pages';
import type { Place } from '../../../shared/span';
import type { Sheet } from '../../engine/drawing';

export type PaperKind = PageKind | 'compare' | 'jobs';

/**
 * The lines of the files that something on a paper comes from; it leads to the first, and hangs on the others too. It is
 * asked for by a preview beside the text alone: a function goes into no file.
 */
export type From = () => readonly Place[];

export interface Paper {
  readonly kind: PaperKind;
  /** BCP 47, of the words on it. */
  readonly lang: string;
  /** `2026-03-02`: the day it is of, which files of it carry as theirs; empty where the job names none. */
  readonly date: string;
  readonly size: 'A4' | 'Letter';
  /** Of the whole paper, for lists of files and readers aloud: `Quote 26-041 · Orchard boundary wall`. */
  readonly title: string;
  readonly letterhead: Letterhead | undefined;
  readonly parts: readonly Part[];
  /** The small print under the last page’s text. */
  readonly foot: string;
  /** Said at the foot of every page, beside its number. */
  readonly running: string;
}

export interface Letterhead {
  readonly name: string;
  readonly address: readonly string[];
  /** Telephone, mail, tax number: each as it is to be read. */
  readonly contact: readonly string[];
  /** PNG or JPEG. */
  readonly logo?: Picture;
  /** Of its name, and of what stands under it. */
  readonly from?: { readonly name: From; readonly under: From };
}

export interface Picture {
  readonly bytes: Uint8Array;
  readonly type: 'png' | 'jpeg';
  /** In words, for who cannot see it. */
  readonly words: string;
}

export type Part =
  | {
      readonly part: 'heading';
      readonly level: 1 | 2 | 3;
      readonly text: string;
      readonly under?: string;
      readonly from?: From;
    }
  | {
      readonly part: 'words';
      readonly text: string;
      readonly strong?: boolean;
      readonly small?: boolean;
      readonly from?: From;
    }
  /** Boxed, so that nobody can miss it. */
  | {
      readonly part: 'warning';
      readonly strong: string;
      readonly text: string;
      readonly from?: From;
    }
  /** A name and what it is: For, Site, Date. */
  | { readonly part: 'facts'; readonly rows: readonly Fact[] }
  /** Each item is one or more lines. */
  | {
      readonly part: 'list';
      readonly items: readonly (readonly string[])[];
      readonly ordered?: boolean;
      /** Of each item. */
      readonly from?: readonly (From | undefined)[];
    }
  | Table
  | DrawingPart
  /** Kept on one page where it goes on one. */
  | { readonly part: 'together'; readonly parts: readonly Part[] }
  | { readonly part: 'new-page' };

export interface Fact {
  readonly label: string;
  readonly lines: readonly string[];
  readonly from?: From;
}

export interface Table {
  readonly part: 'table';
  /** For the name of a sheet or of a CSV file: `bricks`. */
  readonly name: string;
  readonly caption?: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

export interface Column {
  readonly title: string;
  /** Numbers stand to the right, figure under figure. */
  readonly holds: 'text' | 'number';
}

export interface Row {
  readonly cells: readonly Cell[];
  /** A total stands at the end, under a rule; `grand` is the one that counts. */
  readonly role?: 'total' | 'grand';
  /** What it tells of; left out where that is what its figures come from. */
  readonly from?: From;
}

/** As it is read; of a number also its exact value for a table that reckons, and its unit or currency. */
export interface Cell {
  readonly text: string;
  readonly value?: string;
  readonly unit?: string;
  readonly from?: From;
}

export interface DrawingPart {
  readonly part: 'drawing';
  /** Marks in mm of paper; it is set no larger than this, and smaller where the page is. */
  readonly sheet: Sheet;
  /** In words, for who cannot see it. */
  readonly words: string;
}
