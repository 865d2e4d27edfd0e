/** Findings whose preferred way out may be taken unasked: it writes down what was plainly meant, and decides nothing. */

/** Words that are misspelt and lines that stand wrong. Whatever lays bricks otherwise or moves a price is not among them. */
export const SAFE: ReadonlySet<string> = new Set([
  'ask-idle',
  'change-unfit',
  'change-unknown',
  'deduction-unknown',
  'edition-missing',
  'heading-indented',
  'heading-unknown',
  'indent-astray',
  'library-unknown',
  'line-unknown',
  'name-unknown',
  'per-unknown',
  'task-unknown',
  'unit-wrong',
  'when-unknown',
]);
