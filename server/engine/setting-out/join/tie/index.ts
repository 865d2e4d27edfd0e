/** Walls bonded into the back of others that are a brick thick or more. */
export { entriesFor } from './entry';
export { bondIn } from './lay';
export { GOOD_TIE, tieOf } from './solve';
export type { Entry, Tie } from './types';
