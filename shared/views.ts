/**
 * What every face of the tool reads: plain data, ready to show. Values are exact decimals in text;
 * `text` is the same for a reader. Nothing here can be computed with further.
 */
import type { Finding } from './finding';
import type { Place } from './span';

/** How one figure came about: the sum in words and numbers, and what each part came from. */
export interface WorkingView {
  readonly label: string;
  /** The result, for a reader: "9.99 m²". */
  readonly result: string;
  /** The sum: "7.4 m × 1.35 m". Absent for a plain fact. */
  readonly sum?: string;
  /** Why, or by which rule. */
  readonly note?: string;
  /** Where the fact stands, in a job, a firm's file or a library. */
  readonly place?: Place;
  /** That line's text and its file's short name, for a reader without the file. */
  readonly line?: string;
  /** What is missing, when the figure is not complete. */
  readonly missing?: readonly string[];
  readonly parts: readonly WorkingView[];
}

export interface FigureView {
  /** Stable, made of names: `north.bricks`, `job.price`. */
  readonly id: string;
  readonly label: string;
  /** Exact decimal. */
  readonly value: string;
  readonly unit: string;
  readonly text: string;
  readonly complete: boolean;
  readonly missing: readonly string[];
}

export interface BlockView {
  readonly kind: string;
  readonly name: string;
  readonly title: string;
  readonly place: Place;
  /** One line: what an editor shows at the end of the heading. */
  readonly summary: string;
  readonly figures: readonly FigureView[];
}

/** Something to be careful of, for the site. */
export interface CautionView {
  readonly code: string;
  readonly title: string;
  /** The pieces of work that bring it up, with the reasons and the lines. */
  readonly here: readonly {
    readonly name: string;
    readonly title: string;
    readonly why: readonly string[];
    readonly places: readonly Place[];
  }[];
  /** What to do. */
  readonly say: readonly string[];
  /** Whose word counts. */
  readonly ask: readonly string[];
  readonly source: readonly string[];
}

export interface JobView {
  readonly file: string;
  readonly edition: number;
  readonly name: string;
  readonly currency: string;
  readonly blocks: readonly BlockView[];
  /** Job totals, in the order a reader wants them; the last is what the client pays. */
  readonly totals: readonly FigureView[];
  readonly cautions: readonly CautionView[];
  readonly findings: readonly Finding[];
}
