/** What a rate is per: the words that lines take there, and what is done with any other. */
import { type Dimension, unitNamed, unitsOf } from '../../../shared/units';

/** The words of a slot, by what its table entry calls them. */
interface Takes {
  readonly known: (word: string) => boolean;
  /** For a message: the plain ways to write it. */
  readonly words: readonly string[];
}

const ofDimension = (dimension: Dimension): Takes => ({
  known: (word) => unitNamed(word)?.dimension === dimension,
  words: unitsOf(dimension).map((u) => u.name),
});

const TAKES: ReadonlyMap<string, Takes> = new Map([
  ['h or day', { known: (word) => perTime(word) !== undefined, words: ['h', 'day'] }],
  ['day or job', { known: (word) => perVisit(word) !== undefined, words: ['day', 'job'] }],
  ['day', { known: (word) => perTime(word) === 'day', words: ['day'] }],
  ['unit of distance', ofDimension('length')],
  ['unit of area', ofDimension('area')],
  [
    'unit of weight or volume',
    {
      known: (word) => ['mass', 'volume'].includes(unitNamed(word)?.dimension ?? ''),
      words: [...unitsOf('mass'), ...unitsOf('volume')].map((u) => u.name),
    },
  ],
]);

/** Nothing for a slot that takes any word. */
export function takenBy(what: string): Takes | undefined {
  return TAKES.get(what);
}

/** An hour or a day, however it is written; nothing for any other word, which is never taken for one. */
export function perTime(word: string): 'h' | 'day' | undefined {
  const name = unitNamed(word)?.name;
  return name === 'h' || name === 'day' ? name : undefined;
}

/** A charge is paid every day, or once for the job. */
export function perVisit(word: string): 'day' | 'job' | undefined {
  return word === 'job' ? 'job' : perTime(word) === 'day' ? 'day' : undefined;
}
