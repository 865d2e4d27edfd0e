/**
 * What a copy without costs holds: kinds of block that are named here, and of them no line that is named as hidden. A kind
 * of block that nobody has thought of stays out; a line that holds money stays out whatever it is.
 */

/** Blocks whose lines are facts of the work and not of the firm’s money. */
export const KEPT: ReadonlySet<string> = new Set([
  'job',
  'firm',
  'wall',
  'pier',
  'repair',
  'brick',
  'mix',
  'material',
  'defaults',
  'measures',
  'yield-model',
  'mortar-class',
  'least-mortar',
  'bond',
  'pier-plan',
  'limit',
  'tolerance',
  'caution',
  'currencies',
]);

/** In every block: where a value comes from says who sells and for how much; options are settled or gone; who else works is no partner’s business. */
const ALWAYS: readonly string[] = ['source', 'option', 'by'];

const LINES: Readonly<Record<string, ReadonlySet<string>>> = {
  // How the firm is paid, its numbers, and a picture that is a file of its own.
  firm: new Set(['logo', 'account', 'payment', 'terms', 'tax-number', 'registration']),
  brick: new Set(['price']),
  material: new Set(['price']),
  // What is put on top of cost, how the firm reckons its days, and what it calls its money.
  defaults: new Set([
    'overhead',
    'profit',
    'round',
    'least',
    'payment',
    'deduction',
    'money-words',
    'day',
    'part-day',
    'set-up',
    'clear-up',
    'start',
  ]),
};

export function isHidden(kind: string, word: string): boolean {
  return ALWAYS.includes(word) || LINES[kind]?.has(word) === true;
}

/** Who the work is for and where. */
export const OF_CLIENT: ReadonlySet<string> = new Set(['client', 'site', 'ref']);
