/** Settings that the server asks the editor for, each for the file that it is about, under `perpend`. */

/** Kinds of hint at the end of lines, by the setting that shows them. */
export const HINT_SETTINGS = {
  total: 'hints.totals',
  line: 'hints.lines',
  money: 'hints.money',
  hours: 'hints.hours',
  range: 'hints.ranges',
  name: 'hints.names',
  taken: 'hints.taken',
} as const;

/** What stands over headings. */
export const LENS_SETTINGS = {
  figures: 'lenses.figures',
  drawing: 'lenses.drawing',
  working: 'lenses.working',
} as const;
