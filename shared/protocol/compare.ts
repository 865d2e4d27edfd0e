/** A job beside what it was. */
import type { FileParams } from '../protocol';
import type { Before, PageShown } from './pages';

/** Asks what changed, by meaning: {@link CompareParams} in, {@link Compared} or {@link Refused} out. */
export const COMPARE = 'perpend/compare';

export interface CompareParams extends FileParams {
  readonly before: Before;
}

export interface Compared {
  /** Nothing that counts has changed. */
  readonly nothing: boolean;
  /** Which of the texts that were offered it is, by its place; of what was sent. */
  readonly took?: number;
  /** What each is called: "Orchard wall, last commit". */
  readonly labels: { readonly left: string; readonly right: string };
  /** The job by its work, what is bought, hours and money: lines that stand beside each other. */
  readonly left: string;
  readonly right: string;
  /** All of it, and what moved the price. */
  readonly page: PageShown;
}

/** Asks for files that a job uses and that are no libraries, to fetch each as it stood: {@link FileParams} in, addresses out. */
export const USED = 'perpend/used';
