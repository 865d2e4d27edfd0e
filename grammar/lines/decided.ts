/**
 * Lines that take no range, and why: what is decided or agreed has one value. All other amounts, money and sizes may be
 * ranges: they are measured, judged or guessed.
 */

/** By the word of a heading: for all of it, or for lines of it. */
export type Why = string | { readonly [word: string]: string };

const LIMIT = 'it is what work is held against, and that is one value';
const TABLE = 'a table has one value in each place';
const TAX = 'a tax rate is fixed';
const AGREED = 'how long it is is agreed';
const ROUNDING = 'what a price is rounded to is decided';
const LEAST = 'a least price is decided';
const PART_DAY = 'what part of a day is charged is decided';
const CHOICE = 'which it is is decided';

export const DECIDED: Readonly<Record<string, Why>> = {
  perpend: 'the edition is one',
  job: { tax: TAX, valid: AGREED },
  brick: { tolerance: 'a maker declares one value' },
  labour: { 'part-day': PART_DAY },
  price: {
    agreed: 'what is agreed is one price',
    least: LEAST,
    round: ROUNDING,
    stage: 'what is paid when is agreed',
  },
  record: 'what has happened is one value',
  defaults: {
    tax: TAX,
    valid: AGREED,
    payment: AGREED,
    deduction: TAX,
    bond: CHOICE,
    round: ROUNDING,
    least: LEAST,
    'part-day': PART_DAY,
    'least-cut': LIMIT,
    'whole-worth': LIMIT,
    'joints-in-length': LIMIT,
    'rule-within': LIMIT,
    rule: LIMIT,
    'wall-ties': CHOICE,
    'coping-overhang': LIMIT,
    'cap-step': CHOICE,
    corbels: LIMIT,
    'footing-lap': LIMIT,
    'pier-spacing': LIMIT,
    'pier-projection': LIMIT,
    'pier-below': LIMIT,
    'pier-slender': LIMIT,
    'pier-nominal': LIMIT,
    creasing: CHOICE,
    bearing: LIMIT,
    'lintel-overhang': LIMIT,
    'head-span': LIMIT,
    'arch-rise': LIMIT,
    'arch-depth': LIMIT,
    'movement-spacing': LIMIT,
    'movement-width': CHOICE,
    'movement-ties': CHOICE,
    'movement-seal': CHOICE,
    'movement-least': LIMIT,
    'measured-within': LIMIT,
    quarters: CHOICE,
    'outputs-measured': LIMIT,
    'tee-ties': CHOICE,
    'block-courses': CHOICE,
    lift: LIMIT,
  },
  'mortar-class': { strength: 'a class has one strength' },
  bond: 'a bond is laid in one way',
  'pier-plan': 'a plan is for one size',
  limit: TABLE,
  tolerance: TABLE,
  caution: 'a caution has one limit',
  currencies: 'a currency has so many digits',
};
