/** What to find out on site because a caution hangs on it and no line of the job says it. */
import { later, phrase, spoken } from '../../../shared/phrase';
import type { Place } from '../../../shared/span';
import { askedOf } from '../cautions';
import type { Job } from '../workspace/job';

export interface FindOut {
  /** In words: “how far the boundary is”. */
  readonly what: string;
  /** The line that says it then, as an example. */
  readonly line?: string;
  /** Titles of the cautions that hang on it. */
  readonly for: readonly string[];
  /** The pieces of work it is asked for, by their names. */
  readonly works: readonly string[];
  /** The line of the first of them that brings it up. */
  readonly place: Place;
}

interface Question {
  readonly what: string;
  readonly line?: string;
}

/** Words of a caution that a line of the work says. */
const QUESTIONS: ReadonlyMap<string, Question> = new Map([
  ['boundary', { what: later`how far the boundary is`, line: 'boundary 0.4 m' }],
  ['road', { what: later`how far a road is`, line: 'road 1.5 m' }],
  ['leans', { what: later`how far it leans`, line: 'leans 40 mm' }],
  ['old-lime', { what: later`what mortar it stands in`, line: 'stands-in lime' }],
]);

/** One entry a question, in the order of the work that first asks it. */
export function toFindOut(job: Pick<Job, 'works' | 'env' | 'wallOf'>): FindOut[] {
  const asked = askedOf(job.works, job.env, (work) => job.wallOf(work.block));
  return [...new Set(asked.map((ask) => ask.what))].map((word) => {
    const mine = asked.filter((ask) => ask.what === word);
    const { block, span } = mine[0]!.at.origin;
    return {
      ...questionOf(word),
      for: [...new Set(mine.map(({ rule }) => rule.title))],
      works: [...new Set(mine.map(({ work }) => work.name))],
      place: block.place(span),
    };
  });
}

function questionOf(word: string): Question {
  const known = QUESTIONS.get(word);
  return known
    ? { ...known, what: spoken(known.what) }
    : { what: phrase`whether there is any ${word}` };
}
