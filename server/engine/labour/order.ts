/**
 * In which order the tasks of one piece of work are done: down before up, dirty before clean, what carries before what
 * lies on it, pointing last (common practice).
 */
const ORDER = [
  'take-down',
  'clean',
  'cut-out',
  'tooth-in',
  'footing',
  'facework',
  'blockwork',
  'pier-work',
  'core',
  'subsill',
  'lintel',
  'centre',
  'arch',
  'head',
  'tiles',
  'coping',
  'precast',
  'cap',
  'replace',
  'rebed',
  'rebed-pieces',
  'stitch',
  'repoint',
  'repoint-joints',
  'make-good',
];

/** Tasks that raise the work: no more of them in a day than a lift. */
const RAISING: ReadonlySet<string> = new Set(['facework', 'blockwork', 'pier-work', 'core']);

export function raises(task: string): boolean {
  return RAISING.has(task);
}

/** Concrete has to set before anything stands on it. */
export function sets(task: string): boolean {
  return task === 'footing';
}

/** What is let into the work as it goes up: after its first lift, before its last. */
const LET_IN: ReadonlySet<string> = new Set(['subsill', 'lintel', 'centre', 'arch', 'head']);

export function isLetIn(task: string): boolean {
  return LET_IN.has(task);
}

/** What is not in the list comes after what raises the work, and before what finishes it. */
export function placeOf(task: string): number {
  const at = ORDER.indexOf(task);
  return at < 0 ? ORDER.indexOf('tiles') - 0.5 : at;
}
