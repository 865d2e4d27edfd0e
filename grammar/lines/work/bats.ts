/** What is at hand to be laid or cut before a brick is. */
import { line, lit, number, optional, quantity, whole } from '../slots';

export const BATS = line(
  'bats',
  [whole(number('count')), optional(lit('of'), quantity('length', 'length'))],
  'Bats at hand: so many salvaged halves, or offcuts of a length. Half bats and cuts are had of them before a brick is cut.',
  'bats 40',
  { many: true, unless: 'none' },
);
