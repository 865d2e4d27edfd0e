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
  /** Wages and profit for each hour that is paid: "£59.12". Nothing where no hour is worked. */
  readonly earns?: string;
  /** What the price leaves as profit, and the hours that are paid: what {@link Totals.earns} is made of. */
  readonly leaves?: string;
  readonly paid?: string;
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
