/**
 * What client and server say to each other beyond the Language Server Protocol. Files are named by their
 * address as the editor writes it.
 */

/** Asks for the totals of a job: {@link FileParams} in, {@link Totals} or null for a file that is no job out. */
export const TOTALS = 'perpend/totals';

/** Asks which figures a job has: {@link FileParams} in, {@link FigureItem}s in the order a reader wants them out. */
export const FIGURES = 'perpend/figures';

/** Asks how a figure came about: {@link WorkingParams} in, {@link Working} or null out. */
export const WORKING = 'perpend/working';

/** From the server: something outside the open files changed, so totals may have too. No parameters. */
export const CHANGED = 'perpend/changed';

/** The setting that shows totals at the end of headings. */
export const HINT_TOTALS = 'hints.totals';
/** The setting that shows what a length or a height works out to. */
export const HINT_LINES = 'hints.lines';

export interface FileParams {
  readonly uri: string;
}

export interface WorkingParams extends FileParams {
  /** A figure's id: `north.bricks`, `job.price`. */
  readonly id: string;
}

/** What a status bar shows of a job. Texts are ready for a reader. */
export interface Totals {
  /** What the client pays, tax included. */
  readonly price: string;
  /** From what to what, when the job holds ranges: "£1,380 to £1,520". */
  readonly range?: string;
  /** In how many jobs alike: "In eight of ten jobs alike". */
  readonly alike?: string;
  readonly hours: string;
  /** What is missing; empty when the price is complete. */
  readonly missing: readonly string[];
  /** The steps from cost to price, for a tooltip. */
  readonly steps: readonly { readonly label: string; readonly text: string }[];
}

export interface FigureItem {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  /** The piece of work it belongs to, or a word for the part of the price: for grouping. */
  readonly group: string;
}

export interface Working {
  readonly title: string;
  /** Markdown: the sum, and the sums in it, each with where it comes from. */
  readonly markdown: string;
}
